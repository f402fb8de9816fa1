package quarterturn.lesson;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks a teacher for the parts of a plan, one after the other. */
public final class PlanDialogue implements Dialogue {
  private static final String HELP =
      "Enter takes what stands in brackets; quit leaves, and nothing is made.";

  private final PlanChecks check;
  private final Map<PlanPart, String> before;
  private final Map<PlanPart, String> typed = new EnumMap<>(PlanPart.class);
  private int at;

  /**
   * Asks for every part.
   *
   * @param before what an earlier plan had, which is offered
   */
  public PlanDialogue(PlanChecks check, Map<PlanPart, String> before) {
    this.check = check;
    this.before = Map.copyOf(before);
  }

  private String usual(PlanPart part) {
    String had = before.get(part);
    return had == null ? check.usual(part) : had;
  }

  /** What was typed so far, by part. */
  public Map<PlanPart, String> typed() {
    return Map.copyOf(typed);
  }

  @Override
  public @Nullable Question question() {
    if (at == PlanPart.values().length) {
      return null;
    }
    return new Question.Form(Stream.of(PlanPart.values()).map(this::field).toList(), at, HELP);
  }

  private Question.Field field(PlanPart part) {
    String choices = check.choices(part);
    String meaning = part.meaning() + (choices == null ? "" : " There are: " + choices + ".");
    if (part == PlanPart.QUESTIONS && part == PlanPart.values()[at]) {
      meaning += " With some i" + check.time(check.plan("a", typed)).substring(1);
    }
    return new Question.Field(part.label(), meaning, typed.getOrDefault(part, usual(part)));
  }

  @Override
  public Taken take(String text) {
    PlanPart part = PlanPart.values()[at];
    typed.put(part, text.isBlank() ? usual(part) : text.strip());
    try {
      check.check(typed);
    } catch (NotUnderstoodException e) {
      typed.remove(part);
      throw e;
    }
    at++;
    return Taken.SILENTLY;
  }

  @Override
  public List<String> whenLeft() {
    return List.of("Left; nothing was made.");
  }

  @Override
  public boolean back() {
    boolean some = at > 0;
    at = Math.max(0, at - 1);
    typed.remove(PlanPart.values()[at]);
    return some;
  }
}
