package quarterturn.session.journal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.session.Event;
import quarterturn.session.store.Samples;

@Tag("slow")
class JournalDamageTest {
  private static final List<Event> EVENTS = Samples.everyKind();

  @TempDir Path folder;

  /** The lines of a sound journal, each with its newline. */
  private static List<String> lines() {
    List<String> out = new ArrayList<>();
    SummedLines.Line line = Journal.FORMAT.header(Samples.HEADER);
    out.add(line.text());
    for (int n = 1; n <= EVENTS.size(); n++) {
      line = Journal.FORMAT.event(n, EVENTS.get(n - 1), line.sum());
      out.add(line.text());
    }
    return out;
  }

  private static byte[] whole() {
    return String.join("", lines()).getBytes(StandardCharsets.UTF_8);
  }

  private static Journal.Contents read(byte[] bytes) {
    return Journal.FORMAT.scan(bytes, "demo.jsonl").log();
  }

  private static Journal.Contents read(List<String> lines) {
    return read(String.join("", lines).getBytes(StandardCharsets.UTF_8));
  }

  private static int newlines(byte[] bytes) {
    int count = 0;
    for (byte b : bytes) {
      count += b == '\n' ? 1 : 0;
    }
    return count;
  }

  @Test
  void cutAtAnyByteTheWholeLinesStand() {
    byte[] whole = whole();
    for (int length = 0; length <= whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      int kept = newlines(cut);
      Journal.Contents contents = read(cut);
      assertWithMessage("cut to %s bytes", length)
          .that(contents.events())
          .isEqualTo(EVENTS.subList(0, Math.max(0, kept - 1)));
      assertThat(contents.header()).isEqualTo(kept == 0 ? null : Samples.HEADER);
      assertThat(contents.damagedAtLine()).isEqualTo(kept == 0 ? 1 : 0);
      boolean clean = kept > 0 && whole[length - 1] == '\n';
      assertThat(contents.notice() == null).isEqualTo(clean);
    }
  }

  @Test
  void cutAtAnyByteItGoesOnClean() throws IOException {
    // A shorter journal than above, since every cut costs several writes that are forced to disk.
    List<String> lines = lines().subList(0, 7);
    byte[] whole = String.join("", lines).getBytes(StandardCharsets.UTF_8);
    int header = lines.get(0).length();
    Event more = EVENTS.get(20);
    Path file = folder.resolve("demo.jsonl");
    for (int length = header; length <= whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      Files.write(file, cut);
      List<Event> wanted = new ArrayList<>(EVENTS.subList(0, newlines(cut) - 1));
      try (Journal journal = Journal.open(file)) {
        assertThat(journal.found().events()).isEqualTo(wanted);
        journal.append(List.of(more));
      }
      wanted.add(more);
      assertThat(Journal.read(file))
          .isEqualTo(new Journal.Contents(Samples.HEADER, wanted, null, 0));
    }
  }

  @Test
  void withoutAWholeHeaderItIsNotOpened() throws IOException {
    Path file = folder.resolve("demo.jsonl");
    byte[] whole = whole();
    for (int length : new int[] {0, 1, 20, lines().get(0).length() - 1}) {
      Files.write(file, Arrays.copyOf(whole, length));
      IOException e = assertThrows(IOException.class, () -> Journal.open(file).close());
      assertThat(e).hasMessageThat().contains("start a new session");
      assertThat(Files.size(file)).isEqualTo(length);
    }
  }

  /** Whichever bit of the file flips, nobody is handed events that did not happen. */
  @Test
  void aFlippedBitNeverPassesUnseen() {
    Random random = new Random(20270301);
    byte[] whole = whole();
    int torn = 0;
    for (int i = 0; i < whole.length; i++) {
      byte[] bad = whole.clone();
      bad[i] ^= (byte) (1 << random.nextInt(8));
      Journal.Contents contents = read(bad);
      int line = newlines(Arrays.copyOf(whole, i)) + 1;
      assertWithMessage("byte %s", i).that(contents.notice()).isNotNull();
      assertThat(contents.events()).isEqualTo(EVENTS.subList(0, Math.max(0, line - 2)));
      if (contents.damaged()) {
        assertThat(contents.damagedAtLine()).isEqualTo(line);
        assertThat(contents.notice()).contains("line " + line + " of demo.jsonl");
      } else {
        torn++;
      }
    }
    // Only the very last newline, once spoiled, looks like a line that was cut short.
    assertThat(torn).isEqualTo(1);
  }

