package quarterturn.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Style;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.report.InstrumentPages;
import quarterturn.report.SessionList;
import quarterturn.session.Instrument;
import quarterturn.session.Store;
import quarterturn.unit.NotUnderstood;

/** {@code instrument list}, {@code instrument show NAME} and {@code instrument add NAME}. */
@Command(
    name = "instrument",
    mixinStandardHelpOptions = true,
    description = "Keeps your instruments, so that each neck's answer is remembered.",
    synopsisSubcommandLabel = "COMMAND")
final class InstrumentCommand implements Runnable, Cli.Timed {
  /** Any procedure will do to load the kinds of instrument with. */
  private static final String PROCEDURE = "relief";

  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  InstrumentCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: instrument list, instrument show NAME, or instrument add NAME.");
  }

  @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists your instruments.")
  int list(@Mixin Where where) throws IOException {
    Store store = where.store();
    Store.Shelf shelf = store.instruments();
    List<InstrumentPages.Row> rows = new ArrayList<>();
    for (Instrument instrument : shelf.instruments()) {
      rows.add(
          InstrumentPages.Row.of(
              instrument.name(), instrument.kind(), sessions(store, instrument.name())));
    }
    print(InstrumentPages.list(rows));
    shelf.notices().forEach(n -> spec.commandLine().getErr().println("quarterturn: " + n));
    return 0;
  }

  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description = "Shows one instrument and its sessions.")
  int show(@Mixin Where where, @Parameters(paramLabel = "NAME") String name)
      throws IOException, Unreadable {
    Store store = where.store();
    Instrument instrument = store.instrument(name);
    Kind kind = where.desk(clock).library(PROCEDURE).kinds().get(instrument.kind());
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Name", instrument.name());
    facts.put("Kind", kind == null ? instrument.kind() : kind.name());
    Integer joint = instrument.jointFret();
    if (joint != null) {
      facts.put("Joint fret", "fret " + joint);
    } else if (kind != null) {
      facts.put("Joint fret", "fret " + kind.jointFret() + ", as usual for its kind");
    }
    Style style = instrument.style();
    facts.put("Player", style == null ? "asked each time" : style.word());
    if (kind != null && style != null) {
      Kind.Target target = kind.target(style);
      facts.put("Relief window", target.window() + " (" + target.source() + ")");
    }
    if (instrument.strings() != null) {
      facts.put("Strings", instrument.strings());
    }
    print(
        InstrumentPages.show(
            facts, sessions(store, instrument.name()), new Dates(clock.getZone())));
    return 0;
  }

  @Command(
      name = "add",
      mixinStandardHelpOptions = true,
      description = "Adds an instrument: quarterturn instrument add my-bass --kind bass-34")
  int add(
      @Mixin Where where,
      @Parameters(paramLabel = "NAME", description = "Letters, digits and hyphens.") String name,
      @Option(names = "--kind", required = true, paramLabel = "KIND") String kind,
      @Option(names = "--style", paramLabel = "STYLE", description = "light, medium or hard.")
          @Nullable Style style,
      @Option(
              names = "--joint-fret",
              paramLabel = "FRET",
              description =
                  "The fret nearest the body joint, where it is not the kind's usual one.")
          @Nullable Integer joint,
      @Option(names = "--strings", paramLabel = "NOTE", description = "What strings are on.")
          @Nullable String strings)
      throws IOException, Unreadable {
    Library library = where.desk(clock).library(PROCEDURE);
    Kind known = library.kinds().get(kind);
    if (known == null) {
      throw new NotUnderstood(
          "there is no kind "
              + kind
              + "; choose one of "
              + String.join(", ", library.kinds().keySet()));
    }
    if (joint != null && (joint <= known.readAt() || joint > known.frets())) {
      throw new NotUnderstood(
          "--joint-fret must lie between "
              + (known.readAt() + 1)
              + " and "
              + known.frets()
              + " on a "
              + known.name());
    }
    Instrument instrument = new Instrument(name, kind, style, joint, strings, clock.instant());
    where.store().add(instrument);
    print(
        List.of(
            "Added " + instrument.name() + ".",
            "Start with: quarterturn start relief --instrument " + instrument.name()));
    return 0;
  }

  private static List<SessionList.Row> sessions(Store store, String instrument) throws IOException {
    List<SessionList.Row> rows = new ArrayList<>();
    for (Store.Glance glance : store.sessions()) {
      if (instrument.equals(glance.instrument())) {
        rows.add(LogCommand.row(store, glance));
      }
    }
    return rows;
  }

  private void print(List<String> lines) {
    PrintWriter out = spec.commandLine().getOut();
    lines.forEach(out::println);
    out.flush();
  }
}
