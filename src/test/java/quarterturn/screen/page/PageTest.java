package quarterturn.screen.page;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.procedure.Hazard;
import quarterturn.screen.Golden;
import quarterturn.screen.Invented;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Layer;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

public class PageTest {
  public record View(String name, Model model) {
    @Override
    public String toString() {
      return name;
    }
  }

  public static Model model(Prompt prompt, int part, int entries) {
    return Model.of(
        prompt,
        Invented.overview(part, Invented.trail(entries), entries < 3 ? 0 : -0.125),
        "Rod turned, strings not yet back at pitch.",
        Invented.NOON.plus(Duration.ofMinutes(4)));
  }

  public static List<View> views() {
    List<View> out = new ArrayList<>();
    out.add(new View("tell", model(Invented.TELL, 4, 3)));
    out.add(new View("caution", model(Invented.CAUTION, 0, 0)));
    out.add(new View("choose", model(Invented.CHOOSE, 1, 0).with(new Draft.Picking(1))));
    out.add(new View("choose-key", model(Invented.KEY, 1, 0)));
    out.add(
        new View(
            "measure",
            model(Invented.MEASURE, 2, 0)
                .with(new Draft.Reading(Field.of("0.60 passes 0.65 lifts"), true))));
    out.add(
        new View(
            "measure-refused",
            Update.key(
                    model(Invented.MEASURE, 2, 0)
                        .with(new Draft.Reading(Field.of("about half"), true)),
                    Key.Named.ENTER)
                .model()));
    out.add(new View("humidity", model(Invented.HUMIDITY, 0, 0)));
    out.add(new View("curve", model(Invented.CURVE, 3, 2)));
    out.add(new View("turn-loosen", model(Invented.LOOSEN, 4, 2)));
    out.add(new View("turn-before", model(Invented.FREED, 4, 2)));
    out.add(new View("turn-tighten", model(Invented.TIGHTEN, 4, 5)));
    out.add(
        new View(
            "turn-made",
            model(Invented.LOOSEN, 4, 2).with(new Draft.Made(0, Field.of("1/8"), false, null))));
    out.add(new View("wait", model(Invented.settle(false), 5, 3)));
    out.add(
        new View(
            "wait-lift",
            model(Invented.settle(true), 5, 3).with(new Draft.Lifting(Field.of("known neck")))));
    out.add(
        new View(
            "wait-over",
            model(Invented.settle(false), 5, 3).at(Invented.NOON.plus(Duration.ofHours(1)))));
    out.add(new View("done", model(Invented.DONE, 6, 7)));
    out.add(new View("hand-over", model(Invented.HAND_OVER, 6, 5)));
    out.add(new View("layer-keys", model(Invented.MEASURE, 2, 0).with(Layer.KEYS)));
    out.add(new View("layer-why", model(Invented.LOOSEN, 4, 2).with(Layer.WHY)));
    out.add(new View("layer-log", model(Invented.TELL, 4, 7).with(Layer.LOG)));
    out.add(new View("layer-leave", model(Invented.TELL, 4, 3).with(Layer.LEAVE)));
    out.add(new View("action", model(Invented.ACTION, 2, 2)));
    out.add(new View("layer-picture", model(Invented.CHOOSE, 1, 0).with(Layer.PICTURE)));
    out.add(new View("layer-picture-hold", model(Invented.MEASURE, 1, 0).with(Layer.PICTURE)));
    out.add(new View("layer-picture-curve", model(Invented.CURVE, 1, 2).with(Layer.PICTURE)));
    return out;
  }

  @ParameterizedTest
  @MethodSource("views")
  void fitsEightyByTwentyFour(View view) throws IOException {
    Golden.check("80x24-" + view.name(), Page.draw(view.model(), ZoneOffset.UTC, 80, 24));
  }

