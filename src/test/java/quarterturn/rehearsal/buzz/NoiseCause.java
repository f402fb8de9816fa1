package quarterturn.rehearsal.buzz;

import java.util.List;

/**
 * A cause of noise, a row of a repairer's table each (common practice, no source), with the outcome
 * that names it.
 */
enum NoiseCause {
  NONE("none", "unheard", ""),
  NUT_LOW("owner-nut", "buzz", ""),
  NUT_SHAPE("owner-nut-shape", "whine", "open"),
  SADDLE_EDGE("owner-saddle-edge", "whine", "all"),
  NUT_END_BACK("owner-relief", "buzz", ""),
  RELIEF_LOW("owner-relief", "buzz", ""),
  S_BEND("s-bend", "buzz", ""),
  MIDDLE_BEND("middle-bend", "buzz", "middle"),
  BODY_END_RISE("body-end-rise", "buzz", ""),
  ACTION_LOW("owner-action", "buzz", ""),
  JOINT_HUMP("joint-hump", "buzz", ""),
  TWIST("twist", "buzz", ""),
  HIGH_FRET("high-fret", "buzz", ""),
  FRET_LOOSE("fret-loose", "buzz", ""),
  WORN_FRET("worn-frets", "buzz", ""),
  FRET_END("fret-end", "buzz", "one-fret"),
  RADIUS("owner-action", "bends", ""),
  TOUCH("owner-touch", "hard", ""),
  ONE_STRING_LOW("owner-action", "buzz", ""),
  STRING_DEAD("owner-strings", "buzz", "one-string"),
  LIGHTER("owner-strings", "strings", ""),
  ROD_SLACK("owner-rod-slack", "in-neck", ""),
  LOOSE_PART("owner-part", "one-pitch", ""),
  AFTER_LENGTH("after-length", "rings", ""),
  MAGNET("magnet", "wavers", ""),
  BINDING("binding", "ticks", ""),
  JOINT_LOOSE("joint-loose", "drifts", ""),
  TOP("top", "swells", ""),
  DEAD_SPOT("dead-spot", "dies", "");

  private final String outcome;
  private final String heard;
  private final String where;

  NoiseCause(String outcome, String heard, String where) {
    this.outcome = outcome;
    this.heard = heard;
    this.where = where;
  }

  /**
   * The outcomes that name it: a neck that bends back at the nut may show in its relief, or not.
   */
  List<String> outcomes() {
    return this == NUT_END_BACK ? List.of(outcome, "nut-end-back") : List.of(outcome);
  }

  /** The noise as it is heard, by the id of its answer. */
  String heard() {
    return heard;
  }

  /** How far it can go, in millimetres: an S-bend beyond this shows to the eye; estimates. */
  double mostMm() {
    return this == S_BEND ? 0.25 : 1.5;
  }

  /** Where it is heard, by the id of its answer; empty where the frets tell. */
  String where() {
    return where;
  }
}
