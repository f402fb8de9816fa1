package quarterturn.rehearsal;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.unit.Worded;

/** What is wrong with a simulated neck or its rod. */
public enum NeckFault implements Worded {
  NONE("sound", Feel.SMOOTH, null),
  /** A broken rod, or an anchor that slips. */
  DEAD("the rod does nothing", Feel.SMOOTH, null),
  REVERSED("the rod works the other way round", Feel.SMOOTH, null),
  /** The neck answers all the same: a warning, no reason to stop. */
  STIFF("the rod nut is stiff", Feel.STIFF, null),
  JAMMED("the rod nut is jammed", Feel.JAMMED, null),
  /** The key slips in it. */
  STRIPPED("the socket of the rod nut is rounded", Feel.SLIPPED, "rounded"),
  /** Tightening does nothing more. */
  FULLY_TIGHT("the rod is at the end of its travel, fully tight", Feel.SMOOTH, null),
  /** Loosening does nothing more. */
  FULLY_LOOSE("the rod is fully loose", Feel.SMOOTH, null),
  /** The lowest and the highest string read differently. */
  TWIST("the neck is twisted", Feel.SMOOTH, "crossed"),
  /** There is a crack to be seen. */
  CRACKED("there is a crack at the joint of neck and body", Feel.SMOOTH, "damage");

  private final String words;
  private final Feel feel;
  private final @Nullable String shows;

  NeckFault(String words, Feel feel, @Nullable String shows) {
    this.words = words;
    this.feel = feel;
    this.shows = shows;
  }

  /** "the rod does nothing". */
  public String words() {
    return words;
  }

  /** How the nut feels where it bears on the rod. */
  Feel feel() {
    return feel;
  }

  /** The option by which a person who looks at this neck answers, or null for the ordinary one. */
  @Nullable String shows() {
    return shows;
  }

  /** Whether the nut can be moved with a key at all. */
  boolean turns() {
    return feel != Feel.JAMMED && feel != Feel.SLIPPED;
  }

  /** Whether a neck with it may have to be handed over. */
  boolean brokenDown() {
    return this != NONE && this != STIFF;
  }

  /** Whether the neck answers its rod at all. */
  boolean answers() {
    return this != DEAD && turns();
  }

  /** What of a nut's place bears on the rod; 0 is where it was found, plus is tighter. */
  double bearing(double turns) {
    return switch (this) {
      case FULLY_TIGHT -> Math.min(0, turns);
      case FULLY_LOOSE -> Math.max(0, turns);
      case DEAD -> 0;
      default -> turns;
    };
  }

  /**
   * Whether a neck with this fault has to be handed over.
   *
   * @param side where its relief stands: -1 below the window, 0 in it, 1 above it
   */
  public boolean needsRepairer(int side) {
    return switch (this) {
      case NONE, STIFF -> false;
      case DEAD, REVERSED, JAMMED -> side != 0;
      case FULLY_TIGHT -> side > 0;
      case FULLY_LOOSE -> side < 0;
      case STRIPPED, TWIST, CRACKED -> true;
    };
  }
}
