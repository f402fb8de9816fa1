package quarterturn.report;

import java.util.List;
import quarterturn.procedure.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.unit.Decimals;

/** Each event as one plain sentence. */
final class EventWords {
  private final Labels labels;
  private final Dates dates;

  EventWords(Labels labels, Dates dates) {
    this.labels = labels;
    this.dates = dates;
  }

  /**
   * The sentence for {@code event}.
   *
   * @param before the events that still counted when it happened, for a correction to point to
   */
  String of(Event event, List<Event> before) {
    if (event instanceof Event.Started started) {
      return "Began " + started.procedure() + " as " + started.role().word() + ".";
    }
    if (event instanceof Event.Accepted accepted) {
      return "Understood before \""
          + labels.step(accepted.step())
          + "\": "
          + stopped(labels.hazard(accepted.hazard()));
    }
    if (event instanceof Event.Told told) {
      return "Done: " + stopped(labels.step(told.step()));
    }
    if (event instanceof Event.Chose chose) {
      return "Chose at \""
          + labels.step(chose.step())
          + "\": "
          + stopped(labels.option(chose.step(), chose.option()));
    }
    if (event instanceof Event.Read read) {
      return reading(read);
    }
    if (event instanceof Event.Noted noted) {
      return "Noted at \"" + labels.step(noted.step()) + "\": " + stopped(noted.text());
    }
    if (event instanceof Event.Adjusted adjusted) {
      return AdjustedWords.of(adjusted);
    }
    if (event instanceof Event.Passed passed) {
      return "Passed over \"" + labels.step(passed.step()) + "\": " + stopped(passed.why());
    }
    if (event instanceof Event.ReadBack back) {
      return "Said once more, " + back.line() + ": " + stopped(back.value());
    }
    if (event instanceof Event.Doubted doubted) {
      return "Doubted, step by step from here: " + stopped(doubted.why());
    }
    return rod(event, before);
  }

  private String rod(Event event, List<Event> before) {
    if (event instanceof Event.Offered offered) {
      return "Asked for: " + TurnWords.order(offered.turn()) + ".";
    }
    if (event instanceof Event.UndoAsked) {
      return "Asked to take the last turn back.";
    }
    if (event instanceof Event.Turned turned) {
      return "Rod " + TurnWords.done(turned.turn()) + ". " + turned.feel().label() + ".";
    }
    if (event instanceof Event.Recalled recalled) {
      return "After a break, said of the rod: "
          + TurnWords.done(recalled.turned())
          + (recalled.sure() ? "." : ", but not sure.")
          + (recalled.feel() == null ? "" : " " + recalled.feel().label() + ".");
    }
    if (event instanceof Event.Corrected) {
      Event gone = Corrections.withdrawn(before);
      return gone == null
          ? "Correction: the last answer is withdrawn."
          : "Correction: this is withdrawn: " + of(gone, List.of());
    }
    return time(event);
  }

  private String time(Event event) {
    if (event instanceof Event.WaitBegan wait) {
      return "Began to wait until " + dates.minute(wait.until()) + ".";
    }
    if (event instanceof Event.Waited waited) {
      return waited.reason() == null
          ? "The wait is over."
          : "The wait was ended early: " + stopped(waited.reason());
    }
    if (event instanceof Event.Left left) {
      return "Left: " + stopped(left.standing());
    }
    if (event instanceof Event.Resumed resumed) {
      int turns = resumed.elsewhere().size();
      String others = turns == 1 ? " 1 turn" : " " + turns + " turns";
      return "Taken up again." + (turns == 0 ? "" : others + " in other sessions count here too.");
    }
    return ended((Event.Ended) event);
  }

  /** How a session ended, in one sentence or two. */
  static String ended(Event.Ended ended) {
    String how = ended.handOver() ? "Handed over to a repairer: " : "Ended: ";
    return how + stopped(ended.outcome()) + (ended.why().isBlank() ? "" : " " + ended.why());
  }

  private static String reading(Event.Read read) {
    String what = read.quantity().word() + Which.on(read.which(), read.string());
    if (read.missing()) {
      return "Could not measure " + what + ".";
    }
    return "Read " + what + ": " + value(read) + where(read) + ".";
  }

  /** A reading's value with its unit, or "not measured". */
  static String value(Event.Read read) {
    if (read.bracket() != null) {
      return read.bracket().toString();
    }
    if (read.value() == null) {
      return "not measured";
    }
    String number =
        read.gaugeStep() > 0
            ? Decimals.print(read.value(), Decimals.of(read.gaugeStep()))
            : Decimals.plain(read.value());
    return number + " " + read.quantity().unit();
  }

  private static String where(Event.Read read) {
    StringBuilder where = new StringBuilder();
    if (!read.held().isEmpty()) {
      where.append(read.held().size() == 1 ? ", held at fret " : ", held at frets ");
      where.append(Frets.list(read.held()));
    }
    if (read.readAt() > 0) {
      where.append(", read over fret ").append(read.readAt());
    }
    return where.toString();
  }

  private static String stopped(String sentence) {
    return sentence.matches("(?s).*[.!?]\\s*") ? sentence.strip() : sentence + ".";
  }
}
