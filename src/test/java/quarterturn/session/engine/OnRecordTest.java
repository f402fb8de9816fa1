package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;

/** What is on record of an instrument is not asked again. */
class OnRecordTest {
  private static final String SHEET =
      """
      procedure: bridge-look
      revision: 1
      title: Bridge
      purpose: See what can be moved.
      tools: [soft cloth]
      steps:
        - part: Look
        - choose: bridge
          text: What can be moved at the bridge?
          records: bridge
          answers:
            - adjustable: Each saddle
            - two-posts: The whole of it -> posts
            - dark: Too dark to see
        - choose: anew
          text: Look once more?
          answers:
            - again: Look again -> bridge
            - enough: "No"
        - done: saddles
          text: Each saddle is set.
        - done: posts
          text: The posts are set.
      """;

  @TempDir Path folder;

  private LiveBench started(@Nullable BridgeKind bridge, List<Event> log) throws Exception {
    Files.createDirectories(folder.resolve("procedures"));
    Files.writeString(folder.resolve("procedures/bridge-look.yaml"), SHEET);
    Engine engine = new Engine(new Shelf(folder).load("bridge-look"), new BeliefAdvisor());
    Event.Own own =
        new Event.Own(null, List.of(), List.of(), null, false, Map.of(), null, bridge, null, null);
    Event.Started started =
        new Event.Started(
            Play.NOON,
            "bridge-look",
            1,
            "digest",
            Role.BEGINNER,
            "demo",
            "electric-25",
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            own,
            null);
    Clock clock = Clock.fixed(Play.NOON, ZoneOffset.UTC);
    return LiveBench.start(engine, log::addAll, "test", started, clock);
  }

  @Test
  void aBridgeOnRecordLeadsOnByItself() throws Exception {
    List<Event> log = new ArrayList<>();
    assertThat(started(BridgeKind.TWO_POSTS, log).prompt().said().step()).isEqualTo("posts");
    assertThat(log.toString()).contains("why=on record: two-posts");
  }

  @Test
  void oneThatIsNotOrThatNoAnswerNamesIsAskedFor() throws Exception {
    assertThat(started(null, new ArrayList<>()).prompt().said().step()).isEqualTo("bridge");
    assertThat(started(BridgeKind.PAIRED, new ArrayList<>()).prompt().said().step())
        .isEqualTo("bridge");
  }

  private static void answer(LiveBench bench, String... options) throws Exception {
    for (String option : options) {
      bench.answer(new Answer.Chose(option));
    }
  }

  @Test
  void whatWasAnsweredHereBeforeIsNotAskedAgainButWhatNobodySawIs() throws Exception {
    List<Event> log = new ArrayList<>();
    LiveBench bench = started(null, log);
    answer(bench, "dark", "again");
    assertThat(bench.prompt().said().step()).isEqualTo("bridge");
    answer(bench, "adjustable", "again");
    assertThat(bench.prompt().said().step()).isEqualTo("anew");
    assertThat(log.toString()).contains("why=on record: adjustable");
  }
}
