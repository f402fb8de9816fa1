package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.InventedLesson;
import quarterturn.platform.UserFolders;

/** Folders that options name, in any script, and where no folder is. */
@Isolated
class NamedFoldersTest {
  /** Cyrillic, Devanagari, an emoji, a letter with a mark of its own, and Hebrew. */
  private static final String ANY_SCRIPT = "данные हिन्दी 🎸 e\u0301 עברית";

  @TempDir Path folder;

  private Captured run(String... args) {
    return run(new UserFolders(Map.of(), "Linux", folder.toString()), args);
  }

  private Captured run(UserFolders folders, String... args) {
    return Captured.of(new Shop(folder), folders, InputStream.nullInputStream(), args);
  }

  private static void refused(Captured ran, String says) {
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(Launch.USAGE);
    assertThat(ran.err()).isEqualTo("quarterturn: " + says + "\n");
    assertThat(ran.out()).isEmpty();
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          a-file     | DIR/a-file is a file, not a folder
          a-file/x   | DIR/a-file is a file, not a folder
          a-file/x/y | DIR/a-file is a file, not a folder
          dangling   | DIR/dangling is a link that leads nowhere
          """)
  void whatIsNoFolderIsSaidWithItsOption(String at, String wrong) throws IOException {
    Files.createFile(folder.resolve("a-file"));
    Files.createSymbolicLink(folder.resolve("dangling"), Path.of("nosuch"));
    String path = folder.resolve(at).toString();
    String says = wrong.replace("DIR", folder.toString());
    refused(
        run(Captured.at(Path.of(path), "log", "list")),
        "--data: " + says + "; name another folder");
    refused(run("check", "--own", path), "--own: " + says + "; name the folder with your files");
    refused(run("lesson", "desk", path), "FOLDER: " + says + "; name the lesson's folder");
    refused(
        run("lesson", "new", path, "--neck", "too-much"),
        "FOLDER: " + says + "; name another folder");
    // The platform's own, and one that an environment names.
    UserFolders xdg = new UserFolders(Map.of("XDG_DATA_HOME", path), "Linux", folder.toString());
    assertThat(run(xdg, "log", "list").err()).contains("put it right, or name another with --data");
    Path config = Files.createDirectories(folder.resolve(".config/quarterturn"));
    Files.writeString(config.resolve("settings.yaml"), "data: " + path + "\n");
    assertThat(run("log", "list").err()).contains("settings.yaml:1:7: there is no folder");
  }

  @Test
  void soItIsByEveryCommand() throws IOException {
    Path file = Files.createFile(folder.resolve("a-file"));
    for (String typed : List.of("--plain", "instrument add b --kind bass-34", "start --lines")) {
      refused(
          run(Captured.at(file, typed.split(" "))),
          "--data: " + file + " is a file, not a folder; name another folder");
    }
    for (String typed : List.of("join", "sheets", "forget")) {
      String[] args = {"lesson", typed, file.toString(), "Ana"};
      refused(
          run(Arrays.copyOf(args, typed.equals("forget") ? 4 : 3)),
          "FOLDER: " + file + " is a file, not a folder; name the lesson's folder");
    }
  }

  @Test
  void anEmptyWordNamesNoFolder() {
    refused(run("log", "list", "--data", ""), "--data: no folder is named; write one behind it");
    refused(run("check", "--own", ""), "--own: no folder is named; write one behind it");
    refused(run("lesson", "desk", ""), "FOLDER: no folder is named; write one behind it");
  }

  @Test
  void aPathThatCanBeNoneIsSaidInOneLine() {
    for (String option : List.of("--data", "--own")) {
      Captured ran = run("log", "list", option, "a\0b");
      assertThat(ran.status()).isEqualTo(Launch.USAGE);
      assertThat(ran.err()).contains("\"a\ufffdb\" can be no path; write another");
      assertThat(ran.err().lines().toList()).hasSize(1);
    }
  }

  @Test
  void withoutAHomeFolderADataFolderIsAskedFor() {
    UserFolders nobody = new UserFolders(Map.of(), "Linux", "?");
    refused(
        run(nobody, "log", "list"),
        "the home folder is unknown; name a data folder with --data DIR");
    assertThat(run(nobody, Captured.at(folder, "log", "list")).status()).isEqualTo(0);
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void wherePlacesCantBeWrittenTheOptionIsNamed() {
    for (String typed : List.of("instrument add b --kind bass-34", "start relief --lines")) {
      Captured ran = run(Captured.at(Path.of("/proc/self/fdinfo"), typed.split(" ")));
      assertThat(ran.status()).isEqualTo(Launch.USAGE);
      assertThat(ran.err()).contains("/proc/self/fdinfo/");
      assertThat(ran.err()).endsWith("; choose another folder with --data\n");
      assertThat(ran.err().lines().toList()).hasSize(1);
    }
  }

  @Test
  void whatIsInTheWayWithinOneIsSaidWithItsOption() throws Exception {
    Path data = Files.createDirectory(folder.resolve("data"));
    Files.createFile(data.resolve("instruments"));
    String[] add = {"instrument", "add", "b", "--kind", "bass-34"};
    refused(
        run(Captured.at(data, add)),
        data
            + "/instruments is in the way: no folder can be there; choose another folder with"
            + " --data");
    Path lesson = Files.createDirectory(folder.resolve("lesson"));
    InventedLesson.write(lesson);
    Files.createDirectory(lesson.resolve(".new.jsonl.lock"));
    Captured ran = run("lesson", "join", lesson.toString(), "--bench", "new", "--as", "Bo");
    assertThat(ran.status()).isEqualTo(Launch.USAGE);
    assertThat(ran.err()).startsWith("quarterturn: FOLDER: " + lesson + "/.new.jsonl.lock: ");
    assertThat(ran.err()).endsWith("; name another folder\n");
  }

  /** Said once by each command until something is kept there, since it may be mistyped. */
  @Test
  void aNewFolderSaysSo() {
    Path data = folder.resolve("new");
    String said = "quarterturn: " + data + " is new: nothing is kept there yet\n";
    for (String typed : List.of("log list", "due --json", "--plain")) {
      assertThat(run(Captured.at(data, typed.split(" "))).err()).isEqualTo(said);
      assertThat(Files.exists(data)).isFalse();
    }
    String[] add = {"instrument", "add", "b", "--kind", "bass-34"};
    assertThat(run(Captured.at(data, add)).err()).isEqualTo(said);
    assertThat(run(Captured.at(data, "log", "list")).err()).isEmpty();
    assertWithMessage("nobody typed it").that(run("log", "list").err()).isEmpty();
  }

  @Test
  void anyScriptWillDo() throws IOException {
    Path any = Files.createDirectory(folder.resolve(ANY_SCRIPT));
    Path data = any.resolve("ещё");
    String[] add = {"instrument", "add", "b", "--kind", "bass-34", "--ticket", ANY_SCRIPT};
    assertThat(run(Captured.at(data, add)).out()).contains(ANY_SCRIPT);
    assertThat(run(Captured.at(data, "instrument", "show", "b")).out()).contains("🎸");
    String name = new Shop(data).begun("b");
    Path sheet = any.resolve("лист.html");
    String[] export = {"log", "export", name, "--format", "html", "--out", sheet.toString()};
    assertThat(run(Captured.at(data, export)).status()).isEqualTo(0);
    assertThat(Files.readString(sheet)).contains(ANY_SCRIPT);
    String lesson = any.resolve("урок").toString();
    String[] plan = {"lesson", "new", lesson, "--neck", "too-much", "--student", "Ольга"};
    assertThat(run(plan).status()).isEqualTo(0);
    assertThat(Files.readString(Path.of(lesson, "lesson.yaml"))).contains("Ольга");
    assertThat(run("lesson", "sheets", lesson).status()).isEqualTo(0);
  }
}
