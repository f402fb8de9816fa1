package quarterturn.lesson.student;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Value;

/**
 * Deals duties where several students sit at one bench. Each part of a procedure moves them on by
 * one; once the rod was turned in it each turn does, so that whoever turned it reads next.
 */
public final class Duties {
  private static final List<String> DUTIES = List.of("turns", "reads", "writes down", "looks on");

  private Duties() {}

  /** How often the duties have moved on at a bench, its first part included. */
  public static int moves(List<LessonEvent> events) {
    int moves = 0;
    String at = "";
    String procedure = "";
    String turnedIn = "";
    boolean turned = false;
    for (LessonEvent event : events) {
      if (event instanceof LessonEvent.Stepped stepped) {
        procedure = stepped.spot().procedure();
        String part = procedure + "/" + stepped.spot().part();
        if (!part.equals(at)) {
          moves += turned || !procedure.equals(turnedIn) ? 1 : 0;
          turned = false;
          at = part;
        }
      } else if (event instanceof LessonEvent.Resulted e
          && e.result() instanceof Value.Rod
          && e.round() > 0
          && e.round() <= events.size()
          && events.get(e.round() - 1) instanceof LessonEvent.Opened opened
          && opened.turn()) {
        turned = true;
        turnedIn = procedure;
      }
    }
    return moves;
  }

  /**
   * The duties of each student.
   *
   * @param moves how often they have moved on, the first part included
   * @return nothing where a student is alone
   */
  public static Map<String, List<String>> of(List<String> students, int moves) {
    Map<String, List<String>> out = new LinkedHashMap<>();
    if (students.size() < 2) {
      return out;
    }
    for (int i = 0; i < Math.max(DUTIES.size(), students.size()); i++) {
      String student = students.get(Math.floorMod(i + moves - 1, students.size()));
      String duty = DUTIES.get(Math.min(i, DUTIES.size() - 1));
      out.computeIfAbsent(student, s -> new ArrayList<>()).add(duty);
    }
    return out;
  }

  /** The duties in words: "Ana turns; Ben reads, and looks on", or an empty text. */
  public static String words(List<String> students, int moves) {
    List<String> out = new ArrayList<>();
    of(students, moves).forEach((who, what) -> out.add(who + " " + String.join(" and ", what)));
    return String.join("; ", out);
  }
}
