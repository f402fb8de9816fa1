package quarterturn.procedure.check.words;

import java.util.EnumSet;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/** The parts that a text has named so far, by which a pronoun is understood. */
final class Mentioned {
  private final Set<Part> named = EnumSet.noneOf(Part.class);
  private boolean own;
  private @Nullable Part single;
  private @Nullable Part several;
  private @Nullable Part last;
  private @Nullable Part holder;

  /** Takes notice of the words of a segment from one place to another. */
  void hear(Segment at, int from, int to) {
    for (int place = from; place < to; place++) {
      Part part = Part.named(at, place);
      boolean counted = part == Part.TURN || part == null;
      if (part == null || counted) {
        continue;
      }
      named.add(part);
      own |= part.ofRod();
      if (Part.plural(at.at(place))) {
        several = part;
      } else {
        single = part;
      }
      last = part == Part.SCREW || part == Part.OTHER ? last : part;
      holder = part.screwed() ? part : holder;
    }
  }

  /** Begins a text of its own: what was heard before explains pronouns only. */
  void begin() {
    own = false;
  }

  /** Whether the rod was named in the text itself. */
  boolean ownRod() {
    return own;
  }

  boolean rod() {
    return named.contains(Part.ROD) || named.contains(Part.NUT) || named.contains(Part.KEY);
  }

  boolean nothing() {
    return named.isEmpty();
  }

  /** Whether the part named last is of the rod, or none was named. */
  boolean nearRod() {
    return last == null || !last.turned() && last != Part.STRING && last != Part.SLOT;
  }

  /** What "it" or "them" stands for where something is turned. */
  @Nullable Part meant(String pronoun, boolean turning) {
    boolean plural = Words.has("them these those both", pronoun);
    Part near = plural ? several : single;
    boolean elsewhere = near != null && near.turned();
    return turning && !plural && !elsewhere && rod() ? Part.ROD : near;
  }

  /** What the screws named last belong to. */
  @Nullable Part holder() {
    return holder == null && rod() ? Part.ROD : holder;
  }

  /** Whether the part named last has shafts of its own to turn. */
  boolean nearOther() {
    return last != null && last.turned();
  }
}
