package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Length;

/** The neck's curve against its reference values; derived, checked there by finite elements. */
class NeckReferenceTest {
  @Test
  @HoldsTo("neck.midpoint_fret")
  void theGapIsLargestMidwayBetweenTheFretsHeld() {
    try (Reference middle = Reference.of("neck.midpoint_fret")) {
      for (String neck : middle.expected().keys()) {
        Matcher m = Pattern.compile("(bass34|guitar255)_J(\\d+)").matcher(neck);
        assertThat(m.matches()).isTrue();
        double inches = m.group(1).equals("bass34") ? 34 : 25.5;
        int joint = Integer.parseInt(m.group(2));
        Scale scale = new Scale(Length.inches(inches));
        double x1 = scale.fretMm(1);
        double xj = scale.fretMm(joint);
        Neck bowed = Neck.uniform(scale, joint, Length.mm(0.3), Held.at(joint, 7));
        // Where the gap under the chord is largest, found by search and not by a formula.
        double largest =
            new BrentOptimizer(1e-10, 1e-12)
                .optimize(
                    new UnivariateObjectiveFunction(x -> gap(bowed, x1, x, xj)),
                    GoalType.MAXIMIZE,
                    new SearchInterval(x1, xj),
                    new MaxEval(1000))
                .getPoint();
        double number = -12 * Math.log(1 - largest / scale.mm()) / Math.log(2);
        assertWithMessage(middle.because())
            .that(number)
            .isWithin(middle.tolerance("abs"))
            .of(middle.expected().at(neck).number("x_mid_fret_number"));
      }
    }
  }

  private static double gap(Neck neck, double from, double over, double to) {
    double share = (over - from) / (to - from);
    return neck.heightMm(from) * (1 - share) + neck.heightMm(to) * share - neck.heightMm(over);
  }

  @Test
  @HoldsTo("neck.uniform.bass34_J17")
  void anEvenlyBentNeckStandsAsTheReferenceSays() {
    try (Reference even = Reference.of("neck.uniform.bass34_J17")) {
      Value given = even.inputs();
      Scale scale = new Scale(Length.mm(given.number("L_mm")));
      int joint = (int) given.number("J");
      double[] frets = given.numbers("held_frets");
      Held held = new Held((int) frets[0], (int) frets[1], (int) given.number("relief_fret"));
      Length nut = Length.mm(given.number("nut_slot_h_mm"));
      Length action = Length.mm(given.number("action12_mm"));
      double flatSaddle =
          StringLine.withAction(Neck.straight(scale, joint), nut, 12, action).saddle().mm();
      Value table = even.expected().at("table");
      for (String relief : table.keys()) {
        Value row = table.at(relief);
        double mm = Double.parseDouble(relief.substring("r=".length()));
        Neck neck = Neck.uniform(scale, joint, Length.mm(mm), held);
        StringLine line = StringLine.withAction(neck, nut, 12, action);
        row(relief + ", " + even.because(), row, line, even.tolerance("abs_mm"));
        assertWithMessage(even.because())
            .that(new StringLine(neck, nut, Length.mm(flatSaddle)).openMm(12))
            .isWithin(even.tolerance("abs_mm"))
            .of(row.number("action12_if_saddle_left_at_flat_neck_setting_mm"));
      }
      Value gain = even.expected().at("action_gain");
      for (String at : gain.keys()) {
        int fret = Integer.parseInt(at.substring("per_mm_relief_at_".length()));
        assertWithMessage(even.because())
            .that(StringLine.actionPerRelief(Neck.straight(scale, joint), fret, held))
            .isWithin(even.tolerance("abs_mm"))
            .of(gain.number(at));
      }
    }
  }

