package quarterturn.procedure;

import java.util.List;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.RodNut;
import quarterturn.procedure.kind.RodPlace;
import quarterturn.unit.Worded;

/** The kinds of note or choice that the program itself asks for again. */
public enum Recorded implements Worded {
  /** The player's complaint. */
  COMPLAINT,
  /** The diameters of the strings that are on. */
  GAUGES,
  /** The diameters of the strings that will be on. */
  NEW_GAUGES,
  /** What the play test found before anything was touched. */
  PLAY_FOUND,
  /** What the play test found once the work was done. */
  PLAY_LEFT,
  /** The height of a one-piece saddle above the bridge, at the lowest string and at the highest. */
  SADDLE_STANDS,
  /** Whether the strings stay or another set goes on, which is the last option. */
  STRINGS,
  /** Whether every saddle can be set; the last option states that they can't. */
  SADDLES,
  /** Whether there are pickups that can be set; the last option states that there are none. */
  PICKUPS,
  /** Whether the neck is read again a day later; the last option states that it is. */
  NEXT_DAY,
  /** Whether a relief just outside its window stays so; the last option states that it does. */
  LEFT_AS_IS,
  /** The kind of bridge; the options are words of it, and one on record is not asked for. */
  BRIDGE(BridgeKind.values()),
  /** The kind of nut, likewise. */
  NUT(NutKind.values()),
  /** The kind of truss rod, likewise. */
  ROD(RodKind.values()),
  /** Where its nut is, likewise. */
  ROD_PLACE(RodPlace.values()),
  /** What its nut looks like, likewise. */
  ROD_NUT(RodNut.values()),
  /** What is special in how the instrument is built; one on record is not asked for. */
  BUILD,
  /** The size of the key that fits it, as it is written; one on record is not asked for. */
  ROD_KEY,
  /** The kind of pickup, likewise. */
  PICKUP(PickupKind.values());

  private final List<String> kinds;

  Recorded(Worded... kinds) {
    this.kinds = Worded.words(kinds);
  }

  /** Whether an answer says how an instrument is made, so that it is asked for once. */
  public boolean names(String answer) {
    return kinds.contains(answer) || this == BUILD || (this == ROD_KEY && !answer.equals("-"));
  }

  /** An answer behind what it is an answer to. */
  public String said(String answer) {
    return word() + " " + answer;
  }

  /** Whether the note is of the strings' diameters, one for each, and of nothing else. */
  public boolean gauges() {
    return this == GAUGES || this == NEW_GAUGES;
  }
}
