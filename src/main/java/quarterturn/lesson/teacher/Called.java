package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/**
 * Finds benches and students by the names they chose, which may have blanks in them: of the names
 * that a line begins with, the longest is meant.
 */
public final class Called {
  private Called() {}

  /** A bench, and what was typed after its name. */
  public record Bench(DeskView.Row row, String rest) {}

  /** A student at a bench, and what was typed after the name. */
  public record Student(DeskView.Row row, String name, String rest) {}

  /**
   * The bench that {@code typed} begins with, by its name or its id.
   *
   * @throws RefusedException naming those there are
   */
  public static Bench bench(List<DeskView.Row> rows, String typed) throws RefusedException {
    List<Bench> found = benches(rows, typed);
    if (found.size() == 1) {
      return found.get(0);
    }
    if (found.size() > 1) {
      String ids =
          found.stream().map(b -> b.row().bench().bench()).collect(Collectors.joining(", "));
      throw new RefusedException("More than one bench is called so; type one of " + ids + ".");
    }
    if (rows.isEmpty()) {
      throw new RefusedException("No bench has joined yet.");
    }
    String all = rows.stream().map(Called::name).sorted().collect(Collectors.joining(", "));
    throw new RefusedException(
        typed.isBlank() ? "Say which bench: " + all + "." : unknown("bench", typed, all));
  }

  /**
   * The student that {@code typed} begins with; a bench may stand before the name, for a name that
   * stands at two benches.
   *
   * @throws RefusedException naming those there are
   */
  public static Student student(List<DeskView.Row> rows, String typed) throws RefusedException {
    List<Student> found = longest(students(rows, typed));
    for (Bench bench : benches(rows, typed)) {
      List<Student> there = longest(students(List.of(bench.row()), bench.rest()));
      found = there.isEmpty() ? found : there;
    }
    List<Student> here = found.stream().filter(s -> present(s)).toList();
    List<Student> meant = here.isEmpty() ? found : here;
    if (meant.size() == 1) {
      return meant.get(0);
    }
    if (meant.size() > 1) {
      String at = meant.stream().map(s -> name(s.row())).collect(Collectors.joining(" and "));
      throw new RefusedException("That name stands at " + at + "; put the bench before it.");
    }
    String all =
        rows.stream()
            .flatMap(r -> r.bench().levels().keySet().stream())
            .map(Printable::of)
            .sorted()
            .collect(Collectors.joining(", "));
    throw new RefusedException(
        all.isEmpty() ? "No student has come yet." : unknown("student", typed, all));
  }

  private static String unknown(String what, String typed, String all) {
    String shown = Printable.of(typed.strip());
    return "No " + what + " is called \"" + shown + "\". There are: " + all + ".";
  }

  /** A bench's name as it can be shown. */
  public static String name(DeskView.Row row) {
    return Printable.of(row.bench().name());
  }

  private static boolean present(Student student) {
    return student.row().bench().students().contains(student.name());
  }

  private static List<Bench> benches(List<DeskView.Row> rows, String typed) {
    List<Bench> found = new ArrayList<>();
    int most = 0;
    for (DeskView.Row row : rows) {
      for (String name : List.of(row.bench().name(), row.bench().bench())) {
        String rest = after(typed, name);
        int length = Printable.of(name).strip().length();
        if (rest != null && length >= most) {
          if (length > most) {
            found.clear();
          }
          most = length;
          found.removeIf(b -> b.row().equals(row));
          found.add(new Bench(row, rest));
        }
      }
    }
    return found;
  }

  private static List<Student> students(List<DeskView.Row> rows, String typed) {
    List<Student> found = new ArrayList<>();
    for (DeskView.Row row : rows) {
      for (String name : row.bench().levels().keySet()) {
        String rest = after(typed, name);
        if (rest != null) {
          found.add(new Student(row, name, rest));
        }
      }
    }
    return found;
  }

  private static List<Student> longest(List<Student> found) {
    int most = found.stream().mapToInt(s -> s.name().length()).max().orElse(0);
    return found.stream().filter(s -> s.name().length() == most).toList();
  }

  /** The text after a name that a line begins with, or null where it does not begin with it. */
  private static @Nullable String after(String typed, String name) {
    String line = typed.strip();
    String shown = Printable.of(name).strip();
    if (shown.isEmpty() || line.length() < shown.length()) {
      return null;
    }
    String begins = line.substring(0, shown.length());
    boolean whole = line.length() == shown.length() || line.charAt(shown.length()) == ' ';
    return whole && begins.toLowerCase(Locale.ROOT).equals(shown.toLowerCase(Locale.ROOT))
        ? line.substring(shown.length()).strip()
        : null;
  }
}
