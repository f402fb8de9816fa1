package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Collection;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.procedure.read.Readings;
import quarterturn.procedure.read.Shelf;

/** Each key of a user's own limits may be stricter than the one of the program, never laxer. */
class LimitsTightenTest {
  /** The key, a laxer value, a stricter one, and what names the value of the program. */
  private static final String KEYS =
      """
      per-reading | 5/16 turn | 1/16 turn | 1/4 turn
      first-move | 3/16 turn | 1/16 turn | 1/8 turn
      free-first | 1/8 turn | 1/32 turn | 1/16 turn
      beginner-day | 3/4 turn | 1/4 turn | 1/2 turn
      day | 23 h | 2 days | 24 h
      rest | 12 h | 48 h | 24 h
      from-as-found | 2 turns | 1/2 turn | 1 turn
      moves-without-answer | 3 | 1 | 2
      moves-in-slack | 5 | 2 | 4
      moves-while-touching | 5 | 3 | 4
      wrong-way-moves | 3 | 1 | 2
      stiff-turns | 3 | 1 | 2
      settle | 4 min | 10 min | 5 min
      retune-after | 61 min | 30 min | 60 min
      reading-holds | 121 min | 60 min | 120 min
      most-reported | 2 turns | 1/2 turn | 1 turn
      put-off | 4 | 2 | 3
      seen | 0.04 mm | 0.08 mm | 0.05 mm
      wrong-way | 0.03 mm | 0.01 mm | 0.02 mm
      far-off | 0.25 mm | 0.15 mm | 0.20 mm
      jump | 0.2 mm | 0.1 mm | 0.15 mm
      creep-share | 20 % | 30 % | 25 %
      answer-expected | 1/4 turn | 1/16 turn | 1/8 turn
      pause | 7 h | 5 h | 6 h
      known-for | 6 days | 8 days | 7 days
      clock-behind | 11 min | 9 min | 10 min
      clock-gap | 401 days | 399 days | 400 days
      climate-after | 8 days | 6 days | 7 days
      climate-points | 11 % | 9 % | 10 %
      day-on | {after: 25 h, start: relief, due: D., sheet: s} | {after: 20 h, start: relief, due: D., sheet: s} | 24 h
      week-on | {after: 8 days, start: relief, due: D., sheet: s} | {after: 6 days, start: relief, due: D., sheet: s} | 7 days
      season-on | {after: 91 days, start: season, due: D., sheet: s} | {after: 60 days, start: season, due: D., sheet: s} | 90 days
      answered-at | 3 | 1 | 2
      ahead | 6 days | 8 days | 7 days
      """;

  /** Lists that hold what the program names, whatever a user's own leaves out of them, and more. */
  private static final Map<String, Function<Limits, Collection<?>>> LISTS =
      Map.of(
          "stop-feels", Limits::stopFeels,
          "finding-needed", Limits::findingNeeded,
          "kept-slack", Limits::keptSlack,
          "turn-needs", Limits::turnNeeds,
          "tighten-needs", Limits::tightenNeeds,
          "apart-needs", Limits::apartNeeds,
          "turn-hazards", Limits::turnHazards);

  private static final Map<String, String> MORE =
      Map.of(
          "stop-feels", "[stiff]",
          "finding-needed", "[other]",
          "kept-slack", "[jammed]",
          "turn-needs", "[at-pitch]",
          "tighten-needs", "[key-fits]",
          "apart-needs", "[key-fits]",
          "turn-hazards", "[finish]");

  @TempDir Path own;

  record Key(String name, String laxer, String stricter, String program) {
    static Key of(String line) {
      String[] parts = line.split(" \\| ", -1);
      return new Key(parts[0], parts[1], parts[2], parts[3]);
    }
  }

  static Stream<Key> keys() {
    return KEYS.lines().map(Key::of);
  }

