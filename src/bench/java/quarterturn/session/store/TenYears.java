package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * What ten years of sessions cost the program.
 *
 * <ul>
 *   <li>{@code make FOLDER [SESSIONS]} makes a data folder
 *   <li>{@code measure FEW MANY [RUNS]} runs the program's commands on copies of two such folders
 *       in turn, and prints times and memory. The property {@code program} says how it is called,
 *       with spaces between the words; else the classes at hand are run.
 * </ul>
 */
public final class TenYears {
  private static final String USUAL = "10000";
  private static final String RUNS = "9";
  private static final double TIMES = 1.2;
  private static final double PLUS_MS = 100;
  private static final double MOST_MB = 96;

  private static final List<String> COMMANDS =
      List.of(
          "--plain",
          "due",
          "log list",
          "start relief --instrument my-bass --another --lines",
          "instrument history my-bass");

  private TenYears() {}

  public static void main(String[] args) throws Exception {
    if (args[0].equals("make")) {
      String many = args.length > 2 ? args[2] : USUAL;
      long from = System.nanoTime();
      TenYearsFolder.make(Path.of(args[1]), Integer.parseInt(many), Instant.now());
      System.out.printf("%s sessions in %.1f s%n", many, (System.nanoTime() - from) / 1e9);
    } else {
      measure(
          Path.of(args[1]), Path.of(args[2]), Integer.parseInt(args.length > 3 ? args[3] : RUNS));
    }
  }

  /** How the program is called. */
  static List<String> program() {
    String said = System.getProperty("program");
    return said != null
        ? List.of(said.split(" "))
        : List.of(
            Path.of(System.getProperty("java.home"), "bin", "java").toString(),
            "-cp",
            System.getProperty("java.class.path"),
            "quarterturn.Main");
  }

  /** Runs each command on both folders in turn, so that both meet the same noise. */
  private static void measure(Path few, Path many, int runs) throws Exception {
    Path work = Files.createTempDirectory("ten-years");
    Path[] folders = {copied(few, work.resolve("few")), copied(many, work.resolve("many"))};
    System.out.printf(
        "Medians of %d runs in turn, the least and most behind them: few sessions, many, bound.%n",
        runs);
    for (String command : COMMANDS) {
      double[][] ms = new double[2][runs];
      double[] mb = new double[2];
      for (int i = -1; i < runs; i++) {
        for (int of = 0; of < 2; of++) {
          Run run = Run.of(program(), command, folders[of]);
          if (i >= 0) { // the first fills what the system and the program keep
            ms[of][i] = run.ms();
            mb[of] = Math.max(mb[of], run.mb());
          }
        }
      }
      Arrays.sort(ms[0]);
      Arrays.sort(ms[1]);
      double bound = TIMES * ms[0][runs / 2] + PLUS_MS;
      System.out.printf(
          "%-52s %s %s %6.0f ms %s; %3.0f and %3.0f MB, bound %.0f %s%n",
          command,
          spread(ms[0]),
          spread(ms[1]),
          bound,
          ms[1][runs / 2] <= bound ? "kept" : "BROKEN",
          mb[0],
          mb[1],
          MOST_MB,
          mb[1] <= MOST_MB ? "kept" : "BROKEN");
    }
    deleted(work);
  }

  private static String spread(double[] sorted) {
    return "%6.0f ms (%.0f to %.0f)"
        .formatted(sorted[sorted.length / 2], sorted[0], sorted[sorted.length - 1]);
  }

  /** A copy that a session can be begun in. */
  private static Path copied(Path from, Path to) throws IOException {
    List<Path> all = new ArrayList<>();
    try (Stream<Path> found = Files.walk(from)) {
      found.forEach(all::add);
    }
    for (Path path : all) {
      Files.copy(path, to.resolve(from.relativize(path).toString()));
    }
    return to;
  }

  private static void deleted(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(path);
      }
    }
  }
}
