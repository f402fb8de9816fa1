package quarterturn.platform;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.unit.NotUnderstoodException;

class PlatformFolderTest {
  private static Path data(Map<String, String> env, String system, String home) {
    return new UserFolders(env, system, home).data();
  }

  private static @Nullable Path settings(Map<String, String> env, String system, String home) {
    return new UserFolders(env, system, home).settings();
  }

  /** XDG Base Directory Specification: $XDG_CONFIG_HOME, else $HOME/.config. */
  @Test
  void settingsStandInTheFolderForConfiguration() {
    Map<String, String> set = Map.of("XDG_CONFIG_HOME", "/set", "APPDATA", "/roaming");
    assertThat(settings(Map.of(), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/home/demo/.config/quarterturn/settings.yaml"));
    assertThat(settings(set, "Linux", "?")).isEqualTo(Path.of("/set/quarterturn/settings.yaml"));
    assertThat(settings(Map.of("XDG_CONFIG_HOME", "set"), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/home/demo/.config/quarterturn/settings.yaml"));
    assertThat(settings(set, "Mac OS X", "/Users/demo"))
        .isEqualTo(Path.of("/Users/demo/Library/Application Support/quarterturn/settings.yaml"));
    assertThat(settings(set, "Windows 11", "/users/demo"))
        .isEqualTo(Path.of("/roaming/quarterturn/settings.yaml"));
    assertThat(settings(Map.of(), "Windows 11", "/users/demo"))
        .isEqualTo(Path.of("/users/demo/AppData/Roaming/quarterturn/settings.yaml"));
    assertThat(settings(Map.of(), "Linux", "?")).isNull();
  }

  /** XDG Base Directory Specification: $XDG_DATA_HOME, else $HOME/.local/share. */
  @Test
  void linuxFollowsTheXdgSpecification() {
    assertThat(data(Map.of(), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/home/demo/.local/share/quarterturn"));
    assertThat(data(Map.of("XDG_DATA_HOME", "/data"), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/data/quarterturn"));
  }

  /**
   * XDG Base Directory Specification: "If an implementation encounters a relative path it should
   * ignore".
   */
  @Test
  void anEmptyOrRelativeXdgFolderIsIgnored() {
    for (String bad : new String[] {"", "data", "./data"}) {
      assertThat(data(Map.of("XDG_DATA_HOME", bad), "FreeBSD", "/home/demo"))
          .isEqualTo(Path.of("/home/demo/.local/share/quarterturn"));
    }
  }

  @Test
  void macOsUsesApplicationSupport() {
    assertThat(data(Map.of("XDG_DATA_HOME", "/x"), "Mac OS X", "/Users/demo"))
        .isEqualTo(Path.of("/Users/demo/Library/Application Support/quarterturn"));
  }

  @Test
  void windowsUsesLocalApplicationData() {
    String local = "C:\\Users\\demo\\AppData\\Local";
    String roaming = "C:\\Users\\demo\\AppData\\Roaming";
    String home = "C:\\Users\\demo";
    assertThat(data(Map.of("LOCALAPPDATA", local, "APPDATA", roaming), "Windows 11", home))
        .isEqualTo(Path.of(local).resolve("quarterturn"));
    assertThat(data(Map.of("LOCALAPPDATA", " ", "APPDATA", roaming), "Windows 10", home))
        .isEqualTo(Path.of(roaming).resolve("quarterturn"));
    assertThat(data(Map.of(), "Windows 11", home))
        .isEqualTo(Path.of(home).resolve("AppData").resolve("Local").resolve("quarterturn"));
  }

  @Test
  void withoutAHomeItAsksForAFolder() {
    for (String home : new String[] {"", "?"}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> data(Map.of(), "Linux", home));
      assertThat(e).hasMessageThat().contains("--data DIR");
    }
  }

  /** POSIX: HOME is the path of the user's home directory. */
  @Test
  void aHomeThatTheSystemDoesNotKnowIsAsTheEnvironmentSays() {
    Map<String, String> said = Map.of("HOME", "/work");
    assertThat(data(said, "Linux", "?")).isEqualTo(Path.of("/work/.local/share/quarterturn"));
    assertThat(data(said, "Linux", "/home/demo"))
        .isEqualTo(Path.of("/home/demo/.local/share/quarterturn"));
  }
}
