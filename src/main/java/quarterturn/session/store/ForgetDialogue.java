package quarterturn.session.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Instrument;
import quarterturn.session.Question;

/** Asks once before an instrument's ticket and customer are forgotten. */
public final class ForgetDialogue implements Dialogue {
  private static final String YES = "yes";

  private final Instrument instrument;
  private String answer = "";

  /** A dialogue without an answer yet. */
  public ForgetDialogue(Instrument instrument) {
    this.instrument = instrument;
  }

  /** What there is to forget, such as "ticket 4711"; empty where there is nothing. */
  public List<String> known() {
    List<String> known = new ArrayList<>();
    if (instrument.job().ticket() != null) {
      known.add("ticket " + instrument.job().ticket());
    }
    if (instrument.job().customer() != null) {
      known.add("customer " + instrument.job().customer());
    }
    return known;
  }

  /** Whether the person said yes. */
  public boolean sure() {
    return answer.equals(YES);
  }

  /** What was done, in sentences. */
  public List<String> done() {
    return List.of(
        "Removed from " + instrument.name() + ": " + String.join(", ", known()) + ".",
        "The instrument, its sessions and its turns stay, and so does what was typed in them.",
        "A sheet that was exported before still has the ticket.");
  }

  private Question.Choose sureQuestion() {
    return new Question.Choose(
        "Forget whose " + instrument.name() + " is?",
        List.of(
            "This is removed from its file: " + String.join(", ", known()) + ".",
            "The instrument, its sessions and its turns stay."),
        "Forget it?",
        "Type yes or no.",
        List.of(
            new Question.Option("no", "Keep it", "", ""),
            new Question.Option(YES, "Forget it", "", "")));
  }

  @Override
  public @Nullable Question question() {
    return answer.isEmpty() && !known().isEmpty() ? sureQuestion() : null;
  }

  @Override
  public Taken take(String typed) {
    answer = sureQuestion().chosen(typed.strip().toLowerCase(Locale.ROOT));
    return Taken.SILENTLY;
  }
}
