package quarterturn.procedure.check.rule.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.unit.Turn;

/**
 * The rule that words which pair tightening or loosening with a sense, or with a smaller or larger
 * gap, say what {@link Turn#sense} says. The convention is common practice, no source.
 */
public final class DirectionWords {
  public static final Rule RULE =
      Rule.ofSteps(
          "direction-words",
          "Clockwise tightens and makes the gap smaller, a wheel seen from the body: no words differ.",
          DirectionWords::prove);

  /** Words of one group say one thing of one turn. */
  public static final Pattern WORD =
      Pattern.compile(
          "(?<rod>tighten|loosen)|(?<sense>\\banticlockwise|\\bclockwise)"
              + "|(?<gap>\\bsmaller|\\blarger)"
              + "|(?<fault>too (?:much|little) relief|too (?:large|small))",
          Pattern.CASE_INSENSITIVE);

  private static final List<String> SORTS = List.of("rod", "sense", "gap", "fault");

  private static final Set<String> TIGHTER =
      Set.of("tighten", Turn.EIGHTH.sense(), "smaller", "too much relief", "too large");

  private static final Pattern DENIED =
      Pattern.compile("\\b(no|not|never|nor|neither|don't|wrong)\\b", Pattern.CASE_INSENSITIVE);

  private static final Pattern WHEEL = Pattern.compile("(?i)\\bwheel\\b");

  /** A look along the neck from the end at which no wheel is. */
  private static final Pattern AWAY =
      Pattern.compile(
          "(?i)\\bfrom the headstock\\b[^.]*\\bthe (body|bridge|heel)\\b"
              + "|\\bto(wards?)? the (body|bridge|heel) from the headstock\\b");

  private DirectionWords() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step instanceof Step.TurnRod && step.words().all().anyMatch(WHEEL.asPredicate())) {
      step.words()
          .sentences()
          .filter(AWAY.asPredicate().and(DENIED.asPredicate().negate()))
          .forEach(
              sentence ->
                  found.add(
                      step,
                      step.id() + " has a wheel seen from the wrong end: \"" + sentence + "\"",
                      "the sense is said looking from the body toward the headstock"));
    }
    step.words()
        .sentences()
        .filter(sentence -> !DENIED.matcher(sentence).find())
        .filter(sentence -> !contradictions(sentence).isEmpty())
        .forEach(
            sentence ->
                found.add(
                    step,
                    step.id() + " has a direction the wrong way round: \"" + sentence + "\"",
                    "facing the end of the truss rod nut, clockwise tightens an ordinary rod and"
                        + " makes the gap smaller"));
  }

  /** The words of a sentence that contradict each other, or nothing. */
  public static List<String> contradictions(String sentence) {
    List<String> out = new ArrayList<>();
    Map<String, String> group = new HashMap<>();
    for (Said said : said(sentence)) {
      if (group.containsKey(said.sort())) {
        group.clear();
      }
      group.put(said.sort(), said.word());
      if (group.values().stream().map(TIGHTER::contains).distinct().count() > 1) {
        out.add(group.values() + " in: " + sentence);
      }
    }
    return out;
  }

  /** A word that has a direction, and of which sort it is. */
  public record Said(String sort, String word) {}

  /** The words of a sentence that have a direction. */
  public static List<Said> said(String sentence) {
    List<Said> out = new ArrayList<>();
    for (Matcher m = WORD.matcher(sentence); m.find(); ) {
      for (String sort : SORTS) {
        if (m.group(sort) != null) {
          out.add(new Said(sort, m.group().toLowerCase(Locale.ROOT)));
        }
      }
    }
    return out;
  }
}