  private static void row(String because, Value row, StringLine line, double tolerance) {
    Neck neck = line.neck();
    double curvature = row.number("kappa_per_mm");
    assertWithMessage(because)
        .that(neck.curvature())
        .isWithin(1e-7 * Math.abs(curvature))
        .of(curvature);
    if (row.at("radius_m").isNull()) {
      assertWithMessage(because).that(neck.curvature()).isEqualTo(0.0);
    } else {
      double radius = row.number("radius_m");
      assertWithMessage(because)
          .that(1 / neck.curvature() / 1000)
          .isWithin(1e-7 * Math.abs(radius))
          .of(radius);
    }
    Value tops = row.at("fret_top_mm");
    for (String fret : tops.keys()) {
      assertWithMessage(because)
          .that(neck.fretTopMm(Integer.parseInt(fret)))
          .isWithin(tolerance)
          .of(tops.number(fret));
    }
    assertWithMessage(because)
        .that(line.saddle().mm())
        .isWithin(tolerance)
        .of(row.number("saddle_mm_for_action12"));
    Value open = row.at("open_clearance_mm");
    for (String fret : open.keys()) {
      assertWithMessage(because)
          .that(line.openMm(Integer.parseInt(fret)))
          .isWithin(tolerance)
          .of(open.number(fret));
    }
    for (int stop : new int[] {1, 5, 12}) {
      Value stopped = row.at("fretted" + stop + "_clearance_mm");
      for (String fret : stopped.keys()) {
        assertWithMessage(because)
            .that(Stopped.mm(line, stop, Integer.parseInt(fret)))
            .isWithin(tolerance)
            .of(stopped.number(fret));
      }
    }
  }

  @Test
  @HoldsTo("neck.gain_table")
  void actionGainsAsTheReferenceSays() {
    try (Reference gains = Reference.of("neck.gain_table")) {
      for (String neck : gains.expected().keys()) {
        Matcher m = Pattern.compile("L([\\d.]+)_J(\\d+)_m(\\d+)").matcher(neck);
        assertThat(m.matches()).isTrue();
        int joint = Integer.parseInt(m.group(2));
        Neck straight = Neck.straight(new Scale(Length.mm(Double.parseDouble(m.group(1)))), joint);
        Held held = Held.at(joint, Integer.parseInt(m.group(3)));
        assertWithMessage(neck + ", " + gains.because())
            .that(StringLine.actionPerRelief(straight, 12, held))
            .isWithin(gains.tolerance("abs"))
            .of(gains.expected().at(neck).number("gain12"));
      }
    }
  }

  @Test
  @HoldsTo("neck.hold_other_fret")
  void theSameBowReadsOtherwiseUnderAnotherHold() {
    try (Reference holds = Reference.of("neck.hold_other_fret")) {
      for (String hold : holds.expected().keys()) {
        Matcher m = Pattern.compile("L([\\d.]+)_J(\\d+)_hold(\\d+)_at(\\d+)").matcher(hold);
        assertThat(m.matches()).isTrue();
        int joint = Integer.parseInt(m.group(2));
        Neck neck =
            Neck.uniform(
                new Scale(Length.mm(Double.parseDouble(m.group(1)))),
                joint,
                Length.mm(0.3),
                Held.at(joint, 7));
        Held other = Held.at(Integer.parseInt(m.group(3)), Integer.parseInt(m.group(4)));
        assertWithMessage(hold + ", " + holds.because())
            .that(neck.relief(other).mm())
            .isWithin(holds.tolerance("abs_mm"))
            .of(holds.expected().at(hold).number("gap_mm"));
      }
    }
  }

  @Test
  @HoldsTo("neck.saddle_to_action")
  void saddleAndNutShareAStringsHeight() {
    try (Reference shares = Reference.of("neck.saddle_to_action")) {
      Neck straight = Neck.straight(new Scale(Length.inches(34)), 17);
      StringLine low = new StringLine(straight, Length.mm(0.5), Length.mm(3));
      StringLine saddleUp = new StringLine(straight, Length.mm(0.5), Length.mm(4));
      StringLine nutUp = new StringLine(straight, Length.mm(1.5), Length.mm(3));
      for (String share : shares.expected().keys()) {
        Matcher m = Pattern.compile("d_action(\\d+)_d_(saddle|nut)").matcher(share);
        assertThat(m.matches()).isTrue();
        int fret = Integer.parseInt(m.group(1));
        StringLine high = m.group(2).equals("nut") ? nutUp : saddleUp;
        double expected = shares.expected().number(share);
        // The reference is printed to eight digits.
        assertWithMessage(share + ", " + shares.because())
            .that(high.openMm(fret) - low.openMm(fret))
            .isWithin(shares.tolerance("rel") * expected + 5e-9)
            .of(expected);
      }
    }
  }
}
