package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import quarterturn.session.store.archive.Invented;
import quarterturn.session.store.archive.Packing;
import quarterturn.session.store.archive.Unpacking;

/**
 * An archive is unpacked into a folder, of which another archive is then made: each file of either
 * is whole or not there, and both can be done again. What they hold is invented.
 */
final class ArchiveScenario implements Scenario {
  private final Source source;
  private boolean unpacked;
  private boolean packed;

  ArchiveScenario(Source source) {
    this.source = source;
  }

  /**
   * An archive that was made on a real disk.
   *
   * @param holds the files in it, by their paths
   */
  record Source(Path archive, byte[] bytes, Map<String, String> holds) {
    static Source in(Path folder) throws IOException {
      Path data = Invented.folder(folder.resolve("data"));
      Path archive = folder.resolve("kept.zip");
      Packing.of(data, archive);
      return new Source(archive, Files.readAllBytes(archive), Invented.holds(data));
    }
  }

  @Override
  public void play(Path top) throws Exception {
    Unpacking.of(source.archive(), top.resolve("home/data"));
    unpacked = true;
    // What can't be read is left out, and said.
    packed = Packing.of(top.resolve("home/data"), top.resolve("tmp/again.zip")).left().isEmpty();
  }

  @Override
  public void check(Path top) throws Exception {
    Path data = top.resolve("home/data");
    Map<String, String> found = Invented.holds(data);
    found.keySet().removeIf(path -> path.startsWith("."));
    assertThat(source.holds()).containsAtLeastEntriesIn(found);
    if (unpacked) {
      assertThat(found).isEqualTo(source.holds());
    }
    Path archive = top.resolve("tmp/again.zip");
    if (packed) {
      assertThat(Files.readAllBytes(archive)).isEqualTo(source.bytes());
    } else if (Files.exists(archive)) {
      Path copy = source.archive().resolveSibling("copy.zip");
      Files.write(copy, Files.readAllBytes(archive));
      Unpacking.of(copy, top.resolve("other"));
      assertThat(source.holds()).containsAtLeastEntriesIn(Invented.holds(top.resolve("other")));
    }
    assertThat(Unpacking.of(source.archive(), data).differ()).isEmpty();
    assertThat(Invented.holds(data)).isEqualTo(source.holds());
    Path other = top.resolve("tmp/other.zip");
    Packing.of(data, other);
    assertThat(Files.readAllBytes(other)).isEqualTo(source.bytes());
  }
}
