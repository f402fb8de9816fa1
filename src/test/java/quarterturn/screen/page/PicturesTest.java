package quarterturn.screen.page;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Which;
import quarterturn.screen.Golden;
import quarterturn.screen.Invented;
import quarterturn.screen.terminal.Canvas;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class PicturesTest {
  private static Canvas drawn(@Nullable Canvas canvas) {
    if (canvas == null) {
      throw new AssertionError("it was not drawn");
    }
    return canvas;
  }

  private static Overview reading(Bracket... brackets) {
    List<Overview.Entry> trail =
        List.of(brackets).stream()
            .<Overview.Entry>map(
                b -> new Overview.Entry.Reading(Invented.NOON, Which.LOWEST, b, false))
            .toList();
    return new Overview(
        "s",
        "i",
        Invented.KIND,
        Invented.WINDOW,
        null,
        Role.BEGINNER,
        "t",
        List.of(),
        0,
        Set.of(),
        trail,
        Turn.NONE,
        Turn.NONE,
        Duration.ofHours(24),
        null,
        List.of(),
        null,
        List.of());
  }

  /**
   * Equal temperament: each octave halves the string, so fret 12 stands at 1/2 and fret 24 at 3/4
   * of the scale. Source: the definition of equal temperament with twelve equal steps an octave.
   */
  @Test
  void fretsStandWhereEqualTemperamentPutsThem() {
    double nut = HoldPicture.column(0, 24, 1007);
    double octave = HoldPicture.column(12, 24, 1007) - nut;
    double twoOctaves = HoldPicture.column(24, 24, 1007) - nut;
    assertThat(octave / twoOctaves).isWithin(0.002).of(0.5 / 0.75);
    double first = HoldPicture.column(1, 24, 1007) - nut;
    assertThat(first / twoOctaves).isWithin(0.002).of((1 - Math.pow(0.5, 1 / 12.0)) / 0.75);
  }

  @Test
  void markedFretsAreNamed() throws IOException {
    Canvas picture = drawn(HoldPicture.draw(List.of(1, 14), 7, "E2", 22, 76, 7));
    Golden.check("picture-hold", picture);
    assertThat(picture.text()).contains("Hold string E2 down behind fret 1 and fret 14");
  }

  @Test
  void curveOfEachKindOfReading() throws IOException {
    Golden.check("picture-curve-none", drawn(CurvePicture.draw(reading(), 76, 9)));
    Golden.check(
        "picture-curve-touches", drawn(CurvePicture.draw(reading(Bracket.touches()), 76, 9)));
    Golden.check(
        "picture-curve-beyond", drawn(CurvePicture.draw(reading(Bracket.passes(1.0)), 76, 9)));
    Golden.check(
        "picture-curve-under", drawn(CurvePicture.draw(reading(Bracket.lifts(0.05)), 76, 9)));
    Golden.check(
        "picture-curve-in", drawn(CurvePicture.draw(reading(new Bracket(0.35, 0.4)), 110, 13)));
    Golden.check(
        "picture-curve-edge", drawn(CurvePicture.draw(reading(new Bracket(0.40, 0.5)), 76, 9)));
  }

  /** A reading's bar lies within the window's on the scale just when the reading does. */
  @Test
  void theScaleTellsInsideFromOutside() {
    Window window = new Window(0.30, 0.45);
    for (int low = 0; low < 20; low++) {
      Bracket bracket = new Bracket(low * 0.05, low * 0.05 + 0.05);
      Canvas scale = ScaleBar.draw(window, List.of(new ScaleBar.Mark("E", bracket)), 70);
      String[] rows = scale.text().split("\n", -1);
      boolean within =
          rows[3].indexOf('[') >= rows[2].indexOf('[')
              && rows[3].indexOf(']') <= rows[2].indexOf(']');
      assertThat(within).isEqualTo(low >= 6 && low <= 8);
    }
  }

  /**
   * Clockwise, seen facing the end of the rod nut, tightens. Common practice, no source; it is how
   * this program uses the words.
   */
  @Test
  void tighteningIsDrawnClockwise() {
    assertThat(endColumn(90)).isGreaterThan(endColumn(0));
    assertThat(endColumn(-90)).isLessThan(endColumn(0));
    assertThat(endColumn(45) - endColumn(0)).isEqualTo(endColumn(0) - endColumn(-45));
    assertThat(DialPicture.dial(45, 7).text()).contains("► end");
    assertThat(DialPicture.dial(-45, 7).text()).contains("end");
    assertThat(DialPicture.dial(-45, 7).text()).contains("◄");
  }

  private static int endColumn(double degrees) {
    Canvas dial = DialPicture.dial(degrees, 7);
    for (int r = 1; r < dial.height(); r++) {
      for (int c = 0; c < dial.width(); c++) {
        boolean arrow = "►◄▼▲".indexOf(dial.at(c, r)) >= 0;
        if (arrow) {
          return c;
        }
      }
    }
    return dial.text().split("\n", -1)[0].indexOf('▼');
  }

  @Test
  void theDialSaysInWordsWhatItShows() throws IOException {
    Prompt.TurnRod sixteenth =
        new Prompt.TurnRod(
            Invented.LOOSEN.said(),
            new Turn(1 / 16.0),
            Turn.QUARTER,
            new Prompt.Expected(Double.NEGATIVE_INFINITY, 0.2),
            false);
    Canvas dial = drawn(DialPicture.draw(sixteenth, "body-end", 76, 16));
    Golden.check("picture-dial-sixteenth", dial);
    assertThat(dial.text()).contains("22.5 degrees clockwise");
    assertThat(dial.text()).contains("it may still touch");
  }

  @Test
  void keyAndPlaces() throws IOException {
    Golden.check("picture-key", drawn(KeyPicture.draw(76, 10)));
    Golden.check("picture-places", drawn(PlacesPicture.draw(List.of(), null, 76, 10)));
  }

  @Test
  void theTimerNeverSaysThatItIsOverTooEarly() {
    assertThat(TimerBar.words(Duration.ofMillis(1))).isEqualTo("1 s");
    assertThat(TimerBar.words(Duration.ofSeconds(60))).isEqualTo("1 min 0 s");
    assertThat(TimerBar.words(Duration.ofHours(24))).isEqualTo("24 h 0 min");
    Canvas almost =
        TimerBar.draw(
            Invented.NOON, Invented.NOON.plusSeconds(600), Invented.NOON.plusSeconds(599), 40);
    assertThat(almost.text()).contains("99 %");
    assertThat(almost.text()).contains("░");
  }

  @Test
  void historyLeavesOutWhatItCannotShowTruly() {
    Overview two = reading(new Bracket(0.60, 0.65), new Bracket(0.30, 0.35));
    String text = drawn(HistoryPicture.draw(two, 80, 20)).text();
    String[] rows = text.split("\n", -1);
    for (String row : rows) {
      boolean shaded = row.contains("░");
      if (row.startsWith("0.45") || row.startsWith("0.60")) {
        assertThat(shaded).isFalse();
      }
      if (row.startsWith("0.30") || row.startsWith("0.40")) {
        assertThat(shaded).isTrue();
      }
    }
    assertThat(HistoryPicture.draw(two, 80, 6)).isNull();
    assertThat(HistoryPicture.draw(reading(Bracket.touches()), 80, 30)).isNull();
  }
}
