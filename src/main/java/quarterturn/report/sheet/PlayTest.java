package quarterturn.report.sheet;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Recorded;

/**
 * The first play test of a session and the last. A test can take more than one answer, such as
 * where it buzzes and on which string; the same step a second time begins another test.
 */
final class PlayTest {
  private final Map<String, String> found = new LinkedHashMap<>();
  private final Map<String, String> left = new LinkedHashMap<>();
  private boolean again;
  private @Nullable String verdict;

  /** Takes an answer, if a step records it as one of a play test. */
  boolean take(@Nullable Recorded what, String step, String answer) {
    if (what == Recorded.PLAY_FOUND) {
      again |= found.containsKey(step);
      if (!again) {
        found.put(step, answer);
      }
    } else if (what == Recorded.PLAY_LEFT) {
      if (left.containsKey(step)) {
        left.clear();
      }
      left.put(step, answer);
    }
    return what == Recorded.PLAY_FOUND || what == Recorded.PLAY_LEFT;
  }

  /** Takes the verdict of a play test that no step records word by word. */
  void verdict(String answer) {
    verdict = answer;
  }

  /** Both tests, or null where none is on record as found or as left. */
  Sheet.@Nullable Played both() {
    if (found.isEmpty() && left.isEmpty()) {
      return null;
    }
    String last = verdict == null ? "not played again" : verdict;
    return new Sheet.Played(
        found.isEmpty() ? "not played" : String.join("; ", found.values()),
        left.isEmpty() ? last : String.join("; ", left.values()));
  }
}
