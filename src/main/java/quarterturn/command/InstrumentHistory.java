package quarterturn.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.place.Placed;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Belief;
import quarterturn.craft.rod.Known;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.report.HistoryReport;
import quarterturn.report.ReadingHistory;
import quarterturn.script.HistoryJson;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.engine.Story;
import quarterturn.session.listing.Calibration;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.InstrumentPast;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** {@code instrument history NAME}. */
@Command(
    addMethodSubcommands = false,
    name = "history",
    description = "Shows what was read and turned over all an instrument's sessions.")
final class InstrumentHistory extends Placed {
  @Parameters(paramLabel = "NAME", description = "One of yours.")
  private String name = "";

  @Option(names = "--json", description = "One JSON object.")
  private boolean json;

  /**
   * What is known of an instrument, and of how its neck answers.
   *
   * @param stops why its rod is not turned, until a repairer's finding is on record
   * @param open its unfinished sessions
   */
  record Told(
      List<Carried.Stop> stops,
      List<Work> open,
      ReadingHistory history,
      @Nullable Window window,
      @Nullable Known known,
      Calibration came,
      Calibration all) {
    List<String> lines(Dates dates) {
      List<String> lines =
          new ArrayList<>(HistoryReport.lines(history, stops, window, known, came, all, dates));
      lines.addAll(HistoryReport.open(open, dates));
      return lines;
    }
  }

  @Override
  public Integer call() throws IOException, UnreadableException {
    Told told = told(sessions(), sessions().rules(), name, this::notice);
    Dates dates = new Dates(clock.getZone());
    return print(
        json
            ? List.of(HistoryJson.of(told.history(), told.known(), told.came(), told.all()))
            : told.lines(dates));
  }

  /**
   * What is known of an instrument.
   *
   * @param notices takes a sentence for each record that can't be read in whole
   */
  static Told told(Sessions of, Library rules, String name, Consumer<String> notices)
      throws IOException {
    Store store = of.store();
    Instrument instrument = store.instrument(name);
    Kind kind = rules.kinds().get(instrument.kind());
    InstrumentPast past = store.past(instrument.name(), rules.limits(), of.clock());
    List<Event.Past> turns = past.neck().turns();
    for (Glance glance : past.glances()) {
      if (glance.notice() != null) {
        notices.accept("session " + glance.name() + ": " + glance.notice());
      }
    }
    Known known =
        kind == null
            ? null
            : Belief.of(Known.of(kind.prior()), Story.of(turns, rules.limits())).known();
    return new Told(
        past.neck().stops(),
        Work.of(past.glances(), store.tickets(), of.clock().instant()),
        ReadingHistory.of(instrument.name(), past.sessions(), turns),
        window(instrument, kind),
        known,
        past.came(),
        past.all());
  }

  /** An instrument's own window of relief, or the one its kind has for the player's style. */
  private static @Nullable Window window(Instrument instrument, @Nullable Kind kind) {
    Window own = instrument.windows().get(Aim.RELIEF);
    Style style = kind == null ? null : kind.styled(instrument.style());
    if (own != null || kind == null || style == null) {
      return own;
    }
    return kind.target(style).window();
  }
}
