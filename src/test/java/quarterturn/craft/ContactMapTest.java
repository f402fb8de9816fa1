package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** Where a string would strike the frets. */
class ContactMapTest {
  private static final long SEED = 20_270_302;

  @Test
  @HoldsTo("pluck.margin")
  void marginsAgreeWithTheReference() {
    try (Reference reference = Reference.of("pluck.margin")) {
      Value in = reference.inputs();
      Scale scale = new Scale(Length.mm(in.number("L_mm")));
      int joint = (int) in.number("J");
      int last = (int) in.number("last_fret");
      Force tension = Force.newtons(in.number("T_N"));
      double tolerance = reference.tolerance("abs_mm");
      for (String key : reference.expected().keys()) {
        String[] parts = key.split("_", -1);
        Length relief = Length.mm(Double.parseDouble(parts[0].substring(1)));
        boolean pulled = parts[1].equals("pulled");
        int k = Integer.parseInt(parts[2].substring(1));
        Neck neck = Neck.uniform(scale, joint, relief, Held.at(joint, 7));
        StringLine line =
            StringLine.withAction(
                neck, Length.mm(in.number("nut_slot_mm")), 12, Length.mm(in.number("action12_mm")));
        Pluck.Way way = pulled ? Pluck.Way.PULLED : Pluck.Way.PUSHED;
        Pluck pluck =
            new Pluck(Force.newtons(in.number("F_N")), Length.mm(in.number("d_mm")), way, 0);
        ContactMap map = ContactMap.of(line, tension, pluck, last);
        Value wanted = reference.expected().at(key);
        String where = reference.because() + " " + key;
        double speaking = scale.speakingMm(k);
        double amplitude = pluck.amplitudeMm(tension, speaking);
        assertWithMessage(where)
            .that(amplitude)
            .isWithin(tolerance)
            .of(wanted.number("amplitude_mm"));
        double least = Double.POSITIVE_INFINITY;
        int atFret = 0;
        for (int n = k + 1; n <= last; n++) {
          double u = scale.fretMm(n) - scale.fretMm(k);
          double alone =
              stopped(line, k, n)
                  - amplitude * Pluck.triangle(speaking, pulled ? 120 : speaking - 120, u);
          assertWithMessage(where + " " + n).that(map.marginMm(k, n)).isWithin(1e-9).of(alone);
          if (alone < least) {
            least = alone;
            atFret = n;
          }
          if (n == 12) {
            assertWithMessage(where)
                .that(alone)
                .isWithin(tolerance)
                .of(wanted.number("margin_at_12"));
          }
          if (n == 17) {
            assertWithMessage(where)
                .that(alone)
                .isWithin(tolerance)
                .of(wanted.number("margin_at_17"));
          }
        }
        if (k >= 12) {
          assertWithMessage(where).that(wanted.at("margin_at_12").isNull()).isTrue();
        }
        assertWithMessage(where)
            .that(least)
            .isWithin(tolerance)
            .of(wanted.number("least_margin_mm"));
        assertThat((double) atFret).isEqualTo(wanted.number("at_fret"));
      }
    }
  }

  /** A random bass or guitar, its string and its player; invented. */
  private record Invented(StringLine line, Force tension, Pluck pluck, int last) {
    static Invented of(SplittableRandom random, double size) {
      Scale scale = new Scale(Length.mm(size * (600 + 300 * random.nextDouble())));
      int joint = 14 + random.nextInt(6);
      Neck neck =
          Neck.uniform(
              scale,
              joint,
              Length.mm(size * (random.nextDouble() - 0.3)),
              Held.at(joint, 6 + random.nextInt(3)));
      return new Invented(
          StringLine.withAction(
              neck,
              Length.mm(size * random.nextDouble()),
              12,
              Length.mm(size * 3 * random.nextDouble())),
          Force.newtons(40 + 200 * random.nextDouble()),
          new Pluck(
              Force.newtons(4 * random.nextDouble()),
              Length.mm(size * (20 + 120 * random.nextDouble())),
              Pluck.Way.values()[random.nextInt(2)],
              random.nextDouble()),
          20 + random.nextInt(4));
    }

    ContactMap map() {
      return ContactMap.of(line, tension, pluck, last);
    }
  }