  private Limits limits(String key, String value) throws IOException, UnreadableException {
    Path safety = Files.createDirectories(own.resolve("safety"));
    Files.writeString(safety.resolve("limits.yaml"), "limits:\n  " + key + ": " + value + "\n");
    return new Shelf(own).rules().limits();
  }

  @ParameterizedTest
  @MethodSource("keys")
  void whatIsLaxerIsRefusedWithTheValueOfTheProgram(Key key) {
    UnreadableException e =
        assertThrows(UnreadableException.class, () -> limits(key.name(), key.laxer()));
    assertThat(e).hasMessageThat().containsMatch("limits.yaml:2:\\d+: over-limit: ");
    assertThat(e).hasMessageThat().contains(key.program());
    assertThat(e.faults()).hasSize(1);
  }

  @ParameterizedTest
  @MethodSource("keys")
  void whatIsStricterHolds(Key key) throws Exception {
    assertThat(limits(key.name(), key.stricter())).isNotEqualTo(ShippedRules.LIMITS);
  }

  @Test
  void aListOfOnesOwnIsAddedToThatOfTheProgram() throws Exception {
    for (Map.Entry<String, Function<Limits, Collection<?>>> list : LISTS.entrySet()) {
      Collection<?> shipped = list.getValue().apply(ShippedRules.LIMITS);
      assertThat(list.getValue().apply(limits(list.getKey(), "[]")))
          .containsExactlyElementsIn(shipped);
      String added = Objects.requireNonNull(MORE.get(list.getKey()));
      Collection<?> more = list.getValue().apply(limits(list.getKey(), added));
      assertThat(more).hasSize(shipped.size() + 1);
      assertThat(more).containsAtLeastElementsIn(shipped);
    }
  }

  /** The list as the version before wrote it out, which knew no damage. */
  @Test
  void aStopThatTheProgramNamesNowHoldsBesideAnOlderList() throws Exception {
    String before =
        "[jammed, noise, slipped, stiffer, stripped, no-response, wrong-way, end-of-travel, limit]";
    assertThat(limits("finding-needed", before)).isEqualTo(ShippedRules.LIMITS);
  }

  /** A new key gets its line above, so that nobody forgets which way it is stricter. */
  @Test
  void everyKeyIsThere() {
    String text = new String(Readings.bytes("/safety/limits.yaml"), StandardCharsets.UTF_8);
    Set<String> there = new TreeSet<>();
    for (Matcher key = Pattern.compile("(?m)^  ([a-z-]+):").matcher(text); key.find(); ) {
      there.add(key.group(1));
    }
    assertThat(there).hasSize(41);
    assertThat(Stream.concat(keys().map(Key::name), LISTS.keySet().stream()).toList())
        .containsExactlyElementsIn(there);
  }

  @Test
  void aRecheckBeginsWhatTheProgramBegins() {
    UnreadableException e =
        assertThrows(
            UnreadableException.class,
            () -> limits("day-on", "{after: 24 h, start: pickups, due: D., sheet: s}"));
    assertThat(e).hasMessageThat().contains("start: relief-check, which comes with the program");
  }

  @Test
  void whatBindsTheOthersIsFollowed() throws Exception {
    assertThat(limits("per-reading", "1/16 turn").firstMove().turns()).isEqualTo(1 / 16.0);
    assertWithMessage("a rest does not end with the day")
        .that(limits("rest", "48 h").day().toHours())
        .isEqualTo(48);
  }

  @Test
  void whatNoSessionCouldBePlayedWithIsRefused() {
    for (String key : Set.of("per-reading", "first-move", "beginner-day", "from-as-found")) {
      UnreadableException e =
          assertThrows(UnreadableException.class, () -> limits(key, "1/32 turn"));
      assertThat(e).hasMessageThat().contains("Write 1/16 turn or more");
    }
    UnreadableException e =
        assertThrows(UnreadableException.class, () -> limits("reading-holds", "4 min"));
    assertThat(e).hasMessageThat().contains("Write 5 min or more");
  }
}
