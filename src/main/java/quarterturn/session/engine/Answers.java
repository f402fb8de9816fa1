package quarterturn.session.engine;

import org.jspecify.annotations.Nullable;
import quarterturn.session.Answer;
import quarterturn.session.Event;

/** Finds the answer that an event records. */
public final class Answers {
  private static final Event.Cases<@Nullable Answer> OF =
      new Event.Cases<>(
          Answers::none,
          accepted -> new Answer.Confirmed(),
          told -> new Answer.Confirmed(),
          noted -> new Answer.Wrote(noted.text()),
          adjusted -> new Answer.Confirmed(),
          chose -> new Answer.Chose(chose.option()),
          Answers::read,
          Answers::none,
          undoAsked -> new Answer.Undo(),
          turned -> new Answer.Turned(turned.turn(), turned.feel()),
          recalled -> new Answer.Chose(Recall.of(recalled).word()),
          Answers::none,
          waited -> new Answer.Waited(waited.reason()),
          Answers::none,
          Answers::none,
          Answers::none,
          corrected -> new Answer.Correct(),
          Answers::none,
          Answers::none,
          Answers::none,
          Answers::none);

  private static final Event.Cases<String> STEP =
      new Event.Cases<>(
          Answers::nowhere,
          Answers::nowhere,
          Event.Told::step,
          Event.Noted::step,
          Event.Adjusted::step,
          Event.Chose::step,
          Event.Read::step,
          Answers::nowhere,
          Answers::nowhere,
          Event.Turned::step,
          Event.Recalled::step,
          Answers::nowhere,
          Event.Waited::step,
          Answers::nowhere,
          Event.ReadBack::step,
          Answers::nowhere,
          Answers::nowhere,
          Answers::nowhere,
          Answers::nowhere,
          Answers::nowhere,
          Answers::nowhere);

  private Answers() {}

  /** Id of the step at which an event says that something was done; empty for any other event. */
  static String step(Event event) {
    return event.match(STEP);
  }

  private static String nowhere(Event event) {
    return "";
  }

  /** Whether an event records an answer; the engine writes the other events of its own accord. */
  public static boolean is(Event event) {
    return of(event) != null;
  }

  /** The answer that an event records, or null where it records none. */
  public static @Nullable Answer of(Event event) {
    return event.match(OF);
  }

  private static @Nullable Answer none(Event event) {
    return null;
  }

  private static Answer read(Event.Read read) {
    if (read.bracket() != null) {
      return new Answer.Measured(read.bracket());
    }
    return read.value() == null ? new Answer.CannotMeasure() : new Answer.Value(read.value());
  }
}
