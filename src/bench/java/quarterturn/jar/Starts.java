package quarterturn.jar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.Pty;

/**
 * How long the program takes until it shows something, beside a bare Java that prints one word:
 * {@code JAR LAUNCHER [RUNS]}. All are run in turn at a pseudo-terminal, on a folder that is new.
 * Then it tells what a start loads, and when.
 */
public final class Starts {
  private static final String RUNS = "15";
  private static final double MOST_MB = 72;
  private static final Path JAVA = Path.of(System.getProperty("java.home"), "bin", "java");
  private static final Pattern LOADED = Pattern.compile("\\[(\\d+\\.\\d+)s].* (\\S+) source: (.*)");

  private Starts() {}

  /** The folders of a user who is new. */
  private static Map<String, String> user() throws IOException {
    String kept = Files.createTempDirectory("starts").toString();
    return Map.of("HOME", kept, "XDG_DATA_HOME", kept, "XDG_CONFIG_HOME", kept);
  }

  /**
   * One way to start.
   *
   * @param shows what it sends once it has started
   * @param times how many times as long as a bare Java it may take
   */
  private record Way(String name, List<String> command, String shows, double times) {}

  private static List<Way> ways(Path jar, Path launcher) {
    List<String> java = List.of(JAVA.toString(), "-jar", jar.toString());
    List<String> launched = List.of(launcher.toString());
    return List.of(
        new Way(
            "a bare Java",
            List.of(
                JAVA.toString(),
                "-cp",
                Word.class.getProtectionDomain().getCodeSource().getLocation().getPath(),
                Word.class.getName()),
            Word.WORD,
            1),
        way("home, by java -jar", java, "Begin", 7),
        way("home, by the launcher", launched, "Begin", 4.5),
        way(
            "start relief --lines",
            launched,
            "\"prompt\"",
            6,
            "start",
            "relief",
            "--kind",
            "bass-34",
            "--lines"),
        way("due", launched, "due", 6, "due"),
        way("reckon", launched, "fret", 6, "reckon", "frets", "--scale", "34 in", "--frets", "20"));
  }

  private static Way way(
      String name, List<String> program, String shows, double times, String... more) {
    List<String> command = new ArrayList<>(program);
    command.addAll(List.of(more));
    return new Way(name, command, shows, times);
  }

  public static void main(String[] args) throws Exception {
    new Starts().measure(args);
  }

  private void measure(String... args) throws IOException, InterruptedException {
    int runs = Integer.parseInt(args.length > 2 ? args[2] : RUNS);
    List<Way> ways = ways(Path.of(args[0]), Path.of(args[1]));
    Map<Way, double[]> ms = new LinkedHashMap<>();
    double[] mb = new double[ways.size()];
    ways.forEach(way -> ms.put(way, new double[runs]));
    for (int i = -1; i < runs; i++) {
      for (Way way : ways) {
        double[] took = took(way);
        if (i >= 0) { // the first fills what the system keeps
          ms.get(way)[i] = took[0];
          mb[ways.indexOf(way)] = Math.max(mb[ways.indexOf(way)], took[1]);
        }
      }
    }
    double bare = 0;
    System.out.printf("Medians of %d runs in turn, the least and most behind them.%n", runs);
    for (Way way : ways) {
      double[] sorted = ms.get(way);
      Arrays.sort(sorted);
      double median = sorted[runs / 2];
      bare = bare == 0 ? median : bare;
      System.out.printf(
          "%-24s %4.0f ms (%.0f to %.0f)  %4.1f times, at most %.1f %s  %3.0f MB%n",
          way.name(),
          median,
          sorted[0],
          sorted[runs - 1],
          median / bare,
          way.times(),
          median / bare <= way.times() ? "kept" : "BROKEN",
          mb[ways.indexOf(way)]);
    }
    System.out.printf("Home by the launcher: at most %.0f MB.%n", MOST_MB);
    loaded(ways.get(1));
  }

  /** The milliseconds until it shows something, and the most megabytes it had in use by then. */
  private double[] took(Way way) throws IOException, InterruptedException {
    Map<String, String> user = user();
    long from = System.nanoTime();
    try (Pty pty = Pty.start(80, 24, user, way.command())) {
      pty.await(way.shows(), 0);
      double ms = (System.nanoTime() - from) / 1e6;
      double mb =
          pty.running()
              .map(process -> peak(Path.of("/proc/" + process.pid() + "/status")))
              .orElse(0.0);
      return new double[] {ms, mb};
    }
  }

  /** The most a process had in memory, in megabytes; 0 where it has gone. */
  private static double peak(Path status) {
    try {
      return Files.readAllLines(status).stream()
          .filter(line -> line.startsWith("VmHWM"))
          .mapToDouble(line -> Double.parseDouble(line.replaceAll("\\D", "")) / 1024)
          .sum();
    } catch (IOException gone) {
      return 0;
    }
  }

  /** What a start loads, counted by where it comes from, and when the first of each came. */
  private void loaded(Way way) throws IOException, InterruptedException {
    Path log = Files.createTempFile("starts", ".log");
    List<String> command = new ArrayList<>(way.command());
    command.add(1, "-Xlog:class+load:file=" + log);
    took(new Way(way.name(), command, way.shows(), 0));
    Map<String, Integer> counts = new TreeMap<>();
    Map<String, String> first = new LinkedHashMap<>();
    int archived = 0;
    for (String line : Files.readAllLines(log)) {
      Matcher found = LOADED.matcher(line);
      boolean loads = found.find();
      if (loads && found.group(3).startsWith("shared")) {
        archived++;
      } else if (loads) {
        String room = room(found.group(2));
        counts.merge(room, 1, Integer::sum);
        first.putIfAbsent(room, found.group(1));
      }
    }
    Files.delete(log);
    System.out.printf("%s: %d classes from an archive, and not from one:%n", way.name(), archived);
    counts.entrySet().stream()
        .sorted(Map.Entry.<String, Integer>comparingByValue().reversed())
        .limit(30)
        .forEach(
            one ->
                System.out.printf(
                    "%5d  %-36s the first after %s s%n",
                    one.getValue(), one.getKey(), first.get(one.getKey())));
  }

  private static String room(String type) {
    String[] parts = type.split("\\.");
    return String.join(".", Arrays.copyOf(parts, Math.min(parts.length - 1, 3)));
  }
}