  @ParameterizedTest
  @MethodSource("views")
  void usesMoreRoom(View view) throws IOException {
    Golden.check("140x45-" + view.name(), Page.draw(view.model(), ZoneOffset.UTC, 140, 45));
  }

  @ParameterizedTest
  @MethodSource("views")
  void hasATwinInAscii(View view) {
    Canvas drawn = Page.draw(view.model(), ZoneOffset.UTC, 80, 24);
    String ascii = drawn.ascii().text();
    assertThat(ascii.chars().allMatch(c -> c == '\n' || (c >= ' ' && c < 0x7f))).isTrue();
    assertThat(ascii).doesNotContain("??");
    // A question mark is either in the text itself or the key for help, never a character lost.
    assertThat(count(ascii, '?')).isEqualTo(count(drawn.text(), '?'));
  }

  private static long count(String text, char c) {
    return text.chars().filter(x -> x == c).count();
  }

  @Test
  void oneViewInAsciiToLookAt() throws IOException {
    Golden.check(
        "80x24-ascii-turn-loosen",
        Page.draw(model(Invented.LOOSEN, 4, 2), ZoneOffset.UTC, 80, 24).ascii());
    for (View view : views()) {
      if (view.name().startsWith("layer-picture")) {
        Canvas drawn = Page.draw(view.model(), ZoneOffset.UTC, 60, 18);
        Golden.check("60x18-ascii-" + view.name(), drawn.ascii());
      }
    }
    Golden.check(
        "80x24-ascii-measure",
        Page.draw(model(Invented.MEASURE, 2, 2), ZoneOffset.UTC, 80, 24).ascii());
  }

  @Test
  void saysKindlyThatItIsTooSmall() throws IOException {
    Model model = model(Invented.TELL, 4, 3);
    Golden.check("too-small", Page.draw(model, ZoneOffset.UTC, 59, 24));
    assertThat(Page.draw(model, ZoneOffset.UTC, 60, 18).text()).contains("Tune every string");
    assertThat(Page.draw(model, ZoneOffset.UTC, 80, 17).text()).contains("--plain");
  }

  static Stream<int[]> sizes() {
    return Stream.of(
        new int[] {60, 18},
        new int[] {61, 60},
        new int[] {116, 18},
        new int[] {300, 100},
        new int[] {1, 1},
        new int[] {20, 3});
  }

  @ParameterizedTest
  @MethodSource("sizes")
  void drawsAtEverySize(int[] size) {
    for (View view : views()) {
      Canvas drawn = Page.draw(view.model(), ZoneOffset.UTC, size[0], size[1]);
      assertThat(drawn.width()).isEqualTo(size[0]);
      assertThat(drawn.height()).isEqualTo(size[1]);
    }
  }

  @Test
  void everyPromptShowsItsTextOrOffersToScrollAtTheSmallestSize() {
    for (View view : views()) {
      String text = Page.draw(view.model(), ZoneOffset.UTC, 60, 18).text();
      boolean layered = view.model().layer() != Layer.NONE;
      boolean answering = view.model().draft() instanceof Draft.Made;
      PromptText all = view.model().prompt().said();
      boolean before = view.model().draft() instanceof Draft.Before;
      String said = before ? all.first().get(0).text() : all.text();
      boolean shown = text.replaceAll("\\s+", " ").contains(said.substring(0, 20));
      assertThat(layered || answering || shown || text.contains("PgDn")).isTrue();
    }
  }

  @ParameterizedTest
  @MethodSource("views")
  void worksAtTheSmallestSize(View view) throws IOException {
    Golden.check("60x18-" + view.name(), Page.draw(view.model(), ZoneOffset.UTC, 60, 18));
  }

