package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Deals duties where several students sit at one bench; each part of a procedure moves them on by
 * one.
 */
public final class Duties {
  private static final List<String> DUTIES = List.of("turns", "reads", "writes down", "looks on");

  private Duties() {}

  /**
   * The duties of each student.
   *
   * @param parts how many parts the bench has come to, this one included
   * @return nothing where a student is alone
   */
  public static Map<String, List<String>> of(List<String> students, int parts) {
    Map<String, List<String>> out = new LinkedHashMap<>();
    if (students.size() < 2) {
      return out;
    }
    for (int i = 0; i < Math.max(DUTIES.size(), students.size()); i++) {
      String student = students.get(Math.floorMod(i + parts - 1, students.size()));
      String duty = DUTIES.get(Math.min(i, DUTIES.size() - 1));
      out.computeIfAbsent(student, s -> new ArrayList<>()).add(duty);
    }
    return out;
  }

  /** The duties in words: "Ana turns; Ben reads, and looks on", or an empty text. */
  public static String words(List<String> students, int parts) {
    List<String> out = new ArrayList<>();
    of(students, parts).forEach((who, what) -> out.add(who + " " + String.join(" and ", what)));
    return String.join("; ", out);
  }
}
