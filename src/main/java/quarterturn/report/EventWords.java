package quarterturn.report;

import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;

/** A plain sentence for each event. */
public final class EventWords {
  /** Finds the words for the step of an event. */
  interface Found {
    Labels labels(Event event, String step);
  }

  private final @Nullable Library library;
  private final Found found;
  private final Dates dates;

  EventWords(Labels labels, Dates dates) {
    this(labels.library(), (event, step) -> labels, dates);
  }

  /**
   * @param library the library of the record's procedure, or null
   */
  EventWords(@Nullable Library library, Found found, Dates dates) {
    this.library = library;
    this.found = found;
    this.dates = dates;
  }

  /**
   * The sentence for {@code event}.
   *
   * @param before the events that still counted when it happened, for a correction to point to
   */
  String of(Event event, List<Event> before) {
    return event.match(
        new Event.Cases<>(
            e -> "Began " + title(e.procedure()) + " as " + e.role().word() + ".",
            e ->
                at(
                    "Understood before",
                    e,
                    e.step(),
                    e.hazards().stream()
                        .map(found.labels(e, e.step())::hazard)
                        .collect(Collectors.joining("; "))),
            e -> "Done: " + stopped(found.labels(e, e.step()).step(e.step())),
            e -> at("Noted at", e, e.step(), e.text()),
            AdjustedWords::of,
            e -> at("Chose at", e, e.step(), chosen(e, before)),
            EventWords::reading,
            e -> "Asked for: " + TurnWords.order(e.turn()) + ".",
            e -> "Asked to take the last turn back.",
            e -> "Rod " + TurnWords.done(e.turn()) + ". " + e.feel().label() + ".",
            EventWords::recalled,
            e -> "Began to wait until " + dates.minute(e.until()) + ".",
            EventWords::waited,
            e -> at("Passed over", e, e.step(), e.why()),
            e -> "Said once more, " + e.line() + ": " + stopped(e.value()),
            e -> "Doubted: " + stopped(e.why()),
            e -> corrected(Corrections.withdrawn(before)),
            e -> "Left: " + stopped(e.standing()),
            EventWords::resumed,
            EventWords::ended,
            e -> "Discarded; its turns still count. The instrument: " + stopped(e.standing())));
  }

  private String chosen(Event.Chose chose, List<Event> before) {
    if (library == null || !LeftAsIs.left(chose, library.procedures().values())) {
      return found.labels(chose, chose.step()).option(chose.step(), chose.option());
    }
    PlayedKind played = PlayedKind.of(before, library);
    return LeftAsIs.words(before, played.kind(), played.style());
  }

  private String at(String what, Event event, String step, String said) {
    return what + " \"" + found.labels(event, step).step(step) + "\": " + stopped(said);
  }

  /** A procedure's title, or its id where the files no longer have it. */
  private String title(String procedure) {
    Procedure known = library == null ? null : library.procedures().get(procedure);
    return known == null ? procedure : known.title();
  }

  private static String recalled(Event.Recalled recalled) {
    return "After a break, said of the rod: "
        + TurnWords.done(recalled.turned(), recalled.sure())
        + "."
        + (recalled.feel() == null ? "" : " " + recalled.feel().label() + ".");
  }

  private static String waited(Event.Waited waited) {
    return waited.reason() == null
        ? "The wait is over."
        : "The wait was ended early: " + stopped(waited.reason());
  }

  private String corrected(@Nullable Event gone) {
    return gone == null
        ? "Correction: the last answer is withdrawn."
        : "Correction: this is withdrawn: " + of(gone, List.of());
  }

  private static String resumed(Event.Resumed resumed) {
    int turns = resumed.elsewhere().size();
    String others = " " + Counted.of(turns, "turn") + " in other sessions count here too.";
    String by = resumed.by() == null ? "" : " by " + resumed.by();
    return "Taken up again" + by + "." + (turns == 0 ? "" : others);
  }

  /** How a session ended, in one sentence or two. */
  static String ended(Event.Ended ended) {
    String how = ended.handOver() ? "Handed over to a repairer: " : "Ended: ";
    return how
        + stopped(InWindow.shown(ended.outcome()))
        + (ended.why().isBlank() ? "" : " " + ended.why());
  }

  private static String reading(Event.Read read) {
    String what = read.quantity().said() + Which.on(read.which(), read.string());
    if (read.missing()) {
      return "Could not measure " + what + ".";
    }
    return "Read " + what + ": " + value(read) + where(read) + ".";
  }

  /** The value of a reading with its unit, or "not measured". */
  public static String value(Event.Read read) {
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
    String held = read.held().isEmpty() ? "" : ", " + Frets.held(read.held());
    return held + Frets.readOver(read.readAt());
  }

  private static String stopped(String sentence) {
    return sentence.matches("(?s).*[.!?]\\s*") ? sentence.strip() : sentence + ".";
  }
}
