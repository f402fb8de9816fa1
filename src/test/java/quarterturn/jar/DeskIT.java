package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;

/** A desk on a pipe through the real jar, beside benches that look. */
class DeskIT {
  @TempDir Path folder;

  @Test
  void aTeacherReleasesAHoldClearsAStopAndEndsTheLesson() throws Exception {
    InventedLesson.write(folder);
    try (JarProcess jar = JarProcess.start(List.of("lesson", "desk", folder.toString()))) {
      assertThat(jar.line()).contains("The desk \"desk\"");
      jar.lineWith("Blue (Cleo");
      jar.send("release red tighten 1/4");
      jar.lineWith("read it again");
      jar.send("release red tighten 1/8");
      jar.lineWith("Released Red");
      jar.send("release blue");
      jar.lineWith("Released Blue: the stop.");
      InventedLesson.take(folder, Instant.now());
      jar.lineWith("Blue goes on.");
      jar.send("end");
      jar.send("yes");
      jar.lineWith("The lesson is ended.");
      InventedLesson.take(folder, Instant.now());
      jar.lineWith("The sheets are in");
      jar.send("quit");
      JarProcess.Ran ran = jar.ended();
      assertThat(ran.status()).isEqualTo(0);
      assertThat(ran.err()).isEmpty();
    }
    try (Stream<Path> sheets = Files.list(folder.resolve("sheets-desk"))) {
      assertThat(sheets.map(p -> String.valueOf(p.getFileName())).toList())
          .containsAtLeast("class.txt", "01-ana.html", "06-fin.csv", "03-cleo.md");
    }
    JarProcess.Ran again = JarProcess.inside("", "lesson", "sheets", folder.toString());
    assertThat(again.status()).isEqualTo(0);
    assertThat(again.out()).isEqualTo(printed());
  }

  /** The class's first, then each student's, as the desk has written them. */
  private String printed() throws Exception {
    StringBuilder out = new StringBuilder();
    List<String> names =
        List.of("class", "01-ana", "02-ben", "03-cleo", "04-dov", "05-eda", "06-fin");
    for (String name : names) {
      out.append(Files.readString(folder.resolve("sheets-desk/" + name + ".txt"))).append('\n');
    }
    return out.toString();
  }
}
