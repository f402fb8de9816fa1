package quarterturn.session;

import org.jspecify.annotations.Nullable;

/** The way back from what is on record to what was answered. */
public final class Answers {
  private Answers() {}

  /** Whether an event records an answer; the others are written by the session itself. */
  public static boolean is(Event event) {
    return of(event) != null;
  }

  /** The answer that an event records, or null where it records none. */
  public static @Nullable Answer of(Event event) {
    if (event instanceof Event.Accepted
        || event instanceof Event.Told
        || event instanceof Event.Adjusted) {
      return new Answer.Confirmed();
    } else if (event instanceof Event.Noted noted) {
      return new Answer.Wrote(noted.text());
    } else if (event instanceof Event.Chose chose) {
      return new Answer.Chose(chose.option());
    } else if (event instanceof Event.Recalled recalled) {
      return new Answer.Chose(Recall.of(recalled).word());
    } else if (event instanceof Event.Read read) {
      return read(read);
    } else if (event instanceof Event.UndoAsked) {
      return new Answer.Undo();
    } else if (event instanceof Event.Turned turned) {
      return new Answer.Turned(turned.turn(), turned.feel());
    } else if (event instanceof Event.Waited waited) {
      return new Answer.Waited(waited.reason());
    }
    return event instanceof Event.Corrected ? new Answer.Correct() : null;
  }

  private static Answer read(Event.Read read) {
    if (read.bracket() != null) {
      return new Answer.Measured(read.bracket());
    }
    return read.value() == null ? new Answer.CannotMeasure() : new Answer.Value(read.value());
  }
}
