package quarterturn.session.listing;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.rod.Belief;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Prior;
import quarterturn.craft.rod.Range;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.engine.Story;
import quarterturn.session.store.Samples;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Turn;

/** How often what was expected of a turn came true. Readings and necks are invented. */
class CalibrationTest {
  private static Bracket mm(String typed) {
    return BracketParser.parse(typed, 0.05);
  }

  /** The definition, worked out by hand. */
  @ParameterizedTest
  @CsvSource({
    "0.40..0.45, 0.40, 0.60, true", // its middle, 0.425, lies within
    "0.35..0.40, 0.37, 0.60, true", // 0.375 does
    "0.35..0.40, 0.38, 0.60, false", // though the bracket overlaps the range
    "0.60..0.65, 0.40, 0.62, false",
    "touches, -Infinity, 0.10, true", // it may touch, by what was expected
    "touches, 0.01, 0.10, false",
    "0.05 lifts, 0.03, 0.10, true", // a gap below 0.05 begins within
    "0.05 lifts, 0.05, 0.10, false",
    "1.00 passes, 0.80, 1.20, true",
    "1.00 passes, 0.70, 0.90, false"
  })
  void itCameTrueWhereTheMiddleLiesWithin(String read, double low, double high, boolean right) {
    assertThat(Calibration.within(mm(read), new Bracket(low, high))).isEqualTo(right);
  }

  /**
   * A reading, a turn that was asked for with what was expected, the turn that was made, a reading.
   */
  private static Calibration turn(
      Turn made, @Nullable Bracket expected, @Nullable String before, @Nullable String after) {
    List<Event> events = new ArrayList<>();
    if (before != null) {
      events.add(Samples.relief(1, Which.LOWEST, mm(before).lowMm(), mm(before).highMm()));
    }
    events.add(new Event.Offered(Samples.at(2), "turn", Turn.EIGHTH, null, expected));
    events.add(new Event.Turned(Samples.at(3), "turn", made, Feel.SMOOTH));
    if (after != null) {
      events.add(Samples.relief(4, Which.LOWEST, mm(after).lowMm(), mm(after).highMm()));
    }
    return Calibration.of(events);
  }

  @Test
  void aTurnAsItWasAskedForCountsWithBothReadings() {
    Bracket expected = new Bracket(0.37, 0.58);
    assertThat(turn(Turn.EIGHTH, expected, "0.60..0.65", "0.50..0.55"))
        .isEqualTo(new Calibration(1, 1));
    assertThat(turn(Turn.EIGHTH, expected, "0.60..0.65", "0.15..0.20"))
        .isEqualTo(new Calibration(0, 1));
    assertThat(turn(Turn.EIGHTH, null, "0.60..0.65", "0.50..0.55")).isEqualTo(Calibration.NONE);
    assertThat(turn(Turn.EIGHTH, expected, null, "0.50..0.55")).isEqualTo(Calibration.NONE);
    assertThat(turn(Turn.EIGHTH, expected, "0.60..0.65", null)).isEqualTo(Calibration.NONE);
    assertWithMessage("a smaller turn than was asked for")
        .that(turn(Turn.SIXTEENTH, expected, "0.60..0.65", "0.50..0.55"))
        .isEqualTo(Calibration.NONE);
  }

  /** Nine times in ten is what an expected range says of itself, on necks as they are believed. */
  @Test
  void onSoundNecksItComesTrueNineTimesInTen() {
    int right = 0;
    int turns = 0;
    for (int seed = 0; seed < 100; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      SimulatedNeck neck = new SimulatedNeck(Draw.neck(NeckFault.NONE, random), random);
      List<Event.Past> past = new ArrayList<>();
      Bracket before = neck.read(Which.LOWEST);
      for (int i = 0; i < 3; i++) {
        Turn turn = before.middleMm() > 0.35 ? Turn.EIGHTH : Turn.EIGHTH.opposite();
        Bracket expected = expected(past, before, turn, 30 * i);
        neck.turn(turn);
        neck.pass(Duration.ofMinutes(15));
        Bracket after = neck.read(Which.LOWEST);
        past.add(new Event.Past(Samples.at(30 * i), turn, before, after));
        before = after;
        right += Calibration.within(after, expected) ? 1 : 0;
        turns++;
      }
    }
    assertThat(right / (double) turns).isAtLeast(0.85);
    assertThat(right / (double) turns).isAtMost(0.95);
  }

  /** What is expected of a turn after those before it: the story up to the reading before it. */
  private static Bracket expected(List<Event.Past> past, Bracket before, Turn turn, int minute) {
    List<Event.Past> next = new ArrayList<>(past);
    next.add(new Event.Past(Samples.at(minute), turn, before, null));
    var story = Story.of(next, ShippedRules.LIMITS);
    Belief belief = Belief.of(Known.of(Prior.BASS), story.subList(0, story.size() - 1));
    Range range = belief.expect(turn);
    return new Bracket(range.lowMm(), range.highMm());
  }
}
