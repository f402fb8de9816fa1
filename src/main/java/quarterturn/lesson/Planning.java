package quarterturn.lesson;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Stream;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Names;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** Makes a plan from what a teacher typed. */
public final class Planning {
  /** The seed of the first bench's simulated neck; any will do, and each bench has another. */
  private static final int SEED = 1;

  private static final int LONGEST_ID = 40;
  private static final int LONGEST_TITLE = 60;

  private Planning() {}

  /**
   * The procedures, kinds and steps that a plan can name.
   *
   * @param usual the procedure that is meant where none is named
   * @param steps of the chosen procedures, as STEP or PROCEDURE/STEP
   */
  public record Known(
      String usual, Set<String> procedures, Set<String> kinds, Predicate<String> steps) {}

  /**
   * The plan that a teacher's words come to.
   *
   * @param typed what was typed of each part; what was not is as usual
   * @throws NotUnderstoodException saying what a part takes
   */
  public static Plan of(String lesson, Map<PlanPart, String> typed, Known known) {
    List<String> holds = new ArrayList<>(list(typed, PlanPart.HOLDS));
    holds.removeIf("none"::equals);
    boolean everyTurn = holds.remove(Plan.EVERY_TURN);
    for (String hold : holds) {
      if (!known.steps().test(hold)) {
        throw new NotUnderstoodException(
            "there is no step "
                + Printable.of(hold)
                + " to hold at; name every turn, none, or a step of the lesson's procedures, as in"
                + " relief/confirm");
      }
    }
    return new Plan(
        lesson,
        title(typed),
        known(procedures(typed, known.usual()), known.procedures(), "procedure"),
        setups(typed, known),
        Level.of(text(typed, PlanPart.LEVEL)),
        everyTurn,
        holds,
        yes(typed),
        students(typed),
        Map.of(),
        questions(typed));
  }

  /** The text of a part: what was typed, or its usual value. */
  private static String text(Map<PlanPart, String> typed, PlanPart part) {
    return Objects.requireNonNullElse(typed.get(part), part.usual()).strip();
  }

  /** The procedures that were typed, or the usual one. */
  public static List<String> procedures(Map<PlanPart, String> typed, String usual) {
    return typed.containsKey(PlanPart.PROCEDURES)
        ? list(typed, PlanPart.PROCEDURES)
        : List.of(usual);
  }

  /** The pieces of a part's text. */
  private static List<String> list(Map<PlanPart, String> typed, PlanPart part) {
    return Arrays.stream(text(typed, part).split(",", -1))
        .map(piece -> piece.strip().replaceAll("\\s+", " "))
        .filter(piece -> !piece.isEmpty())
        .distinct()
        .toList();
  }

  private static String title(Map<PlanPart, String> typed) {
    String title = text(typed, PlanPart.TITLE);
    if (title.isEmpty()
        || title.length() > LONGEST_TITLE
        || !title.equals(Printable.of(title))
        || title.matches(".*[{}].*")) {
      throw new NotUnderstoodException(
          "a title is one line of 1 to " + LONGEST_TITLE + " characters, without braces");
    }
    return title;
  }

  private static List<String> known(List<String> named, Collection<String> all, String what) {
    if (named.isEmpty()) {
      throw new NotUnderstoodException("name one " + what + " at least");
    }
    for (String one : named) {
      if (!all.contains(one)) {
        throw new NotUnderstoodException(
            "there is no "
                + what
                + " "
                + Printable.of(one)
                + "; choose from "
                + String.join(", ", new TreeSet<>(all)));
      }
    }
    return named;
  }

  private static List<Plan.Setup> setups(Map<PlanPart, String> typed, Known known) {
    String kind = text(typed, PlanPart.KIND).toLowerCase(Locale.ROOT);
    known(List.of(kind), known.kinds(), "kind");
    List<Plan.Setup> out = new ArrayList<>();
    for (String piece : list(typed, PlanPart.NECKS)) {
      int equals = piece.indexOf('=');
      String bench = equals < 0 ? null : Names.check("a bench", piece.substring(0, equals).strip());
      String neck = piece.substring(equals + 1).strip().toLowerCase(Locale.ROOT);
      if (out.stream().anyMatch(s -> Objects.equals(s.bench(), bench))) {
        throw new NotUnderstoodException(
            bench == null
                ? "one neck serves all benches; for one each, name the benches: left=dead, right=slow"
                : "bench " + bench + " has two necks; give it one");
      }
      out.add(
          new Plan.Setup(
              bench,
              kind,
              neck.equals(Plan.REAL) ? null : NamedNeck.of(neck),
              SEED + (bench == null ? 0 : out.size())));
    }
    if (out.isEmpty()) {
      throw new NotUnderstoodException("name a neck, or real");
    }
    return out;
  }

  private static boolean yes(Map<PlanPart, String> typed) {
    String word = text(typed, PlanPart.BLIND).toLowerCase(Locale.ROOT);
    if (!word.matches("y|yes|true|n|no|false")) {
      throw new NotUnderstoodException("blind takes yes or no");
    }
    return word.matches("y|yes|true");
  }

  private static Questioning questions(Map<PlanPart, String> typed) {
    String word = text(typed, PlanPart.QUESTIONS).toLowerCase(Locale.ROOT);
    return Stream.of(Questioning.values())
        .filter(one -> one.word().equals(word))
        .findFirst()
        .orElseThrow(() -> new NotUnderstoodException("questions takes few, some or all"));
  }

  private static List<String> students(Map<PlanPart, String> typed) {
    String text = text(typed, PlanPart.STUDENTS);
    return text.equals(PlanPart.STUDENTS.usual()) ? List.of() : Students.of(text);
  }

  /**
   * An id for a lesson: its day, its number on that day, and its title, so that ids sort by when
   * lessons were made.
   *
   * @param before the ids that are taken
   */
  public static String id(LocalDate day, String title, Collection<String> before) {
    long n = before.stream().filter(id -> id.startsWith(day + "-")).count() + 1;
    String words = title.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    String id = day + "-" + n + "-" + words.replaceAll("^-|-$", "");
    return id.substring(0, Math.min(id.length(), LONGEST_ID)).replaceAll("-$", "");
  }
}
