package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
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

  /** A prediction in words: "smaller, about 0.35 mm". */
  static String prediction(Prediction prediction, Round round) {
    boolean turn = round.opened().turn();
    if (turn) {
      Turn size = new Turn(prediction.size());
      return prediction.direction() == Direction.SAME
          ? Direction.SAME.words(true)
          : prediction.direction().words(true) + " " + size;
    }
    String unit = round.result() instanceof Value.Number number ? number.unit() : "mm";
    String way = round.opened().before() == null ? "" : prediction.direction().words(false) + ", ";
    return way + "about " + Decimals.plain(Decimals.kept(prediction.size())) + " " + unit;
  }

  /** The lines that set prediction beside result, without saying whether it was right. */
  public static List<String> beside(Gate.Reflect reflect, Round round) {
    return List.of(
        reflect.student()
            + " predicted "
            + prediction(reflect.prediction(), round)
            + ", because: "
            + reflect.prediction().reason(),
        (round.opened().turn() ? "The turn was: " : "It read: ") + reflect.result() + ".");
  }
}
