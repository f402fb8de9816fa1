package quarterturn.screen;

import java.io.IOException;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Level;
import quarterturn.lesson.teacher.Board;
import quarterturn.lesson.teacher.Sight;
import quarterturn.session.RefusedException;

/** What a key asks the board to do. */
sealed interface BoardAct {
  record None() implements BoardAct {}

  record Repaint() implements BoardAct {}

  record Leave() implements BoardAct {}

  /** An order, or the sheets. */
  sealed interface Order extends BoardAct {
    /** Gives it; returns what to say of it. */
    String give(Board board, Sight sight) throws RefusedException, IOException;
  }

  record Release(String bench, String typed) implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.release(bench, typed, sight);
    }
  }

  record ReleaseAll() implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.releaseAll();
    }
  }

  /** Holds a bench, or all where {@code bench} is null. */
  record Hold(@Nullable String bench, String reason) implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.hold(bench, reason);
    }
  }

  /** Null stays as it is. */
  record SetLevel(String bench, String student, @Nullable Level level, @Nullable Boolean frozen)
      implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.level(bench, student, level, frozen);
    }
  }

  record End() implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.end();
    }
  }

  record Sheets() implements Order {
    @Override
    public String give(Board board, Sight sight) throws RefusedException, IOException {
      return board.sheets();
    }
  }
}