  @Test
  void whoLeavesIsToldFirstWhatToDoWithKeyAndStrings() {
    Overview turning =
        Invented.overview(4, List.of(), 0).parting(List.of("Take the key out.", "Tune up."));
    Model model =
        Model.of(Invented.LOOSEN, turning, "in the middle of a rod turn", Invented.NOON)
            .with(Layer.LEAVE);
    String text = Page.draw(model, ZoneOffset.UTC, 60, 18).text();
    assertThat(text.indexOf("Take the key out.")).isGreaterThan(text.indexOf("Before you leave:"));
    assertThat(text.indexOf("in the middle")).isGreaterThan(text.indexOf("Tune up."));
  }

  /** A list that is too long for the window scrolls below its question, which stays in view. */
  @Test
  void aLongListOfAnswersIsReachedAtTheSmallestSize() {
    List<Prompt.Option> options = new ArrayList<>();
    for (int i = 1; i <= 14; i++) {
      options.add(new Prompt.Option("o" + i, "Answer number " + i));
    }
    String asked = "Look at all of it, in good light, and take your time. Which is it?";
    PromptText said = Invented.said("list", asked, null, List.of(Invented.FORCE));
    Model model = model(new Prompt.Choose(said, options), 1, 0);
    String top = Page.draw(model, ZoneOffset.UTC, 60, 18).text();
    assertThat(top).contains("Which is it?");
    assertThat(top).contains("▼ PgDn, more below");
    Model down = model;
    for (int i = 0; i < 5; i++) {
      Model next = Update.key(down, Key.Named.PAGE_DOWN).model();
      down = Page.settled(next, ZoneOffset.UTC, 60, 18);
    }
    String end = Page.draw(down, ZoneOffset.UTC, 60, 18).text();
    assertThat(end).contains("14  Answer number 14");
    assertThat(end).contains("▲ PgUp, more above");
    assertThat(end).contains("► Which is it?");
    Model typed = Update.key(model, new Key.Typed('1')).model();
    typed = Update.key(typed, new Key.Typed('3')).model();
    assertThat(typed.draft()).isEqualTo(new Draft.Picking(12, true));
    String marked =
        Page.draw(typed.saying("A refusal that is said."), ZoneOffset.UTC, 60, 18).text();
    assertThat(marked).contains("►13  Answer number 13");
    assertThat(marked).contains("► Which is it?");
    assertThat(marked).contains("! A refusal that is said.");
  }

  /** The step's own keys come first, then how to take an answer back and how to leave. */
  @Test
  void aReadingFieldNamesTheKeysThatTakeBackAndLeave() {
    for (int width : new int[] {60, 80, 140}) {
      String text = Page.draw(model(Invented.MEASURE, 2, 0), ZoneOffset.UTC, width, 24).text();
      assertThat(text).contains("F4 take back");
      assertThat(text).contains("F10 leave");
    }
  }

  @Test
  void onlyKeysThatDoSomethingAreListed() {
    PromptText bare =
        new PromptText("p", "s", "x", "Put the capo on.", null, List.of(), null, List.of());
    String keys = keys(new Prompt.Tell(bare));
    assertThat(keys).doesNotContain("p or F5");
    assertThat(keys).doesNotContain("w or F2");
    assertThat(keys).contains("b or F4");
    assertThat(keys(Invented.TELL)).contains("w or F2");
    assertThat(keys(Invented.CHOOSE)).contains("p or F5");
    assertThat(keys(Invented.DONE)).doesNotContain("b or F4");
  }

  @Test
  void windowAndRodStandInOneLineThatIsNotCut() {
    for (double net : new double[] {0, 1 / 16.0, -13 / 16.0}) {
      Overview overview = Invented.overview(4, Invented.trail(3), net);
      Model model = Model.of(Invented.TELL, overview, "", Invented.NOON);
      for (int width : new int[] {60, 80, 140}) {
        String row = Page.draw(model, ZoneOffset.UTC, width, 24).text().split("\n")[22];
        assertThat(row).doesNotContain("…");
        assertThat(row).containsMatch("ange 0.30(-| to )0.45.*Rod ");
        assertThat(row.contains("moved") && row.contains("in 24 h")).isEqualTo(net != 0);
      }
    }
  }

