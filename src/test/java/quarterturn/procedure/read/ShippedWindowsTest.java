package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Scale;
import quarterturn.craft.StringLine;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Length;

/** The windows of procedures/kinds.yaml as a set: no holes, none too narrow, all converted. */
class ShippedWindowsTest {
  private static final double SLACK = 1e-9;

  private static final Pattern RELIEF =
      Pattern.compile(
          "(0[.]\\d+) mm held at 1 and (\\d+) and read at (\\d+) is (0[.]\\d+) mm here");

  private static final Pattern NUT =
      Pattern.compile(
          "(0[.]\\d+) to (0[.]\\d+) mm is (0[.]\\d+) to (0[.]\\d+) mm over (?:the place of )?fret 1 with"
              + " the string open and (\\d[.]\\d+) mm at fret 12");

  private static Collection<Kind> kinds = List.of();

  @BeforeAll
  static void read() throws Exception {
    byte[] bytes = Readings.bytes("/procedures/kinds.yaml");
    kinds = Readings.kinds("kinds.yaml", bytes).values();
  }

  /** The step of the usual gauge, as procedures/blocks/reading.yaml has it. */
  private static double step(Quantity quantity) {
    String text =
        new String(Readings.bytes("/procedures/blocks/reading.yaml"), StandardCharsets.UTF_8);
    Matcher m = Pattern.compile("\n  " + quantity.word() + ": \\{gauge: ([^,]+),").matcher(text);
    assertWithMessage(quantity.word()).that(m.find()).isTrue();
    return Amounts.of(quantity, m.group(1));
  }

  private static List<Window> windows(Kind kind, Quantity quantity, int string) {
    return kind.styles().stream().map(s -> kind.target(quantity, s, string).window()).toList();
  }

  @Test
  void neighbouringStylesLeaveNoHole() {
    for (Kind kind : kinds) {
      for (Quantity quantity : kind.windows().keySet()) {
        for (int string = 0; string < kind.strings().size(); string++) {
          List<Window> windows = windows(kind, quantity, string);
          for (int i = 1; i < windows.size(); i++) {
            String where = kind.id() + " " + quantity.word() + " " + windows;
            Window lower = windows.get(i - 1);
            Window upper = windows.get(i);
            assertWithMessage(where).that(upper.lowMm()).isAtMost(lower.highMm() + SLACK);
            assertWithMessage(where).that(upper.lowMm()).isAtLeast(lower.lowMm());
            assertWithMessage(where).that(upper.highMm()).isAtLeast(lower.highMm());
          }
        }
      }
    }
  }

  @Test
  void noneIsNarrowerThanTwiceTheStepOfItsGauge() {
    for (Kind kind : kinds) {
      assertThat(kind.windows()).containsKey(Quantity.NUT_CLEARANCE);
      for (Quantity quantity : kind.windows().keySet()) {
        for (int string = 0; string < kind.strings().size(); string++) {
          for (Window window : windows(kind, quantity, string)) {
            assertWithMessage(kind.id() + " " + quantity.word() + " " + window)
                .that(window.highMm() - window.lowMm())
                .isAtLeast(2 * step(quantity) - SLACK);
          }
        }
      }
      for (Ends ends : kind.make().special().getOrDefault(Quantity.PICKUP_GAP, Map.of()).values()) {
        assertThat(ends.low().highMm() - ends.low().lowMm()).isAtLeast(1 - SLACK);
        assertThat(ends.high().highMm() - ends.high().lowMm()).isAtLeast(1 - SLACK);
      }
    }
  }

  private record Sourced(Kind kind, Quantity quantity, Window low, Window high, String source) {}

  private static List<Sourced> sources() {
    List<Sourced> all = new ArrayList<>();
    for (Kind kind : kinds) {
      kind.windows()
          .forEach(
              (quantity, styles) ->
                  styles
                      .values()
                      .forEach(
                          e ->
                              all.add(new Sourced(kind, quantity, e.low(), e.high(), e.source()))));
    }
    return all;
  }

