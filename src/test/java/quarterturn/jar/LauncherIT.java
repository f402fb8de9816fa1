package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, and the jar without it, in a shell whose locale has few letters. */
@DisabledOnOs(OS.WINDOWS)
class LauncherIT {
  private static final String NAME = "данные हिन्दी 🎸";
  private static final Path LAUNCHER = Path.of("src/main/sh/quarterturn");
  private static final String JAVA = System.getProperty("java.home");

  @TempDir Path folder;
  private Path bin = Path.of("unset");

  /** How a shell's command ended, and what it printed. */
  private record Ran(int status, String out, String err) {}

  @BeforeEach
  void installed() throws IOException {
    bin = Files.createDirectories(folder.resolve("a place/bin"));
    Files.copy(LAUNCHER, bin.resolve("quarterturn"), StandardCopyOption.COPY_ATTRIBUTES);
    Files.createSymbolicLink(folder.resolve("run"), Path.of("a place/bin/quarterturn"));
    // Named here, since a test's own process may have no way to write it on a command line.
    Files.createDirectory(folder.resolve(NAME));
  }

  private void withJar() throws IOException {
    Path lib = Files.createDirectories(folder.resolve("a place/lib"));
    Files.copy(Path.of(Packaged.JAR), lib.resolve("quarterturn.jar"));
  }

  /** Runs a command in the folder, by a script in UTF-8 and a bare environment. */
  private Ran sh(String command, Map<String, String> more) throws Exception {
    Path out = folder.resolve("out.txt");
    Path err = folder.resolve("err.txt");
    Path script = Files.writeString(folder.resolve("script.sh"), command + "\n");
    ProcessBuilder shell = new ProcessBuilder("sh", script.toString());
    shell.directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
    shell.environment().clear();
    shell.environment().putAll(Map.of("PATH", System.getenv("PATH"), "JAVA_HOME", JAVA));
    shell.environment().putAll(more);
    int status = shell.start().waitFor();
    return new Ran(status, Files.readString(out), Files.readString(err));
  }

  @Test
  void underNoLocaleAnyScriptIsFound() throws Exception {
    withJar();
    Ran ran =
        sh(
            "./run instrument add b --kind bass-34 --data *🎸 && exec ls *🎸/instruments",
            Map.of("LC_ALL", "C"));
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    assertThat(ran.out()).endsWith("b.yaml\n");
    assertThat(ran.out()).contains("./run start relief --instrument b --data \"" + NAME + "\"");
  }

  @Test
  void aShellMayNameItWithoutItsFolder() throws Exception {
    withJar();
    Ran ran = sh("cd 'a place/bin' && sh quarterturn due --data none", Map.of("LC_ALL", "C.UTF-8"));
    assertThat(ran.err()).isEqualTo("quarterturn: none is new: nothing is kept there yet\n");
    assertThat(ran.out()).isEqualTo("Nothing is due.\n");
  }

  @Test
  void whatIsNotThereIsSaidInOneLine() throws Exception {
    Ran jar = sh("./run --help", Map.of());
    assertThat(jar.status()).isEqualTo(2);
    assertThat(jar.err()).matches("quarterturn: quarterturn.jar is neither in .*\n");
    Files.createFile(bin.resolve("quarterturn.jar"));
    Ran java = sh("./run --help", Map.of("JAVA_HOME", "/nowhere"));
    assertThat(java.status()).isEqualTo(2);
    assertThat(java.err())
        .isEqualTo(
            "quarterturn: there is no /nowhere/bin/java; install Java 17 or newer,"
                + " or set JAVA_HOME\n");
  }

  @Test
  void aFolderThatIsGoneIsSaid() throws Exception {
    Ran ran = sh("mkdir gone; cd gone; rmdir ../gone; ../run log list 2>&1", Map.of());
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out())
        .endsWith("quarterturn: the folder you are in is gone; change to another first\n");
    assertThat(ran.out()).doesNotContain("VM");
  }

  /** The jar by itself says what to set, and what is lost at the end of a pipe or a disk. */
  @Test
  @EnabledOnOs(OS.LINUX)
  void theJarAloneSaysWhatToSet() throws Exception {
    String java = String.join(" ", Packaged.program(List.of()));
    java = "cd " + Path.of("").toAbsolutePath() + "; java() { " + java + " \"$@\"; }; ";
    Ran ran =
        sh(
            java + "java log list --data " + folder + "/*🎸; cd " + folder + "/*🎸; java --help",
            Map.of("LC_ALL", "C"));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err().lines().toList()).hasSize(2);
    for (String line : ran.err().lines().toList()) {
      assertThat(line).startsWith("quarterturn: \"" + folder);
      assertThat(line).endsWith("can't hold; set LC_ALL=C.UTF-8 and try again");
    }
    Ran lost =
        sh(
            java
                + "(java check --schema; echo $? >"
                + folder
                + "/status) | head -n 1; cat "
                + folder
                + "/status;"
                + " java --version >/dev/full",
            Map.of("LC_ALL", "C.UTF-8"));
    assertThat(lost.out()).isEqualTo("{\n141\n");
    assertThat(lost.status()).isEqualTo(2);
    assertThat(lost.err()).startsWith("quarterturn: standard output can't be written to (");
    assertThat(lost.err().lines().toList()).hasSize(1);
  }
}
