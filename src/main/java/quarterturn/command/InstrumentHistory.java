package quarterturn.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.craft.Belief;
import quarterturn.craft.Known;
import quarterturn.craft.Window;
import quarterturn.procedure.Aim;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.report.History;
import quarterturn.report.HistoryReport;
import quarterturn.script.HistoryJson;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Store;
import quarterturn.session.Story;

/** {@code instrument history NAME}. */
@Command(
    name = "history",
    mixinStandardHelpOptions = true,
    description = "Shows what was read and turned over all an instrument's sessions.")
final class InstrumentHistory implements Callable<Integer>, Cli.Timed {
  @Parameters(paramLabel = "NAME", description = "One of yours.")
  private String name = "";

  @Option(names = "--json", description = "One JSON object.")
  private boolean json;

  @Mixin private final Where where = new Where();
  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  InstrumentHistory(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable {
    Store store = where.store();
    Instrument instrument = store.instrument(name);
    Library rules = where.desk(clock).rules();
    Kind kind = rules.kinds().get(instrument.kind());
    List<Event.Past> turns = store.pastOf(instrument.name());
    History history = History.of(instrument.name(), sessions(store, instrument.name()), turns);
    Known known =
        kind == null
            ? null
            : Belief.of(Known.of(kind.prior()), Story.of(turns, rules.limits())).known();
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(HistoryJson.of(history, known));
    } else {
      Dates dates = new Dates(clock.getZone());
      HistoryReport.lines(history, window(instrument, kind), known, dates).forEach(out::println);
    }
    out.flush();
    return 0;
  }

  private Map<String, List<Event>> sessions(Store store, String instrument) throws IOException {
    Map<String, List<Event>> sessions = new LinkedHashMap<>();
    for (Store.Glance glance : store.sessions()) {
      if (instrument.equals(glance.instrument())) {
        sessions.put(glance.name(), store.read(glance.name()).events());
        if (glance.notice() != null) {
          spec.commandLine()
              .getErr()
              .println("quarterturn: session " + glance.name() + ": " + glance.notice());
        }
      }
    }
    return sessions;
  }

  /** Its own window of relief, or the one its kind has for its player. */
  private static @Nullable Window window(Instrument instrument, @Nullable Kind kind) {
    Window own = instrument.windows().get(Aim.RELIEF);
    if (own != null || kind == null || instrument.style() == null) {
      return own;
    }
    return kind.target(instrument.style()).window();
  }
}