  private static String keys(Prompt prompt) {
    return Page.draw(model(prompt, 4, 3).with(Layer.KEYS), ZoneOffset.UTC, 140, 45).text();
  }

  /** Where there is least room, how to type a reading is still shown, and the picture's key. */
  @Test
  void aReadingShowsHowItIsTypedAtTheSmallestSize() {
    Prompt noted = Invented.MEASURE.noting(List.of("A note. ".repeat(30)));
    String text = text60(model(noted, 2, 0));
    assertThat(text).contains("like 0.30 passes 0.35 lifts; t touches; c can't measure");
    assertThat(text).contains("F5 picture");
  }

  @Test
  void whatOnlyInformsAsksForNothingToBeDone() {
    String text = text60(model(new Prompt.Tell(Invented.TELL.said(), true), 4, 3));
    assertThat(text).contains("Press Enter to go on.");
    assertThat(text).doesNotContain("done.");
    assertThat(text60(model(Invented.TELL, 4, 3))).contains("Press Enter when it is done.");
  }

  private static String text60(Model model) {
    return Page.draw(model, ZoneOffset.UTC, 60, 18).text();
  }

  @Test
  void scrollingStopsAtTheEnd() {
    PromptText tune = Invented.said("tune", "Tune every string to pitch.", null, List.of());
    List<Hazard> three = List.of(Invented.WHIP, Invented.SLIP, Invented.FORCE);
    Model far = model(new Prompt.Caution(tune, three), 0, 0).scrolled(500);
    Model settled = Page.settled(far, ZoneOffset.UTC, 60, 18);
    assertThat(settled.scroll()).isGreaterThan(0);
    assertThat(settled.scroll()).isLessThan(500);
    String text = Page.draw(settled, ZoneOffset.UTC, 60, 18).text();
    assertThat(text).contains("Tune every string");
    assertThat(text).doesNotContain("PgDn");
    assertThat(Page.settled(far, ZoneOffset.UTC, 80, 24).scroll()).isEqualTo(0);
  }

  @Test
  void theHazardStandsBeforeItsStepWithItsWordFirst() {
    String text = Page.draw(model(Invented.CAUTION, 0, 0), ZoneOffset.UTC, 80, 24).text();
    int word = text.indexOf("WARNING");
    assertThat(word).isGreaterThan(0);
    assertThat(text.indexOf("whip into an eye")).isGreaterThan(word);
    assertThat(text.indexOf("To avoid it")).isGreaterThan(text.indexOf("whip into an eye"));
    assertThat(text.indexOf("Tune every string")).isGreaterThan(text.indexOf("To avoid it"));
  }

  /** ANSI Z535.6 ranks danger above warning above caution; notice is not about injury. */
  @Test
  void theWorstHazardIsNamedFirst() {
    PromptText said =
        Invented.said("turn", "Turn.", null, List.of(Invented.FORCE, Invented.SLIP, Invented.WHIP));
    String text = Page.draw(model(new Prompt.Tell(said), 4, 3), ZoneOffset.UTC, 80, 24).text();
    assertThat(text.indexOf("WARNING")).isLessThan(text.indexOf("CAUTION"));
    assertThat(text.indexOf("CAUTION")).isLessThan(text.indexOf("NOTICE"));
    assertThat(text.indexOf("NOTICE")).isLessThan(text.indexOf("Turn."));
  }

  static Stream<View> turns() {
    return views().stream()
        .filter(view -> view.name().startsWith("turn-"))
        .filter(view -> view.model().draft() instanceof Draft.Turning)
        .flatMap(
            view ->
                Stream.of(
                    view,
                    new View(
                        view.name() + " after long words",
                        model(view.model().prompt().noting(List.of("A note. ".repeat(90))), 4, 5)),
                    new View(
                        view.name() + " under a message",
                        view.model().saying("It could not be saved. ".repeat(9).strip())),
                    new View(view.name() + " under Esc", after(view, Key.Named.ESC)),
                    new View(view.name() + " under z", after(view, new Key.Typed('z')))));
  }

