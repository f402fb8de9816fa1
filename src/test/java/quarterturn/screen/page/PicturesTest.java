package quarterturn.screen.page;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.procedure.read.Shelf;
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
    HoldPicture.Frets neck = new HoldPicture.Frets(0, 24, 1007);
    double nut = neck.column(0);
    double octave = neck.column(12) - nut;
    double twoOctaves = neck.column(24) - nut;
    assertThat(octave / twoOctaves).isWithin(0.002).of(0.5 / 0.75);
    double first = neck.column(1) - nut;
    assertThat(first / twoOctaves).isWithin(0.002).of((1 - Math.pow(0.5, 1 / 12.0)) / 0.75);
  }

  @Test
  void aReadingShowsBothHandsAndAGaugeThatPassesAndOneThatLifts() throws IOException {
    Golden.check("picture-hold", drawn(HoldPicture.draw(List.of(1, 14), 7, true, 22, 76, 5)));
    Golden.check(
        "picture-hold-small", drawn(HoldPicture.draw(List.of(1, 17), 8, true, 20, 56, 10)));
    Golden.check(
        "picture-hold-tall", drawn(HoldPicture.draw(List.of(7, 16), 11, true, 22, 97, 20)).ascii());
    Golden.check("picture-hold-nut", drawn(HoldPicture.draw(List.of(3), 1, true, 20, 76, 6)));
    Golden.check(
        "picture-hold-no-gauge", drawn(HoldPicture.draw(List.of(20), 0, false, 20, 76, 6)));
  }

  /** Every reading of every kind that comes with the program is drawn whole at each size. */
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

  /** A reading's depth in millimetres, counted in thirds of the rows that it is drawn in. */
  private static double drawnMm(Overview overview, int width, int rows) {
    Canvas canvas = drawn(CurvePicture.draw(overview, width, rows));
    String[] lines = canvas.text().split("\n", -1);
    int middle = lines[1].lastIndexOf('═', 45) / 2;
    int thirds = 0;
    for (int r = 2; r < lines.length && lines[r - 1].indexOf("fret") < 0; r++) {
      char c = lines[r].length() > middle ? lines[r].charAt(middle) : ' ';
      thirds = c == ' ' ? thirds : 3 * (r - 2) + "‾─_".indexOf(c);
    }
    return thirds * CurvePicture.ROW_MM / 3;
  }

  /** 0.37 mm is drawn as 0.37 mm and 0.62 as 0.62, whatever else was read and however large. */
  @Test
  void curvesLookAsDifferentAsTheyAre() {
    double third = CurvePicture.ROW_MM / 3;
    for (int width : List.of(56, 76, 97)) {
      for (int rows = 7; rows < 30; rows++) {
        for (double mm = 0.05; mm < 0.8; mm += 0.01) {
          Bracket bracket = new Bracket(mm - 0.02, mm + 0.02);
          Overview one = reading(bracket);
          Overview second = reading(new Bracket(1.2, 1.3), bracket);
          assertThat(drawnMm(one, width, rows)).isWithin(third + 0.01).of(mm);
          assertThat(drawnMm(second, width, rows)).isWithin(third + 0.01).of(mm);
        }
        double less = drawnMm(reading(new Bracket(0.35, 0.39)), width, rows);
        double more = drawnMm(reading(new Bracket(0.60, 0.64)), width, rows);
        assertThat(more / less).isWithin(0.15).of(0.62 / 0.37);
      }
    }
  }

  @Test
  void theCurveSaysHowMuchLargerItIsDrawn() {
    for (int rows : List.of(8, 12, 30)) {
      String text = drawn(CurvePicture.draw(reading(new Bracket(0.3, 0.4)), 76, rows)).text();
      assertThat(text).contains("drawn about 150 times as deep as it is");
    }
    String deep = drawn(CurvePicture.draw(reading(new Bracket(1.3, 1.4)), 76, 9)).text();
    assertThat(deep).contains("deeper than there is room for");
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
  void tighteningIsDrawnClockwise() throws IOException {
    assertThat(endColumn(90)).isGreaterThan(endColumn(0));
    assertThat(endColumn(-90)).isLessThan(endColumn(0));
    assertThat(endColumn(45) - endColumn(0)).isEqualTo(endColumn(0) - endColumn(-45));
    assertThat(DialPicture.dial(45, false, 7).text()).contains("► end");
    Golden.check("picture-dial-back", DialPicture.dial(-45, true, 5));
    assertThat(DialPicture.dial(-45, false, 7).text()).contains("end");
    assertThat(DialPicture.dial(-45, false, 7).text()).contains("◄");
  }

  private static int endColumn(double degrees) {
    Canvas dial = DialPicture.dial(degrees, false, 7);
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
            false,
            Set.of());
    Canvas dial = drawn(DialPicture.draw(sixteenth, 76, 16));
    Golden.check("picture-dial-sixteenth", dial);
    assertThat(dial.text()).contains("22.5 degrees clockwise");
  }

  @Test
  void keyAndPlaces() throws Exception {
    Golden.check("picture-key", drawn(KeyPicture.draw(76, 10)));
    Golden.check(
        "picture-places", drawn(PlacesPicture.draw(Invented.KIND, List.of(), null, 56, 9)));
    Kind twelve =
        kinds().stream().filter(k -> k.id().equals("acoustic-twelve")).findFirst().orElseThrow();
    List<Prompt.Option> options = Invented.CHOOSE.options();
    Canvas places = drawn(PlacesPicture.draw(twelve, options, options.get(5), 76, 12));
    Golden.check("picture-places-twelve", places);
  }

  private static List<Kind> kinds() throws Exception {
    return List.copyOf(new Shelf(null).rules().kinds().values());
  }

  /** As many tuners as strings, a sound hole only where there is one, and a mark for each place. */
  @Test
  void placesAreThoseOfTheKind() throws Exception {
    List<Prompt.Option> asked = Invented.CHOOSE.options();
    for (Kind kind : kinds()) {
      boolean hole = kind.make().soundHole();
      assertThat(hole).isEqualTo(kind.id().matches("acoustic.*|classical"));
      for (int rows : List.of(3, 5, 9)) {
        for (List<Prompt.Option> options : List.of(asked, List.<Prompt.Option>of())) {
          Canvas canvas = drawn(PlacesPicture.draw(kind, options, null, 56, rows));
          String text = canvas.text().split("\n\n", -1)[0];
          assertThat(text.chars().filter(c -> c == '○').count()).isEqualTo(kind.strings().size());
          String marks = options.isEmpty() ? "ABCDEF" : "123456";
          for (char mark : marks.toCharArray()) {
            boolean shown = hole || mark != marks.charAt(4);
            assertThat(text.chars().filter(c -> c == mark).count()).isEqualTo(shown ? 1 : 0);
          }
          assertThat(text.contains("(" + marks.charAt(4) + ")")).isEqualTo(hole);
          assertThat(text.contains(".-.")).isEqualTo(hole);
          assertThat(canvas.text().contains("sound hole")).isEqualTo(hole && rows == 9);
        }
      }
    }
  }

  /** Both hands, and the gauge where there is one, for every reading on a string. */
  @Test
  void everyReadingOfEveryKindShowsItsHands() throws Exception {
    for (Kind kind : kinds()) {
      for (Quantity quantity : Quantity.values()) {
        List<Integer> held = quantity.held(kind);
        for (int width : held.isEmpty() ? List.<Integer>of() : List.of(56, 76, 97, 130)) {
          for (int rows : List.of(5, 10, 14)) {
            boolean gauge = quantity.bracket();
            Canvas canvas =
                drawn(
                    HoldPicture.draw(
                        held, quantity.readAt(kind), gauge, kind.frets(), width, rows));
            String text = canvas.text();
            assertThat(text).contains("pressing hand ▼");
            assertThat(text.contains("▼ capo")).isEqualTo(held.size() > 1);
            int at = quantity.readAt(kind);
            assertWithMessage(text)
                .that(text.contains(at + " gauge hand") || text.contains("gauge hand " + at))
                .isEqualTo(gauge);
            boolean room = width >= 76 || rows >= 10;
            assertThat(text.contains("string still")).isEqualTo(gauge && room);
            assertThat(text.contains("LIFTS: pushed up")).isEqualTo(gauge && room);
            for (int fret : held) {
              assertThat(text).containsMatch("[ ]" + fret + "\\b");
            }
          }
        }
      }
    }
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
