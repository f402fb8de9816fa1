package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.InventedLesson;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.rehearsal.simulated.NamedNeck;

/** A lesson follows another one in its folder, and is as that one was but for what is said. */
@Isolated
class LessonNextTest {
  private static final Clock WEEK_ON =
      Clock.fixed(InventedLesson.NOW.plus(Duration.ofDays(7)), ZoneOffset.UTC);

  @TempDir Path folder;

  @BeforeEach
  void lesson() throws Exception {
    InventedLesson.write(folder);
  }

  private Captured run(String in, String... args) {
    String[] begin = {"lesson", args[0], folder.toString()};
    String[] rest = Arrays.copyOfRange(args, 1, args.length);
    return Captured.of(
        WEEK_ON, in, Stream.of(begin, rest).flatMap(Arrays::stream).toArray(String[]::new));
  }

  private Plan plan() throws Exception {
    return PlanFile.in(folder);
  }

  @Test
  void keepsRosterTitleLevelsAndPlan() throws Exception {
    Captured made = run("", "new", "--next");
    assertThat(made.status()).isEqualTo(0);
    assertThat(made.out())
        .contains(
            "It is planned as before; 6 students, each at the level that was reached. The simulated"
                + " necks read anew.");
    Plan was = InventedLesson.PLAN;
    Plan is = plan();
    assertThat(is.lesson()).isEqualTo("2027-03-08-1-the-first-turn-invented");
    assertThat(is.title()).isEqualTo(was.title());
    assertThat(is.procedures()).isEqualTo(was.procedures());
    assertThat(is.instruments().size()).isEqualTo(was.instruments().size());
    for (int i = 0; i < is.instruments().size(); i++) {
      Plan.Setup neck = was.instruments().get(i);
      int seed = neck.seed() + was.instruments().size();
      assertThat(is.instruments().get(i))
          .isEqualTo(new Plan.Setup(neck.bench(), neck.kind(), neck.neck(), seed));
    }
    assertThat(is.level()).isEqualTo(was.level());
    assertThat(is.everyTurn()).isEqualTo(was.everyTurn());
    assertThat(is.holds()).isEqualTo(was.holds());
    assertThat(is.blind()).isEqualTo(was.blind());
    assertThat(is.students()).containsExactly("Ana", "Ben", "Cleo", "Dov", "Eda", "Fin").inOrder();
    assertThat(is.levels()).isEqualTo(Map.of("Ben", Level.LAST_MISSING));
    assertThat(PlanFile.read(LessonFolder.PLAN, PlanFile.text(is).getBytes())).isEqualTo(is);
  }

  @Test
  void aStudentBeginsWhereTheLastLessonEnded() throws Exception {
    run("", "new", "--next");
    assertThat(run("quit\n", "join", "--bench", "red", "--as", "Ben,Gil", "--plain").status())
        .isEqualTo(0);
    List<String> lines = Files.readAllLines(folder.resolve("red-2.jsonl"));
    assertThat(lines.get(2)).contains("\"student\":\"Ben\",\"level\":\"last-missing\"");
    assertThat(lines.get(3)).contains("\"student\":\"Gil\",\"sum\"");
  }

  @Test
  void whatIsSaidCountsAndTheRestStays() throws Exception {
    Captured made =
        run(
            "",
            "new",
            "--next",
            "--neck",
            "dead",
            "--no-blind",
            "--level",
            "own",
            "--title",
            "Two");
    assertThat(made.out()).contains("as before but for title, necks, level, blind; 6 students.");
    assertThat(plan().forBench("left"))
        .isEqualTo(new Plan.Setup(null, "bass-34", NamedNeck.DEAD, 1));
    assertThat(plan().blind()).isFalse();
    assertThat(plan().everyTurn()).isTrue();
    assertThat(plan().levels()).isEmpty();
    assertThat(plan().level()).isEqualTo(Level.OWN);
  }

  @Test
  void askedInLinesItOffersWhatWas() throws Exception {
    Captured made = run("{\"answer\":\"\"}\n".repeat(8), "new", "--next", "--lines");
    assertThat(made.out()).contains("The first turn (invented)");
    assertThat(plan().title()).isEqualTo(InventedLesson.PLAN.title());
    assertThat(plan().blind()).isTrue();
  }
}
