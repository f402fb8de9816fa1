package quarterturn.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.command.place.Export;
import quarterturn.command.place.Placed;
import quarterturn.procedure.UnreadableException;
import quarterturn.report.DueCalendar;
import quarterturn.report.DueList;
import quarterturn.script.WorkJson;
import quarterturn.session.Due;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** {@code due}, {@code due --json}, {@code due --lines} and {@code due --ics [FILE]}. */
@Command(
    addMethodSubcommands = false,
    name = "due",
    description = {
      "Says what is due for your instruments, and what will be: waits that end, readings to take",
      "again a day and a week after the rod was turned, and a look a season later."
    })
final class DueCommand extends Placed {
  private static final String STANDARD_OUTPUT = "-";

  static final class Shape {
    @Option(names = "--json", description = "One JSON object.")
    boolean json;

    @Option(
        names = "--lines",
        description =
            "The state of every unfinished session, one JSON object a line, for programs.")
    boolean lines;

    @Option(
        names = "--ics",
        arity = "0..1",
        fallbackValue = STANDARD_OUTPUT,
        paramLabel = "FILE",
        description =
            "What is still to come as an iCalendar file, for a calendar to read; without FILE on"
                + " standard output.")
    @Nullable String ics;
  }

  @ArgGroup(exclusive = true)
  private @Nullable Shape shape;

  @Option(names = "--force", description = "With --ics FILE: writes over a file that is there.")
  private boolean force;

  @Override
  public Integer call() throws IOException, UnreadableException {
    Instant now = clock.instant();
    Export export = export();
    complainIf(force && export == null, "--force is for --ics FILE; say which file.");
    if (export != null) {
      export.check();
    }
    if (shape != null && shape.lines) {
      return print(states());
    }
    List<Due> dues = sessions().dues(now);
    if (shape != null && shape.ics != null) {
      calendar(DueCalendar.toCome(dues, now), export);
    } else if (shape != null && shape.json) {
      print(List.of(DueList.json(dues, now)));
    } else {
      print(
          DueList.lines(
              dues, where.store().tickets(), now, new Dates(clock.getZone()), where.program()));
    }
    return 0;
  }

  /** The file for the calendar; null where none is named. */
  private @Nullable Export export() {
    String file = shape == null ? null : shape.ics;
    return file == null || file.equals(STANDARD_OUTPUT)
        ? null
        : new Export("--ics", Path.of(file), force, where.kept());
  }

  /** The state of every unfinished session, the most pressing first. */
  private List<String> states() throws IOException, UnreadableException {
    Sessions sessions = sessions();
    List<String> lines = new ArrayList<>();
    for (Work work : sessions.unfinished()) {
      lines.add(WorkJson.of(work, sessions.place(work), new Dates(clock.getZone())));
    }
    return lines;
  }

  /** Writes the calendar's bytes unchanged, whatever encoding the terminal has. */
  private void calendar(List<Due> toCome, @Nullable Export export) throws IOException {
    if (toCome.isEmpty()) {
      notice("nothing is still to come, so no calendar was written");
      return;
    }
    String text = DueCalendar.of(toCome, where.program());
    if (export == null) {
      System.out.writeBytes(text.getBytes(StandardCharsets.UTF_8));
      System.out.flush();
    } else {
      export.write(text);
    }
  }
}
