package quarterturn.session.store;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Aim;

/**
 * The facts of an instrument that can be typed, kept and shown, in the order they are asked for.
 */
public enum FormField {
  KIND("kind", "Kind", "The kind of instrument, such as bass-34."),
  STYLE("style", "Player", "How hard the player plays: light, medium, hard or slide."),
  JOINT_FRET(
      "joint-fret",
      "Joint fret",
      "The fret nearest the body joint, where it is not the usual one."),
  SCALE("scale", "Scale", "Scale length, 300 to 1000 mm, such as 34in or 650 mm."),
  TUNING("tuning", "Tuning", "Notes of the open strings, lowest first, such as E1 A1 D2 G2."),
  GAUGES("gauges", "Gauges", "String diameters in the same order, such as .105 .085 .065 .045 in."),
  RADIUS(
      "radius",
      "Fingerboard radius",
      "Radius of the fingerboard, 100 to 2000 mm, such as 12in; or flat."),
  NECK("neck", "Neck", "How the neck is joined: bolt-on, set or unknown."),
  NUT("nut", "Nut", "What guides the strings: slotted, locking or zero-fret."),
  ROD("rod", "Rod", "The truss rod: single, two-way, two-rods or none-fitted."),
  BRIDGE(
      "bridge",
      "Bridge",
      "The bridge: adjustable (saddles on screws), two-posts, paired (two strings a saddle), locked"
          + " (saddles with locks), fixed or floating (balanced by springs)."),
  PICKUP(
      "pickup",
      "Pickup",
      "The pickup that is set: covered-neck, covered-bridge, bare-neck or bare-bridge. Bare is one"
          + " of bare rod magnets."),
  HANDED("handed", "Handed", "The hand that plucks: right or left."),
  STRINGS("strings", "Strings", "A note on the strings that are on, in one line."),
  WINDOW_RELIEF(Aim.RELIEF, "Relief range", "relief"),
  WINDOW_NUT_CLEARANCE(Aim.NUT_CLEARANCE, "Nut range", "the clearance at the first fret"),
  WINDOW_ACTION_LOW(Aim.ACTION_LOW, "Action range, low", "the action of the lowest string"),
  WINDOW_ACTION_HIGH(Aim.ACTION_HIGH, "Action range, high", "the action of the highest string"),
  WINDOW_INTONATION(Aim.INTONATION, "Intonation range", "the intonation"),
  WINDOW_PICKUP_LOW(Aim.PICKUP_LOW, "Pickup range, low", "the pickup gap of the lowest string"),
  WINDOW_PICKUP_HIGH(Aim.PICKUP_HIGH, "Pickup range, high", "the pickup gap of the highest string"),
  TICKET("ticket", "Ticket", "A shop's own number or name for the job, in one line."),
  CUSTOMER("customer", "Customer", "Whose it is, in one line; see instrument forget.");

  private final String word;
  private final String label;
  private final String meaning;
  private final @Nullable Aim aim;

  FormField(String word, String label, String meaning) {
    this.word = word;
    this.label = label;
    this.meaning = meaning;
    this.aim = null;
  }

  FormField(Aim aim, String label, String of) {
    this.word = "window-" + aim.word();
    this.label = label;
    this.meaning = "A range of its own for " + of + ", such as " + aim.example() + ".";
    this.aim = aim;
  }

  /** The field's name as an option, such as {@code joint-fret}. */
  public String word() {
    return word;
  }

  public String label() {
    return label;
  }

  /** A sentence on what the fact is and what may be typed. */
  public String meaning() {
    return meaning;
  }

  /** What the field's window is for, or null where the field is no window. */
  public @Nullable Aim aim() {
    return aim;
  }
}
