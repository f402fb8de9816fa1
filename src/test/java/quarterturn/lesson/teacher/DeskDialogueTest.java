package quarterturn.lesson.teacher;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;

/** A teacher's orders on an invented lesson, and what is asked of them. */
class DeskDialogueTest {
  private static final String LOOK = "(the benches look)";

  @TempDir Path folder;
  private @Nullable Desk opened;
  private @Nullable DeskDialogue begun;

  private Desk desk(String name) throws Exception {
    Clock clock = Clock.fixed(InventedLesson.NOW, ZoneOffset.UTC);
    return Desk.open(
        folder, name, clock, (plan, logs) -> Path.of("sheets-desk"), InventedLesson.TITLES);
  }

  @BeforeEach
  void open() throws Exception {
    InventedLesson.write(folder);
    opened = desk("desk");
    begun = new DeskDialogue(opened);
  }

  @AfterEach
  void close() throws Exception {
    requireNonNull(opened).close();
  }

  private DeskDialogue dialogue() {
    return requireNonNull(begun);
  }

  private DeskView.Row row(String bench) {
    return requireNonNull(dialogue().shown().row(bench));
  }

  private String asked() {
    return requireNonNull(dialogue().asked()).title();
  }

  /** What is told and asked of some lines. */
  private List<String> talk(String... typed) throws Exception {
    List<String> out = new ArrayList<>();
    for (String line : typed) {
      out.add("> " + line);
      if (line.equals(LOOK)) {
        InventedLesson.take(folder, InventedLesson.NOW);
      } else {
        try {
          out.addAll(dialogue().take(line).told());
        } catch (RefusedException e) {
          out.add("Refused: " + e.getMessage());
        }
      }
      out.addAll(dialogue().news());
      Question asked = dialogue().asked();
      if (asked instanceof Question.Asked words) {
        out.add("? " + asked.title());
        out.addAll(asked.lines());
        out.add(words.asks());
      }
    }
    return out;
  }

  @Test
  void aWholeLesson() throws Exception {
    List<String> said = new ArrayList<>(dialogue().show());
    said.addAll(
        talk(
            "show red",
            "release red",
            "ok",
            "tighten 1/4",
            "tighten 1/8",
            "release blue",
            LOOK,
            "hold green Look here.",
            "level ana own",
            "freeze eda",
            LOOK,
            "release all",
            "spread",
            "orders",
            "end",
            "no",
            "end",
            "yes",
            LOOK,
            "show",
            "sheets"));
    said.add(dialogue().leave());
    String text = String.join("\n", said) + "\n";
    Path file = Path.of("src/test/resources/quarterturn/report/lesson/desk.txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(file, text);
    }
    assertThat(text).isEqualTo(Files.readString(file));
  }

