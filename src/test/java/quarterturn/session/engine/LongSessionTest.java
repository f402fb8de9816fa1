package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;

/**
 * A long session takes its answers as a short one does. What an answer takes is told by the memory
 * it asks for, which no other program on the machine changes; how long it takes, the bench tells.
 */
class LongSessionTest {
  /** Notes, readings and choices that go round without an end, as no checked procedure may. */
  private static final String ROUND =
      """
      procedure: round
      revision: 1
      title: Round
      purpose: Look at the neck again and again.
      tools: [capo]
      retune: tune
      reread: low
      steps:
        - part: Look
        - use: make-ready
          tune:
            text: Tune all strings to pitch.
          settle:
            text: Let the neck settle for {minutes}.
        - note: seen
          text: What do you see?
        - read: relief
          id: low
          string: lowest
          text: Which gauge is the thickest to pass at fret {read-at}?
          cannot: go on
        - read: humidity
          id: air
          text: How humid is the air?
          cannot: go on
        - choose: again
          text: Once more? The relief is {reading}.
          answers:
            - again: Yes -> seen
            - done: No -> over
        - part: Done
        - done: over
          text: The relief was read.
          outcome: looked
      """;

  private static final int MANY = Draws.of(1600);
  private static final int EARLY = 200;
  private static final int SOME = 100;

  @TempDir Path folder;

  private final ThreadMXBean memory = (ThreadMXBean) ManagementFactory.getThreadMXBean();
  private final List<Event> events = new ArrayList<>();

  private Library library() throws Exception {
    Path file = folder.resolve("round.yaml");
    Files.writeString(file, ROUND);
    return new Shelf(null).load(file.toString());
  }

  @Test
  void anAnswerTakesNoMoreAfterThousands() throws Exception {
    for (Role role : Role.values()) {
      events.clear();
      long early = 0;
      long late = 0;
      LiveBench bench = bench(library(), role);
      for (int i = 0; i < MANY; i++) {
        Answer answer = answer(bench, i);
        long before = memory.getCurrentThreadAllocatedBytes();
        bench.answer(answer);
        long taken = memory.getCurrentThreadAllocatedBytes() - before;
        early += i >= EARLY && i < EARLY + SOME ? taken : 0;
        late += i >= MANY - SOME ? taken : 0;
      }
      assertThat(bench.events().size()).isAtLeast(MANY);
      assertWithMessage(role.word()).that(late).isLessThan(early * 6 / 5);
    }
  }

  /** Twice as many events take about twice as much to resume, and not four times. */
  @Test
  void resumingTakesAsLongAsTheSessionIs() throws Exception {
    Library library = library();
    LiveBench bench = bench(library, Role.BEGINNER);
    for (int i = 0; i < MANY; i++) {
      bench.answer(answer(bench, i));
    }
    replay(library, 100);
    long half = replay(library, events.size() / 2);
    long whole = replay(library, events.size());
    assertThat(whole).isLessThan(half * 5 / 2);
  }

  private long replay(Library library, int many) {
    Engine engine = new Engine(library, new BeliefAdvisor());
    long before = memory.getCurrentThreadAllocatedBytes();
    engine.replay(events.subList(0, many));
    return memory.getCurrentThreadAllocatedBytes() - before;
  }

  private LiveBench bench(Library library, Role role) throws Exception {
    Event.Started started =
        new Event.Started(
            Play.NOON,
            library.main().id(),
            library.main().revision(),
            library.main().digest(),
            role,
            null,
            "bass-34",
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            null);
    Clock clock = Clock.fixed(Play.NOON, ZoneOffset.UTC);
    return LiveBench.start(
        new Engine(library, new BeliefAdvisor()), events::addAll, "long", started, clock);
  }

  /** Any answer that goes round, and now and then the one before is taken back. */
  private Answer answer(LiveBench bench, int i) throws RefusedException {
    Prompt asked = bench.prompt();
    bench.setClock(asked instanceof Prompt.Wait wait ? wait.until() : bench.now());
    if (i % 7 == 6 && events.get(events.size() - 1).withdrawable()) {
      return new Answer.Correct();
    }
    if (asked instanceof Prompt.Measure measure) {
      return measure.quantity().bracket()
          ? new Answer.Measured(new Bracket(0.30, 0.35))
          : new Answer.Value(50);
    }
    if (asked instanceof Prompt.Write) {
      return new Answer.Wrote("nothing new");
    }
    return asked instanceof Prompt.Choose
        ? new Answer.Chose("again")
        : asked instanceof Prompt.Wait ? new Answer.Waited(null) : new Answer.Confirmed();
  }
}
