package quarterturn.report;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/** A relief that was left as it is, just outside its window. */
public final class LeftAsIs {
  private LeftAsIs() {}

  /** Whether a choice at a step of one of {@code procedures} left the relief as it is. */
  public static boolean left(Event.Chose chose, Iterable<Procedure> procedures) {
    for (Procedure procedure : procedures) {
      if (procedure.steps().get(chose.step()) instanceof Step.Choose choose
          && choose.records() == Recorded.LEFT_AS_IS) {
        List<Step.Option> options = choose.options();
        return options.get(options.size() - 1).id().equals(chose.option());
      }
    }
    return false;
  }

  /**
   * What was left, from the last reading before: "left as is: 0.40 to 0.45 mm, window 0.25 to 0.40
   * mm".
   *
   * @param before what happened before, oldest first
   */
  public static String words(List<Event> before, @Nullable Kind kind, @Nullable Style style) {
    Bracket last = null;
    for (Event event : before) {
      boolean lowest =
          event instanceof Event.Read read
              && read.quantity() == Quantity.RELIEF
              && read.which() == Which.LOWEST;
      last =
          lowest && ((Event.Read) event).bracket() != null ? ((Event.Read) event).bracket() : last;
    }
    Window window = kind == null || style == null ? null : kind.target(style).window();
    return "left as is: "
        + (last == null ? "not read" : last)
        + (window == null ? "" : ", range " + window);
  }
}
