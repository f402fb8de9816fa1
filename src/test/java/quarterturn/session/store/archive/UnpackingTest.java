package quarterturn.session.store.archive;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UnpackingTest {
  @TempDir Path folder;
  private Path data = Path.of("unset");
  private Path archive = Path.of("unset");
  private Path back = Path.of("unset");

  @BeforeEach
  void pack() throws IOException {
    data = Invented.folder(folder.resolve("data"));
    archive = folder.resolve("kept.zip");
    back = folder.resolve("back");
    Packing.of(data, archive);
  }

  private static Unpacking.Unpacked unpacked(Map<Part, Long> made, Map<Part, Long> there) {
    return new Unpacking.Unpacked(made, there, List.of(), List.of());
  }

  private static Map<Part, Long> counts(long sessions, long instruments) {
    return Map.of(Part.SESSIONS, sessions, Part.INSTRUMENTS, instruments);
  }

  @Test
  void allComesBackAsItWasAndASecondTimeItIsThereAlready() throws IOException {
    assertThat(Unpacking.of(archive, back)).isEqualTo(unpacked(counts(3, 2), Map.of()));
    assertThat(Invented.holds(back)).isEqualTo(Invented.holds(data));
    assertThat(Unpacking.of(archive, back)).isEqualTo(unpacked(Map.of(), counts(3, 2)));
    assertThat(Invented.holds(back)).isEqualTo(Invented.holds(data));
  }

  @Test
  void whatIsThereStaysAndAllOthersCome() throws IOException {
    Unpacking.of(archive, back);
    Invented.more(back, Invented.FIRST);
    Path shorter = Invented.file(back, Invented.SECOND);
    Files.writeString(shorter, Files.readString(shorter).lines().findFirst().orElseThrow() + "\n");
    Path mine = back.resolve("instruments/my-bass.yaml");
    Files.writeString(mine, "# mine\n", StandardOpenOption.APPEND);
    Files.delete(Invented.file(back, Invented.THIRD));
    Files.createSymbolicLink(Invented.file(back, Invented.THIRD), folder.resolve("nowhere"));
    Files.delete(back.resolve("instruments/blue-guitar.yaml"));
    Map<String, String> before = Invented.holds(back);

    Unpacking.Unpacked done = Unpacking.of(archive, back);

    assertThat(done.made()).isEqualTo(Map.of(Part.INSTRUMENTS, 1L));
    assertThat(done.there()).isEmpty();
    assertThat(done.further())
        .containsExactly("sessions/" + Invented.FIRST + ".jsonl goes on further here");
    String move = "to have the archive's, move %s out of the folder and unpack again";
    String bass = "instruments/my-bass.yaml";
    String second = "sessions/" + Invented.SECOND + ".jsonl";
    String third = "sessions/" + Invented.THIRD + ".jsonl";
    assertThat(done.differ())
        .containsExactly(
            bass + " differs from the archive's; " + move.formatted(bass),
            second + " goes on further in the archive; " + move.formatted(second),
            third + " can't be read here; " + move.formatted(third))
        .inOrder();
    Map<String, String> after = Invented.holds(back);
    assertThat(after.remove("instruments/blue-guitar.yaml")).isNotNull();
    assertThat(after).isEqualTo(before);
    assertThat(Files.exists(folder.resolve("nowhere"))).isFalse();
  }

  @Test
  void stoppedAnywhereItIsDoneAgain() throws IOException {
    List<String> files = new ArrayList<>(Invented.holds(data).keySet());
    for (int stopped = 0; stopped <= files.size(); stopped++) {
      Path at = folder.resolve("stopped-" + stopped);
      Files.createDirectories(at);
      for (String file : files.subList(0, stopped)) {
        Files.createDirectories(at.resolve(file).getParent());
        Files.copy(data.resolve(file), at.resolve(file));
      }
      Path draft = at.resolve(".unpack.draft");
      if (stopped % 2 == 0) {
        Files.writeString(draft, "half");
      } else {
        // As a crash leaves it just when the draft has got its name, before it loses the other.
        Files.createLink(draft, at.resolve(files.get(stopped - 1)));
      }
      Files.writeString(at.resolve(".unpack.lock"), "");

      Unpacking.Unpacked done = Unpacking.of(archive, at);

      assertThat(done.differ()).isEmpty();
      assertThat(Invented.holds(at)).isEqualTo(Invented.holds(data));
    }
  }
}
