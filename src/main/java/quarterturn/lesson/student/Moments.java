package quarterturn.lesson.student;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.engine.Answers;

/** Finds where a lesson stands from the recorded events of a bench's sessions. */
final class Moments {
  private final List<Event> events;
  private final List<Event> answers;

  /**
   * @param events of all sessions of the bench, oldest first
   */
  Moments(List<Event> events) {
    this.events = List.copyOf(events);
    this.answers = events.stream().filter(Answers::is).toList();
  }

  /**
   * The moment at a prompt. Where a session was taken up again before a round's own prompt was
   * answered, what is asked of the break belongs to no round, and that prompt goes on with the
   * round.
   *
   * @param rounds of the bench, oldest first
   * @param turns whether the last reading asks for a turn of the rod
   * @param asks the step's questions
   */
  Moment at(Prompt prompt, List<Round> rounds, boolean turns, List<LessonQuestion> asks) {
    PromptText said = prompt.said();
    Spot spot = new Spot(said.procedure(), said.step(), said.part(), answers.size() + 1);
    boolean again =
        !answers.isEmpty() && answers.get(answers.size() - 1) instanceof Event.Corrected;
    Map<Integer, Value> came = new TreeMap<>();
    for (Round round : rounds.subList(Math.max(0, rounds.size() - 2), rounds.size())) {
      Value value = came(round);
      if (value != null) {
        came.put(round.n(), value);
      }
    }
    Round last = rounds.isEmpty() ? null : rounds.get(rounds.size() - 1);
    if (last != null && !last.opened().turn() && resumedIn(last)) {
      boolean round = prompt instanceof Prompt.Measure || prompt instanceof Prompt.TurnRod;
      boolean same = round && last.opened().spot().key().equals(spot.key());
      spot = same ? last.opened().spot() : spot;
      again |= !round;
    }
    Event.Read before = before(prompt, turns || prompt instanceof Prompt.TurnRod);
    double step =
        prompt instanceof Prompt.Measure measure
            ? measure.step()
            : before == null ? 0 : before.gaugeStep();
    Value value = before == null ? null : read(before);
    return new Moment(spot, prompt, value, step, came, again, repeats(prompt), turns, asks);
  }

  /**
   * The result of a round, or null where there is none yet. A corrected answer counts in place of
   * the first.
   */
  @Nullable Value came(Round round) {
    Event came = null;
    boolean corrected = false;
    for (Event event : since(round)) {
      if (!Answers.is(event) || (came == null && !answers(round, event))) {
        continue;
      }
      if (came != null && corrected == event instanceof Event.Corrected) {
        break;
      }
      corrected = event instanceof Event.Corrected;
      came = corrected ? came : event;
    }
    return came == null ? null : value(came);
  }

  /** Whether an answer is about what a round predicts. */
  private static boolean answers(Round round, Event event) {
    return round.opened().turn()
        ? event instanceof Event.OnRod || event instanceof Event.UndoAsked
        : event instanceof Event.Read read
            && (!(round.opened().before() instanceof Value.Gap) || read.value() == null);
  }

  /** Whether a session was resumed before a round's own prompt was answered. */
  private boolean resumedIn(Round round) {
    List<Event> since = since(round);
    return since.stream().anyMatch(Event.Resumed.class::isInstance)
        && since.stream().noneMatch(e -> e instanceof Event.Read || e instanceof Event.OnRod);
  }

  /** The events since a round's prompt was there. */
  private List<Event> since(Round round) {
    int answered = 0;
    for (int i = 0; i < events.size(); i++) {
      answered += Answers.is(events.get(i)) ? 1 : 0;
      if (answered == round.opened().spot().asked() - 1 && answered > 0) {
        return events.subList(i + 1, events.size());
      }
    }
    return round.opened().spot().asked() == 1 ? events : List.of();
  }

  private static Value value(Event event) {
    if (event instanceof Event.Read read) {
      return read(read);
    }
    return event instanceof Event.OnRod rod && rod.sure() ? new Value.Rod(rod.moved()) : Value.NONE;
  }

  private static Value read(Event.Read read) {
    if (read.bracket() != null) {
      return new Value.Gap(read.bracket());
    }
    return read.value() == null
        ? Value.NONE
        : new Value.Number(read.value(), read.quantity().unit());
  }

  /** Whether what a prompt reads was read since the instrument was last changed. */
  private boolean repeats(Prompt prompt) {
    if (!(prompt instanceof Prompt.Measure measure)) {
      return false;
    }
    Event last =
        Lists.last(
            events,
            e ->
                e instanceof Event.OnRod
                    || e instanceof Event.Adjusted
                    || (e instanceof Event.Read read
                        && !read.missing()
                        && read.quantity() == measure.quantity()));
    return last instanceof Event.Read;
  }

  /**
   * The last reading of what the prompt reads; where it reads nothing, the last reading of all, or
   * of that by which a turn is judged; null where there is none.
   */
  private Event.@Nullable Read before(Prompt prompt, boolean turn) {
    Event last =
        Lists.last(events, e -> e instanceof Event.Read r && !r.missing() && same(r, prompt, turn));
    return last instanceof Event.Read read ? read : null;
  }

  private static boolean same(Event.Read read, Prompt prompt, boolean turn) {
    if (!(prompt instanceof Prompt.Measure measure)) {
      return !turn || (read.quantity() == Quantity.RELIEF && read.which() == Which.LOWEST);
    }
    return read.quantity() == measure.quantity()
        && read.which() == measure.which()
        && (measure.string() == null || measure.string().equals(read.string()));
  }
}
