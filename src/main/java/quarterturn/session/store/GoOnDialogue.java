package quarterturn.session.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;

/**
 * Asks whether to go on with an unfinished session on an instrument, where another is about to
 * begin on it.
 */
public final class GoOnDialogue implements Dialogue {
  private static final String ANOTHER = "another";

  private final String instrument;
  private final List<HomeDialogue.Item> unfinished;
  private final String counting;
  private @Nullable String answer;

  /**
   * A dialogue without an answer yet.
   *
   * @param unfinished the sessions, of which there is at least one
   * @param counting what another session counts as made, in a sentence, or empty
   */
  public GoOnDialogue(String instrument, List<HomeDialogue.Item> unfinished, String counting) {
    this.instrument = instrument;
    this.counting = counting;
    this.unfinished = List.copyOf(unfinished);
  }

  /** What another session counts as made, where a turn is half made in these; else empty. */
  public static String counting(List<Work> unfinished) {
    return unfinished.stream()
        .map(work -> work.glance().half())
        .filter(Objects::nonNull)
        .map(turn -> (turn.turns() < 0 ? "loosen " : "tighten ") + turn)
        .map(turn -> "The turn that was asked for, " + turn + ", then counts as made.")
        .collect(Collectors.joining(" "));
  }

  /** The session to go on with, or null to begin another. */
  public @Nullable String session() {
    return ANOTHER.equals(answer) ? null : answer;
  }

  @Override
  public Question.@Nullable Choose question() {
    return answer == null ? which() : null;
  }

  private Question.Choose which() {
    List<Question.Option> options = new ArrayList<>();
    for (HomeDialogue.Item item : unfinished) {
      Question.Option one = item.option();
      options.add(new Question.Option(one.name(), "Go on: " + one.label(), one.detail(), ""));
    }
    options.add(new Question.Option(ANOTHER, "Begin another session", counting, ""));
    String asks = instrument + " has work that is not over. Go on with it?";
    return new Question.Choose(
        "The instrument", List.of(), asks, "Type a number from the list, or another.", options);
  }

  @Override
  public Taken take(String typed) {
    answer = which().chosen(typed.strip().toLowerCase(Locale.ROOT));
    return Taken.SILENTLY;
  }
}
