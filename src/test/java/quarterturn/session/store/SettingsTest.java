package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.Fault;
import quarterturn.session.store.Settings.Key;
import quarterturn.unit.NotUnderstoodException;

/** The file {@code settings.yaml}. */
class SettingsTest {
  @TempDir Path folder;
  private Path file = Path.of("unset");

  @BeforeEach
  void folders() throws IOException {
    file = Files.createDirectories(folder.resolve("config/quarterturn")).resolve("settings.yaml");
    Files.createDirectories(folder.resolve("home/bench"));
    Files.createDirectories(folder.resolve("config/quarterturn/near"));
  }

  private Settings read(Key... overridden) {
    Map<String, String> env = Map.of("XDG_CONFIG_HOME", folder.resolve("config").toString());
    String home = folder.resolve("home").toString();
    return Settings.read(new UserFolders(env, "Linux", home), Set.of(overridden));
  }

  private Settings read(String text, Key... overridden) throws IOException {
    Files.writeString(file, text);
    return read(overridden);
  }

  @Test
  void foldersAreSeenFromTheFileOrFromTheHomeFolder() throws IOException {
    Settings settings = read("own: near\nby: Ana\ndata: ~/bench\n").sound();
    assertThat(settings.set())
        .containsExactly(
            Key.OWN, folder.resolve("config/quarterturn/near").toString(),
            Key.BY, "Ana",
            Key.DATA, folder.resolve("home/bench").toString());
    assertThat(read("own: ~\n").sound().set())
        .containsExactly(Key.OWN, folder.resolve("home").toString());
    assertThat(read("data: " + folder.resolve("home/../home") + "\n").sound().set())
        .containsExactly(Key.DATA, folder.resolve("home").toString());
  }

  @Test
  void whatItSetsIsSaidInOneLine() throws IOException {
    Settings settings = read("own: near\nby: Ana\n");
    assertThat(settings.said(Key.values()))
        .containsExactly(
            "From settings.yaml: own files in " + file.resolveSibling("near") + ", work by Ana.");
    assertThat(settings.said(Key.BY)).containsExactly("From settings.yaml: work by Ana.");
    assertThat(settings.said(Key.DATA)).isEmpty();
  }

  @Test
  void whereThereIsNoneOrItSaysNothingNothingIsSet() throws IOException {
    assertThat(read().sound().set()).isEmpty();
    assertThat(read("# own: near\n\n").sound().set()).isEmpty();
    assertThat(read("").sound().said(Key.values())).isEmpty();
  }

  /** An option stands in for a folder that is not there today; the rest is still held to. */
  @Test
  void aKeyThatAnOptionOverridesIsNotUsed() throws IOException {
    Settings settings = read("own: nosuch\nby: Ana\n", Key.OWN, Key.BY).sound();
    assertThat(settings.set()).isEmpty();
    assertThat(read("own: nosuch\nbye: Ana\n", Key.OWN).faults()).hasSize(1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      textBlock =
          """
          onw: near          | 1:1: this file has no key "onw". Did you mean "own"? Allowed: own, by, role, data.
          by: Ana;own: gone  | 2:6: there is no folder DIR/gone. Make it, or write the path of another.
          data: settings.yaml | 1:7: there is no folder DIR/settings.yaml. Make it, or write the path of another.
          by: [Ana, Ben]     | 1:5: expected a single value here, found a list. Write one value; put text that holds [ ] { } or : in quotes.
          by:                | 1:4: the value is missing here. Write it behind its key, or take the key out.
          by: Ana;by: Ben    | 2:1: the key "by" stands here a second time. Keep one of them; the first is in line 1.
          own: "near         | 1:6: the text in quotes that begins here does not end. Put a quote at its end.
          near               | 1:1: expected this file here, found a single value. It is written as keys with values. Allowed: own, by, role, data.
          """)
  void whatIsWrongIsSaidWithItsLineAndWhatToDo(String text, String fault) throws IOException {
    Settings settings = read(text.replace(";", "\n") + "\n");
    String said = file + ":" + fault.replace("DIR", file.resolveSibling("").toString());
    assertThat(settings.faults().stream().map(Fault::brief).toList()).containsExactly(said);
    assertThat(assertThrows(NotUnderstoodException.class, settings::sound))
        .hasMessageThat()
        .isEqualTo(said);
  }

  @Test
  void whatCanBeUsedIsKeptBesideWhatCannot() throws IOException {
    Settings settings = read("own: gone\nby: Ana\nshape: round\n");
    assertThat(settings.set()).containsExactly(Key.BY, "Ana");
    assertThat(settings.faults()).hasSize(2);
  }

  @Test
  void whatCannotBeReadIsNeverNone() throws IOException {
    Files.createDirectory(file);
    assertThat(only(read())).startsWith(file + ":1:1: the settings can't be read: a folder stands");
    Files.delete(file);
    Files.createSymbolicLink(file, Path.of("nosuch"));
    assertThat(only(read())).contains("leads nowhere. Put what can be read in its place");
    Files.delete(file);
    Files.write(file, new byte[] {'b', 'y', ':', ' ', (byte) 0xff});
    assertThat(only(read()))
        .endsWith(
            "settings.yaml:1:5: the byte 0xFF does not belong to UTF-8"
                + " text. Save the file as UTF-8.");
    Files.write(file, new byte[300_000]);
    assertThat(only(read())).contains("the most that is read");
  }

  private static String only(Settings settings) {
    assertThat(settings.set()).isEmpty();
    assertThat(settings.faults()).hasSize(1);
    return settings.faults().get(0).brief();
  }

  @Test
  void aNameIsOneShortLine() {
    assertThat(Settings.name(" Ana B. ")).isEqualTo("Ana B.");
    for (String bad : List.of("", " ", "a\nb", "\u001b[31m", "x".repeat(61))) {
      NotUnderstoodException told =
          assertThrows(NotUnderstoodException.class, () -> Settings.name(bad));
      assertWithMessage(bad).that(told.mend()).contains("60 characters");
    }
  }
}
