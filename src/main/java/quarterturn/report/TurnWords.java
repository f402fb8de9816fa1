package quarterturn.report;

import quarterturn.unit.Turn;

/** Rod turns with their direction; a plus tightens. */
public final class TurnWords {
  private TurnWords() {}

  /** A turn that was made: "tightened 1/8 turn", "loosened 1/8 turn", "not turned". */
  public static String done(Turn turn) {
    if (turn.turns() == 0) {
      return "not turned";
    }
    return (turn.turns() > 0 ? "tightened " : "loosened ") + turn;
  }

  /** The same, where nobody may be sure of it: "loosened about 1/8 turn, not sure". */
  public static String done(Turn turn, boolean sure) {
    return sure || turn.turns() == 0 ? done(turn) : about(done(turn));
  }

  /** "about 1/8 turn looser than as found, not sure". */
  public static String net(Turn net, boolean sure) {
    return sure ? net(net) : about(net(net));
  }

  private static String about(String words) {
    return words.replaceFirst("(?=\\d)", "about ") + ", not sure";
  }

  /** A turn to be made: "tighten 1/8 turn", "loosen 1/8 turn". */
  public static String order(Turn turn) {
    return (turn.turns() > 0 ? "tighten " : "loosen ") + turn.size();
  }

  /** The rod's position: "as found", "1/8 turn tighter than as found". */
  public static String net(Turn net) {
    if (net.size().turns() < 0.001) {
      return "as found";
    }
    return net + (net.turns() > 0 ? " tighter" : " looser") + " than as found";
  }
}
