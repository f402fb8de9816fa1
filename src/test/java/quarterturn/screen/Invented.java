package quarterturn.screen;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Picture;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Ends;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Bracket;
import quarterturn.unit.Length;
import quarterturn.unit.Turn;

/** An invented instrument and an invented session; no fact of the trade is taken from here. */
public final class Invented {
  public static final Instant NOON = Instant.parse("2026-03-02T12:00:00Z");

  static final List<String> PARTS =
      List.of(
          "Get ready",
          "Find the rod",
          "Measure as found",
          "Decide",
          "Turn",
          "Settle and read",
          "Finish");

  public static final Window WINDOW = new Window(0.30, 0.45);

  public static final Kind KIND =
      new Kind(
          "invented-bass",
          "Invented bass",
          Length.inches(34),
          List.of("E1", "A1", "D2", "G2"),
          20,
          17,
          8,
          Prior.BASS,
          Map.of(Quantity.RELIEF, Map.of(Style.MEDIUM, Ends.all(WINDOW, "invented for a test"))),
          new Make(Length.mm(241), Length.mm(57), List.of(), BridgeKind.ADJUSTABLE));

  public static final Hazard WHIP =
      new Hazard(
          "whip",
          Hazard.Word.WARNING,
          "A string under tension can slip and whip into an eye. Such wounds can be lasting.",
          "Wear eye protection. Keep your face out of the string's line and others a metre away.",
          List.of(),
          List.of());

  public static final Hazard FORCE =
      new Hazard(
          "rod-force",
          Hazard.Word.NOTICE,
          "A forced rod nut can strip its thread.",
          "Turn with the force of two fingers and stop at any noise.",
          List.of(),
          List.of());

  public static final Hazard SLIP =
      new Hazard(
          "tool-slip",
          Hazard.Word.CAUTION,
          "A key that slips can be driven into the other hand.",
          "Seat the key fully, turn it away from your body, and keep the free hand out of its line.",
          List.of(),
          List.of());

  static final Hazard KEY_SIZE =
      new Hazard(
          "wrong-key",
          Hazard.Word.NOTICE,
          "A key that is a little too small rounds the socket of the rod nut.",
          "Use a sharp-edged key that goes in to full depth and does not rock. No fit, no turn.",
          List.of(),
          List.of());

  private static final String WHY =
      "Held at both ends the string is a straight line, and the gap in the middle is the bow of the"
          + " neck. A leaf that just drags is the gap; one that moves the string is too thick.";

  private Invented() {}

  public static PromptText said(
      String step, String text, @Nullable Picture picture, List<Hazard> hazards) {
    return new PromptText("invented", step, "Turn", text, WHY, hazards, picture, List.of());
  }

  public static Overview overview(int part, List<Overview.Entry> trail, double net) {
    return new Overview(
        "2026-03-02-practice",
        "Practice bass (invented)",
        KIND,
        WINDOW,
        "invented for a test",
        Role.BEGINNER,
        "Neck relief",
        PARTS,
        part,
        IntStream.range(0, part).filter(i -> i != 1).boxed().collect(Collectors.toSet()),
        trail,
        new Turn(net),
        new Turn(Math.abs(net)),
        Duration.ofHours(24),
        "headstock",
        List.of(),
        null,
        List.of());
  }

  public static List<Overview.Entry> trail(int entries) {
    List<Overview.Entry> all =
        List.of(
            reading(0, Which.LOWEST, 0.60, entries > 2),
            reading(4, Which.HIGHEST, 0.55, entries > 2),
            new Overview.Entry.Turned(at(20), new Turn(-0.125), Feel.SMOOTH),
            reading(41, Which.LOWEST, 0.65, entries > 5),
            reading(44, Which.HIGHEST, 0.60, entries > 5),
            new Overview.Entry.Turned(at(60), new Turn(0.25), Feel.SMOOTH),
            reading(85, Which.LOWEST, 0.40, false));
    return all.subList(0, entries);
  }

  private static Overview.Entry reading(int minute, Which which, double low, boolean stale) {
    return new Overview.Entry.Reading(at(minute), which, new Bracket(low, low + 0.05), stale);
  }

  private static Instant at(int minute) {
    return NOON.plus(Duration.ofMinutes(minute));
  }

  public static final Prompt.Tell TELL =
      new Prompt.Tell(
          new PromptText(
              "invented",
              "tune",
              "Turn",
              "Tune every string to pitch, from below, and then tune them all once more: each one"
                  + " pulls on the neck and moves the others.",
              WHY,
              List.of(WHIP),
              null,
              List.of("After the turn every reading is stale: relief, action and intonation.")));

