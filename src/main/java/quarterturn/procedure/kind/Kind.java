package quarterturn.procedure.kind;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.FannedFrets;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Prior;
import quarterturn.unit.Length;

/**
 * A kind of instrument.
 *
 * @param id as in {@code --kind bass-34}
 * @param scale of the highest string, which is that of all where the frets don't fan out
 * @param strings note names, lowest first; the second of two equal notes is {@code B3'}
 * @param frets how many
 * @param jointFret the fret nearest the body joint, held for a relief reading
 * @param readAt the fret over which relief is read
 * @param prior what to expect of its rod
 * @param windows what its readings should come to, by quantity and playing style; relief is one of
 *     them
 * @param make how it is usually made
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
    Map<Quantity, Map<Style, Ends>> windows,
    Make make) {
  public Kind {
    strings = names(strings);
    windows = Map.copyOf(windows);
  }

  /** A kind of instrument of which only the relief and the scale are known. */
  public Kind(
      String id,
      String name,
      Length scale,
      List<String> strings,
      int frets,
      int jointFret,
      int readAt,
      Prior prior,
      Map<Style, Target> relief) {
    this(
        id,
        name,
        scale,
        strings,
        frets,
        jointFret,
        readAt,
        prior,
        Map.of(Quantity.RELIEF, ends(relief)),
        new Make(null, null, List.of(), BridgeKind.ADJUSTABLE));
  }

  private static Map<Style, Ends> ends(Map<Style, Target> relief) {
    Map<Style, Ends> all = new EnumMap<>(Style.class);
    relief.forEach((style, target) -> all.put(style, Ends.all(target.window(), target.source())));
    return all;
  }

  /** This kind with another joint fret. */
  public Kind withJoint(int fret) {
    return new Kind(id, name, scale, strings, frets, fret, readAt, prior, windows, make);
  }

  /** This kind with another window of relief, which is that of every style. */
  public Kind withRelief(Window window, String source) {
    Map<Style, Ends> relief = new EnumMap<>(Style.class);
    for (Style style : styles()) {
      relief.put(style, Ends.all(window, source));
    }
    Map<Quantity, Map<Style, Ends>> all = new EnumMap<>(windows);
    all.put(Quantity.RELIEF, relief);
    return new Kind(id, name, scale, strings, frets, jointFret, readAt, prior, all, make);
  }

  /** Notes as names of strings, each of its own: a second B3 becomes {@code B3'}. */
  public static List<String> names(List<String> notes) {
    List<String> names = new ArrayList<>();
    for (String note : notes) {
      String name = note;
      while (names.contains(name)) {
        name += "'";
      }
      names.add(name);
    }
    return List.copyOf(names);
  }

  /** The notes of the strings, lowest first. */
  public List<String> notes() {
    return strings.stream().map(name -> name.replace("'", "")).toList();
  }

  /**
   * The scale length of one string.
   *
   * @param index 0 for the lowest string
   */
  public Length scale(int index) {
    Length bass = make.bassScale();
    return bass == null
        ? scale
        : new FannedFrets(bass, scale, strings.size()).scale(index + 1).length();
  }

  /** The styles that it has windows for. */
  public Set<Style> styles() {
    return windows.getOrDefault(Quantity.RELIEF, Map.of()).keySet();
  }

  /** The style, or null where it has no windows for it. */
  public @Nullable Style styled(@Nullable Style style) {
    return style != null && styles().contains(style) ? style : null;
  }

  /** A window and where it comes from. */
  public record Target(Window window, String source) {}

  /** The window of relief for a style. */
  public Target target(Style style) {
    return target(Quantity.RELIEF, style, 0);
  }

  /**
   * The window of a quantity on one string.
   *
   * @param index 0 for the lowest string
   * @throws IllegalStateException where there is none
   */
  public Target target(Quantity quantity, Style style, int index) {
    Map<Style, Ends> styles = windows.get(quantity);
    Ends ends = styles == null ? null : styles.get(style);
    if (ends == null) {
      throw new IllegalStateException(
          id + " has no range of " + quantity.word() + " for " + style.word());
    }
    return new Target(ends.at(index, strings.size(), make.course()), ends.source());
  }

  /**
   * A string as a player calls it: "E" for E1, unless another is called so too.
   *
   * @param outer whether it is said which of two it is
   */
  public String called(String note, boolean outer) {
    String letter = letter(note);
    boolean one = strings.stream().filter(other -> letter(other).equals(letter)).count() == 1;
    return outer || one ? letter : note;
  }

  /** A note without its octave. */
  public static String letter(String note) {
    return note.replaceAll("^(\\D+)\\d+$", "$1");
  }

  /** The note of the string a reading is taken on. */
  public String string(Which which) {
    return which == Which.HIGHEST ? strings.get(strings.size() - 1) : strings.get(0);
  }
}
