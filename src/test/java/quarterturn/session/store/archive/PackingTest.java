package quarterturn.session.store.archive;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.security.MessageDigest;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.HexFormat;
import java.util.List;
import java.util.Map;
import java.util.zip.ZipEntry;
import java.util.zip.ZipFile;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.session.journal.Journal;

class PackingTest {
  @TempDir Path folder;
  private Path data = Path.of("unset");
  private Path archive = Path.of("unset");

  @BeforeEach
  void fill() throws IOException {
    data = Invented.folder(folder.resolve("data"));
    archive = folder.resolve("kept.zip");
  }

  private static String text(ZipFile zip, ZipEntry entry) throws IOException {
    return new String(zip.getInputStream(entry).readAllBytes(), StandardCharsets.ISO_8859_1);
  }

  @Test
  void anArchiveIsAZipThatBeginsWithTheSumsOfItsFiles() throws Exception {
    Packing.Packed packed = Packing.of(data, archive);

    assertThat(packed).isEqualTo(new Packing.Packed(3, 2, List.of(), Files.size(archive)));
    Map<String, String> holds = Invented.holds(data);
    try (ZipFile zip = new ZipFile(archive.toFile())) {
      List<? extends ZipEntry> entries = Collections.list(zip.entries());
      List<String> lines = new ArrayList<>(List.of("quarterturn archive 1"));
      for (Map.Entry<String, String> file : holds.entrySet()) {
        byte[] bytes = file.getValue().getBytes(StandardCharsets.ISO_8859_1);
        byte[] sum = MessageDigest.getInstance("SHA-256").digest(bytes);
        lines.add(HexFormat.of().formatHex(sum) + " " + bytes.length + " " + file.getKey());
      }
      assertThat(text(zip, entries.get(0)).lines().toList()).isEqualTo(lines);
      assertThat(entries.stream().map(ZipEntry::getName).skip(1).toList())
          .containsExactlyElementsIn(holds.keySet())
          .inOrder();
      for (ZipEntry entry : entries.subList(1, entries.size())) {
        assertThat(text(zip, entry)).isEqualTo(holds.get(entry.getName()));
        assertThat(entry.getTimeLocal()).isEqualTo(LocalDateTime.of(1980, 1, 1, 0, 0));
      }
    }
    assertThat(Invented.holds(folder).keySet().stream().filter(f -> !f.startsWith("data/")))
        .containsExactly("kept.zip");
  }

  @Test
  void theSameFilesGiveTheSameBytes() throws IOException {
    Packing.of(data, archive);
    Path again = folder.resolve("again.zip");
    Packing.of(data, again);
    assertThat(Files.readAllBytes(again)).isEqualTo(Files.readAllBytes(archive));
  }

  @Test
  void aSessionThatIsOpenIsPackedToItsLastWholeLine() throws IOException {
    Path file = Invented.file(data, Invented.SECOND);
    String whole = Files.readString(file);
    Path back = folder.resolve("back");
    try (Journal open = Journal.open(file)) {
      Files.writeString(file, "{\"n\":2,\"type", StandardOpenOption.APPEND);
      assertThat(Packing.of(data, archive).left()).isEmpty();
      assertThat(open.found().events()).hasSize(1);
    }
    Unpacking.of(archive, back);
    assertThat(Files.readString(Invented.file(back, Invented.SECOND))).isEqualTo(whole);
  }

  @Test
  void whileASessionGrowsEachArchiveHoldsItsBeginning() throws Exception {
    Path file = Invented.file(data, Invented.SECOND);
    Thread player =
        new Thread(
            () -> {
              try {
                for (int i = 0; i < 20; i++) {
                  Invented.more(data, Invented.SECOND);
                }
              } catch (IOException e) {
                throw new UncheckedIOException(e);
              }
            });
    player.start();
    int packed = 0;
    while (player.isAlive() || packed == 0) {
      Path one = folder.resolve(++packed + ".zip");
      Packing.of(data, one);
      Unpacking.of(one, folder.resolve("back-" + packed));
    }
    player.join();
    byte[] whole = Files.readAllBytes(file);
    for (; packed > 0; packed--) {
      Path back = Invented.file(folder.resolve("back-" + packed), Invented.SECOND);
      byte[] first = Files.readAllBytes(back);
      assertThat(first).isEqualTo(Arrays.copyOf(whole, first.length));
      assertThat(Journal.read(back).notice()).isNull();
    }
  }

  @Test
  void whatIsNoFileOfOursIsLeftOutAndNamed() throws IOException {
    Path sessions = data.resolve("sessions");
    Files.copy(Invented.file(data, Invented.FIRST), sessions.resolve("a copy (1).jsonl"));
    Files.createDirectory(sessions.resolve("2027-03-05-relief-dddd.jsonl"));
    Files.writeString(sessions.resolve("2027-03-06-relief-ffff.jsonl"), "{\"quarterturn\":1");
    Files.createSymbolicLink(
        data.resolve("instruments/linked.yaml"), data.resolve("instruments/my-bass.yaml"));
    Files.writeString(data.resolve("instruments/bass.yaml~"), "name: bass\n");
    Files.writeString(sessions.resolve(".index"), "derived");
    Files.writeString(data.resolve("instruments/.my-bass.yaml.draft"), "name: my");

    Packing.Packed packed = Packing.of(data, archive);

    assertThat(packed.left())
        .containsExactly(
            "sessions/2027-03-05-relief-dddd.jsonl: it is a folder",
            "sessions/a copy (1).jsonl: no session has such a name",
            "instruments/bass.yaml~: no instrument has such a name",
            "instruments/linked.yaml: it is a link",
            "sessions/2027-03-06-relief-ffff.jsonl: there is no whole line in it")
        .inOrder();
    assertThat(packed.sessions()).isEqualTo(3);
    assertThat(packed.instruments()).isEqualTo(2);
  }

  private void refused(Path to, String why) throws IOException {
    Map<String, String> before = Invented.holds(folder);
    IOException e = assertThrows(IOException.class, () -> Packing.of(data, to));
    assertThat(e).hasMessageThat().contains(why);
    assertThat(Invented.holds(folder)).isEqualTo(before);
  }

  @Test
  void nothingIsWrittenOverNorIntoTheFolderItself() throws IOException {
    Files.writeString(archive, "mine");
    refused(archive, "is there already");
    refused(Invented.file(data, Invented.FIRST), "is there already");
    refused(folder, "is there already");
    Path nowhere = folder.resolve("nowhere");
    Files.createSymbolicLink(folder.resolve("dangling.zip"), nowhere);
    refused(folder.resolve("dangling.zip"), "is there already");
    assertThat(Files.exists(nowhere)).isFalse();
    refused(data.resolve("kept.zip"), "in the data folder itself");
    refused(data.resolve("sessions/2027-03-09-relief-zzzz.jsonl"), "in the data folder itself");
    Path alias = Files.createSymbolicLink(folder.resolve("alias"), data);
    refused(alias.resolve("kept.zip"), "in the data folder itself");
    refused(nowhere.resolve("kept.zip"), "there is no folder for it");
    refused(archive.resolve("kept.zip"), "there is no folder for it");
  }

  @Test
  void thereIsNoEmptyArchive() throws IOException {
    data = folder.resolve("none");
    refused(archive, "there is no session and no instrument in");
  }
}
