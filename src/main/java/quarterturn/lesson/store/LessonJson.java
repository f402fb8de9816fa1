package quarterturn.lesson.store;

import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.session.journal.KindsJson;
import quarterturn.session.journal.Shapes;

/** Events of a lesson as JSON objects: {@code at} and {@code event} first, then their fields. */
final class LessonJson {
  static final KindsJson<LessonEvent> EVENTS = events();

  private LessonJson() {}

  private static KindsJson<LessonEvent> events() {
    Shapes shapes =
        new Shapes()
            .words(Direction.class, Direction::word)
            .words(Level.class, Level::word)
            .words(Refusal.class, Refusal::word);
    shapes.text(Ref.class, Ref::parse);
    shapes.object(Value.class, new ValueJson());
    shapes.inline(Spot.class, shapes.record(Spot.class, "procedure step part asked"));
    shapes.inline(
        Prediction.class, shapes.record(Prediction.class, "direction? size reason? helped"));
    shapes.object(
        Order.class,
        new KindsJson<Order>("order", shapes)
            .kind("release", Order.Release.class, "keeps value")
            .kind("hold", Order.Hold.class, "reason")
            .kind("level", Order.SetLevel.class, "student level? frozen")
            .kind("come-back", Order.ComeBack.class, "student question again")
            .kind("end", Order.End.class, ""));
    return new KindsJson<LessonEvent>("event", shapes)
        .kind("joined", LessonEvent.Joined.class, "at name")
        .kind("came", LessonEvent.Came.class, "at student level?")
        .kind("went", LessonEvent.Went.class, "at student")
        .kind("stepped", LessonEvent.Stepped.class, "at spot")
        .kind("ticked", LessonEvent.Ticked.class, "at")
        .kind(
            "opened",
            LessonEvent.Opened.class,
            "at spot turn blind before? gauge-step question? unasked? string?")
        .kind("predicted", LessonEvent.Predicted.class, "at round student prediction")
        .kind("shown", LessonEvent.Shown.class, "at round")
        .kind("blind-read", LessonEvent.BlindRead.class, "at round student mm")
        .kind("unveiled", LessonEvent.Unveiled.class, "at round")
        .kind("resulted", LessonEvent.Resulted.class, "at round result")
        .kind(
            "reflected",
            LessonEvent.Reflected.class,
            "at round student reason? question? answer? missed")
        .kind("held", LessonEvent.Held.class, "at spot waits-for value")
        .kind("stopped", LessonEvent.Stopped.class, "at reason?")
        .kind(
            "asked-again", LessonEvent.AskedAgain.class, "at student question answer missed season")
        .kind("accepted", LessonEvent.Accepted.class, "at ref takes")
        .kind("declined", LessonEvent.Declined.class, "at ref why")
        .kind("ordered", LessonEvent.Ordered.class, "at bench? asks")
        .kind("struck", LessonEvent.Struck.class, "at student")
        .kind("left", LessonEvent.Left.class, "at finished");
  }
}
