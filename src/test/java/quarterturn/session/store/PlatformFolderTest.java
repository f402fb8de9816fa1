package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.unit.NotUnderstoodException;

class PlatformFolderTest {
  /** XDG Base Directory Specification: $XDG_DATA_HOME, else $HOME/.local/share. */
  @Test
  void linuxFollowsTheXdgSpecification() {
    assertThat(Store.platformDefault(Map.of(), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/home/demo/.local/share/quarterturn"));
    assertThat(Store.platformDefault(Map.of("XDG_DATA_HOME", "/data"), "Linux", "/home/demo"))
        .isEqualTo(Path.of("/data/quarterturn"));
  }

  /**
   * XDG Base Directory Specification: "If an implementation encounters a relative path it should
   * ignore".
   */
  @Test
  void anEmptyOrRelativeXdgFolderIsIgnored() {
    for (String bad : new String[] {"", "data", "./data"}) {
      assertThat(Store.platformDefault(Map.of("XDG_DATA_HOME", bad), "FreeBSD", "/home/demo"))
          .isEqualTo(Path.of("/home/demo/.local/share/quarterturn"));
    }
  }

  @Test
  void macOsUsesApplicationSupport() {
    assertThat(Store.platformDefault(Map.of("XDG_DATA_HOME", "/x"), "Mac OS X", "/Users/demo"))
        .isEqualTo(Path.of("/Users/demo/Library/Application Support/quarterturn"));
  }

  @Test
  void windowsUsesLocalApplicationData() {
    String local = "C:\\Users\\demo\\AppData\\Local";
    String roaming = "C:\\Users\\demo\\AppData\\Roaming";
    String home = "C:\\Users\\demo";
    assertThat(
            Store.platformDefault(
                Map.of("LOCALAPPDATA", local, "APPDATA", roaming), "Windows 11", home))
        .isEqualTo(Path.of(local).resolve("quarterturn"));
    assertThat(
            Store.platformDefault(
                Map.of("LOCALAPPDATA", " ", "APPDATA", roaming), "Windows 10", home))
        .isEqualTo(Path.of(roaming).resolve("quarterturn"));
    assertThat(Store.platformDefault(Map.of(), "Windows 11", home))
        .isEqualTo(Path.of(home).resolve("AppData").resolve("Local").resolve("quarterturn"));
  }

  @Test
  void withoutAHomeItAsksForAFolder() {
    for (String home : new String[] {"", "?"}) {
      NotUnderstoodException e =
          assertThrows(
              NotUnderstoodException.class, () -> Store.platformDefault(Map.of(), "Linux", home));
      assertThat(e).hasMessageThat().contains("--data DIR");
    }
  }
}
