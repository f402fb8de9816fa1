package quarterturn.procedure.kind;

import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.unit.Decimals;
import quarterturn.unit.NotUnderstoodException;

/**
 * What nobody may go beyond with a quantity, in its unit: they catch a slip of the unit.
 *
 * @param quantity what they are for
 * @param window where both ends of a window lie, or null where it has none
 * @param width how far they are apart
 * @param plausible what may be taken for a reading
 * @param gauge the step of a gauge
 * @param repeats how near two readings have to come, or null where that is not asked
 * @param differs how far two strings may be apart, or null where that is not asked
 * @param held what a condition may hold a reading to, or null where that is all that is plausible
 */
public record Bounds(
    Quantity quantity,
    @Nullable Span window,
    @Nullable Span width,
    Span plausible,
    Span gauge,
    @Nullable Span repeats,
    @Nullable Span differs,
    @Nullable Span held) {
  /** From the least to the most. */
  public record Span(double least, double most) {
    private static final double SLACK = 1e-9;

    private boolean holds(double value) {
      return value >= least - SLACK && value <= most + SLACK;
    }

    private boolean holds(Span other) {
      return holds(other.least) && holds(other.most);
    }

    private String to() {
      return Decimals.plain(least) + " to " + Decimals.plain(most) + " ";
    }

    private String range() {
      return Decimals.plain(least) + ".." + Decimals.plain(most) + " ";
    }
  }

  /**
   * The window, where it can be one.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public Window window(Window written) {
    Span span = new Span(written.lowMm(), written.highMm());
    if (window != null && width != null) {
      if (!window.holds(span) || !width.holds(span.most - span.least)) {
        String within = "a range of %s lies within %s%s and is %s%s wide";
        throw refused(
            within.formatted(quantity.word(), window.range(), unit(), width.to(), unit()),
            span.range() + unit());
      }
    }
    return written;
  }

  /**
   * A reading, where it can be one.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public double reading(double read) {
    return held(read, plausible, "a reading of " + quantity.word());
  }

  /**
   * A range of plausible readings, where it can be one.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public Span plausible(Span written) {
    boolean all = window == null || written.holds(window);
    if (!plausible.holds(written) || !all) {
      String within = "what is plausible for " + quantity.word() + " lies within ";
      String over = window == null ? "" : " and takes in " + window.range() + unit();
      throw refused(within + plausible.range() + unit() + over, written.range() + unit());
    }
    return written;
  }

  /**
   * The step of a gauge, where it can be one.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public double gauge(double written) {
    return held(written, gauge, "the step of a gauge for " + quantity.word());
  }

  /**
   * How near two readings have to come, where it can be so.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public double repeats(double written) {
    return repeats == null
        ? written
        : held(written, repeats, "how near two readings of " + quantity.word() + " come");
  }

  /**
   * How far two strings may be apart, where it can be so.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public double differs(double written) {
    return differs == null
        ? amount(written)
        : held(written, differs, "how far two strings may be apart in " + quantity.word());
  }

  /**
   * An amount to which a reading is held, where it can be one.
   *
   * @throws NotUnderstoodException saying what can be
   */
  public double amount(double written) {
    boolean seen = !quantity.bracket() || written == 0;
    double least = seen ? plausible.least : gauge.least;
    Span span = held == null ? new Span(least, plausible.most) : held;
    return held(written, span, "what " + quantity.word() + " is held to");
  }

  private double held(double written, Span span, String what) {
    if (!span.holds(written)) {
      throw refused(what + " is " + span.to() + unit(), Decimals.plain(written) + " " + unit());
    }
    return written;
  }

  private String unit() {
    return quantity.unit();
  }

  private static NotUnderstoodException refused(String allowed, String written) {
    return new NotUnderstoodException(
        allowed + ", not " + written, "see whether the unit is right");
  }
}
