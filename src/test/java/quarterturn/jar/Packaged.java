package quarterturn.jar;

import java.io.File;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import quarterturn.command.Captured;

/**
 * Commands that run the packaged jar. Its classes are in an archive, from which it starts sooner.
 */
public final class Packaged {
  static final String JAR =
      Objects.requireNonNull(System.getProperty("quarterturn.jar"), "quarterturn.jar");

  /** Quick to start, which is what most of a test's time goes to. */
  private static final List<String> JAVA =
      List.of(
          Path.of(System.getProperty("java.home"), "bin", "java").toString(),
          "-XX:TieredStopAtLevel=1",
          "-XX:+UseSerialGC",
          "-Xmx128m");

  /** What the tests run most, each in its own way through the program. */
  private static final List<String> OFTEN =
      List.of(
          "start relief --lines --kind bass-34", "rehearse --lines --auto", "due", "check relief");

  private static final Path ARCHIVE = archive();

  private Packaged() {}

  /** Prints a figure of a test's, while no program has standard output inside this process. */
  public static void figure(String format, Object... values) {
    synchronized (Captured.class) {
      System.out.printf(format + "%n", values);
    }
  }

  /** The command that runs the program with these arguments. */
  public static List<String> program(List<String> arguments) {
    return command(List.of("-jar", JAR), arguments);
  }

  /**
   * The command that runs a class of the tests on the program.
   *
   * @param options further options of Java
   */
  public static List<String> test(Class<?> main, List<String> options, List<String> arguments) {
    List<String> java = new ArrayList<>(options);
    java.addAll(List.of("-cp", JAR + File.pathSeparator + "target/test-classes", main.getName()));
    return command(java, arguments);
  }

  private static List<String> command(List<String> java, List<String> arguments) {
    List<String> command = new ArrayList<>(JAVA);
    command.add("-XX:SharedArchiveFile=" + ARCHIVE);
    command.addAll(java);
    command.addAll(arguments);
    return command;
  }

  /**
   * Runs the jar a few times and archives the classes it used. The archive is a static one, since a
   * dynamic one leaves out classes as old as those of the option parser.
   */
  private static Path archive() {
    try {
      Path archive = Path.of(JAR + ".jsa");
      Path classes = Path.of(JAR + ".classes");
      Path data = Files.createTempDirectory("archive");
      Set<String> used = new LinkedHashSet<>();
      for (String often : OFTEN) {
        List<String> run = new ArrayList<>(List.of("-jar", JAR));
        run.addAll(List.of(often.split(" ")));
        run.addAll(List.of("--data", data.toString()));
        java("-XX:DumpLoadedClassList=" + classes, run);
        used.addAll(Files.readAllLines(classes));
      }
      Files.write(classes, used);
      Files.deleteIfExists(archive);
      java(
          "-XX:SharedClassListFile=" + classes,
          List.of("-Xshare:dump", "-XX:SharedArchiveFile=" + archive, "-cp", JAR));
      return archive;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static void java(String option, List<String> more)
      throws IOException, InterruptedException {
    List<String> command = new ArrayList<>(JAVA);
    command.add(option);
    command.addAll(more);
    ProcessBuilder builder = new ProcessBuilder(command);
    builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    Process process = builder.start();
    process.getOutputStream().close();
    process.waitFor(1, TimeUnit.MINUTES);
  }
}
