package quarterturn.command;

import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Belief;
import quarterturn.craft.rod.Known;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.report.Calibration;
import quarterturn.report.HistoryReport;
import quarterturn.report.ReadingHistory;
import quarterturn.script.HistoryJson;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Neck;
import quarterturn.session.engine.Story;
import quarterturn.session.store.Store;
import quarterturn.unit.Dates;

/** {@code instrument history NAME}. */
@Command(
    name = "history",
    description = "Shows what was read and turned over all an instrument's sessions.")
final class InstrumentHistory extends Placed {
  @Parameters(paramLabel = "NAME", description = "One of yours.")
  private String name = "";

  @Option(names = "--json", description = "One JSON object.")
  private boolean json;

  @Override
  public Integer call() throws IOException, UnreadableException {
    Store store = where.store();
    Instrument instrument = store.instrument(name);
    Library rules = sessions().rules();
    Kind kind = rules.kinds().get(instrument.kind());
    Calibration came = Calibration.NONE;
    Calibration all = Calibration.NONE;
    List<Event.Past> turns = List.of();
    for (Neck neck : store.necks(rules.limits())) {
      Calibration one = calibration(neck, rules);
      all = all.plus(one);
      if (instrument.name().equals(neck.instrument())) {
        came = one;
        turns = neck.turns();
      }
    }
    ReadingHistory history =
        ReadingHistory.of(instrument.name(), sessions(store, instrument.name()), turns);
    Known known =
        kind == null
            ? null
            : Belief.of(Known.of(kind.prior()), Story.of(turns, rules.limits())).known();
    if (json) {
      return print(List.of(HistoryJson.of(history, known, came, all)));
    }
    Dates dates = new Dates(clock.getZone());
    return print(HistoryReport.lines(history, window(instrument, kind), known, came, all, dates));
  }

  /** How often a neck did what was expected. */
  private static Calibration calibration(Neck neck, Library rules) {
    Kind kind = neck.kind() == null ? null : rules.kinds().get(neck.kind());
    return kind == null
        ? Calibration.NONE
        : Calibration.of(neck.turns(), Known.of(kind.prior()), rules.limits());
  }

  private Map<String, List<Event>> sessions(Store store, String instrument) throws IOException {
    Map<String, List<Event>> sessions = new LinkedHashMap<>();
    for (Store.Glance glance : store.sessions()) {
      if (instrument.equals(glance.instrument())) {
        sessions.put(glance.name(), store.read(glance.name()).events());
        if (glance.notice() != null) {
          notice("session " + glance.name() + ": " + glance.notice());
        }
      }
    }
    return sessions;
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
