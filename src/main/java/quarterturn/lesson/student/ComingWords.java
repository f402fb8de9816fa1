package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;

/**
 * Words about a reading or a turn that is still to be predicted: what it will be, and what is known
 * already. They hold nothing of its prompt's own text, since at a turn that tells the turn.
 */
public final class ComingWords {
  private ComingWords() {}

  /** The lines before a prediction: what comes next and what is known. */
  public static List<String> of(Prompt coming, Round round, Overview overview) {
    List<String> out = new ArrayList<>();
    if (coming instanceof Prompt.Measure measure) {
      out.add("Next is a reading: " + reading(measure) + ". Predict it before you take it.");
    } else {
      out.add("Next is a turn of the rod. Predict it before you see it.");
    }
    Value before = round.opened().before();
    if (before != null) {
      out.add("Last reading: " + before + ".");
    }
    Window window = window(coming, overview);
    if (window != null) {
      out.add("Range: " + window + ".");
    }
    return out;
  }

  static String reading(Prompt.Measure measure) {
    String string = Which.on(measure.which(), measure.string());
    String held =
        measure.held().isEmpty()
            ? ""
            : ", held at fret "
                + measure.held().stream().map(String::valueOf).collect(Collectors.joining(" and "));
    String at = measure.readAt() == 0 ? "" : ", over fret " + measure.readAt();
    return measure.quantity().said() + string + held + at;
  }

  /** The window of the relief, where a reading of it or a turn is next. */
  private static @Nullable Window window(Prompt coming, Overview overview) {
    boolean other =
        coming instanceof Prompt.Measure measure && measure.quantity() != Quantity.RELIEF;
    return other ? null : overview.window();
  }

  /** The prediction to be made, of which nothing is said yet. */
  public static Expecting expecting(Prompt coming, Round round, Overview overview) {
    return coming instanceof Prompt.Measure measure
        ? Expecting.of(measure.quantity(), round.opened().before() != null)
        : Expecting.of(null, true);
  }

  /** An example of a whole prediction in one line. */
  public static String example(Expecting expecting) {
    Quantity quantity = expecting.quantity();
    if (quantity == null) {
      return "tighten 1/8 the gap is too large";
    }
    String way = expecting.asksWay() ? "smaller " : "";
    return switch (quantity) {
      case RELIEF -> way + "0.35 the string hangs in a long curve";
      case BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE ->
          way + "0.10 it looks like a sheet of paper";
      case ACTION -> way + "2.25 it plays high";
      case INTONATION -> way + "3 the saddle stands far forward";
      case PICKUP_GAP -> way + "2.5 it looks like two coins";
      case HUMIDITY -> way + "48 the heating is off";
      case TEMPERATURE -> way + "21 it feels like a living room";
    };
  }

  /**
   * The lines that help with a prediction.
   *
   * @param worked the steps of the worked example
   */
  public static List<String> help(
      Prompt coming, Round round, Overview overview, List<String> worked) {
    List<String> out = new ArrayList<>();
    if (coming instanceof Prompt.TurnRod) {
      out.add(
          "A gap above its range asks an ordinary rod to be tightened, a gap below it to be"
              + " loosened. On an unknown neck the first turn is 1/8, and never more than 1/4 lies"
              + " between two readings.");
    } else {
      out.addAll(worked);
      if (worked.isEmpty()) {
        out.add("Think of what was done since the last reading, and which way that moves a neck.");
      }
    }
    out.addAll(of(coming, round, overview));
    return out;
  }
}
