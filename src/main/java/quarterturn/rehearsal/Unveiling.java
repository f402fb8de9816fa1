package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.NeckTraits;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/** Records the true relief of a simulated neck beside the readings, and tells it at the end. */
final class Unveiling {
  private static final int DIGITS = 2;

  private final SimulatedInstrument instrument;
  private final SimulatedNeck neck;
  private final Window window;
  private final Crossings crossings;
  private final double asFound;
  private boolean actionRead;
  private final Map<Event.Read, String> readings = new LinkedHashMap<>();

  Unveiling(SimulatedInstrument instrument, Window window) {
    this.instrument = instrument;
    this.neck = instrument.neck();
    this.window = window;
    this.crossings = new Crossings(window);
    this.asFound = neck.relief();
    see();
  }

  /** Records the true relief at present. */
  void see() {
    crossings.see(neck.relief());
  }

  /** Records a reading before anything more is done to the neck. */
  void read(Event.Read read, @Nullable Answer truth) {
    actionRead |= read.quantity() == Quantity.ACTION;
    Bracket said = read.bracket();
    if (read.which() != Which.LOWEST || read.quantity() != Quantity.RELIEF || said == null) {
      return;
    }
    Bracket leaves = truth instanceof Answer.Measured measured ? measured.bracket() : said;
    String other = leaves.equals(said) ? "" : ", the gauges showed " + leaves;
    readings.put(read, Decimals.print(neck.relief(), DIGITS) + " (given as " + said + other + ")");
  }

  /**
   * The lines for the end.
   *
   * @param standing the events that were not withdrawn
   */
  List<String> lines(List<Event> standing) {
    readings.keySet().retainAll(standing);
    NeckTraits traits = neck.traits();
    List<String> lines = new ArrayList<>();
    lines.add(
        "The neck as it really was: "
            + traits.fault().words()
            + (traits.fault().answers() ? "; " + answers(traits) : "")
            + ".");
    if (!readings.isEmpty()) {
      lines.add("True relief in mm at each reading: " + String.join(", ", readings.values()) + ".");
    }
    lines.add(
        "True relief as found "
            + mm(asFound)
            + ", as left "
            + mm(neck.relief())
            + "; the range is "
            + window
            + (crossings.count() == 0 ? "." : ". " + crossed()));
    if (actionRead) {
      List<String> heights = new ArrayList<>();
      for (int i = 0; i < instrument.kind().strings().size(); i++) {
        heights.add(
            instrument.kind().strings().get(i)
                + " "
                + Decimals.print(instrument.action(i), DIGITS));
      }
      lines.add("True action at fret 12 as left: " + String.join(", ", heights) + " mm.");
    }
    return lines;
  }

  private static String answers(NeckTraits traits) {
    String slack =
        traits.slackTurns() == 0
            ? "no slack"
            : Decimals.print(traits.slackTurns(), DIGITS) + " turn of slack";
    return mm(traits.mmPerQuarter()) + " for a quarter turn, " + slack;
  }

  private String crossed() {
    return crossings.count() == 1
        ? "It was turned past the range once."
        : "It was turned past the range " + crossings.count() + " times.";
  }

  private static String mm(double mm) {
    return Decimals.print(mm, DIGITS) + " mm";
  }
}
