package quarterturn.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Export;
import quarterturn.command.place.Placed;
import quarterturn.line.Progress;
import quarterturn.platform.StandardStreams;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.fleet.Fleet;
import quarterturn.rehearsal.life.Channel;
import quarterturn.rehearsal.life.Life;
import quarterturn.rehearsal.life.LifeRules;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.report.FleetReport;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFile;
import quarterturn.script.FleetJson;
import quarterturn.session.Overview;
import quarterturn.session.Player;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;
import quarterturn.unit.Dates;

/** {@code rehearse}: simulated necks to practise on, to watch, and by the thousand. */
@Command(
    addMethodSubcommands = false,
    name = "rehearse",
    description = {
      "Practises on a simulated neck. Nothing can break, waits pass at once, nothing is kept, and",
      "at the end the neck is shown as it really was."
    },
    footer = {
      "",
      "Necks: too-much, back-bow, right, slow, lively, slack, stiff, dead, reversed, jammed,",
      "stripped, fully-tight, fully-loose, twisted, cracked, and for a whole set-up neglected.",
      "They are our own invention."
    })
final class RehearseCommand extends Placed {
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

  @Option(names = "--style", paramLabel = "STYLE", description = "light, medium, hard or slide.")
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
      description =
          "Writes the rehearsal's set-up sheet at the end. The ending of its name, txt, md, csv,"
              + " json or html, says which form it takes. A file that is there is not written"
              + " over.")
  private @Nullable Path sheet;

  @Option(
      names = "--fleet",
      paramLabel = "N",
      description = "Plays N whole sessions unseen and prints how they went.")
  private @Nullable Integer fleet;

  @Option(
      names = "--life",
      paramLabel = "SEED",
      description =
          "Plays the life of an instrument unseen, over many sessions and mishaps, and prints it"
              + " with what its rod was truly turned.")
  private @Nullable Long life;

  @Option(names = "--json", description = "With --fleet: one JSON object.")
  private boolean json;

  @Option(
      names = "--weights",
      description = "With --fleet: moves against overshoots for ten weights of crossing the range.")
  private boolean weights;

  @Mixin private final Looks looks = new Looks();

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    check();
    Practice practice = practice();
    if (fleet != null) {
      return fleet(practice, fleet);
    }
    if (life != null) {
      return life(practice.procedure(), life);
    }
    PracticeBench bench =
        neck == null
            ? practice.on(seed == null ? new Random().nextInt(Practice.NUMBERED) : seed)
            : practice.on(NamedNeck.of(neck));
    int status;
    try (Face face = open(looks.faces(clock.getZone()), Settings.Key.OWN, Settings.Key.ROLE)) {
      Player player = new Player(bench, bench::truth, speed == null ? 1 : speed);
      status = auto ? face.watch(player) : face.play(bench, null);
    }
    if (sheet != null) {
      Library library = practice.sessions().library(practice.procedure());
      Sheet filled = Sheet.of(Overview.REHEARSAL, bench.events(), library);
      export(sheet).write(SheetFile.format(sheet).write(filled, new Dates(clock.getZone())));
    }
    return status;
  }

  private Practice practice() throws IOException, UnreadableException {
    Sessions sessions = sessions();
    return new Practice(
        sessions,
        sessions.named(procedure),
        kind == null ? Practice.USUAL_KIND : kind,
        style == null ? Practice.USUAL_STYLE : style,
        role == null ? where.role() : role);
  }

  private Export export(Path file) {
    return new Export("--sheet", file, null, where.kept());
  }

  private void check() throws IOException {
    complainIf(neck != null && seed != null, "--neck and --seed: give one of them.");
    complainIf(json && fleet == null, "--json goes with --fleet.");
    complainIf(weights && (json || fleet == null), "--weights goes with --fleet, without --json.");
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
    complainIf(
        life != null
            && (auto
                || json
                || fleet != null
                || sheet != null
                || neck != null
                || seed != null
                || kind != null
                || style != null
                || role != null),
        "--life goes with a procedure alone.");
    if (sheet != null) {
      SheetFile.format(sheet);
      export(sheet).check();
    }
    complainIf(
        fleet != null && (fleet < 1 || fleet > MOST_NECKS),
        "--fleet: a number of necks from 1 to " + MOST_NECKS + ".");
    complainIf(
        speed != null && !(speed >= LEAST_SPEED && speed <= MOST_SPEED),
        "--speed: a number from " + LEAST_SPEED + " to " + (int) MOST_SPEED + ".");
  }

  private int life(String procedure, long seed) throws IOException, UnreadableException {
    Path folder = Files.createTempDirectory("quarterturn-life");
    try {
      LifeRules rules = LifeRules.of(procedure, folder.resolve("rules"));
      Life.Lived lived = Life.of(seed, folder.resolve("data"), rules, List.of(Channel.BENCH));
      print(lived.lines());
      return print(lived.breaches().stream().map(breach -> "Broken: " + breach).toList());
    } finally {
      try (Stream<Path> files = Files.walk(folder)) {
        for (Path file : files.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private int fleet(Practice practice, int necks) throws IOException, UnreadableException {
    Fleet all =
        new Fleet(
            practice.sessions().library(practice.procedure()),
            necks,
            seed == null ? 1 : seed,
            true);
    if (weights) {
      return print(FleetReport.weights(all.weights()));
    }
    Fleet.Result result;
    if (StandardStreams.areATerminal()) {
      try (Progress bar = new Progress(System.err, necks)) {
        result = all.run(bar::at);
      }
    } else {
      result = all.run(done -> {});
    }
    return print(json ? List.of(FleetJson.of(result)) : FleetReport.lines(result));
  }
}
