package quarterturn.rehearsal.simulated;

import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.unit.Worded;

/** What is wrong with a simulated neck or its rod. */
public enum NeckFault implements Worded {
  NONE("sound", Feel.SMOOTH, null),
  /** A broken rod, or an anchor that slips. */
  DEAD("the rod does nothing", Feel.SMOOTH, null),
  REVERSED("the rod works the other way round", Feel.SMOOTH, null),
  /** A stiff nut on a rod that works: a warning, not a reason to stop. */
  STIFF("the truss rod nut is stiff", Feel.STIFF, null),
  JAMMED("the truss rod nut is jammed", Feel.JAMMED, null),
  /** A rounded socket, in which the key slips. */
  STRIPPED("the socket of the truss rod nut is rounded", Feel.SLIPPED, "rounded"),
  /** The end of the rod's travel, where tightening does nothing more. */
  FULLY_TIGHT("the rod is at the end of its travel, fully tight", Feel.SMOOTH, null),
  /** A rod so loose that loosening does nothing more. */
  FULLY_LOOSE("the rod is fully loose", Feel.SMOOTH, null),
  /** A twist, by which the lowest and the highest string read differently. */
  TWIST("the neck is twisted", Feel.SMOOTH, "crossed"),
  /** A visible crack. */
  CRACKED("there is a crack at the joint of neck and body", Feel.SMOOTH, "damage");

  private final String words;
  private final Feel feel;
  private final @Nullable String shows;

  NeckFault(String words, Feel feel, @Nullable String shows) {
    this.words = words;
    this.feel = feel;
    this.shows = shows;
  }

  /** The fault in words, such as "the rod does nothing". */
  public String words() {
    return words;
  }

  /** How the nut feels when a turn bears on the rod. */
  Feel feel() {
    return feel;
  }

  /**
   * The id of the option that names this fault in a choice, or null where a person answers as
   * usual.
   */
  public @Nullable String shows() {
    return shows;
  }

  /** Whether a key can move the nut. */
  public boolean turns() {
    return feel != Feel.JAMMED && feel != Feel.SLIPPED;
  }

  /** Whether a neck with this fault may have to be handed over. */
  public boolean brokenDown() {
    return this != NONE && this != STIFF;
  }

  /** Whether the neck moves when the rod is turned. */
  public boolean answers() {
    return this != DEAD && turns();
  }

  /** The part of a nut's position that loads the rod, in turns; 0 is as found, plus is tighter. */
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
      case DEAD, REVERSED, JAMMED, STRIPPED -> side != 0;
      case FULLY_TIGHT -> side > 0;
      case FULLY_LOOSE -> side < 0;
      case TWIST, CRACKED -> true;
    };
  }
}
