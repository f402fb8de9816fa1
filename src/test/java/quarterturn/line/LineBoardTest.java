package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.teacher.Board;
import quarterturn.report.Dates;

/** A board on a pipe; while it waits, the benches look. */
class LineBoardTest {
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
      return 80;
    }
  }

  private String talk(String... typed) throws Exception {
    if (!Files.exists(folder.resolve("lesson.yaml"))) {
      InventedLesson.write(folder);
    }
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    String lines = String.join("\n", typed) + "\n";
    Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
    try (Board board =
        Board.open(folder, "board", clock, (plan, logs) -> Path.of("sheets-board"))) {
      PipeSource pipe = new PipeSource(new StringReader(lines), writer, false);
      int status =
          LineBoard.still(board, new Pausing(pipe, folder), writer, new Dates(ZoneOffset.UTC));
      assertThat(status).isEqualTo(0);
    }
    return out.toString();
  }

  private static void golden(String name, String text) throws IOException {
    Path file = Path.of("src/test/resources/quarterturn/line/board", name + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file, text);
    }
    String wanted = Files.exists(file) ? Files.readString(file) : "";
    assertWithMessage(name).that(text).isEqualTo(wanted);
  }

  @Test
  void aWholeLesson() throws Exception {
    golden(
        "board",
        talk(
            "show red",
            "release red",
            "release red ok",
            "release red tighten 1/4",
            "release red tighten 1/8",
            "release blue",
            "wait taken",
            "hold green Look here.",
            "level ana own",
            "freeze eda",
            "wait taken",
            "release all",
            "spread",
            "orders",
            "end",
            "no",
            "end",
            "yes",
            "wait over 30",
            "show",
            "sheets"));
  }

  @Test
  void helpTellsEveryWord() throws Exception {
    String help = talk("help");
    for (String word : BoardTyped.WORDS) {
      assertWithMessage(word).that(help).contains(word);
    }
    for (String line : BoardTyped.HELP) {
      assertThat(line.length()).isAtMost(80);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "relase red | \"relase\" is no command. There are:",
        "release roof 0.3 | No bench is called \"roof 0.3\". There are: Blue, Green, Red.",
        "release | Say which bench: Blue, Green, Red.",
        "hold red | Say why, in a few words: the bench shows it.",
        "hold all | Say why, in a few words: the bench shows it.",
        "level ana | Say which level: worked, last-missing, two-missing, own.",
        "level ana top | \"top\" is no level; there are worked,",
        "level zoe own | No student is called \"zoe own\".",
        "freeze ana now | \"now\" is no level;",
        "wait long | \"long\" can't be waited for;",
        "end now | After end nothing can stand; \"now\" does.",
        "release green | Nothing keeps Green.",
        "release all | No bench is held by a board;",
        "release blue 0.3 | Not done: nothing is to be read back here;"
      })
  void errorsSayWhatToType(String typed, String says) throws Exception {
    assertThat(talk(typed).replaceAll("\\s+", " ")).contains(says);
  }
}
