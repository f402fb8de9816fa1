package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.Draws;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.Stage;

/** A whole set-up comes to an end that fits the instrument, however it is made. */
class BuildsRehearsalTest {
  private static final Library LIBRARY = library();

  /** Asked anew after each turn, or each day. */
  private static final Set<String> ANEW = Set.of("relief/nearly", "relief/overnight");

  private static Library library() {
    try {
      return new Shelf(null).load("setup");
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** Drawn evenly, in a number that takes every kind, bridge and rod; all of them in the end. */
  static Stream<Build> builds() {
    List<Build> all = Build.of(LIBRARY.kinds().values());
    int many = Math.min(all.size(), Draws.of(57));
    return IntStream.range(0, many).mapToObj(i -> all.get(i * all.size() / many));
  }

  /** What was asked and told in a session, by procedure and step. */
  private static final class Played {
    final List<String> asked = new ArrayList<>();
    final List<String> steps = new ArrayList<>();
    final PracticeBench bench;

    Played(Build build) throws Exception {
      bench = build.bench(LIBRARY);
      while (!bench.prompt().ended()) {
        saw(bench.prompt());
        bench.answer(build.answer(bench));
      }
      saw(bench.prompt());
    }

    private void saw(Prompt prompt) {
      PromptText said = prompt.said();
      assertWithMessage(said.step()).that(prompt.toString()).doesNotContainMatch("[{}]");
      assertWithMessage(said.step()).that(said.text()).isNotEmpty();
      for (PromptText.First first : said.first()) {
        assertWithMessage(first.step()).that(first.text()).isNotEmpty();
        steps.add(first.procedure() + "/" + first.step());
      }
      String step = said.procedure() + "/" + said.step();
      steps.add(step);
      boolean pause = said.text().matches("(?s).*\\n1 of \\d  .*");
      if (!pause && (prompt instanceof Prompt.Choose || prompt instanceof Prompt.Write)) {
        asked.add(step);
      }
    }
  }

  @ParameterizedTest
  @MethodSource("builds")
  void theWholeSetUpEndsAsTheInstrumentIsMade(Build build) throws Exception {
    Played played = new Played(build);
    PracticeBench bench = played.bench;
    List<String> twice = new ArrayList<>(played.asked);
    Set.copyOf(played.asked).forEach(twice::remove);
    assertThat(ANEW).containsAtLeastElementsIn(Set.copyOf(twice));
    if (build.rod() == RodKind.TWO_RODS) {
      assertThat(Outcome.word(bench.prompt())).isEqualTo("two-rods");
      assertThat(bench.neck().moves()).isEqualTo(0);
      return;
    }
    boolean rod = build.rod() != RodKind.NONE_FITTED;
    assertThat(Outcome.word(bench.prompt())).isEqualTo("signed-off");
    assertThat(bench.prompt().said().step()).isEqualTo(rod ? "signed" : "signed-without-rod");
    assertThat(bench.neck().moves() > 0).isEqualTo(rod);
    setAsItsBridgeIs(build.bridge(), played);
    onceWhereItIsNotOnRecord(build, played.asked);
  }

  private static void setAsItsBridgeIs(BridgeKind bridge, Played played) {
    boolean fixed = bridge == BridgeKind.FIXED;
    boolean whole = bridge == BridgeKind.TWO_POSTS || bridge == BridgeKind.FLOATING;
    boolean locked = bridge == BridgeKind.LOCKED;
    boolean paired = bridge == BridgeKind.PAIRED;
    happened(played, fixed, "action/saddle-stands");
    happened(played, whole, "action/set-posts");
    happened(played, !fixed && !whole, "action/set-saddles");
    happened(played, !fixed, "intonation/set-saddles");
    for (String stage : List.of("action", "intonation")) {
      happened(played, locked, stage + "/undo-lock");
      happened(played, locked, stage + "/do-up-lock");
      happened(played, paired, stage + "/share");
    }
    happened(played, bridge == BridgeKind.FLOATING, "spring-bridge/open-nut");
    happened(played, bridge == BridgeKind.FLOATING, "spring-bridge/clamp");
    boolean out =
        played.bench.overview().stages().stream()
            .anyMatch(stage -> stage.id().equals("action") && stage.status() == Stage.Status.OUT);
    assertWithMessage("action out of range").that(out).isEqualTo(fixed);
  }

  private static void happened(Played played, boolean expected, String step) {
    assertWithMessage(step).that(played.steps.contains(step)).isEqualTo(expected);
  }

  private static void onceWhereItIsNotOnRecord(Build build, List<String> asked) {
    boolean rod = build.rod() != RodKind.NONE_FITTED;
    boolean whole = build.bridge() == BridgeKind.TWO_POSTS || build.bridge() == BridgeKind.FLOATING;
    assertThat(asked.contains("action/saddles")).isEqualTo(!build.recorded());
    // What was answered at the action stage is not asked again.
    assertThat(asked.contains("intonation/saddles")).isEqualTo(whole);
    assertThat(asked.contains("relief/rod-kind")).isEqualTo(rod && !build.recorded());
  }
}
