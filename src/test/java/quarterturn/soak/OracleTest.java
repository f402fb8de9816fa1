package quarterturn.soak;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.Samples;
import quarterturn.unit.Turn;

/** What random play is held to notices what it should. */
class OracleTest {
  @TempDir Path folder;

  private Path write(String name, String text) throws IOException {
    return Files.writeString(folder.resolve(name + ".jsonl"), text);
  }

  private List<String> lost(String had, String has) throws IOException {
    write("one", had);
    Records before = Records.of(folder);
    write("one", has);
    return before.lost(Records.of(folder));
  }

  @Test
  void aLineThatIsLostOrRewrittenIsNoticed() throws IOException {
    assertThat(lost("a\nb\n", "a\nb\nc\n")).isEmpty();
    assertThat(lost("a\nb\n", "a\n")).hasSize(1);
    assertThat(lost("a\nb\n", "a\nB\nc\n")).hasSize(1);
  }

  @Test
  void aLineCutShortMayGo() throws IOException {
    assertThat(lost("a\nb", "a\nc\n")).isEmpty();
  }

  @Test
  void aFileThatIsGoneIsNoticed() throws IOException {
    Path file = write("one", "a\n");
    Records before = Records.of(folder);
    Files.delete(file);
    assertThat(before.lost(Records.of(folder))).hasSize(1);
  }

  private List<String> broken(Event... events) throws IOException {
    Path file = folder.resolve("two.jsonl");
    Files.deleteIfExists(file);
    List<Event> all = new ArrayList<>(List.of(Samples.started(0, "blue")));
    all.addAll(List.of(events));
    try (Journal journal = Journal.create(file, Samples.HEADER)) {
      journal.append(all);
    }
    return LimitsKept.broken(List.of(file));
  }

  private static Event read(int minute) {
    return Samples.relief(minute, Which.LOWEST, 0.6, 0.65);
  }

  private static Event.Offered offered(int minute, double turns) {
    return new Event.Offered(Samples.at(minute), "turn", new Turn(turns));
  }

  private static Event turned(int minute, double turns) {
    return Samples.turned(minute, new Turn(turns));
  }

  @Test
  void whatIsAskedForBeyondALimitIsNoticed() throws IOException {
    assertThat(broken(read(1), offered(2, 0.25), turned(3, 0.25), read(4), offered(5, 0.25)))
        .isEmpty();
    assertThat(broken(read(1), offered(2, 0.375))).hasSize(1);
    assertThat(broken(read(1), offered(2, 0.125), turned(3, 0.125), offered(4, 0.125))).hasSize(1);
    assertThat(broken(read(1), turned(3, 0.375), read(4), offered(5, 0.25))).hasSize(1);
    assertThat(broken(read(1), turned(3, 1), read(2 * 24 * 60), offered(2 * 24 * 60, 0.125)))
        .hasSize(1);
  }

  @Test
  void anAnswerThatIsTakenAndNotOnRecordIsNoticed() throws IOException {
    String asked = "{\"prompt\":\"tell\",\"step\":\"tune\"}\n";
    write("one", "a\n");
    Records before = Records.of(folder);
    Acknowledged answer = Acknowledged.of(Face.LINES, asked, before);
    assertThat(answer.missing(asked + "{\"error\":\"no\"}\n" + asked, before)).isEmpty();
    assertThat(answer.missing(asked + asked, before)).hasSize(1);
    write("one", "a\n{\"event\":\"told\"}\n");
    assertThat(answer.missing(asked + asked, Records.of(folder))).isEmpty();
  }
}
