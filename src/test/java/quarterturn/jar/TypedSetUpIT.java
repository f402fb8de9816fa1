package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.FastMain;

/** What a technician types for a known bass, through the packaged program on a fast clock. */
class TypedSetUpIT {
  private static final Path LINES = Path.of("src/test/resources/quarterturn/jar");

  @TempDir Path data;

  private List<String> started(String... words) {
    List<String> all = new ArrayList<>(List.of("3000"));
    all.addAll(List.of(words));
    all.addAll(List.of("--role", "technician", "--plain", "--data", data.toString()));
    return Packaged.test(FastMain.class, List.of(), all);
  }

  private static List<String> lines(String file) throws IOException {
    return Files.readAllLines(LINES.resolve(file)).stream()
        .filter(line -> !line.startsWith("#"))
        .toList();
  }

  /** Types lines to the end of the session; none of them is refused, or the status would be 2. */
  private static String play(List<String> command, List<String> lines) throws Exception {
    try (JarProcess jar = JarProcess.of(command)) {
      for (String line : lines) {
        if (line.startsWith("(")) {
          jar.lineWith("Let the neck settle");
          Thread.sleep(250);
        } else {
          jar.send(line);
        }
      }
      JarProcess.Ran ran = jar.end();
      assertWithMessage(ran.out()).that(ran.status()).isEqualTo(0);
      return ran.out();
    }
  }

  private static long count(List<String> lines) {
    return lines.stream().filter(line -> !line.startsWith("(")).count();
  }

  private static int keys(List<String> lines) {
    return lines.stream()
        .filter(line -> !line.startsWith("("))
        .mapToInt(line -> line.length() + 1)
        .sum();
  }

  @Test
  void aKnownBassWithOneSmallTurnAndACheckInItsRange() throws Exception {
    JarProcess.run(
        "",
        "instrument",
        "add",
        "blue",
        "--kind",
        "bass-34",
        "--style",
        "medium",
        "--gauges",
        ".105 .085 .065 .045",
        "--data",
        data.toString(),
        "--plain");
    play(started("start", "setup", "--instrument", "blue"), lines("first-set-up.txt"));

    List<String> known = lines("known-set-up.txt");
    String said = play(started("start", "setup", "--instrument", "blue"), known);
    Packaged.figure(
        "A set-up of a known bass, one turn of 1/8: %d lines, %d keys", count(known), keys(known));
    assertThat(said).contains("As recorded: build ordinary; gauges .105 .085 .065 .045;");
    assertThat(said).contains("turned: tightened 1/8 turn, smooth");
    assertThat(said).contains("Done: signed off");
    assertThat(count(known)).isAtMost(26);
    assertThat(keys(known)).isAtMost(450);

    List<String> check = List.of("u", "relief .30-.35 .25-.30");
    String checked = play(started("start", "relief-check", "--instrument", "blue"), check);
    Packaged.figure("A relief check of it: %d lines, %d keys", check.size(), keys(check));
    assertThat(checked).contains("Done: in range");
  }
}