  /**
   * Plane geometry and small-slope bending, which {@code NeckReferenceTest} holds to
   * neck.hold_other_fret.
   */
  @Test
  void aReliefHeldOtherwiseIsConverted() {
    int converted = 0;
    for (Sourced one : sources()) {
      for (MatchResult m : RELIEF.matcher(one.source()).results().toList()) {
        Kind kind = one.kind();
        Scale scale = new Scale(kind.scale());
        Held theirs = new Held(1, Integer.parseInt(m.group(2)), Integer.parseInt(m.group(3)));
        Length published = Length.mm(Double.parseDouble(m.group(1)));
        Neck neck = Neck.uniform(scale, kind.jointFret(), published, theirs);
        double here = neck.relief(Held.at(kind.jointFret(), kind.readAt())).mm();
        double said = Double.parseDouble(m.group(4));
        assertWithMessage(kind.id()).that(said).isWithin(0.005).of(here);
        assertThat(said).isAtLeast(one.low().lowMm());
        assertThat(said).isAtMost(one.low().highMm());
        converted++;
      }
    }
    assertThat(converted).isAtLeast(5);
  }

  /**
   * By similar triangles (neck.uniform has the same clearances): pressed at fret 2 the string runs
   * straight from the slot to that fret.
   */
  @Test
  void aNutClearanceIsSaidForTheOpenStringToo() {
    int converted = 0;
    for (Sourced one : sources()) {
      for (MatchResult m : NUT.matcher(one.source()).results().toList()) {
        double[] n = new double[5];
        for (int i = 0; i < n.length; i++) {
          n[i] = Double.parseDouble(m.group(i + 1));
        }
        boolean low = Math.abs(n[0] - one.low().lowMm()) < SLACK;
        assertThat(new Window(n[0], n[1])).isEqualTo(low ? one.low() : one.high());
        Scale scale = new Scale(one.kind().scale());
        assertWithMessage(one.source()).that(n[2]).isWithin(0.006).of(open(scale, n[0], n[4]));
        assertWithMessage(one.source()).that(n[3]).isWithin(0.006).of(open(scale, n[1], n[4]));
        converted++;
      }
    }
    assertThat(converted).isAtLeast(4);
  }

  private static double open(Scale scale, double pressed, double action) {
    Neck straight = Neck.straight(scale, 14);
    StringLine unit = StringLine.withAction(straight, Length.mm(1), 2, Length.mm(0));
    Length slot = Length.mm(pressed / unit.openMm(1));
    return StringLine.withAction(straight, slot, Quantity.OCTAVE, Length.mm(action)).openMm(1);
  }

  /** Common practice, no source: B0 stands higher than the line of the others goes on to. */
  @Test
  void theLowestStringHasItsOwnHeight() {
    Kind bass = kinds.stream().filter(k -> k.id().equals("bass-35")).findFirst().orElseThrow();
    List<Window> action = new ArrayList<>();
    for (int string = 0; string < 5; string++) {
      action.add(bass.target(Quantity.ACTION, Style.MEDIUM, string).window());
    }
    assertThat(action)
        .containsExactly(
            new Window(2.3, 2.8),
            new Window(2.0, 2.5),
            new Window(1.9, 2.4),
            new Window(1.8, 2.3),
            new Window(1.7, 2.2))
        .inOrder();
    assertThat(windows(bass, Quantity.INTONATION, 1)).contains(new Window(-3, 3));
    assertThat(windows(bass, Quantity.INTONATION, 2)).contains(new Window(-2, 2));
  }

  @Test
  void aCourseSharesItsWindow() {
    Kind twelve =
        kinds.stream().filter(k -> k.id().equals("acoustic-twelve")).findFirst().orElseThrow();
    assertThat(twelve.strings())
        .containsExactly("E2", "E3", "A2", "A3", "D3", "D4", "G3", "G4", "B3", "B3'", "E4", "E4'")
        .inOrder();
    for (int course = 0; course < 12; course += 2) {
      assertThat(twelve.target(Quantity.ACTION, Style.MEDIUM, course))
          .isEqualTo(twelve.target(Quantity.ACTION, Style.MEDIUM, course + 1));
    }
    assertThat(twelve.target(Quantity.ACTION, Style.MEDIUM, 11).window())
        .isEqualTo(new Window(1.5, 1.9));
  }

  /** The scale of each string is stepped evenly: {@code FannedFrets}. */
  @Test
  void fannedFretsGiveEachStringItsScale() {
    Kind fanned =
        kinds.stream().filter(k -> k.id().equals("bass-fanned")).findFirst().orElseThrow();
    // 37, 36.25 and 34 in by the definition of an inch.
    assertThat(fanned.scale(0).mm()).isWithin(1e-9).of(939.8);
    assertThat(fanned.scale(1).mm()).isWithin(1e-9).of(920.75);
    assertThat(fanned.scale(4).mm()).isWithin(1e-9).of(863.6);
  }
}
