package quarterturn.line;

import java.io.IOException;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.bench.BenchWords;
import quarterturn.lesson.bench.LessonSession;
import quarterturn.session.RefusedException;

/** Lines typed at a bench in a lesson, with the words that work at every one of them. */
final class LessonTalk {
  private static final List<String> WORDS = List.of("stop", "who", "come", "gone", "quit");

  private final LessonSession session;
  private final LineSource in;
  private final Paper paper;

  /** Whether the bench is to be left. */
  private boolean leaving;

  LessonTalk(LessonSession session, LineSource in, Paper paper) {
    this.session = session;
    this.in = in;
    this.paper = paper;
  }

  boolean leaving() {
    return leaving;
  }

  /**
   * A line that answers what was asked, or null where something else was done or the bench is left.
   *
   * @param asked what stands before the place to type
   * @param help what is said to {@code ?}
   */
  @Nullable String line(String asked, String help, boolean hidden)
      throws IOException, LineSource.StopKeyException {
    while (true) {
      String typed = hidden ? in.readHidden(asked) : in.readLine(asked, WORDS);
      if (typed == null) {
        leaving = true;
        return null;
      }
      String word = typed.strip().toLowerCase(Locale.ROOT);
      if (word.equals("?")) {
        paper.say(help);
        paper.say(BenchWords.HELP);
        paper.say("quit: leave in order.");
      } else if (word.equals("quit") || word.equals("exit")) {
        leaving = Leaving.sure(session, in, paper);
        if (leaving) {
          return null;
        }
      } else if (takes(typed)) {
        return null;
      } else {
        return typed.strip();
      }
    }
  }

  /** Whether a line is a word of the lesson; then it has been done. */
  boolean takes(String typed) throws IOException {
    try {
      List<String> said = BenchWords.take(session, typed);
      if (said != null) {
        paper.say(said);
      }
      return said != null;
    } catch (RefusedException e) {
      paper.say("Not taken: " + e.getMessage());
      return true;
    }
  }
}
