package quarterturn.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import quarterturn.Pty;

/** Archives the classes that some runs of the program load, as they are once they are loaded. */
final class Archive {
  private static final String COMPILER = "-XX:TieredStopAtLevel=1";

  private final Path runtime;
  private final Path work;
  private final Map<String, String> user;
  private int runs;

  private Archive(Path runtime, Path work) {
    this.runtime = runtime;
    this.work = work;
    String home = work.resolve("home").toString();
    user = Map.of("HOME", home, "XDG_DATA_HOME", home, "XDG_CONFIG_HOME", home);
  }

  /** Where a runtime's archive is. */
  static Path of(Path runtime) {
    return runtime.resolve("lib/server/classes.jsa");
  }

  static void make(Path runtime, Path work) throws IOException, InterruptedException {
    new Archive(runtime, work).make();
  }

  private void make() throws IOException, InterruptedException {
    typed("");
    typed("", "due");
    typed("", "reckon", "frets", "--scale", "34 in", "--frets", "20");
    typed("", "instrument", "add", "practice", "--kind", "bass-34");
    typed("", "start", "relief", "--kind", "bass-34", "--lines");
    typed("{\"answer\":\"medium\"}\n", "start", "relief", "--instrument", "practice", "--lines");
    typed("", "resume", "--lines");
    typed("", "log", "list");
    typed("", "--version");
    typed("", "--help");
    shown("q");
    shown("\r", "\r", "\u0003");
    shown("?", "\u001b", "q");
    TreeSet<String> classes = new TreeSet<>();
    for (int i = 0; i < runs; i++) {
      classes.addAll(Files.readAllLines(list(i)));
    }
    classes.removeIf(line -> line.startsWith("#"));
    Path all = Files.write(work.resolve("classes.lst"), classes);
    run(
        Path.of("dump.log"),
        "",
        List.of(
            "-Xshare:dump",
            "-XX:SharedClassListFile=" + all,
            "-XX:SharedArchiveFile=" + of(runtime)));
  }

  private Path list(int run) {
    return work.resolve("classes-" + run + ".lst");
  }

  private List<String> program(String... words) {
    List<String> all =
        new ArrayList<>(
            List.of(
                java(),
                COMPILER,
                "-XX:+UseSerialGC",
                "-XX:DumpLoadedClassList=" + list(runs++),
                "-Dpicocli.converters.excludes=java.*",
                "-Dlibrary.jline.path=" + runtime.resolve("lib"),
                "quarterturn.Main"));
    all.addAll(List.of(words));
    return all;
  }

  private String java() {
    return runtime.resolve("bin/java").toString();
  }

  private void typed(String lines, String... words) throws IOException, InterruptedException {
    List<String> all = program(words);
    run(Path.of("run-" + runs + ".log"), lines, all.subList(1, all.size()));
  }

  private void run(Path log, String lines, List<String> words)
      throws IOException, InterruptedException {
    List<String> all = new ArrayList<>(List.of(java()));
    all.addAll(words);
    Path in = Files.writeString(work.resolve("in.txt"), lines);
    ProcessBuilder builder =
        new ProcessBuilder(all)
            .redirectErrorStream(true)
            .redirectInput(in.toFile())
            .redirectOutput(work.resolve(log).toFile());
    builder.environment().putAll(user);
    builder.start().waitFor();
  }

  /** Opens the home view, and types some keys, the last of which ends it. */
  private void shown(String... keys) throws IOException, InterruptedException {
    try (Pty pty = Pty.start(80, 24, user, program())) {
      pty.await("Begin", 0);
      for (String key : keys) {
        pty.send(key);
        Thread.sleep(300);
      }
      pty.running().ifPresent(process -> process.onExit().join());
    }
  }
}
