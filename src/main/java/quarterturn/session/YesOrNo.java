package quarterturn.session;

import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** One question that is answered by yes or no. */
public final class YesOrNo implements Dialogue {
  private static final String YES = "yes";

  private final Question.Choose asked;
  private String answer = "";

  /**
   * A question without an answer yet.
   *
   * @param no what no comes to
   * @param yes what yes comes to
   */
  public YesOrNo(String title, List<String> lines, String asks, String no, String yes) {
    this.asked =
        new Question.Choose(
            title,
            lines,
            asks,
            "Type yes or no.",
            List.of(new Question.Option("no", no, "", ""), new Question.Option(YES, yes, "", "")));
  }

  /** The question, answered or not. */
  public Question.Choose asked() {
    return asked;
  }

  /** Whether the person said yes. */
  public boolean yes() {
    return answer.equals(YES);
  }

  @Override
  public @Nullable Question question() {
    return answer.isEmpty() ? asked : null;
  }

  @Override
  public Taken take(String typed) {
    answer = asked.chosen(typed.strip().toLowerCase(Locale.ROOT));
    return Taken.SILENTLY;
  }
}
