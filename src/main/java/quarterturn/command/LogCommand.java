package quarterturn.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Unreadable;
import quarterturn.report.Dates;
import quarterturn.report.Labels;
import quarterturn.report.SessionList;
import quarterturn.report.SessionLog;
import quarterturn.session.Event;
import quarterturn.session.Journal;
import quarterturn.session.Store;

/** {@code log list} and {@code log show SESSION}. */
@Command(
    name = "log",
    mixinStandardHelpOptions = true,
    description = "Shows what was recorded.",
    synopsisSubcommandLabel = "COMMAND")
final class LogCommand implements Runnable, Cli.Timed {
  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  LogCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to show: log list, or log show SESSION.");
  }

  @Command(
      name = "list",
      mixinStandardHelpOptions = true,
      description = "Lists every session, the newest first.")
  int list(@Mixin Where where) throws IOException {
    Store store = where.store();
    Dates dates = new Dates(clock.getZone());
    List<SessionList.Row> rows = new ArrayList<>();
    for (Store.Glance glance : store.sessions()) {
      rows.add(row(store, glance));
    }
    print(SessionList.lines(rows, dates));
    return 0;
  }

  static SessionList.Row row(Store store, Store.Glance glance) throws IOException {
    List<Event> events = glance.started() == null ? List.of() : store.read(glance.name()).events();
    SessionList.Row row = SessionList.Row.of(glance.name(), events);
    String notice = glance.notice() == null ? "" : " (" + glance.notice() + ")";
    String kind = glance.kind();
    return new SessionList.Row(
        row.session(),
        row.began(),
        row.procedure(),
        glance.instrument() == null && kind != null ? kind : row.instrument(),
        row.rod(),
        row.state() + notice);
  }

  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description = "Shows one session, every event on its own line.")
  int show(@Mixin Where where, @Parameters(paramLabel = "SESSION") String session)
      throws IOException {
    Journal.Contents contents = where.store().read(session);
    if (contents.notice() != null) {
      spec.commandLine().getErr().println("quarterturn: " + contents.notice());
    }
    Labels labels = labels(where, contents);
    print(SessionLog.lines(session, contents.events(), labels, new Dates(clock.getZone())));
    return contents.header() == null ? Cli.USAGE : 0;
  }

  /** A record can be read without its procedure; the ids stand in for the words then. */
  private Labels labels(Where where, Journal.Contents contents) {
    if (contents.header() == null) {
      return Labels.none();
    }
    String procedure = contents.header().procedure();
    try {
      return Labels.of(where.desk(clock).library(procedure), procedure);
    } catch (IOException | Unreadable e) {
      return Labels.none();
    }
  }

  private void print(List<String> lines) {
    PrintWriter out = spec.commandLine().getOut();
    lines.forEach(out::println);
    out.flush();
  }
}
