package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Students;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A page that asks each student at a bench for one answer, a row each.
 *
 * @param students at the bench; their places are the numbers of the rows
 * @param missing those whose answer is wanted
 */
record Rows(List<String> students, List<String> missing) {
  /** Parts answers on one line, but not a number at a comma in it. */
  private static final String BETWEEN = "\\s*;\\s*|,\\s+|,(?=\\d+\\s)";

  /** The rows of a page, for the faces. */
  List<Question.Row> shown() {
    List<Question.Row> rows = new ArrayList<>();
    for (String student : students) {
      rows.add(
          new Question.Row(students.indexOf(student) + 1, student, !missing.contains(student)));
    }
    return rows;
  }

  /** How several answers are typed, in a sentence with one as an example. */
  String example(String answer) {
    return missing.size() > 1
        ? "Each row by its number, one or several on a line: "
            + row(missing.get(0))
            + " "
            + answer
            + ", "
            + row(missing.get(1))
            + " "
            + answer
            + "."
        : "For example " + answer + ".";
  }

  private String row(String student) {
    return String.valueOf(students.indexOf(student) + 1);
  }

  /**
   * What a line answers, by student, in the order typed.
   *
   * @param fits whether a text can be an answer
   * @throws NotUnderstoodException where it is not clear whose it is
   */
  Map<String, String> read(String line, Predicate<String> fits) {
    Map<String, String> out = new LinkedHashMap<>();
    String typed = line.strip();
    if (missing.size() == 1) {
      String own = after(typed, missing.get(0));
      boolean numbered = own != null && fits.test(own);
      if (!numbered) {
        students.stream().filter(s -> after(typed, s) != null).forEach(this::wanted);
      }
      out.put(missing.get(0), numbered ? own : typed);
      return out;
    }
    List<String> pieces = List.of(typed.split(BETWEEN));
    boolean inOrder =
        pieces.size() == missing.size()
            && pieces.stream().allMatch(fits)
            && pieces.stream().noneMatch(p -> students.stream().anyMatch(s -> after(p, s) != null));
    for (int i = 0; i < pieces.size(); i++) {
      String piece = pieces.get(i);
      String whose = inOrder ? missing.get(i) : whose(piece);
      String own = after(piece, whose);
      out.put(whose, own == null ? piece : own);
    }
    return out;
  }

  /** What a row is called where its answer is not taken, after those of its line that were. */
  NotUnderstoodException refused(List<String> taken, String student, NotUnderstoodException why) {
    String before = taken.isEmpty() ? "" : String.join(", ", taken) + " stays. ";
    String whose = students.size() == 1 ? "" : row(student) + " " + student + ": ";
    return new NotUnderstoodException(before + whose + why.getMessage());
  }

  private String whose(String piece) {
    for (String student : students) {
      if (after(piece, student) != null) {
        wanted(student);
        return student;
      }
    }
    throw new NotUnderstoodException(
        "\"" + Printable.of(piece) + "\" says not whose it is. Begin with the row's number.");
  }

  private void wanted(String student) {
    if (!missing.contains(student)) {
      throw new NotUnderstoodException(row(student) + " " + student + " is locked already.");
    }
  }

  /** The text after a student's number or name, or null where it does not begin with it. */
  private @Nullable String after(String piece, String student) {
    String[] words = piece.split("[\\s:]+", 2);
    boolean named =
        words[0].equals(row(student))
            || (!words[0].matches("\\d.*") && student.equals(Students.match(words[0], students)));
    return named && words.length > 1 ? words[1].strip() : null;
  }
}
