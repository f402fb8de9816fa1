package quarterturn.session.store.archive;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;
import quarterturn.session.journal.ForcedFile;

/** Of an archive that is not as it was made nothing is written, whatever is in it. */
class HostileArchiveTest {
  private static final String GOOD = "sessions/good.jsonl";
  private static final byte[] LINE = "{}\n".getBytes(StandardCharsets.UTF_8);

  @TempDir Path folder;
  private Path archive = Path.of("unset");
  private Path back = Path.of("unset");

  @BeforeEach
  void places() {
    archive = folder.resolve("kept.zip");
    back = folder.resolve("to/back");
  }

  /** An entry of an archive and what it holds. */
  private record Entry(String name, byte[] bytes) {}

  private static byte[] zip(List<Entry> entries) throws IOException {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    try (ZipOutputStream zip = new ZipOutputStream(out)) {
      for (Entry entry : entries) {
        zip.putNextEntry(new ZipEntry(entry.name()));
        zip.write(entry.bytes());
        zip.closeEntry();
      }
    }
    return out.toByteArray();
  }

  private static String line(String name, byte[] bytes) {
    String sum = Manifest.Item.of(new Kept(Part.SESSIONS, "any"), bytes).sum();
    return sum + " " + bytes.length + " " + name + "\n";
  }

  private static byte[] archive(String manifest, Entry... files) throws IOException {
    Entry first = new Entry(Manifest.NAME, manifest.getBytes(StandardCharsets.UTF_8));
    Entry[] all = new Entry[files.length + 1];
    all[0] = first;
    System.arraycopy(files, 0, all, 1, files.length);
    return zip(Arrays.asList(all));
  }

  /** An archive whose manifest is right, with one file of a name. */
  private static byte[] named(String name) throws IOException {
    return archive("quarterturn archive 1\n" + line(name, LINE), new Entry(name, LINE));
  }

  private void refused(byte[] bytes, String why) throws IOException {
    Files.write(archive, bytes);
    Map<String, String> before = Invented.holds(folder);
    IOException e = assertThrows(IOException.class, () -> Unpacking.of(archive, back), why);
    assertThat(e).hasMessageThat().contains(archive + " is no whole archive: ");
    assertThat(e).hasMessageThat().contains(why);
    assertThat(e).hasMessageThat().endsWith("; nothing was unpacked");
    assertThat(Invented.holds(folder)).isEqualTo(before);
    assertThat(Files.exists(folder.resolve("to"))).isFalse();
  }

  @Test
  void onlyNamesThatOurOwnFilesHaveAreUnpacked() throws IOException {
    for (String name :
        List.of(
            "../sessions/out.jsonl",
            "sessions/../../out.jsonl",
            "sessions/../instruments/my-bass.yaml",
            "/tmp/out.jsonl",
            "C:/out.jsonl",
            "sessions\\out.jsonl",
            "sessions/..\\out.jsonl",
            "sessions//out.jsonl",
            "sessions/./out.jsonl",
            "sessions/deep/out.jsonl",
            "sessions/",
            "sessions/.jsonl",
            "sessions/.hidden.jsonl",
            "sessions/Out.jsonl",
            "sessions/out .jsonl",
            "sessions/out.jsonl ",
            "sessions/öut.jsonl",
            "sessions/out\u202e.jsonl",
            "sessions/out\u0000.jsonl",
            "sessions/con.jsonl",
            "sessions/out.yaml",
            "sessions/out.jsonl.lock",
            "sessions/" + "a".repeat(42) + ".jsonl",
            "instruments/out.jsonl",
            "Sessions/out.jsonl",
            "settings.yaml",
            "safety/limits.yaml",
            "out.jsonl")) {
      refused(named(name), "line 2 of its manifest names no session or instrument");
    }
  }

  @Test
  void theEntriesAreThoseOfTheManifest() throws IOException {
    String manifest = "quarterturn archive 1\n" + line(GOOD, LINE);
    Entry good = new Entry(GOOD, LINE);
    refused(archive(manifest), "its manifest names " + GOOD + ", which is not in it");
    refused(
        archive(manifest, good, new Entry("../evil.txt", LINE)),
        "its manifest does not name ../evil.txt there");
    refused(
        archive(manifest, new Entry("\u001b[2J", LINE), good),
        "its manifest does not name \ufffd[2J there");
    refused(
        archive(
            manifest + line("sessions/a.jsonl", LINE), good, new Entry("sessions/a.jsonl", LINE)),
        "line 3 of its manifest is out of order");
    refused(archive(manifest + line(GOOD, LINE), good), "line 3 of its manifest is out of order");
    String twice = new String(archive(manifest, good, new Entry("sessions/g00d.jsonl", LINE)), ISO);
    refused(
        twice.replace("g00d", "good").getBytes(ISO),
        "its manifest does not name " + GOOD + " there");
    refused(zip(List.of(good)), "it does not begin with a manifest");
    refused(
        zip(List.of(good, new Entry(Manifest.NAME, LINE))), "it does not begin with a manifest");
  }

