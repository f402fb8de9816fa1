package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.teacher.Desk;
import quarterturn.lesson.teacher.DeskDialogue;

/** A desk on a pipe; while it waits, the benches look. */
class LineDeskTest {
  @TempDir Path folder;

  /** Benches take orders in every pause, so that no test waits. */
  private record Pausing(PipeSource pipe, Path folder) implements LineSource {
    @Override
    public @Nullable String readLine(String prompt, List<String> words) throws IOException {
      return pipe.readLine(prompt, words);
    }

    @Override
    public void pause(Duration time) {
      try {
        InventedLesson.take(folder, InventedLesson.NOW);
      } catch (Exception e) {
        throw new AssertionError(e);
      }
    }

    @Override
    public boolean typedByHand() {
      return false;
    }

    @Override
    public int width() {
      return 200;
    }
  }

  private String talk(String... typed) throws Exception {
    InventedLesson.write(folder);
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    String lines = String.join("\n", typed) + "\n";
    Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
    Desk.Sheets sheets = (plan, logs) -> Path.of("sheets-desk");
    try (Desk desk = Desk.open(folder, "desk", clock, sheets, InventedLesson.TITLES)) {
      PipeSource pipe = new PipeSource(new StringReader(lines), writer, false);
      DeskDialogue dialogue = new DeskDialogue(desk);
      assertThat(LineDesk.run(dialogue, new Pausing(pipe, folder), writer)).isEqualTo(0);
    }
    return out.toString();
  }

  @Test
  void itSaysHowEveryBenchStandsAndWhatCameOfAnOrder() throws Exception {
    String said = talk("release red tighten 1/8", "wait taken", "hold red", "back", "quit");
    assertThat(said.lines().toList())
        .containsAtLeast(
            "The desk \"desk\" of the lesson \"The first turn (invented)\". Type help for what"
                + " can be typed.",
            "There: 3 benches, 1 stopped, 1 waits for you.",
            "Released Red: the turn, read back before it is made.",
            "desk: release Red (Red taken)",
            "The bench waits until you let it go on. Say why, in a few words.",
            "The desk is left; the lesson goes on. Open it again to see it.")
        .inOrder();
    assertThat(said).doesNotContain("Held Red");
  }

  @Test
  void theEndIsAskedForAndWaitedFor() throws Exception {
    String said = talk("end", "quietly", "wait long", "end", "yes", "wait over 30", "show");
    assertThat(said).contains("The lesson goes on.");
    assertThat(said).contains("\"long\" can't be waited for;");
    assertThat(said).contains("There: 3 benches, the lesson is over.");
    assertThat(said).endsWith("The lesson is ended. The sheets are in sheets-desk.\n");
  }

  @Test
  void helpTellsTheFacesOwnWordsToo() throws Exception {
    String help = talk("help");
    for (String word : List.of("release RED", "wait 60", "back", "quit")) {
      assertThat(help).contains(word);
    }
  }

  @Test
  void aWordOfTheFaceIsAReasonWhereOneIsAsked() throws Exception {
    assertThat(talk("hold red", "wait for me", "orders")).contains("hold Red: wait for me");
  }
}