  private static Model after(View view, Key key) {
    return Update.key(view.model(), key).model();
  }

  /** Dial, direction, amount, limit and expectation, whatever the step says. */
  @ParameterizedTest
  @MethodSource("turns")
  void aTurnIsAlwaysInView(View view) {
    Prompt.TurnRod turn = (Prompt.TurnRod) view.model().prompt();
    boolean tighten = turn.turn().turns() > 0;
    for (int[] size : List.of(new int[] {60, 18}, new int[] {80, 24}, new int[] {140, 45})) {
      Canvas drawn = Page.draw(view.model(), ZoneOffset.UTC, size[0], size[1]);
      for (Canvas canvas : List.of(drawn, drawn.ascii())) {
        String text = canvas.text().replaceAll("[ \n]+", " ");
        assertThat(text).containsMatch("12.* end.*6");
        assertThat(text).containsMatch("9 *\\([○o]\\)");
        assertThat(text).contains(tighten ? "TIGHTEN 1/4 turn" : "LOOSEN 1/8 turn");
        assertThat(text).contains(tighten ? "90 degrees clockwise" : "45 degrees anticlockwise");
        assertThat(text).contains(tighten ? "from 12 to three" : "from 12 to half past ten");
        assertThat(text).contains("Limit: 1/4 turn per reading");
        assertThat(text).contains(tighten ? "expect 0.35 to 0.50 mm" : "expect 0.65 to 0.75 mm");
      }
    }
  }

  @Test
  void reliefSoFarIsDrawnOnlyWhereReliefIsReadTurnedOrDecidedOn() {
    for (Prompt prompt : List.of(Invented.MEASURE, Invented.TIGHTEN, Invented.CURVE)) {
      String text = Page.draw(model(prompt, 4, 7), ZoneOffset.UTC, 140, 60).text();
      assertThat(text).contains("Relief so far");
    }
    for (Prompt prompt : List.of(Invented.ACTION, Invented.HUMIDITY, Invented.TELL)) {
      String text = Page.draw(model(prompt, 4, 7), ZoneOffset.UTC, 140, 60).text();
      assertThat(text).doesNotContain("Relief so far");
      boolean beside = prompt instanceof Prompt.Tell;
      assertThat(text.contains("Relief and turns")).isEqualTo(beside);
    }
  }

  @Test
  void noControlCharacterIsDrawn() {
    String evil = "A\u001b[2J\u0007\u009b31m\u202eB\tC";
    PromptText said =
        new PromptText(
            "p",
            "s",
            "x",
            evil,
            evil,
            List.of(new Hazard("h", Hazard.Word.NOTICE, evil, evil, List.of(), List.of())),
            null,
            List.of(evil));
    Overview overview =
        new Overview(
            evil,
            evil,
            null,
            null,
            evil,
            quarterturn.procedure.condition.Role.BEGINNER,
            evil,
            List.of(evil),
            0,
            java.util.Set.of(),
            List.of(),
            quarterturn.unit.Turn.NONE,
            quarterturn.unit.Turn.NONE,
            java.time.Duration.ofHours(24),
            evil,
            List.of(),
            null,
            List.of());
    Prompt prompt = new Prompt.Choose(said, List.of(new Prompt.Option("a", evil)));
    for (Layer layer : Layer.values()) {
      Model model = Model.of(prompt, overview, evil, Invented.NOON).with(layer).saying(evil);
      String text = Page.draw(model, ZoneOffset.UTC, 120, 40).text();
      assertThat(text).contains("\ufffd");
      assertThat(text.codePoints().allMatch(c -> c == '\n' || quarterturn.unit.Printable.shown(c)))
          .isTrue();
    }
  }
}
