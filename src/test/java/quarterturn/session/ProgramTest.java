package quarterturn.session;

import static com.google.common.truth.Truth.assertThat;

import java.io.File;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** How the program is called again, from how it was started. */
class ProgramTest {
  private static final Path JAR = Path.of("target/quarterturn.jar").toAbsolutePath().normalize();

  @Test
  void aJarIsCalledAsItWasTyped() {
    assertThat(Program.of(null, "target/quarterturn.jar", JAR).typed("due"))
        .isEqualTo("java -jar target/quarterturn.jar due");
    assertThat(Program.of(null, JAR.toString(), JAR).typed("due"))
        .isEqualTo("java -jar " + JAR + " due");
  }

  @Test
  void aJarAmongOthersIsCalledByItsWholePath() {
    String both = "target/quarterturn.jar" + File.pathSeparator + "other.jar";
    assertThat(Program.of(null, both, JAR).call()).isEqualTo("java -jar " + JAR);
  }

  @Test
  void aLauncherSaysItsName() {
    assertThat(Program.of("qt", "target/quarterturn.jar", JAR).typed("due")).isEqualTo("qt due");
    assertThat(Program.of(" ", "target/quarterturn.jar", JAR).call()).startsWith("java -jar");
  }

  @Test
  void outOfAFolderOfClassesItHasOnlyItsName() {
    assertThat(Program.of(null, "a.jar", Path.of("/classes")).call()).isEqualTo("quarterturn");
    assertThat(Program.of(null, "", null).call()).isEqualTo("quarterturn");
  }

  @Test
  void whatAShellWouldSplitIsQuoted() {
    Path spaced = Path.of("my files/quarterturn.jar").toAbsolutePath().normalize();
    assertThat(Program.of(null, "my files/quarterturn.jar", spaced).call())
        .isEqualTo("java -jar \"my files/quarterturn.jar\"");
    Program there = Program.of("qt", "", null).with(List.of("--data", "my data"));
    assertThat(there.typed("resume x")).isEqualTo("qt resume x --data \"my data\"");
    assertThat(Program.word("a\"b c$d`e")).isEqualTo("\"a\\\"b c\\$d\\`e\"");
  }
}
