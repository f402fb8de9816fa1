package quarterturn.craft.rod;

import quarterturn.unit.Turn;

/**
 * The limits on turning a rod.
 *
 * @param most in one move, without direction
 * @param fromAsFound the most it may stand from where it was found, without direction
 */
public record Allowed(Turn most, Turn fromAsFound) {
  /**
   * The most in one move this way, 1 or -1, with the rod {@code net} turns from as found; none
   * where less is left than a hand can make.
   */
  Turn most(double net, int way) {
    Turn room = new Turn(fromAsFound.turns() - way * net);
    boolean least = room.atLeast(Turn.EIGHTH) || room.atLeast(most);
    return least ? new Turn(Math.min(most.turns(), room.turns())) : Turn.NONE;
  }
}
