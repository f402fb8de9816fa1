package quarterturn.line;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Picture;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Prompt;
import quarterturn.session.Prompt.Option;
import quarterturn.session.PromptText;
import quarterturn.unit.Length;
import quarterturn.unit.Turn;

/** Prompts made up for tests; none of their numbers is advice. */
public final class Invented {
  private Invented() {}

  public static final Instant BEGAN = Instant.parse("2027-03-01T10:00:00Z");
  public static final Window WINDOW = new Window(0.30, 0.45);
  public static final Hazard WHIP =
      new Hazard(
          "string-whip",
          Hazard.Word.WARNING,
          "A string can break under tension and whip; it can hurt an eye.",
          "Wear eye protection and keep your face out of the string's line.",
          List.of(),
          List.of());
  public static final Kind KIND =
      new Kind(
          "demo-bass",
          "Demo bass",
          Length.mm(864),
          List.of("E", "A", "D", "G"),
          20,
          17,
          8,
          Prior.BASS,
          Map.of(Quantity.RELIEF, Map.of(Style.MEDIUM, Ends.all(WINDOW, "invented for the tests"))),
          new Make(Length.mm(241), Length.mm(57), List.of(), BridgeKind.ADJUSTABLE));

  public static PromptText said(String step, String text) {
    return said(step, text, null, null);
  }

  public static PromptText said(
      String step, String text, @Nullable String why, @Nullable Picture picture) {
    return new PromptText("demo", step, "The key", text, why, List.of(), picture, List.of());
  }

  public static Prompt.Tell tell() {
    return new Prompt.Tell(
        said("support-neck", "Lay the instrument on its side.", "The neck must hang free.", null));
  }

  public static Prompt.Caution caution() {
    return new Prompt.Caution(said("retune", "Bring all strings to pitch."), List.of(WHIP));
  }

  public static Prompt.Choose place() {
    return new Prompt.Choose(
        said("rod-place", "Where is the rod nut?", null, Picture.PLACES),
        List.of(
            new Option("headstock", "At the headstock"),
            new Option("sound-hole", "In the sound hole"),
            new Option("again", "I have to look again")));
  }

  public static Prompt.Measure relief() {
    return new Prompt.Measure(
        said("read-low", "Slide leaves under the string.", null, Picture.HOLD),
        Quantity.RELIEF,
        List.of(1, 17),
        8,
        Which.LOWEST,
        "E",
        0.05);
  }

  public static Prompt.Measure humidity() {
    return new Prompt.Measure(
        said("read-humidity", "Read the hygrometer."),
        Quantity.HUMIDITY,
        List.of(),
        0,
        null,
        null,
        1);
  }

  public static Prompt.TurnRod loosen() {
    return turn(Turn.EIGHTH.opposite(), false);
  }

  public static Prompt.TurnRod tighten() {
    return turn(Turn.QUARTER, true);
  }

  public static Prompt.TurnRod turn(Turn turn, boolean canUndo) {
    return new Prompt.TurnRod(
        said(
            "turn", "Turn slowly, with two fingers.", "A rod is broken in a moment.", Picture.DIAL),
        turn,
        Turn.QUARTER,
        new Prompt.Expected(turn.turns() < 0 ? 0.62 : Double.NEGATIVE_INFINITY, 0.71),
        canUndo,
        Set.of());
  }

  public static Prompt.Wait settle() {
    return new Prompt.Wait(
        said("settle", "Let the neck settle."),
        BEGAN,
        BEGAN.plus(Duration.ofMinutes(10)),
        false,
        false,
        "You may play another instrument.");
  }

  public static Prompt.Wait rest() {
    return new Prompt.Wait(
        said("rest", "The rod rests."),
        BEGAN,
        BEGAN.plus(Duration.ofHours(24)),
        true,
        true,
        "You may play another instrument.");
  }

  public static Prompt.Tell curve() {
    return new Prompt.Tell(said("look", "Compare.", null, Picture.CURVE));
  }

  public static Prompt.Tell noted() {
    return new Prompt.Tell(
        new PromptText(
            "demo",
            "take-off-key",
            "The key",
            "Take the key out.\nRetune all strings.",
            null,
            List.of(WHIP),
            Picture.KEY,
            List.of("The relief reading is stale now.")));
  }

  public static Prompt.Done done() {
    return new Prompt.Done(said("end", "The relief stands in the window."), "in window");
  }

  public static Prompt.HandOver handOver() {
    return new Prompt.HandOver(
        said("stop", "The rod does not answer. Take it to a repairer."), "no answer");
  }
}
