package quarterturn.procedure.check.words;

import java.util.HashMap;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The parts of an instrument that an act can be about. */
enum Part {
  /** The truss rod and its nut. */
  ROD("rod truss trussrod adjuster wheel"),
  /** What the rod's nut is turned with; put in and taken out it does nothing. */
  KEY("key wrench spanner allen hex handle lever crank tool keys driver ratchet"),
  /** The rod's nut, or the slotted one: the verb tells. */
  NUT("nut"),
  /** The turn that was made or is to be made. */
  TURN("turn turning amount"),
  /** The neck's curve. */
  RELIEF("relief bow curve tension gap"),
  STRING("string strings {string} {lowest} {highest}"),
  SADDLE("saddle saddles bridge tailpiece action"),
  PICKUP("pickup pickups pole"),
  NECK("neck heel"),
  FRET("fret frets"),
  BOARD("board fingerboard fretboard wood top body headstock brace"),
  SLOT("slot slots"),
  SCREW("screw screws bolt bolts"),
  COVER("cover plate guard"),
  TUNER("tuner tuners peg pegs post posts"),
  /** Anything else that stands beside an instrument or is done with it. */
  OTHER(
      "capo instrument guitar amplifier amp volume level light page strap case room leaf leaves rule"
          + " cloth gauge reading meter tape mark pitch air hygrometer strip paper card end ends");

  private static final Map<String, Part> NAMED = new HashMap<>();

  static {
    for (Part part : values()) {
      Words.of(part.names).forEach(name -> NAMED.put(name, part));
    }
  }

  private static final Set<String> PLURAL =
      Words.of(
          "strings saddles pickups frets slots screws bolts tuners pegs posts keys leaves ends");

  private static final Set<String> SLOTTED = Words.of("slotted string bone top plastic brass");

  private final String names;

  Part(String names) {
    this.names = names;
  }

  /** The part that a word names, or null. */
  static @Nullable Part named(String word) {
    return NAMED.get(word);
  }

  /** The part that a word of a segment names, or null. */
  static @Nullable Part named(Segment at, int place) {
    Part part = named(at.at(place));
    return part == NUT && SLOTTED.contains(at.at(place - 1)) ? SLOT : part;
  }

  static boolean plural(String word) {
    return PLURAL.contains(word);
  }

  /** Whether a segment names a part that has screws or shafts of its own. */
  static boolean turned(Segment at) {
    return at.words().stream().map(Part::named).anyMatch(part -> part != null && part.turned());
  }

  /** Whether turning it turns the rod. */
  boolean ofRod() {
    return this == ROD || this == KEY || this == NUT || this == TURN;
  }

  /** Whether it is worked on with tools, so that work on an end or a side of it is work on it. */
  boolean made() {
    return this == SADDLE || this == NECK || this == FRET || this == BOARD || this == SLOT;
  }

  /** Whether it is held or set by screws. */
  boolean screwed() {
    return this == NECK || this == COVER || this == SADDLE || this == PICKUP;
  }

  /** Whether it has screws or shafts of its own, which are turned by parts of a turn too. */
  boolean turned() {
    return Set.of(SADDLE, PICKUP, SCREW, COVER, TUNER).contains(this);
  }
}