  @Test
  void aRemovedLineIsNamed() {
    for (int i = 1; i < lines().size() - 1; i++) {
      List<String> lines = lines();
      lines.remove(i);
      Journal.Contents contents = read(lines);
      assertThat(contents.damagedAtLine()).isEqualTo(i + 1);
      assertThat(contents.events()).isEqualTo(EVENTS.subList(0, i - 1));
      assertThat(contents.notice()).contains("removed, doubled or moved");
    }
  }

  @Test
  void swappedLinesAreNamed() {
    for (int i = 1; i < lines().size() - 1; i++) {
      List<String> lines = lines();
      lines.add(i, lines.remove(i + 1));
      Journal.Contents contents = read(lines);
      assertThat(contents.damagedAtLine()).isEqualTo(i + 1);
      assertThat(contents.events()).isEqualTo(EVENTS.subList(0, i - 1));
    }
  }

  @Test
  void aDoubledLineIsNamed() {
    for (int i = 1; i < lines().size(); i++) {
      List<String> lines = lines();
      lines.add(i, lines.get(i));
      Journal.Contents contents = read(lines);
      assertThat(contents.damagedAtLine()).isEqualTo(i + 2);
      assertThat(contents.events()).isEqualTo(EVENTS.subList(0, i));
    }
  }

  /** Renumbering what was tampered with does not help: the sums hang together. */
  @Test
  void aLineFromAnotherSessionIsNamed() {
    List<String> lines = lines();
    SummedLines.Line foreign = Journal.FORMAT.event(3, EVENTS.get(20), "0badcafe");
    lines.set(3, foreign.text());
    Journal.Contents contents = read(lines);
    assertThat(contents.damagedAtLine()).isEqualTo(4);
    assertThat(contents.notice()).contains("does not agree with its sum");
  }

  @Test
  void aDamagedJournalIsReadButNotOpened() throws IOException {
    Path file = folder.resolve("demo.jsonl");
    List<String> lines = lines();
    lines.set(5, "\n");
    Files.writeString(file, String.join("", lines));
    byte[] before = Files.readAllBytes(file);
    assertThat(Journal.read(file).events()).isEqualTo(EVENTS.subList(0, 4));
    IOException e = assertThrows(IOException.class, () -> Journal.open(file).close());
    assertThat(e).hasMessageThat().contains("line 6 of demo.jsonl");
    assertThat(e).hasMessageThat().contains("The 4 events before it are kept");
    assertThat(e).hasMessageThat().contains("Start a new session");
    assertThat(Files.readAllBytes(file)).isEqualTo(before);
  }

  /** A crash may keep the length of a file and lose its last block, which then is zeros. */
  @Test
  void aTailOfZerosIsLeftOut() {
    byte[] padded = Arrays.copyOf(whole(), whole().length + 4096);
    Journal.Contents contents = read(padded);
    assertThat(contents.damaged()).isFalse();
    assertThat(contents.events()).isEqualTo(EVENTS);
    assertThat(contents.notice()).contains("cut short");
  }

  @Test
  void aNewerFormatIsNamed() {
    Journal.Contents contents =
        read(List.of("{\"quarterturn\":2,\"session\":\"x\",\"sum\":\"00000000\"}\n"));
    assertThat(contents.header()).isNull();
    assertThat(contents.notice()).contains("format 2");
    assertThat(contents.notice()).contains("use a newer quarterturn");
  }

  @Test
  void anAlienFileIsNamed() {
    for (String alien : List.of("{\"a\":1}\n", "hello\n", "\n", "[]\n", "\u0000\u00ff\n", "7\n")) {
      Journal.Contents contents = read(List.of(alien));
      assertThat(contents.header()).isNull();
      assertThat(contents.damagedAtLine()).isEqualTo(1);
      assertThat(contents.notice()).contains("line 1 of demo.jsonl");
    }
  }
}
