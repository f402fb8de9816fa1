package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Prior;
import quarterturn.craft.rod.Range;
import quarterturn.procedure.Limits;
import quarterturn.procedure.ShippedRules;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Turn;

/** How often what was expected of a turn came true. Readings and necks are invented. */
class CalibrationTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  private static final Known BASS = Known.of(Prior.BASS);
  private static final Limits LIMITS = ShippedRules.LIMITS;

  private static Event.Past turn(
      int minute, Turn turn, @Nullable Bracket before, @Nullable Bracket after) {
    return new Event.Past(NOON.plus(Duration.ofMinutes(minute)), turn, before, after);
  }

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
    assertThat(Calibration.within(mm(read), new Range(low, high))).isEqualTo(right);
  }

  /**
   * An eighth of a turn on an unknown bass is expected to move 0.05 to 0.25 mm nine times in ten:
   * half of what {@link Prior#BASS} says of a quarter, 0.10 to 0.50 mm. From 0.60 to 0.65 mm it
   * leads to between 0.37 and 0.58 mm or so; slack may leave it where it was.
   */
  @Test
  void theCountIsWorkedOutByHand() {
    Event.Past asTold = turn(0, Turn.EIGHTH, mm("0.60..0.65"), mm("0.50..0.55"));
    Event.Past far = turn(0, Turn.EIGHTH, mm("0.60..0.65"), mm("0.15..0.20"));
    Event.Past wrong = turn(0, Turn.EIGHTH, mm("0.60..0.65"), mm("0.75..0.80"));
    assertThat(Calibration.of(List.of(asTold), BASS, LIMITS)).isEqualTo(new Calibration(1, 1));
    assertThat(Calibration.of(List.of(far), BASS, LIMITS)).isEqualTo(new Calibration(0, 1));
    assertThat(Calibration.of(List.of(wrong), BASS, LIMITS)).isEqualTo(new Calibration(0, 1));
    // It moved 0.10 for an eighth, so a quarter is expected to move about 0.20, and not 0.02.
    Event.Past next = turn(30, Turn.QUARTER, mm("0.50..0.55"), mm("0.30..0.35"));
    Event.Past still = turn(30, Turn.QUARTER, mm("0.50..0.55"), mm("0.75..0.80"));
    assertThat(Calibration.of(List.of(asTold, next), BASS, LIMITS))
        .isEqualTo(new Calibration(2, 2));
    assertThat(Calibration.of(List.of(asTold, still), BASS, LIMITS))
        .isEqualTo(new Calibration(1, 2));
  }

  @Test
  void aTurnWithoutBothReadingsIsLeftOut() {
    Event.Past asTold = turn(0, Turn.EIGHTH, mm("0.60..0.65"), mm("0.50..0.55"));
    List<Event.Past> turns =
        List.of(
            asTold,
            turn(30, Turn.EIGHTH, null, null),
            turn(60, Turn.EIGHTH, mm("0.40..0.45"), null),
            turn(90, Turn.EIGHTH, null, mm("0.30..0.35")));
    assertThat(Calibration.of(turns, BASS, LIMITS)).isEqualTo(new Calibration(1, 1));
    assertThat(Calibration.of(List.of(), BASS, LIMITS)).isEqualTo(Calibration.NONE);
  }

  /** Nine times in ten is what an expected range says of itself, on necks as they are believed. */
  @Test
  void onSoundNecksItComesTrueNineTimesInTen() {
    Calibration all = Calibration.NONE;
    for (int seed = 0; seed < 100; seed++) {
      all = all.plus(Calibration.of(turned(seed), BASS, LIMITS));
    }
    assertThat(all.turns()).isAtLeast(200);
    double share = all.right() / (double) all.turns();
    assertWithMessage(all.toString()).that(share).isAtLeast(0.85);
    assertWithMessage(all.toString()).that(share).isAtMost(0.95);
  }

  private static List<Event.Past> turned(int seed) {
    SplittableRandom random = new SplittableRandom(seed);
    SimulatedNeck neck = new SimulatedNeck(Draw.neck(NeckFault.NONE, random), random);
    List<Event.Past> turns = new ArrayList<>();
    Bracket before = neck.read(Which.LOWEST);
    for (int i = 0; i < 3; i++) {
      Turn turn = before.middleMm() > 0.35 ? Turn.EIGHTH : Turn.EIGHTH.opposite();
      neck.turn(turn);
      neck.pass(Duration.ofMinutes(15));
      Bracket after = neck.read(Which.LOWEST);
      turns.add(turn(30 * i, turn, before, after));
      before = after;
    }
    return turns;
  }

  @Test
  void bothSharesAreSaid() {
    String said = new Calibration(7, 8).words(new Calibration(41, 46));
    assertThat(said).contains("came true 7 times of 8 on this neck, 41 times of 46 on all");
    assertThat(said).contains("nine in ten expected");
    assertThat(Calibration.NONE.words(new Calibration(1, 2)))
        .contains("came true 1 time of 2 on all");
    assertThat(Calibration.NONE.words(Calibration.NONE)).contains("not known yet");
  }
}
