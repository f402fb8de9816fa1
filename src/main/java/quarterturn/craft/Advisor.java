package quarterturn.craft;

import java.util.List;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Chooses the next turn of a rod. Pure: the same question gets the same answer. */
public interface Advisor {
  /** The turn that serves best. */
  Advice advise(Question question);

  /** Where the relief should stand after {@code turn}, whether or not it was advised. */
  Range expect(Question question, Turn turn);

  /**
   * What is known.
   *
   * @param window where the relief should stand
   * @param reading where it stands now
   * @param moves this neck's turns so far, oldest first, earlier sessions included
   * @param prior what to expect of the rod before any of them
   * @param most the largest turn allowed now, without direction
   */
  record Question(Window window, Bracket reading, List<Move> moves, Prior prior, Turn most) {
    public Question {
      moves = List.copyOf(moves);
    }
  }
}
