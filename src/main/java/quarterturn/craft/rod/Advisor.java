package quarterturn.craft.rod;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Chooses the next turn of a rod. Pure: the same question gets the same answer. */
public interface Advisor {
  /** The turn most likely to bring the relief into the window in few moves. */
  Advice advise(Question question);

  /** What speaks against turning this rod again, or null. */
  Decision.@Nullable Reason fault(Question question);

  /** The chance that the relief stands in the window after {@code turn}, 0 to 1. */
  double chance(Question question, Turn turn);

  /** Where the relief should stand after {@code turn}, whether or not it was advised. */
  Range expect(Question question, Turn turn);

  /**
   * What an advisor is asked: the window, the reading, and all that is known of the neck.
   *
   * @param window where the relief should stand
   * @param reading where it stands now
   * @param known of the rod before the story
   * @param story this neck's readings, turns and rests, oldest first, earlier sessions included;
   *     the last of them is {@code reading}
   * @param most the largest turn allowed now, without direction
   */
  record Question(Window window, Bracket reading, Known known, List<Seen> story, Turn most) {
    public Question {
      story = List.copyOf(story);
    }
  }
}