  @Test
  void helpTellsEveryWord() throws Exception {
    String help = String.join("\n", dialogue().take("help").told());
    for (String word : dialogue().words()) {
      assertWithMessage(word).that(help.concat("help")).contains(word);
    }
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "relase red | \"relase\" is no order; help says what there is.",
        "release roof 0.3 | No bench is called \"roof 0.3\". There are: Blue, Green, Red.",
        "release | Say which bench: Blue, Green, Red.",
        "level ana | Not done: choose a level: worked, last-missing, two-missing or own.",
        "level ana top | Not done: choose a level: worked,",
        "level zoe own | No student is called \"zoe own\".",
        "freeze ana now | Not done: choose a level:",
        "release green | Nothing keeps Green.",
        "release all | No bench is held by a desk;",
        "release blue 0.3 | Not done: nothing is to be read back here;"
      })
  void refusalsSayWhatToType(String typed, String says) {
    assertThat(assertThrows(RefusedException.class, () -> dialogue().take(typed)))
        .hasMessageThat()
        .startsWith(says);
    assertThat(dialogue().asked()).isNull();
  }

  @Test
  void aHoldWithoutAReasonIsAskedForOne() throws Exception {
    dialogue().take("hold red");
    assertThat(asked()).isEqualTo("Red: Hold the bench");
    assertThat(assertThrows(RefusedException.class, () -> dialogue().take(" ")))
        .hasMessageThat()
        .isEqualTo("Say why, in a few words: the bench shows it.");
    assertThat(dialogue().take("all look here").told()).containsExactly("Held Red.");
    assertThat(dialogue().asked()).isNull();
    dialogue().take("hold all");
    assertThat(asked()).isEqualTo("Hold every bench");
    assertThat(dialogue().back()).isTrue();
    assertThat(dialogue().back()).isFalse();
    assertThat(dialogue().shown().ended()).isFalse();
  }

  /** One key is soon pressed; a typed line says which bench it means. */
  @Test
  void aKeyLetsNothingGoOnBeforeItIsConfirmed() throws Exception {
    dialogue().release(row("blue"));
    assertThat(dialogue().asked()).isInstanceOf(Question.Show.class);
    assertThat(dialogue().shown().unanswered()).isEmpty();
    assertThat(dialogue().take("").told()).containsExactly("Released Blue: the stop.");
    RefusedException again =
        assertThrows(RefusedException.class, () -> dialogue().release(row("blue")));
    assertThat(again).hasMessageThat().contains("was let go on by desk already");
  }

  /** An answer was meant for the hold that was shown, so it must not clear the stop. */
  @Test
  void aReleaseIsLeftWhereAStopComesFirst() throws Exception {
    dialogue().release(row("red"));
    assertThat(dialogue().news()).isEmpty();
    assertThat(asked()).isEqualTo("Red: Let it go on");
    try (var red = InventedLesson.bench(folder, "red")) {
      red.record(new LessonEvent.Stopped(InventedLesson.NOW, "It slips."));
    }
    assertThat(String.join(" ", dialogue().news())).contains("STOPPED: It slips");
    assertThat(dialogue().asked()).isNull();
  }

  @Test
  void whatAnotherDeskLetsGoOnIsNotAskedForAnyMore() throws Exception {
    dialogue().release(row("red"));
    try (Desk annex = desk("annex")) {
      annex.release("red", "tighten 1/8", annex.sight());
    }
    dialogue().news();
    assertThat(dialogue().asked()).isNull();
  }

  @Test
  void theEndIsAskedForAndGivenOnce() throws Exception {
    for (String no : List.of("no", "", "y")) {
      dialogue().take("end");
      assertThat(dialogue().take(no).told()).containsExactly("The lesson goes on.");
    }
    dialogue().take("end");
    assertThat(String.join(" ", dialogue().question().lines())).contains("Blue: STOPPED");
    dialogue().take("yes");
    dialogue().news();
    assertThat(dialogue().shown().ended()).isTrue();
    assertThat(assertThrows(RefusedException.class, () -> dialogue().take("end")))
        .hasMessageThat()
        .startsWith("The lesson has been ended already.");
  }

  @Test
  void whatComesBackIsOpenToTheTeacher() throws Exception {
    dialogue().take("missed red");
    Question.Words asked = (Question.Words) requireNonNull(dialogue().asked());
    assertThat(asked.lines()).hasSize(2);
    assertThat(asked.lines().get(0)).startsWith("1. Ana, does not: ");
    assertThat(asked.lines().get(1)).startsWith("2. Ben, comes back: ");
    assertThrows(RefusedException.class, () -> dialogue().take("3"));
    assertThat(dialogue().take("1, 2").told())
        .containsExactly("Ana: it comes back next time.", "Ben: it does not come back.");
    dialogue().take("missed red");
    assertThat(((Question.Words) requireNonNull(dialogue().asked())).lines().get(0))
        .startsWith("1. Ana, comes back: ");
    assertThat(dialogue().take("").told()).isEmpty();
    assertThat(dialogue().take("missed blue").told())
        .containsExactly("Nothing was asked at Blue yet.");
    // No bench is asked to take it.
    InventedLesson.take(folder, InventedLesson.NOW);
    assertThat(dialogue().take("orders").told().toString()).doesNotContain("come");
  }
}
