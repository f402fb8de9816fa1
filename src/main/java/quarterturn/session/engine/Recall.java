package quarterturn.session.engine;

import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.unit.Turn;

/**
 * What a person can say of a turn that was asked for before a break: whether it was made and how it
 * felt, since a stop sign counts after a break as before one.
 */
enum Recall {
  NOT_MADE("not-made", "No, the rod was not turned", false, true, null),
  MADE("made", "Yes, all of it, smoothly", true, true, Feel.SMOOTH),
  STIFF("made-stiff", "Yes, all of it, but stiffly", true, true, Feel.STIFF),
  FREE("made-free", "Yes, with no resistance at all", true, true, Feel.FREE),
  JAMMED("jammed", "I tried, and it would not move", false, true, Feel.JAMMED),
  NOISE("noise", "I tried, and it creaked, cracked or clicked", true, false, Feel.NOISE),
  SLIPPED("slipped", "I tried, and the key slipped or rocked", true, false, Feel.SLIPPED),
  UNSURE("unsure", "I am not sure, or only a part of it", true, false, null);

  /** The reason for the question, and what to answer when in doubt. */
  static final String WHY =
      "Look at the mark on the key's handle if you can. If you are not sure, say so: the turn is"
          + " then counted, nothing is learned from it, and the next reading shows where the neck"
          + " stands.";

  private final String word;
  private final String label;
  private final boolean turned;
  private final boolean sure;
  private final @Nullable Feel feel;

  Recall(String word, String label, boolean turned, boolean sure, @Nullable Feel feel) {
    this.word = word;
    this.label = label;
    this.turned = turned;
    this.sure = sure;
    this.feel = feel;
  }

  String word() {
    return word;
  }

  static String question(Turn asked) {
    String way = asked.turns() > 0 ? "tighten" : "loosen";
    return "You were asked to " + way + " the rod " + asked + ". Was that turn made?";
  }

  static List<Prompt.Option> options() {
    return Arrays.stream(values()).map(r -> new Prompt.Option(r.word, r.label)).toList();
  }

  /** The event for an option. */
  static Event.Recalled event(String option, Event.Offered open, Instant now) {
    for (Recall recall : values()) {
      if (recall.word.equals(option)) {
        Turn turn = recall.turned ? open.turn() : Turn.NONE;
        return new Event.Recalled(now, open.step(), turn, recall.sure, recall.feel);
      }
    }
    throw new IllegalArgumentException("there is no such answer: " + option);
  }

  /** The answer that an event records. */
  static Recall of(Event.Recalled event) {
    boolean turned = event.turned().turns() != 0;
    for (Recall recall : values()) {
      if (recall.turned == turned && recall.sure == event.sure() && recall.feel == event.feel()) {
        return recall;
      }
    }
    throw new RecordMismatchException("the log tells of a turn as no answer does");
  }
}
