package quarterturn.procedure.check.rule;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Pattern;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.bench.BenchState.Compared;
import quarterturn.procedure.check.walk.Frame;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/** The rule that what is said of a reading is about the string that was read. */
public final class WhichString {
  public static final Rule RULE =
      Rule.ofSteps(
          "which-string",
          "What is said, compared and decided of relief is about the strings that were read.",
          WhichString::prove);

  /** Strings as texts name them, beside their blanks: the lowest, then the highest. */
  private static final Pattern LOWEST =
      Pattern.compile("\\b(thickest|lowest) string\\b|\\bstring, the thickest\\b");

  private static final Pattern HIGHEST =
      Pattern.compile("\\b(thinnest|highest) string\\b|\\bstring, the thinnest\\b");

  /** What is said of a neck whose two edges were compared. */
  private static final Pattern EDGES =
      Pattern.compile("\\b(on both edges|both edges are|free of twist|is no twist|not twisted)\\b");

  /** One string in words, and the other's blank right behind it or before it. */
  private static final Pattern CROSSED =
      Pattern.compile(
          "(?i)(?:thickest|lowest) string,? \\{highest}|(?:thinnest|highest) string,? \\{lowest}"
              + "|\\{highest}, the (?:thickest|lowest) string|\\{lowest}, the (?:thinnest|highest) string");

  private WhichString() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (step.words().all().anyMatch(text -> CROSSED.matcher(text).find())) {
      found.add(step, step.id() + " gives one string the note of another", "give it its own");
    }
    if (step instanceof Step.Measure measure) {
      inTurn(measure, found);
      said(proof, measure, found);
      decided(measure, found);
    } else if (step instanceof Step.Adjust
        && !step.words().text().contains(written(Blank.STRING))
        && (names(step.words().text(), Which.LOWEST)
            || names(step.words().text(), Which.HIGHEST))) {
      found.add(
          step,
          step.id() + " sets each string, and its text names one",
          "say {string} in its place");
    } else if (step.words().all().anyMatch(WhichString::confuses)) {
      found.add(
          step,
          step.id() + " gives {reading} for the highest string; it is the lowest string's",
          "say it of {lowest}");
    }
    if (!(step instanceof Step.Choose)
        && step.words().all().anyMatch(text -> EDGES.matcher(text).find())
        && unread(proof, step, Which.HIGHEST)) {
      found.add(
          step,
          step.id() + " tells of both edges, and the highest string was not read on every way",
          "read relief on the highest string too, and compare");
    }
    for (Condition condition : Frame.conditions(step)) {
      condition.subjects().forEach(subject -> compared(proof, step, subject, found));
    }
  }

  private static boolean confuses(String text) {
    return text.contains(written(Blank.READING))
        && text.contains(written(Blank.HIGHEST))
        && !text.contains(written(Blank.LOWEST));
  }

  private static String written(Blank blank) {
    return "{" + blank.word() + "}";
  }

  /** Where the strings are read in turn, the text says {string}, and nowhere else. */
  private static void inTurn(Step.Measure step, Findings found) {
    String text = step.words().text();
    boolean each = step.which() == Which.EACH;
    boolean blank = text.contains(written(Blank.STRING));
    if (each && !blank && (names(text, Which.LOWEST) || names(text, Which.HIGHEST))) {
      found.add(
          step,
          step.id() + " reads each string, and its text names one",
          "say {string}, which is each of them in turn");
    } else if (blank && !each) {
      found.add(
          step,
          step.id() + " says {string}, and does not read each",
          "read each string, or name the one that is read");
    }
  }

  /** A step that reads one string names it; another one only where that was read before. */
  private static void said(Proof proof, Step.Measure step, Findings found) {
    Which which = step.which();
    if (which == null || which == Which.EACH) {
      return;
    }
    Which other = which == Which.LOWEST ? Which.HIGHEST : Which.LOWEST;
    for (String text : List.of(step.words().text(), String.valueOf(step.words().brief()))) {
      if (names(text, other) && (!names(text, which) || unread(proof, step, other))) {
        String reads =
            step.id() + " reads the " + which.word() + " string, and its words name the ";
        found.add(
            step,
            reads + other.word() + " one",
            "name the string that is read; another one only where it was read before");
      }
    }
  }

  private static boolean names(String text, Which which) {
    boolean lowest = which == Which.LOWEST;
    String small = text.toLowerCase(Locale.ROOT);
    return small.contains(written(lowest ? Blank.LOWEST : Blank.HIGHEST))
        || (lowest ? LOWEST : HIGHEST).matcher(small).find();
  }

  /** Whether a way leads to a step on which a string was not asked for. */
  private static boolean unread(Proof proof, Step step, Which which) {
    Set<String> reached =
        Ways.reach(
            proof.procedure(),
            proof.procedure().begin(),
            one -> !(one instanceof Step.Measure m && m.which() == which));
    return reached.contains(step.id());
  }

  /**
   * Where the highest string is read, nothing is decided on relief: that is the lowest string's.
   */
  private static void decided(Step.Measure step, Findings found) {
    if (step.quantity() == Quantity.RELIEF && step.which() == Which.HIGHEST) {
      Condition unread = new Condition.Against(Quantity.RELIEF, Verdict.NOT_MEASURED);
      boolean decides =
          step.fork().branches().stream()
              .flatMap(branch -> branch.when().atoms())
              .anyMatch(
                  atom ->
                      atom.about().equals(new Subject.Reading(Quantity.RELIEF))
                          && !atom.equals(unread));
      if (decides) {
        found.add(
            step,
            step.id() + " decides on relief where the highest string is read",
            "decide in a step of its own, on the lowest string; here by whether it was read, or"
                + " by how far the two differ");
      }
    }
  }

  private static void compared(Proof proof, Step step, Subject subject, Findings found) {
    Which read = step instanceof Step.Measure measure ? measure.which() : null;
    if (subject instanceof Subject.Differing
        && read != Which.HIGHEST
        && unread(proof, step, Which.HIGHEST)) {
      found.add(
          step,
          step.id() + " asks whether the strings differ; the highest was not read on every way",
          "read it before");
    }
    if (subject instanceof Subject.Repeating) {
      // A step that reads is only reached before its own reading.
      Compared before =
          read == null
              ? Compared.TWICE
              : read == Which.HIGHEST ? Compared.HIGHEST_LAST : Compared.LOWEST_LAST;
      proof
          .nearest(step, at -> !at.has(before))
          .ifPresent(
              node ->
                  found.add(
                      node,
                      step.id()
                          + " asks whether a reading repeats; the last two were not taken on one"
                          + " string",
                      "read one string twice, one time after the other"));
    }
  }
}
