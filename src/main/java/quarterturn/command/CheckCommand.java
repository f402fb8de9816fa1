package quarterturn.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.place.Placed;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.CheckTarget;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.FormatSchema;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.cover.Cover;
import quarterturn.rehearsal.cover.Covered;
import quarterturn.report.CheckReport;
import quarterturn.report.CoverReport;
import quarterturn.report.graph.GraphDot;
import quarterturn.report.graph.GraphText;
import quarterturn.report.graph.ProcedureGraph;
import quarterturn.script.CheckJson;
import quarterturn.session.store.Sessions;
import quarterturn.unit.Printable;

/** {@code check}: proves procedures before they run. */
@Command(
    addMethodSubcommands = false,
    name = "check",
    description = {
      "Proves procedures before they run: says where one is wrong, why, and how to mend it.",
      "Without a name it checks all there are: your own, and those that come with the program."
    },
    footer = {"", "Exit status: 0 nothing found, 1 findings, 2 no file could be checked."})
final class CheckCommand extends Placed {
  private static final int FOUND = 1;

  /**
   * Most sessions simulated to cover a procedure; branches that none of them reaches are reported.
   */
  private static final int MOST_SESSIONS = 4000;

  private static final Duration LONGEST = Duration.ofMinutes(2);
  private static final DateTimeFormatter TIME =
      DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);

  enum Format {
    TEXT,
    JSON,
    DOT
  }

  @Parameters(
      arity = "0..*",
      paramLabel = "FILE|DIR",
      description = "A procedure's name (relief), a .yaml file, or a folder of them.")
  private List<String> typed = List.of();

  @Option(
      names = "--format",
      paramLabel = "FORMAT",
      description = "text, json (one object), or with --draw: dot, for Graphviz.")
  private @Nullable Format format;

  @Option(names = "--watch", description = "Checks again each time a file is saved, until Ctrl-C.")
  private boolean watch;

  @Option(names = "--draw", description = "Draws one procedure's parts and the ways between them.")
  private boolean draw;

  @Option(
      names = "--inside",
      paramLabel = "NAME",
      description = "With --draw: the steps of that part (its title) or block, or all.")
  private @Nullable String inside;

  @Option(
      names = "--full",
      description = "Prints one procedure with every short form written out in full.")
  private boolean full;

  @Option(
      names = "--cover",
      description =
          "Plays simulated sessions of one procedure until every branch was taken, and prints those"
              + " that never were.")
  private boolean cover;

  @Option(
      names = "--schema",
      description = "Prints the JSON Schema of a procedure file, for an editor to help with.")
  private boolean schema;

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    complain();
    Sessions sessions = sessions();
    if (schema) {
      out().print(FormatSchema.text());
      out().flush();
      return 0;
    }
    if (full) {
      out().print(new Shelf(sessions.own()).full(typed.get(0)));
      out().flush();
      return 0;
    }
    if (draw) {
      ProcedureGraph graph = graph(sessions.library(typed.get(0)).main());
      return print(format == Format.DOT ? GraphDot.lines(graph) : GraphText.lines(graph));
    }
    if (cover) {
      return cover(sessions.library(typed.get(0)));
    }
    return watch ? watch(sessions.own()) : check(sessions.own());
  }

  private ProcedureGraph graph(Procedure procedure) {
    if (inside == null) {
      return ProcedureGraph.overview(procedure);
    }
    ProcedureGraph graph = ProcedureGraph.inside(procedure, inside);
    complainIf(
        graph.parts().isEmpty(),
        "--inside: "
            + procedure.id()
            + " has no part or block "
            + Quote.of(inside)
            + ". "
            + Quote.allowed(inside, ProcedureGraph.names(procedure))
            + ".");
    return graph;
  }

  private int cover(Library library) {
    Covered covered = Cover.of(library, 1, MOST_SESSIONS, LONGEST);
    print(CoverReport.lines(covered));
    return covered.own().open().isEmpty() && covered.stuck().isEmpty() ? 0 : FOUND;
  }

  private int check(@Nullable Path own) throws IOException {
    List<CheckTarget> targets = CheckTarget.of(typed, own);
    complainIf(
        targets.isEmpty() && !typed.isEmpty(),
        "there is no .yaml file to check in " + String.join(", ", typed) + ".");
    CheckTarget.notRead(typed, own).forEach(this::notice);
    CheckReport report = Check.of(targets, this::notice);
    if (format == Format.JSON) {
      print(List.of(CheckJson.of(report)));
    } else if (!report.checked().isEmpty() || !report.findings().isEmpty() || report.readable()) {
      print(report.lines());
    }
    boolean fine = report.findings().isEmpty() && report.missing() == 0;
    return report.readable() ? (fine ? 0 : FOUND) : Launch.USAGE;
  }

  /** Checks again whenever a file changes, without end: Ctrl-C ends the program. */
  private int watch(@Nullable Path own) throws InterruptedException {
    complainIf(
        !CheckTarget.watchable(typed, own),
        "--watch: name a .yaml file or a folder, or give --own; nothing else changes.");
    Watch files = new Watch(() -> CheckTarget.watched(typed, own));
    String happened =
        "watching "
            + files.count()
            + (files.count() == 1 ? " file" : " files")
            + "; Ctrl-C ends it";
    while (true) {
      print(List.of(LocalTime.now(clock).format(TIME) + " " + Printable.of(happened)));
      try {
        check(own);
      } catch (IOException e) {
        // A folder that went meanwhile; it may come back.
        notice(Complaint.of(e));
      }
      print(List.of(""));
      happened = String.join(", ", files.next());
    }
  }

  private void complain() {
    complainIf(
        schema && (draw || full || watch || cover || format != null || !typed.isEmpty()),
        "--schema goes with nothing else.");
    complainIf(
        full && (draw || watch || cover || format != null || typed.size() != 1),
        "--full goes with one procedure or one .yaml file alone.");
    complainIf(
        cover && (draw || watch || format != null), "--cover goes with one procedure alone.");
    complainIf(cover && typed.size() != 1, "--cover: name one procedure or one .yaml file.");
    complainIf(draw && watch, "--draw goes with --format and --inside alone.");
    complainIf(draw && format == Format.JSON, "--draw goes with --format text or dot.");
    complainIf(draw && typed.size() != 1, "--draw: name one procedure or one .yaml file.");
    complainIf(inside != null && !draw, "--inside goes with --draw.");
    complainIf(format == Format.DOT && !draw, "--format dot goes with --draw.");
    complainIf(watch && format == Format.JSON, "--watch goes with --format text alone.");
  }
}
