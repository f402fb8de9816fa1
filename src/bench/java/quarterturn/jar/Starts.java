package quarterturn.jar;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
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
  private static final int AGAIN = 3;
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
    measure(args);
  }

  private static void measure(String... args) throws IOException, InterruptedException {
    int runs = Integer.parseInt(args.length > 2 ? args[2] : RUNS);
    List<Way> ways = ways(Path.of(args[0]), Path.of(args[1]));
    double[][] ms = new double[ways.size()][runs];
    double[] mb = new double[ways.size()];
    for (int run = -1; run < runs; run++) {
      for (int i = 0; i < ways.size(); i++) {
        double[] took = took(ways.get(i));
        if (run >= 0) { // the first fills what the system keeps
          ms[i][run] = took[0];
          mb[i] = Math.max(mb[i], took[1]);
        }
      }
    }
    System.out.printf("Medians of %d runs in turn, the least and most behind them.%n", runs);
    for (double[] all : ms) {
      Arrays.sort(all);
    }
    double bare = ms[0][runs / 2];
    for (int i = 0; i < ways.size(); i++) {
      double median = ms[i][runs / 2];
      System.out.printf(
          "%-24s %4.0f ms (%.0f to %.0f)  %4.1f times, at most %.1f %s  %3.0f MB%n",
          ways.get(i).name(),
          median,
          ms[i][0],
          ms[i][runs - 1],
          median / bare,
          ways.get(i).times(),
          median / bare <= ways.get(i).times() ? "kept" : "BROKEN",
          mb[i]);
    }
    System.out.printf("Home by the launcher: at most %.0f MB.%n", MOST_MB);
    loaded(ways.get(1));
  }

  /**
   * The milliseconds until it shows something, and the most megabytes it had in use by then. A
   * terminal whose program ends at once now and then loses its last words; then it is run again.
   */
  private static double[] took(Way way) throws IOException, InterruptedException {
    for (int again = 0; again < AGAIN; again++) {
      try {
        return tookOnce(way);
      } catch (AssertionError lost) {
        System.err.println(way.name() + ": " + lost.getMessage());
      }
    }
    return tookOnce(way);
  }

  private static double[] tookOnce(Way way) throws IOException, InterruptedException {
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

  /**
   * Where the time of a start goes: the classes it loads, counted by where they belong, and the
   * time from each to the next.
   */
  private static void loaded(Way way) throws IOException, InterruptedException {
    Path log = Files.createTempFile("starts", ".log");
    List<String> command = new ArrayList<>(way.command());
    command.add(1, "-Xlog:class+load:file=" + log);
    took(new Way(way.name(), command, way.shows(), 0));
    Map<String, Room> rooms = new TreeMap<>();
    Room archived = new Room();
    Room last = archived;
    double before = 0;
    for (String line : Files.readAllLines(log)) {
      Matcher found = LOADED.matcher(line);
      if (found.find()) {
        double now = Double.parseDouble(found.group(1));
        last.seconds += now - before;
        before = now;
        boolean shared = found.group(3).startsWith("shared");
        last = shared ? archived : rooms.computeIfAbsent(room(found.group(2)), room -> new Room());
        last.classes++;
      }
    }
    Files.delete(log);
    System.out.printf("%s, with a log of its classes (and what each led to):%n", way.name());
    archived.print("from Java's own archive");
    rooms.entrySet().stream()
        .sorted(Comparator.comparing(entry -> -entry.getValue().seconds))
        .limit(30)
        .forEach(entry -> entry.getValue().print(entry.getKey()));
  }

  /** Classes that belong together, and the time from each to the next that was loaded. */
  private static final class Room {
    int classes;
    double seconds;

    void print(String name) {
      System.out.printf("%5d classes %5.0f ms  %s%n", classes, 1000 * seconds, name);
    }
  }

  private static String room(String type) {
    String[] parts = type.split("\\.");
    return String.join(".", Arrays.copyOf(parts, Math.min(parts.length - 1, 3)));
  }
}
