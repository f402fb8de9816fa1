package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import java.util.stream.Collectors;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** Words for the students on what has to happen before a prompt. */
public final class GateWords {
  private GateWords() {}

  /** Why a prompt can't be answered now, in a sentence. */
  static String shortly(Gate gate) {
    if (gate instanceof Gate.Stopped) {
      return "The bench has stopped; the teacher lets it go on.";
    } else if (gate instanceof Gate.Held) {
      return "The bench waits for the teacher.";
    } else if (gate instanceof Gate.Over) {
      return "The teacher has ended the lesson.";
    }
    return "Something comes before this step.";
  }

  /** The lines to show while the teacher is waited for. */
  public static List<String> waiting(Gate gate) {
    if (gate instanceof Gate.Stopped stopped) {
      String why = stopped.stop().what();
      return List.of(
          "STOPPED" + (why.isEmpty() ? "." : ": " + why + "."),
          "Take your hands off the truss rod nut and leave everything as it is. To stop is always"
              + " right; nobody is asked who it was. The teacher comes and lets the bench go on.");
    }
    if (gate instanceof Gate.Held held) {
      Keep hold = held.hold();
      if (hold.kind() == Keep.Kind.TEACHER) {
        return List.of("The teacher holds this bench: " + hold.what());
      }
      List<String> lines = new ArrayList<>();
      lines.add("HOLD POINT. Wait for the teacher: " + hold.what() + ".");
      if (!(hold.value() instanceof Value.None)) {
        lines.add("To read back: " + hold.value() + ". Nothing is done before the release.");
      }
      return lines;
    }
    return List.of();
  }

  /** A prediction in words: "0.35 mm", or "tighten" before a turn. */
  static String prediction(Prediction prediction, Round round) {
    boolean turn = round.opened().turn();
    Direction direction = prediction.direction();
    // Where nothing was read before there is no way, and the size alone counts.
    String way =
        direction == null || (!turn && round.opened().before() == null)
            ? ""
            : direction.words(turn);
    if (turn) {
      return way + (prediction.size() == 0 ? "" : " " + new Turn(prediction.size()));
    }
    String unit = round.result() instanceof Value.Number number ? number.unit() : "mm";
    String size = Decimals.plain(Decimals.kept(prediction.size())) + " " + unit;
    return way.isEmpty() ? size : way + ", " + size;
  }

  /** The lines that set predictions beside the result, without saying which were right. */
  static List<String> beside(Round round) {
    String predicted =
        new TreeMap<>(round.predictions())
            .entrySet().stream()
                .map(e -> e.getKey() + " " + prediction(e.getValue(), round))
                .collect(Collectors.joining("; "));
    String came = round.opened().turn() ? "The turn was: " : "It read: ";
    return List.of("Predicted: " + predicted + ".", came + round.result() + ".");
  }
}
