package quarterturn.reckon;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Held;
import quarterturn.craft.Scale;
import quarterturn.unit.NotUnderstoodException;

/** The command-line options for a neck's joint fret and how its relief is read. */
class BowOptions {
  @Mixin private ScaleOption scale = new ScaleOption();

  @Option(
      names = "--joint-fret",
      required = true,
      paramLabel = "FRET",
      description = "The fret where the neck meets the body.")
  private int joint;

  @Option(
      names = "--read-at",
      required = true,
      paramLabel = "FRET",
      description = "The fret over which the gap is read.")
  private int readAt;

  @Option(
      names = "--held",
      paramLabel = "FRET",
      description = "The fret held beside fret 1; the joint fret unless given.")
  private @Nullable Integer held;

  Scale scale() {
    return scale.scale();
  }

  int joint() {
    Checked.within("--joint-fret", joint, 2, Scale.MOST_FRETS);
    if (joint <= readAt) {
      throw new NotUnderstoodException(
          "--joint-fret: must lie beyond the fret read (--read-at "
              + readAt
              + "), not at "
              + joint);
    }
    return joint;
  }

  Held held() {
    return held(held == null ? joint() : held, readAt, "--held", "--read-at");
  }

  /** How relief is read, from checked values; an error names the option at fault. */
  static Held held(int high, int readAt, String heldOption, String readOption) {
    Checked.within(heldOption, high, 2, Scale.MOST_FRETS);
    if (!(readAt > 1 && readAt < high)) {
      throw new NotUnderstoodException(
          readOption
              + ": must lie between fret 1 and the fret held ("
              + high
              + "), not at "
              + readAt);
    }
    return Held.at(high, readAt);
  }

  /** "held at 1 and 17, read at 7". */
  static String words(Held held) {
    return "held at " + held.low() + " and " + held.high() + ", read at " + held.readAt();
  }
}
