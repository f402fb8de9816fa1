package quarterturn.craft;

import java.util.ArrayList;
import java.util.List;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Something that happened to a neck and that can be learned from. */
public sealed interface Seen {
  /** Relief was read, settled and at pitch. */
  record Read(Bracket relief) implements Seen {}

  /** The rod was turned; plus tightens. */
  record Turned(Turn turn) implements Seen {}

  /** So long a time went by that the relief has to be found anew. */
  record Rested() implements Seen {}

  /**
   * A neck's moves and its last reading as one story. Where a move begins with another reading than
   * the one before it ended with, the neck rested between.
   */
  static List<Seen> story(List<Move> moves, Bracket last) {
    List<Seen> story = new ArrayList<>();
    Bracket at = null;
    for (Move move : moves) {
      Bracket before = move.before();
      if (before == null || !before.equals(at)) {
        if (!story.isEmpty()) {
          story.add(new Rested());
        }
        if (before != null) {
          story.add(new Read(before));
        }
      }
      story.add(new Turned(move.turn()));
      at = move.after();
      if (at != null) {
        story.add(new Read(at));
      }
    }
    if (!last.equals(at)) {
      story.add(new Read(last));
    }
    return story;
  }
}
