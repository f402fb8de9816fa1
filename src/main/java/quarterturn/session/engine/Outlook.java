package quarterturn.session.engine;

import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/**
 * What the next turn of the rod should change.
 *
 * @param turn plus tightens
 * @param now the chance that the relief stands in its window now
 * @param then the chance that it stands there after the turn
 * @param relief where it stands then, nine times in ten
 * @param found whether there is known to be a rod
 * @param rests how many hours the rod has to rest before it; 0 for none
 * @param beyond whether it is more than the limits allow
 */
record Outlook(
    Turn turn,
    double now,
    double then,
    Prompt.Expected relief,
    boolean found,
    int rests,
    boolean beyond) {
  /**
   * Where the relief stands now and after the turn, in two sentences, the last without its stop.
   */
  String words() {
    return "Its chance to be in range is "
        + percent(now)
        + " now. "
        + (found ? "A turn of " : "With a rod that works, a turn of ")
        + turn
        + (turn.turns() > 0 ? ", tighter," : ", looser,")
        + " should give "
        + Notes.range(relief)
        + " (nine times in ten), with a chance of "
        + percent(then)
        + (beyond
            ? "; but that is further than this program goes"
            : rests > 0 ? "; the rod rests " + rests + " hours before that" : "");
  }

  private static String percent(double chance) {
    return Decimals.print(100 * chance, 0) + " %";
  }
}
