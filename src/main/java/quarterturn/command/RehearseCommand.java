package quarterturn.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Random;
import java.util.concurrent.Callable;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Library;
import quarterturn.procedure.Role;
import quarterturn.procedure.Style;
import quarterturn.procedure.Unreadable;
import quarterturn.rehearsal.Fleet;
import quarterturn.rehearsal.NamedNeck;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.report.Dates;
import quarterturn.report.FleetReport;
import quarterturn.report.Sheet;
import quarterturn.script.FleetJson;
import quarterturn.session.Overview;

/** {@code rehearse}: simulated necks to practise on, to watch, and by the thousand. */
@Command(
    name = "rehearse",
    mixinStandardHelpOptions = true,
    description = {
      "Practises on a simulated neck. Nothing can break, waits pass at once, nothing is kept, and",
      "at the end the neck is shown as it really was."
    },
    footer = {
      "",
      "Necks: too-much, back-bow, right, slow, lively, slack, stiff, dead, reversed, jammed,",
      "stripped, fully-tight, fully-loose, twisted, cracked, and for a whole set-up neglected. They are",
      "our own invention."
    })
final class RehearseCommand implements Callable<Integer>, Cli.Timed {
  private static final int MOST_NECKS = 1_000_000;
  private static final double LEAST_SPEED = 0.1;
  private static final double MOST_SPEED = 1000;

  @Parameters(
      arity = "0..1",
      paramLabel = "PROCEDURE",
      description = "Its name (relief), or a .yaml file.")
  private @Nullable String procedure;

  @Option(names = "--neck", paramLabel = "NAME", description = "One of the necks named below.")
  private @Nullable String neck;

  @Option(
      names = "--seed",
      paramLabel = "N",
      description = "Any neck; the same number gives the same one. With --fleet, all of them.")
  private @Nullable Long seed;

  @Option(
      names = "--kind",
      paramLabel = "KIND",
      description = "For example electric-25; bass-34 where it is not given.")
  private @Nullable String kind;

  @Option(names = "--style", paramLabel = "STYLE", description = "light, medium or hard.")
  private @Nullable Style style;

  @Option(names = "--role", paramLabel = "ROLE", description = "beginner or technician.")
  private @Nullable Role role;

  @Option(names = "--auto", description = "Plays by itself, at a pace to watch.")
  private boolean auto;

  @Option(
      names = "--speed",
      paramLabel = "TIMES",
      description = "How fast --auto goes: 2 is twice the usual pace.")
  private @Nullable Double speed;

  @Option(
      names = "--sheet",
      paramLabel = "FILE",
      description = {
        "Writes the rehearsal's set-up sheet at the end; .txt, .md, .csv, .json or .html says",
        "which form it takes. A file that is there is not written over."
      })
  private @Nullable Path sheet;

  @Option(
      names = "--fleet",
      paramLabel = "N",
      description = "Plays N whole sessions unseen and prints how they went.")
  private @Nullable Integer fleet;

  @Option(names = "--json", description = "With --fleet: one JSON object.")
  private boolean json;

  @Mixin private final Where where = new Where();
  @Mixin private final Looks looks = new Looks();
  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  RehearseCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable, InterruptedException {
    check();
    Practice practice = practice();
    if (fleet != null) {
      return fleet(practice, fleet);
    }
    PracticeBench bench =
        neck == null
            ? practice.on(seed == null ? new Random().nextInt(Practice.NUMBERED) : seed)
            : practice.on(NamedNeck.of(neck));
    Faces faces = looks.faces();
    int status = auto ? faces.watch(bench, speed == null ? 1 : speed) : faces.play(bench);
    if (sheet != null) {
      Library library = practice.desk().library(practice.procedure());
      Sheet filled = Sheet.of(Overview.REHEARSAL, bench.events(), library);
      SheetFile.write(
          sheet, SheetFile.format(sheet).write(filled, new Dates(clock.getZone())), false);
    }
    return status;
  }

  private Practice practice() throws IOException, Unreadable {
    Desk desk = where.desk(clock);
    return new Practice(
        desk,
        desk.named(procedure),
        kind == null ? Practice.USUAL_KIND : kind,
        style == null ? Practice.USUAL_STYLE : style,
        role == null ? Role.BEGINNER : role);
  }

  private void check() {
    complainIf(neck != null && seed != null, "--neck and --seed: give one of them.");
    complainIf(json && fleet == null, "--json goes with --fleet.");
    complainIf(speed != null && !auto, "--speed goes with --auto.");
    complainIf(
        fleet != null
            && (auto
                || sheet != null
                || neck != null
                || kind != null
                || style != null
                || role != null),
        "--fleet goes with --seed and --json alone.");
    if (sheet != null) {
      SheetFile.format(sheet);
      complainIf(Files.exists(sheet), "--sheet: " + sheet + " is there already.");
    }
    complainIf(
        fleet != null && (fleet < 1 || fleet > MOST_NECKS),
        "--fleet: a number of necks from 1 to " + MOST_NECKS + ".");
    complainIf(
        speed != null && !(speed >= LEAST_SPEED && speed <= MOST_SPEED),
        "--speed: a number from " + LEAST_SPEED + " to " + (int) MOST_SPEED + ".");
  }

  private void complainIf(boolean wrong, String what) {
    if (wrong) {
      throw new ParameterException(spec.commandLine(), what);
    }
  }

  private int fleet(Practice practice, int necks)
      throws IOException, Unreadable, InterruptedException {
    Fleet all =
        new Fleet(practice.desk().library(practice.procedure()), necks, seed == null ? 1 : seed);
    Fleet.Result result;
    if (Faces.atATerminal()) {
      try (Progress bar = new Progress(System.err, necks)) {
        result = all.run(bar::at);
      }
    } else {
      result = all.run(done -> {});
    }
    PrintWriter out = spec.commandLine().getOut();
    if (json) {
      out.println(FleetJson.of(result));
    } else {
      FleetReport.lines(result).forEach(out::println);
    }
    out.flush();
    return 0;
  }
}