  private static final Charset ISO = StandardCharsets.ISO_8859_1;

  @Test
  void theManifestIsReadToTheLetter() throws IOException {
    Entry good = new Entry(GOOD, LINE);
    String line = line(GOOD, LINE);
    refused(archive("", good), "its manifest was cut short");
    refused(archive("quarterturn archive 1\n" + line.strip(), good), "was cut short");
    refused(archive("\n", good), "its manifest does not begin like one");
    refused(archive("quarterturn archive 1 \n" + line, good), "does not begin like one");
    refused(archive("quarterturn archive 2\n" + line, good), "use a newer quarterturn");
    refused(archive("quarterturn archive 999999999\n" + line, good), "use a newer quarterturn");
    for (String wrong :
        List.of(
            line.toUpperCase(Locale.ROOT),
            line.replace(" 3 ", " -3 "),
            line.replace(" 3 ", " 03 "),
            line.replace(" 3 ", " 99999999999999999999 "),
            line.replace(" ", "  "),
            line.substring(1),
            "\n")) {
      refused(archive("quarterturn archive 1\n" + wrong, good), "line 2 of its manifest names no");
    }
  }

  @Test
  void eachFileAgreesWithItsLengthAndSum() throws IOException {
    String manifest = "quarterturn archive 1\n" + line(GOOD, LINE);
    byte[] other = "[]\n".getBytes(StandardCharsets.UTF_8);
    refused(archive(manifest, new Entry(GOOD, other)), "does not agree with its sum");
    refused(archive(manifest, new Entry(GOOD, new byte[0])), "does not agree with its sum");
    refused(archive(manifest, new Entry(GOOD, "{}\n\n".getBytes(ISO))), "is longer than");
    refused(archive(manifest, new Entry(GOOD, new byte[100_000])), "is longer than");
    String large = line(GOOD, LINE).replace(" 3 ", " " + (ForcedFile.MOST_BYTES + 1) + " ");
    refused(
        archive("quarterturn archive 1\n" + large, new Entry(GOOD, LINE)),
        "is far too large to be one of ours");
  }

  @Test
  void noEntryIsReadBeyondWhatItMayHold() throws IOException {
    String manifest = "quarterturn archive 1\n" + line(GOOD, LINE);
    byte[] lying = archive(manifest, new Entry(GOOD, new byte[100_000]));
    int last = new String(lying, ISO).lastIndexOf("PK\u0001\u0002");
    // The length that the archive's own list states of its last entry.
    System.arraycopy(new byte[] {3, 0, 0, 0}, 0, lying, last + 24, 4);
    refused(lying, "is no whole archive");
    byte[] bomb = new byte[(int) ForcedFile.MOST_BYTES + 1];
    refused(zip(List.of(new Entry(Manifest.NAME, bomb))), "is longer than it may be");
  }

  @Test
  void whatHasNoRoomIsRefusedBeforeItIsRead() {
    IOException e = assertThrows(IOException.class, () -> Unpacking.room(Long.MAX_VALUE, back));
    assertThat(e).hasMessageThat().startsWith("it needs 9200000 TB, and " + folder + " has room");
  }

  @Test
  void cutShortAnywhereItIsRefused() throws IOException {
    Packing.of(Invented.folder(folder.resolve("data")), archive);
    byte[] whole = Files.readAllBytes(archive);
    Random random = new Random(24);
    for (int i = 0; i < Draws.of(25); i++) {
      refused(Arrays.copyOf(whole, random.nextInt(whole.length)), "cut short");
    }
    refused("no ZIP at all".getBytes(StandardCharsets.UTF_8), "no ZIP at all");
    refused(new byte[0], "cut short");
  }

  @Test
  void changedAnywhereItIsRefusedOrTheSame() throws IOException {
    Path data = Invented.folder(folder.resolve("data"));
    Packing.of(data, archive);
    byte[] whole = Files.readAllBytes(archive);
    Unpacking.Unpacked same = Unpacking.of(archive, data);
    assertThat(same.differ()).isEmpty();
    Random random = new Random(24);
    int refused = 0;
    for (int i = 0; i < Draws.of(100); i++) {
      byte[] changed = whole.clone();
      int at = random.nextInt(whole.length);
      changed[at] ^= (byte) (1 << random.nextInt(8));
      Files.write(archive, changed);
      try {
        assertWithMessage("byte %s", at).that(Unpacking.of(archive, data)).isEqualTo(same);
      } catch (IOException e) {
        assertThat(e).hasMessageThat().contains(" is no whole archive: ");
        refused++;
      }
    }
    assertThat(refused).isGreaterThan(Draws.of(50));
  }

  @Test
  void whatIsNoFileIsSaid() throws IOException {
    for (Path none : List.of(folder.resolve("none.zip"), folder)) {
      IOException e = assertThrows(IOException.class, () -> Unpacking.of(none, back));
      assertThat(e).hasMessageThat().startsWith(none + "");
      assertThat(Files.exists(folder.resolve("to"))).isFalse();
    }
  }
}
