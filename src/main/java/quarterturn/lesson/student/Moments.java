package quarterturn.lesson.student;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Value;
import quarterturn.procedure.LessonQuestion;
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
   * The moment at a prompt. Where a session was taken up again before a round's answer came, what
   * is asked of the break belongs to no round, and the round's own prompt goes on with the round.
   *
   * @param last the last round, or null
   * @param asks the step's questions
   */
  Moment at(Prompt prompt, @Nullable Round last, List<LessonQuestion> asks) {
    PromptText said = prompt.said();
    Spot spot = new Spot(said.procedure(), said.step(), said.part(), answers.size() + 1);
    boolean again =
        !answers.isEmpty() && answers.get(answers.size() - 1) instanceof Event.Corrected;
    Value answered = last == null ? null : came(last);
    if (last != null && answered == null && resumedIn(last)) {
      boolean round = prompt instanceof Prompt.Measure || prompt instanceof Prompt.TurnRod;
      boolean same = round && last.opened().spot().key().equals(spot.key());
      spot = same ? last.opened().spot() : spot;
      again |= !round;
    }
    return new Moment(spot, prompt, before(prompt), answered, again, asks);
  }

  /**
   * The result of a round, or null where there is none yet. A corrected answer counts in place of
   * the first; an answer about a break is no answer to the round.
   */
  @Nullable Value came(Round round) {
    Event came = null;
    boolean resumed = false;
    boolean corrected = false;
    for (Event event : since(round)) {
      resumed |= event instanceof Event.Resumed;
      if (!Answers.is(event) || (came == null && resumed && !looksAtTheNeck(event))) {
        continue;
      }
      if (came != null && !corrected && !(event instanceof Event.Corrected)) {
        break;
      }
      if (corrected && event instanceof Event.Corrected) {
        break;
      }
      corrected = event instanceof Event.Corrected;
      came = corrected ? came : event;
    }
    return came == null ? null : value(came);
  }

  private static boolean looksAtTheNeck(Event event) {
    return event instanceof Event.Read
        || event instanceof Event.OnRod
        || event instanceof Event.UndoAsked;
  }

  private boolean resumedIn(Round round) {
    return since(round).stream().anyMatch(Event.Resumed.class::isInstance);
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

  /**
   * The last reading of what the prompt reads, or the last reading of all where it reads nothing;
   * null where there is none.
   */
  private @Nullable Value before(Prompt prompt) {
    Event last =
        Lists.last(events, e -> e instanceof Event.Read r && !r.missing() && same(r, prompt));
    return last instanceof Event.Read read ? read(read) : null;
  }

  private static boolean same(Event.Read read, Prompt prompt) {
    return !(prompt instanceof Prompt.Measure measure)
        || (read.quantity() == measure.quantity()
            && read.which() == measure.which()
            && (measure.string() == null || measure.string().equals(read.string())));
  }
}
