package quarterturn.report.sheet;

import static com.google.common.truth.Truth.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.report.PlayedKind;
import quarterturn.report.SetUp;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * What is wanted of a repairer, held by drawing the string in a plane: nut at x = 0, fret tops on
 * the line y = 0. The demo bass has a scale of 34 in.
 */
class WantedTest {
  private static final double SCALE = 863.6;

  /** Half of the last figure that a line prints. */
  private static final double TENTH = 0.05;

  private static final double HUNDREDTH = 0.005;

  /**
   * Where a fret stands by the rule of 17.817: each takes that part of what is left of the string.
   */
  private static double fret(int n) {
    double left = SCALE;
    for (int i = 0; i < n; i++) {
      left -= left / 17.817152;
    }
    return SCALE - left;
  }

  /** The height at x of the line through two points. */
  private static double line(double x0, double y0, double x1, double y1, double x) {
    return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
  }

  private static List<String> lines(Event... readings) {
    List<Event> events = new ArrayList<>(List.of(SetUp.started("demo-bass")));
    events.addAll(List.of(readings));
    Sheet sheet = Sheet.of("demo", events, SetUp.LIBRARY);
    return Wanted.lines(sheet.rows(), PlayedKind.of(events, SetUp.LIBRARY).kind());
  }

  private static double millimetres(String line, String string) {
    Matcher figure = Pattern.compile(string + " (?:at least )?([0-9.]+) mm").matcher(line);
    assertThat(figure.find()).isTrue();
    return Double.parseDouble(figure.group(1));
  }

  /** From 0.35 to 0.40 over fret 1, the middle of 0.10 to 0.25 is wanted. */
  @Test
  void aSlotGoesDownByMoreThanTheGap() {
    String line = lines(SetUp.nut(1, "A1", new Bracket(0.35, 0.40))).get(0);
    assertThat(line).isEqualTo("Nut slot height: A1 0.41 mm down.");
    double before = 0.375 / (line(0, 1, fret(2), 0, fret(1)));
    double after = before - millimetres(line, "A1");
    assertThat(line(0, after, fret(2), 0, fret(1))).isWithin(HUNDREDTH).of(0.175);
  }

  /** Where the string touches, only the least that is missing is known. */
  @Test
  void aSlotThatTouchesGoesUp() {
    String line = lines(SetUp.nut(1, "E1", Bracket.touches())).get(0);
    assertThat(line).isEqualTo("Nut slot height: E1 at least 0.36 mm up.");
    double floor = millimetres(line, "E1");
    assertThat(line(0, floor, fret(2), 0, fret(1))).isWithin(HUNDREDTH).of(0.175);
  }

  /**
   * 3.2 mm at fret 12 where 2.25 to 2.75 is wanted, with a slot 0.4 mm high; D2 is in its range.
   */
  @Test
  void aSaddleGoesTwiceAsFarAndBothItsEndsAreTold() {
    String line = lines(SetUp.action(1, "E1", 3.2), SetUp.action(2, "D2", 2.0)).get(0);
    assertThat(line).endsWith(": E1 1.4 mm down, D2 as it is.");
    double saddle = line(0, 0.4, fret(12), 3.2, SCALE) - millimetres(line, "E1");
    assertThat(line(0, 0.4, SCALE, saddle, fret(12))).isWithin(TENTH).of(2.5);
  }

  /** 6 cents sharp: with the saddle back, the fretted note is twice the open string's. */
  @Test
  void aSharpStringIsMadeLonger() {
    Event.Read sharp =
        new Event.Read(
            SetUp.minute(1),
            "read",
            Quantity.INTONATION,
            Which.EACH,
            "A1",
            List.of(12),
            0,
            1,
            null,
            6.0);
    String line = lines(sharp).get(0);
    assertThat(line).isEqualTo("Saddle along the string: A1 3.0 mm away from the nut.");
    double stretched = Math.pow(2, 6 / 1200.0);
    double length = SCALE + millimetres(line, "A1");
    double cents = 1200 / Math.log(2) * Math.log(stretched * length / (length - fret(12)) / 2);
    assertThat(cents).isWithin(0.2).of(0);
  }

  @Test
  void aPickupComesNearerWhereTheGapIsWide() {
    assertThat(lines(SetUp.pickup(1, "A1", 4.0))).containsExactly("Pickup height: A1 1.3 mm up.");
  }

  @Test
  void whatIsInItsRangeOrStaleHasNoFigure() {
    assertThat(lines(SetUp.relief(1, "E1", new Bracket(0.35, 0.40)))).isEmpty();
    assertThat(lines(SetUp.relief(1, "E1", new Bracket(0.60, 0.65)), SetUp.turned(2, 0.125)))
        .containsExactly("Relief: E1 to be read again.");
    assertThat(lines(SetUp.relief(1, "E1", new Bracket(0.60, 0.65))))
        .containsExactly("Relief: E1 0.25 mm less.");
  }
}
