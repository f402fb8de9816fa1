package quarterturn.craft;

import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.UnitWeight;

/**
 * What a string is made of: plain steel, or a steel core under one or more layers of round wire.
 *
 * <p>{@code mu = rho_core pi d^2 / 4 + rho_wrap (pi/4)^2 (D^2 - d^2)} with core d and outer D, for
 * turns of round wire that touch: a turn of wire of diameter w advances by w, so its cross-section
 * {@code pi w^2 / 4} goes round {@code pi (d + w)} for each w of string, and {@code w (d + w)} is
 * {@code (D^2 - d^2) / 4}. The longer helix and the larger advance along the axis cancel, so this
 * is exact. It fails for flat or ground wire, for pressed-together turns and for a core that is not
 * round; then weigh the string.
 *
 * @param diameter over everything
 * @param core the steel core, or null for a plain string
 */
public record StringGauge(Length diameter, @Nullable Length core) {
  /** Density of music wire: ASTM A228, 7.85 g/cm3. */
  public static final double STEEL_KG_PER_M3 = 7850;

  /** Density of wrap wire; an estimate, as for stainless steel. Nickel-plated steel is near it. */
  public static final double WRAP_KG_PER_M3 = 8000;

  /** Young's modulus of music wire in pascals; from memory, tables give 200 to 207 GPa. */
  public static final double STEEL_PASCAL = 205e9;

  /** The least diameter of a string or core in millimetres; common practice, no source. */
  private static final double THINNEST_MM = 0.15;

  private static final double THICKEST_MM = 5;

  /**
   * The thickest plain string in millimetres. Common practice, no source: sets end their plain
   * strings at .026 in (0.66 mm), single ones go a little further; thicker ones are wound.
   */
  private static final double THICKEST_PLAIN_MM = 0.8;

  private static final Pattern COLON = Pattern.compile(":");

  public StringGauge {
    if (!(diameter.mm() > 0)) {
      throw new NotUnderstoodException("a string's diameter must be above zero");
    }
    if (core != null && !(core.mm() > 0 && core.mm() < diameter.mm())) {
      throw new NotUnderstoodException("a core must be above zero and thinner than its string");
    }
  }

  public static StringGauge plain(Length diameter) {
    return new StringGauge(diameter, null);
  }

  public static StringGauge wound(Length diameter, Length core) {
    return new StringGauge(diameter, core);
  }

  /**
   * Reads {@code DIAMETER} or {@code DIAMETER:CORE}, such as {@code .010in} or {@code
   * .105in:.030in}.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static StringGauge parse(String typed) {
    String[] parts = COLON.split(typed, -1);
    if (parts.length > 2) {
      throw new NotUnderstoodException(
          "\"" + Printable.of(typed) + "\" is not a string; type DIAMETER or DIAMETER:CORE");
    }
    return new StringGauge(parseWire(parts[0]), parts.length == 1 ? null : parseWire(parts[1]));
  }

  /**
   * Reads the diameter of a string or its core. A bare number is millimetres, as everywhere, though
   * many write strings in inches; a size that no string has is refused, not guessed at.
   *
   * @throws NotUnderstoodException with the spellings that are understood
   */
  public static Length parseWire(String typed) {
    return checkWire(Length.parse(typed));
  }

  /**
   * The diameter, where a string or a core can have it.
   *
   * @throws NotUnderstoodException where no string is so thin or thick
   */
  public static Length checkWire(Length wire) {
    if (wire.mm() < THINNEST_MM || wire.mm() > THICKEST_MM) {
      throw new NotUnderstoodException(
          "no string is " + wire + " thick; write inches as .105in and thousandths as 105 thou");
    }
    return wire;
  }

  /**
   * The diameter, where a plain string can have it.
   *
   * @throws NotUnderstoodException where a string so thick is wound
   */
  public static Length checkPlain(Length wire) {
    if (wire.mm() > THICKEST_PLAIN_MM) {
      throw new NotUnderstoodException(
          "a string "
              + wire
              + " thick is wound (plain ones end at "
              + Length.mm(THICKEST_PLAIN_MM)
              + "); give its core too");
    }
    return wire;
  }

  /** The steel that carries the tension: the core, or the whole of a plain string. */
  public Length steel() {
    return core == null ? diameter : core;
  }

  /** Mass per length. */
  public UnitWeight unitWeight() {
    double steel = STEEL_KG_PER_M3 * area(steel());
    double wrap = core == null ? 0 : wrapKgPerMetre(diameter, core, WRAP_KG_PER_M3);
    return new UnitWeight((steel + wrap) * 1000);
  }

  /** Mass per length of the wrap alone in kg/m; its turns touch. */
  static double wrapKgPerMetre(Length diameter, Length core, double kgPerM3) {
    double outer = diameter.mm() / 1000;
    double inner = core.mm() / 1000;
    return kgPerM3 * Math.PI * Math.PI / 16 * (outer * outer - inner * inner);
  }

  /** Force for a strain of one, in newtons: Young's modulus times the steel's cross-section. */
  static double stretchNewtons(Length steel) {
    return STEEL_PASCAL * area(steel);
  }

  /** Cross-section of a round wire in square metres. */
  static double area(Length diameter) {
    double metres = diameter.mm() / 1000;
    return Math.PI * metres * metres / 4;
  }

  /** The gauge as {@link #parse} reads it. */
  @Override
  public String toString() {
    return core == null ? diameter.toString() : diameter + ":" + core;
  }
}