  public static final Prompt.Caution CAUTION =
      new Prompt.Caution(
          said("tune", "Tune every string to pitch.", null, List.of()), List.of(WHIP));

  public static final Prompt.Choose CHOOSE =
      new Prompt.Choose(
          said(
              "place",
              "Look at the headstock, at the body end of the neck, in the sound hole. Where is the"
                  + " rod nut?",
              Picture.PLACES,
              List.of()),
          List.of(
              new Prompt.Option("headstock", "At the headstock, in plain sight"),
              new Prompt.Option("under-plate", "At the headstock, under a small plate"),
              new Prompt.Option("body-end", "At the body end of the neck, where I can reach it"),
              new Prompt.Option("body-plate", "At the body end of the neck, under a plate"),
              new Prompt.Option("sound-hole", "Inside the sound hole"),
              new Prompt.Option("pocket", "Hidden in the neck pocket"),
              new Prompt.Option("unsure", "I can't find it")));

  public static final Prompt.Choose KEY =
      new Prompt.Choose(
          said("key", "Seat the tool to its full depth and rock it.", Picture.KEY, List.of()),
          List.of(
              new Prompt.Option("fits", "Full depth, and it hardly rocks"),
              new Prompt.Option("rocks", "It rocks, or does not go in fully")));

  public static final Prompt.Measure MEASURE =
      new Prompt.Measure(
          said(
              "read-low",
              "Put the capo at fret 1 and press string E1 at fret 17. Slide leaves over fret 8:"
                  + " which is the thickest that passes, and which the thinnest that lifts the"
                  + " string?",
              Picture.HOLD,
              List.of()),
          Quantity.RELIEF,
          List.of(1, 17),
          8,
          Which.LOWEST,
          "E1",
          0.05);

  public static final Prompt.Measure HUMIDITY =
      new Prompt.Measure(
          said("humidity", "Read the humidity of the room.", null, List.of()),
          Quantity.HUMIDITY,
          List.of(),
          0,
          null,
          null,
          1);

  public static final Prompt.Measure ACTION =
      new Prompt.Measure(
          said("action-low", "Read the action of string E1 over fret 12.", null, List.of()),
          Quantity.ACTION,
          List.of(),
          12,
          Which.LOWEST,
          "E1",
          0.1);

  public static final Prompt.Tell CURVE =
      new Prompt.Tell(
          new PromptText(
              "invented",
              "compare",
              "Decide",
              "Compare the reading with the window.",
              WHY,
              List.of(),
              Picture.CURVE,
              List.of("Relief on E1: 0.60 to 0.65 mm. Window: 0.30 to 0.45 mm.")));

  private static final Set<Feel> STOPS = Set.of(Feel.JAMMED, Feel.NOISE, Feel.SLIPPED);

  public static final Prompt.TurnRod LOOSEN =
      new Prompt.TurnRod(
          said(
              "turn",
              "Look along the neck at the end of the rod nut. Steady the neck with your other hand."
                  + " Now loosen the rod nut by 1/8 turn: anticlockwise, facing it,"
                  + " slowly, with two fingers. Listen, and stop if it resists sharply.",
              Picture.DIAL,
              List.of(SLIP, FORCE, KEY_SIZE)),
          new Turn(-0.125),
          Turn.QUARTER,
          new Prompt.Expected(0.65, 0.75),
          false,
          STOPS);

  public static final Prompt.TurnRod TIGHTEN =
      new Prompt.TurnRod(
          said("turn", "Now tighten the rod nut by 1/4 turn.", Picture.DIAL, List.of(FORCE)),
          Turn.QUARTER,
          Turn.QUARTER,
          new Prompt.Expected(0.35, 0.50),
          true,
          STOPS);

  /** A turn with something to be done before it. */
  public static final Prompt.TurnRod FREED =
      new Prompt.TurnRod(
          TIGHTEN.said().leading("Free the nut first: loosen it by 1/16 turn, and back."),
          TIGHTEN.turn(),
          TIGHTEN.limit(),
          TIGHTEN.expected(),
          false,
          STOPS);

  public static Prompt.Wait settle(boolean mayLift) {
    return new Prompt.Wait(
        said("settle", "Let the neck settle. Leave the strings at pitch.", null, List.of()),
        NOON,
        NOON.plus(Duration.ofMinutes(10)),
        false,
        mayLift,
        "You may play another instrument.");
  }

  public static final Prompt.Done DONE =
      new Prompt.Done(
          said("done", "The relief stands in its window. Read it again tomorrow.", null, List.of()),
          "relief in the window");

  public static final Prompt.HandOver HAND_OVER =
      new Prompt.HandOver(
          said(
              "stop",
              "The rod did not answer after two moves. Leave it as it is.",
              null,
              List.of()),
          "the rod gives no answer");
}
