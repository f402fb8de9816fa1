package quarterturn.screen;

import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Level;

/** What a key asks the board to do. */
sealed interface BoardAct {
  record None() implements BoardAct {}

  record Repaint() implements BoardAct {}

  record Leave() implements BoardAct {}

  record Release(String bench, String typed) implements BoardAct {}

  record ReleaseAll() implements BoardAct {}

  /** Holds a bench, or all where {@code bench} is null. */
  record Hold(@Nullable String bench, String reason) implements BoardAct {}

  /** Null stays as it is. */
  record SetLevel(String bench, String student, @Nullable Level level, @Nullable Boolean frozen)
      implements BoardAct {}

  record End() implements BoardAct {}

  record Sheets() implements BoardAct {}
}
