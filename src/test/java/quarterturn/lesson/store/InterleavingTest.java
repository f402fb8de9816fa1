package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.Draws;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonProof;
import quarterturn.lesson.RandomBench;
import quarterturn.lesson.RandomDesk;
import quarterturn.lesson.teacher.DeskView;

/** Three benches and two desks in any order, with crashes, late joins and wrong clocks. */
@Tag("slow")
class InterleavingTest {
  private static final int MOVES = 350;

  @TempDir Path folder;

  static LongStream seeds() {
    return LongStream.rangeClosed(1, Math.min(6, Draws.of(2)));
  }

  @ParameterizedTest
  @MethodSource("seeds")
  void whateverTheOrderTheFilesSayTheSameAndNothingIsSeenTooEarly(long seed) throws Exception {
    Random random = new Random(seed);
    List<RandomBench> benches = new ArrayList<>();
    for (int i = 0; i < 3; i++) {
      benches.add(new RandomBench(folder, "bench-" + (char) ('a' + i), random));
    }
    List<RandomDesk> desks =
        List.of(new RandomDesk(folder, "desk-a", random), new RandomDesk(folder, "desk-b", random));
    for (int move = 0; move < MOVES; move++) {
      // One bench joins late.
      int who = random.nextInt(move < MOVES / 3 ? 2 : 3);
      List<WriterLog> seen = LessonFolder.read(folder).logs();
      Collections.shuffle(seen = new ArrayList<>(seen), random);
      if (random.nextInt(4) == 0) {
        desks.get(random.nextInt(2)).move(seen);
      } else {
        benches.get(who).move(seen);
      }
    }
    List<WriterLog> logs = new ArrayList<>(LessonFolder.read(folder).logs());
    DeskView view = DeskView.of(Demo.PLAN, logs);
    assertThat(view.rows()).hasSize(3);
    for (RandomBench bench : benches) {
      assertThat(view.rows().stream().map(DeskView.Row::bench)).contains(bench.lesson());
      bench.close();
    }
    for (RandomDesk desk : desks) {
      desk.close();
    }
    for (int i = 0; i < 5; i++) {
      Collections.shuffle(logs, random);
      assertThat(DeskView.of(Demo.PLAN, logs)).isEqualTo(view);
    }
    int results = 0;
    for (WriterLog log : logs) {
      if (requireNonNull(log.header()).role() == WriterLog.Part.BENCH) {
        assertThat(LessonProof.of(log, logs)).isEmpty();
        results += inOrder(log);
      }
    }
    assertWithMessage("readings and turns that came to a result").that(results).isAtLeast(5);
  }

  /** Looks at the order of lines alone, apart from the lesson's own fold and rules. */
  private static int inOrder(WriterLog log) {
    Set<String> present = new HashSet<>();
    Set<String> predicted = new HashSet<>();
    Set<String> read = new HashSet<>();
    Set<Integer> shown = new HashSet<>();
    Set<Integer> blind = new HashSet<>();
    Set<Integer> unveiled = new HashSet<>();
    int results = 0;
    int n = 0;
    for (LessonEvent event : log.events()) {
      n++;
      if (event instanceof LessonEvent.Came e) {
        present.add(e.student());
      } else if (event instanceof LessonEvent.Went e) {
        present.remove(e.student());
      } else if (event instanceof LessonEvent.Opened e && e.blind()) {
        blind.add(n);
      } else if (event instanceof LessonEvent.Predicted e) {
        assertThat(shown).doesNotContain(e.round());
        predicted.add(e.round() + e.student());
      } else if (event instanceof LessonEvent.Shown e) {
        present.forEach(s -> assertThat(predicted).contains(e.round() + s));
        shown.add(e.round());
      } else if (event instanceof LessonEvent.BlindRead e) {
        assertThat(shown).contains(e.round());
        assertThat(unveiled).doesNotContain(e.round());
        read.add(e.round() + e.student());
      } else if (event instanceof LessonEvent.Unveiled e) {
        present.forEach(s -> assertThat(read).contains(e.round() + s));
        unveiled.add(e.round());
      } else if (event instanceof LessonEvent.Resulted e) {
        assertThat(shown).contains(e.round());
        assertThat(blind.contains(e.round())).isEqualTo(unveiled.contains(e.round()));
        results++;
      }
    }
    return results;
  }
}
