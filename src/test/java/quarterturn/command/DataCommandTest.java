package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.platform.UserFolders;
import quarterturn.session.store.archive.Bytes;
import quarterturn.session.store.archive.Invented;

/** The data folder as a whole, through whole commands. */
@Isolated
class DataCommandTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path settings = Path.of("unset");
  private Path kept = Path.of("unset");
  private Path session = Path.of("unset");

  @BeforeEach
  void keep() throws IOException {
    settings = folder.resolve("quarterturn/settings.yaml");
    kept = folder.resolve("kept");
    Files.createDirectories(settings.getParent());
    Files.writeString(settings, "data: ../kept\n");
    Invented.folder(kept);
    session = Invented.file(kept, Invented.FIRST);
  }

  private Captured ran(int status, String... args) {
    return ran(new UserFolders(env(), "Linux", folder.toString()), status, args);
  }

  private Map<String, String> env() {
    return Map.of("XDG_CONFIG_HOME", folder.toString(), "XDG_DATA_HOME", folder + "/xdg");
  }

  private static Captured ran(UserFolders folders, int status, String... args) {
    Captured ran = Captured.of(CLOCK, folders, InputStream.nullInputStream(), args);
    assertWithMessage(ran.out() + ran.err()).that(ran.status()).isEqualTo(status);
    return ran;
  }

  private String size() throws IOException {
    long bytes = 0;
    for (String text : Invented.holds(kept).values()) {
      bytes += text.length();
    }
    return Bytes.words(bytes);
  }

  @Test
  void whereSaysOnALineEachWhatLiesWhere() throws IOException {
    assertThat(ran(0, "data", "where", "--own", folder + "/mine").out().lines().toList())
        .containsExactly(
            "data: " + kept,
            "sessions: 3",
            "instruments: 2",
            "size: " + size(),
            "settings: " + settings,
            "own: " + folder + "/mine (not there)",
            "lessons: each in the folder named for it; no list is kept")
        .inOrder();
    Files.copy(session, kept.resolve("sessions/a copy.jsonl"));
    assertThat(ran(0, "data", "where").out()).contains("\nsessions: 3, and 1 not read\n");
  }

  @Test
  void whereWorksWhateverIsMissing() throws IOException {
    Files.delete(settings);
    assertThat(ran(0, "data", "where").out())
        .startsWith(
            "data: "
                + folder
                + "/xdg/quarterturn (not there)\nsessions: 0\ninstruments: 0\nsize: 0 bytes\n"
                + "settings: "
                + settings
                + " (not there)\nown: none\n");
    Files.writeString(settings, "data: ../nowhere\n");
    assertThat(ran(0, "data", "where").out())
        .startsWith(
            "data: unknown, since the settings are wrong; mend them, or say --data DIR\n"
                + "sessions: unknown\ninstruments: unknown\nsize: 0 bytes\n"
                + "settings: "
                + settings
                + " (wrong: see settings)\n");
    String file = settings.toString();
    assertThat(ran(0, "data", "where", "--data", file).out())
        .startsWith("data: " + file + " (no folder)\nsessions: unknown, ");
    Files.createDirectories(folder.resolve("odd"));
    Files.writeString(folder.resolve("odd/sessions"), "");
    assertThat(ran(0, "data", "where", "--data", folder + "/odd").out())
        .contains("\nsessions: unknown, since the folder can't be listed\ninstruments: 0\n");
    UserFolders homeless = new UserFolders(Map.of(), "Linux", "?");
    assertThat(ran(homeless, 0, "data", "where").out().lines().toList())
        .containsExactly(
            "data: unknown; the home folder is unknown; name a data folder with --data DIR",
            "sessions: unknown",
            "instruments: unknown",
            "size: 0 bytes",
            "settings: none, since the home folder is unknown",
            "own: none",
            "lessons: each in the folder named for it; no list is kept")
        .inOrder();
  }

  @Test
  void checkReadsAllAndItsStatusSaysWhetherAnythingIsWrong() throws IOException {
    assertThat(ran(0, "data", "check").out())
        .isEqualTo("Read 3 sessions and 2 instruments: nothing is wrong.\n");
    Files.writeString(session, "not a line\n", StandardOpenOption.APPEND);
    Files.writeString(settings, "data: ../kept\nrole: boss\n");
    List<String> lines = ran(1, "data", "check").out().lines().toList();
    assertThat(lines).hasSize(3);
    assertThat(lines.get(0)).startsWith(settings + ":2:7: \"boss\" is no role.");
    assertThat(lines.get(1)).startsWith("sessions/" + session.getFileName() + ": line ");
    assertThat(lines.get(2)).isEqualTo("Read 3 sessions and 2 instruments: 2 findings.");
  }

  @Test
  void checkNeverTakesAnotherFolderForTheOneThatIsMeant() throws IOException {
    Files.writeString(settings, "data: ../kept]\n");
    Captured unsure = ran(1, "data", "check");
    assertThat(unsure.out()).contains("there is no folder " + folder + "/kept]");
    assertThat(unsure.err()).contains("the data folder was not checked");
    assertThat(ran(0, "data", "check", "--data", kept + "").out()).contains("Read 3");
    Files.delete(settings);
    assertThat(ran(2, "data", "check").err()).contains("there is no such folder yet");
    assertThat(ran(2, "data", "check", "--data", session + "").err()).contains("is no folder");
    for (String to : List.of("pack", "unpack")) {
      Files.writeString(settings, "data: ../kept]\n");
      ran(2, "data", to, folder + "/kept.zip");
    }
    assertThat(Files.exists(folder.resolve("xdg"))).isFalse();
    assertThat(Files.exists(folder.resolve("kept.zip"))).isFalse();
  }

  @Test
  void packAndUnpackTakeAllToAnotherFolder() throws IOException {
    String archive = folder + "/kept.zip";
    String back = folder + "/back";
    assertThat(ran(0, "data", "pack", archive).out())
        .isEqualTo(
            "Packed 3 sessions and 2 instruments into "
                + archive
                + ", "
                + Bytes.words(Files.size(Path.of(archive)))
                + ".\n");
    assertThat(ran(2, "data", "pack", archive).err())
        .isEqualTo(
            "quarterturn: "
                + archive
                + ": is there already, and was left as it is; choose another name\n");
    assertThat(ran(0, "data", "unpack", archive, "--data", back).out())
        .isEqualTo("Unpacked 3 sessions and 2 instruments into " + back + ".\n");
    assertThat(ran(0, "data", "check", "--data", back).out()).contains("nothing is wrong");
    Invented.more(Path.of(back), Invented.FIRST);
    Files.delete(Path.of(back, "instruments/my-bass.yaml"));
    String name = "sessions/" + session.getFileName();
    assertThat(ran(0, "data", "unpack", archive, "--data", back).out().lines().toList())
        .containsExactly(
            "Unpacked 0 sessions and 1 instrument into " + back + ".",
            "Already there: 2 sessions and 1 instrument.",
            "Kept as it is here: " + name + " goes on further here.")
        .inOrder();
    Files.writeString(Path.of(back, name), "{}\n");
    assertThat(ran(1, "data", "unpack", archive, "--data", back).out())
        .endsWith(
            "Already there: 2 sessions and 2 instruments.\nKept as it is here: "
                + name
                + " differs from the archive's; to have the archive's, move "
                + name
                + " out of the folder and unpack again.\n");
  }

  @Test
  void whatIsLeftOutIsNamedAndTheStatusSaysSo() throws IOException {
    Files.copy(session, kept.resolve("sessions/a copy.jsonl"));
    assertThat(ran(1, "data", "pack", folder + "/kept.zip").out())
        .endsWith("Left out: sessions/a copy.jsonl: no session has such a name\n");
  }

  @Test
  void byItselfItSaysWhatCanBeDone() {
    assertThat(ran(2, "data").err())
        .contains("Say what to do: data where, data check, data pack FILE or data unpack FILE.");
  }
}