  @Test
  void theLeastMarginIsTheLeastOfAll() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 300; i++) {
      Invented invented = Invented.of(random, 1);
      ContactMap map = invented.map();
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k < map.last(); k++) {
        for (int n = k + 1; n <= map.last(); n++) {
          least = Math.min(least, map.marginMm(k, n));
        }
      }
      assertWithMessage("seed " + SEED + ", " + i).that(map.leastMm()).isWithin(1e-9).of(least);
      assertThat(map.marginMm(map.stoppedAt(), map.overFret())).isEqualTo(map.leastMm());
    }
  }

  @Test
  void everyMarginIsClearanceLessDepth() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 100; i++) {
      Invented invented = Invented.of(random, 1);
      ContactMap map = invented.map();
      Scale scale = invented.line().neck().scale();
      for (int k = 0; k < map.last(); k++) {
        double speaking = scale.speakingMm(k);
        double a = invented.pluck().amplitudeMm(invented.tension(), speaking);
        for (int n = k + 1; n <= map.last(); n++) {
          double u = scale.fretMm(n) - scale.fretMm(k);
          assertWithMessage("seed " + SEED + ", " + i + ": " + k + " over " + n)
              .that(map.marginMm(k, n))
              .isWithin(1e-9)
              .of(stopped(invented.line(), k, n) - invented.pluck().depthMm(a, speaking, u));
        }
      }
    }
  }

  @Test
  void twiceAsLargeAnInstrumentHasTwiceTheMargins() {
    SplittableRandom small = new SplittableRandom(SEED);
    SplittableRandom large = new SplittableRandom(SEED);
    for (int i = 0; i < 100; i++) {
      ContactMap one = Invented.of(small, 1).map();
      ContactMap two = Invented.of(large, 2).map();
      for (int k = 0; k < one.last(); k++) {
        for (int n = k + 1; n <= one.last(); n++) {
          assertThat(two.marginMm(k, n)).isWithin(1e-9).of(2 * one.marginMm(k, n));
        }
      }
    }
  }

  @Test
  void marginsGrowWithTheActionAndDoNotHangOnTheLastFret() {
    SplittableRandom random = new SplittableRandom(SEED);
    for (int i = 0; i < 100; i++) {
      Invented invented = Invented.of(random, 1);
      StringLine line = invented.line();
      ContactMap map = invented.map();
      StringLine higher =
          StringLine.withAction(
              line.neck(), line.nutHeight(), 12, Length.mm(line.openMm(12) + 0.25));
      ContactMap raised =
          ContactMap.of(higher, invented.tension(), invented.pluck(), invented.last());
      ContactMap shorter =
          ContactMap.of(line, invented.tension(), invented.pluck(), invented.last() - 5);
      for (int k = 0; k < map.last(); k++) {
        for (int n = k + 1; n <= map.last(); n++) {
          assertThat(raised.marginMm(k, n)).isGreaterThan(map.marginMm(k, n));
          if (n <= shorter.last() && k < shorter.last()) {
            assertThat(shorter.marginMm(k, n)).isEqualTo(map.marginMm(k, n));
          }
        }
      }
    }
  }

  @Test
  void refusesWhatCannotBe() {
    StringLine line =
        StringLine.withAction(
            Neck.straight(new Scale(Length.mm(864)), 17), Length.mm(0.5), 12, Length.mm(2));
    Force tension = Force.newtons(180);
    Pluck pluck = new Pluck(Force.newtons(1), Length.mm(120), Pluck.Way.PUSHED, 0);
    assertThat(
            assertThrows(
                NotUnderstoodException.class, () -> ContactMap.of(line, tension, pluck, 1)))
        .hasMessageThat()
        .contains("last fret must lie between 2 and 36, not 1");
    assertThrows(NotUnderstoodException.class, () -> ContactMap.of(line, tension, pluck, 37));
    assertThat(ContactMap.of(line, tension, pluck, 2).overFret()).isEqualTo(2);
    Pluck far = new Pluck(Force.newtons(1), Length.mm(300), Pluck.Way.PUSHED, 0);
    assertThat(
            assertThrows(NotUnderstoodException.class, () -> ContactMap.of(line, tension, far, 24)))
        .hasMessageThat()
        .contains("between the stop and the saddle");
    ContactMap map = ContactMap.of(line, tension, pluck, 20);
    assertThat(map.last()).isEqualTo(20);
    assertThrows(IllegalArgumentException.class, () -> map.marginMm(-1, 5));
    assertThrows(IllegalArgumentException.class, () -> map.marginMm(5, 5));
    assertThrows(IllegalArgumentException.class, () -> map.marginMm(5, 21));
    assertThat(map.marginMm(19, 20)).isGreaterThan(0);
  }

  /** With nothing returning over a straight neck every pair of frets comes out alike. */
  @Test
  void ofEqualMarginsTheOneNearestTheNutIsNamed() {
    Neck straight = Neck.straight(new Scale(Length.mm(864)), 17);
    StringLine line = new StringLine(straight, Length.mm(0.5), Length.mm(1.2));
    Pluck pluck = new Pluck(Force.newtons(1.8), Length.mm(120), Pluck.Way.PUSHED, 0);
    ContactMap map = ContactMap.of(line, Force.newtons(180), pluck, 20);
    assertThat(map.leastMm()).isWithin(1e-9).of(0);
    assertThat(map.stoppedAt()).isEqualTo(1);
    assertThat(map.overFret()).isEqualTo(2);
  }

  /**
   * A second way to the clearance at rest: a straight line from the fret's top, or from the bottom
   * of the nut slot, to the saddle.
   */
  private static double stopped(StringLine line, int k, int n) {
    Neck neck = line.neck();
    double from = neck.scale().fretMm(k);
    double share = (neck.scale().fretMm(n) - from) / (neck.scale().mm() - from);
    double stop = neck.fretTopMm(k) + (k == 0 ? line.nutHeight().mm() : 0);
    return stop * (1 - share) + line.saddle().mm() * share - neck.fretTopMm(n);
  }

  /**
   * The open string against the wave equation itself (derived): a grid stepped through a period at
   * Courant number one, where the leap-frog scheme is exact at its points.
   */
  @Test
  void theOpenStringKeepsClearOfWhereTheWaveGoes() {
    int points = 240;
    Scale scale = new Scale(Length.mm(864));
    StringLine line =
        StringLine.withAction(
            Neck.uniform(scale, 17, Length.mm(0.3), Held.at(17, 7)),
            Length.mm(0.4),
            12,
            Length.mm(1.8));
    double d = scale.mm() * 32 / points;
    Force tension = Force.newtons(180);
    for (Pluck.Way way : Pluck.Way.values()) {
      Pluck pluck = new Pluck(Force.newtons(1.5), Length.mm(d), way, 0);
      ContactMap map = ContactMap.of(line, tension, pluck, 20);
      // The static force of the two slopes beside the apex: F = T (a/d + a/(L - d)).
      double a = 1.5 / 180 / (1 / d + 1 / (scale.mm() - d));
      double[] deepest = wave(points, points - 32, way == Pluck.Way.PUSHED ? a : -a);
      for (int n = 1; n <= 20; n++) {
        double at = scale.fretMm(n) / scale.mm() * points;
        int left = (int) at;
        double depth = deepest[left] + (deepest[left + 1] - deepest[left]) * (at - left);
        assertWithMessage(way + " over fret " + n)
            .that(map.marginMm(0, n))
            .isWithin(1e-6)
            .of(line.openMm(n) - depth);
      }
    }
  }

  /** The deepest place of each point over a period; down is plus. */
  private static double[] wave(int points, int apex, double height) {
    double[] now = new double[points + 1];
    for (int i = 0; i <= points; i++) {
      now[i] = height * Math.min((double) i / apex, (double) (points - i) / (points - apex));
    }
    double[] deepest = now.clone();
    double[] before = now.clone();
    for (int i = 1; i < points; i++) {
      before[i] = (now[i - 1] + now[i + 1]) / 2; // released at rest
    }
    for (int step = 0; step < 2 * points; step++) {
      double[] next = new double[points + 1];
      for (int i = 1; i < points; i++) {
        next[i] = now[i - 1] + now[i + 1] - before[i];
        deepest[i] = Math.max(deepest[i], next[i]);
      }
      before = now;
      now = next;
    }
    return deepest;
  }

  /** With no relief and no action the string lies on the frets, whatever is done to it. */
  @Test
  void aStringThatLiesOnAFretIsFoundWithoutAStroke() {
    Scale scale = new Scale(Length.mm(864));
    Pluck none = new Pluck(Force.newtons(0), Length.mm(120), Pluck.Way.PULLED, 1);
    Force tension = Force.newtons(180);
    Neck back = Neck.uniform(scale, 17, Length.mm(-0.5), Held.at(17, 7));
    StringLine bowed = StringLine.withAction(back, Length.mm(0.2), 12, Length.mm(0.3));
    int first = 0;
    for (int n = 20; n >= 1; n--) {
      first = bowed.openMm(n) <= 0 ? n : first;
    }
    assertThat(first).isGreaterThan(0);
    assertThat(ContactMap.of(bowed, tension, none, 20).restsOn()).isEqualTo(first);
    StringLine flat = new StringLine(Neck.straight(scale, 17), Length.mm(0.5), Length.mm(0));
    assertThat(ContactMap.of(flat, tension, none, 20).restsOn()).isEqualTo(2);
    StringLine clear = new StringLine(Neck.straight(scale, 17), Length.mm(0.5), Length.mm(2));
    assertThat(ContactMap.of(clear, tension, none, 20).restsOn()).isEqualTo(0);
  }
}
