package quarterturn.procedure;

import java.util.List;
import java.util.Map;
import quarterturn.craft.Prior;
import quarterturn.craft.Window;
import quarterturn.unit.Length;

/**
 * A kind of instrument.
 *
 * @param id as in {@code --kind bass-34}
 * @param strings note names, lowest first
 * @param frets how many
 * @param jointFret the fret nearest the body joint, held for a relief reading
 * @param readAt the fret over which relief is read
 * @param prior what to expect of its rod
 * @param relief window of relief by playing style
 */
public record Kind(
    String id,
    String name,
    Length scale,
    List<String> strings,
    int frets,
    int jointFret,
    int readAt,
    Prior prior,
    Map<Style, Target> relief) {
  public Kind {
    strings = List.copyOf(strings);
    relief = Map.copyOf(relief);
  }

  /** The same kind with another joint fret. */
  public Kind withJoint(int fret) {
    return new Kind(id, name, scale, strings, frets, fret, readAt, prior, relief);
  }

  /** The same kind with other windows of relief. */
  public Kind withRelief(Map<Style, Target> windows) {
    return new Kind(id, name, scale, strings, frets, jointFret, readAt, prior, windows);
  }

  /** A window and where it comes from. */
  public record Target(Window window, String source) {}

  /** The window for a style. */
  public Target target(Style style) {
    Target target = relief.get(style);
    if (target == null) {
      throw new IllegalStateException(id + " has no window for " + style.word());
    }
    return target;
  }

  /** The note of the string a reading is taken on. */
  public String string(Which which) {
    return which == Which.LOWEST ? strings.get(0) : strings.get(strings.size() - 1);
  }
}
