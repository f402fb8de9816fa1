package quarterturn.line;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Picture;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.report.ContactDrawing;
import quarterturn.report.Frets;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** Describes each picture in a sentence. */
final class PictureWords {
  private PictureWords() {}

  /** The picture beside a prompt, in words; empty where there is none. */
  static List<String> of(Prompt prompt, Overview overview) {
    if (prompt instanceof Prompt.Measure measure && measure.quantity().onString()) {
      return List.of(hold(measure.string(), measure.held(), measure.readAt()));
    }
    if (prompt instanceof Prompt.TurnRod turn) {
      return List.of(dial(turn.turn()));
    }
    Picture picture = prompt.said().picture();
    if (picture == null) {
      return List.of();
    }
    return switch (picture) {
      case HOLD -> held(overview.kind());
      case CURVE -> curve(overview);
      case DIAL ->
          List.of(
              "Seen facing the end of the truss rod nut: %s tightens, %s loosens."
                  .formatted(Turn.EIGHTH.sense(), Turn.EIGHTH.opposite().sense()));
      case PLACES -> List.of(places(overview.kind()));
      case CONTACT ->
          overview.contact() == null ? List.of() : ContactDrawing.sentences(overview.contact());
      case KEY ->
          List.of(
              "Seated: the key goes in to its full depth and does not rock. Not seated: it stands"
                  + " out of the socket, or rocks in it.");
    };
  }

  private static String places(@Nullable Kind kind) {
    boolean hole = kind == null || kind.make().soundHole();
    return "Places to look: at the headstock, in plain sight or under a small plate; at the body end"
        + " of the neck, as a wheel or in a socket, or under a plate; "
        + (hole ? "inside the sound hole; " : "")
        + "hidden in the neck pocket.";
  }

  private static List<String> held(@Nullable Kind kind) {
    return kind == null
        ? List.of()
        : List.of(hold(null, List.of(1, kind.jointFret()), kind.readAt()));
  }

  private static String hold(@Nullable String string, List<Integer> held, int readAt) {
    String what = string == null ? "the string" : string;
    if (held.isEmpty()) {
      return "The open string, " + what + (readAt > 0 ? ", read over fret " + readAt : "") + ".";
    }
    String frets = (held.size() == 1 ? " at fret " : " at frets ") + Frets.list(held);
    return "Hold " + what + frets + (readAt > 0 ? ", read over fret " + readAt : "") + ".";
  }

  /**
   * The turn dial in words: "Seen looking along the neck at the rod nut's end: clockwise, 45
   * degrees."
   */
  static String dial(Turn turn) {
    return "Seen facing the end of the truss rod nut: "
        + turn.sense()
        + ", "
        + Decimals.print(Math.abs(turn.degrees()), 0)
        + " degrees.";
  }

  private static List<String> curve(Overview overview) {
    List<String> words = new ArrayList<>();
    if (overview.window() != null) {
      words.add("The range is " + overview.window() + ".");
    }
    for (int i = overview.trail().size() - 1; i >= 0; i--) {
      if (overview.trail().get(i) instanceof Entry.Reading reading) {
        words.add(
            "The last reading, on the "
                + reading.which().word()
                + " string, is "
                + reading.bracket()
                + (overview.window() == null
                    ? ""
                    : ": " + standing(Verdict.of(reading.bracket(), overview.window())))
                + (reading.stale() ? "; it is stale." : "."));
        break;
      }
    }
    return words.isEmpty() ? List.of() : List.of(String.join(" ", words));
  }

  private static String standing(Verdict verdict) {
    return switch (verdict) {
      case NOT_MEASURED -> "not measured";
      case TOUCHES -> "the string touches";
      case BELOW -> "below the range";
      case IN -> "in range";
      case UNDECIDED -> "across an edge of the range";
      case ABOVE -> "above the range";
    };
  }
}
