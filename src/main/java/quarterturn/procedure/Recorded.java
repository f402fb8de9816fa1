package quarterturn.procedure;

import quarterturn.unit.Worded;

/** What a note or a choice puts on record that the program itself asks for again. */
public enum Recorded implements Worded {
  /** What the player complains of. */
  COMPLAINT,
  /** The diameters of the strings that are on. */
  GAUGES,
  /** The diameters of the strings that will be on. */
  NEW_GAUGES,
  /** Which strings are to be on; the last option is another set. */
  STRINGS,
  /** Whether every saddle can be set; the last option is that they can't. */
  SADDLES,
  /** Whether there are pickups that can be set; the last option is that there are none. */
  PICKUPS,
  /** Whether the neck is read again a day later; the last option is that it is. */
  NEXT_DAY
}
