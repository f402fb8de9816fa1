package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import quarterturn.lesson.Prediction;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.StudentRecord.Tried;

/**
 * An idea that predictions rest on, and how many students held it: at first and at last, since one
 * prediction alone says little of a lesson.
 *
 * @param name in words, such as "Which way the rod is turned"
 * @param first how many had it right in their first prediction of this sort
 * @param last how many in their last; one prediction is both
 * @param of how many predicted it and saw what came
 */
public record Idea(String name, int first, int last, int of) {
  /** A sort of idea: in which predictions it shows, and whether it is right there. */
  private record Sort(String name, Predicate<Tried> in, Predicate<Tried> right) {}

  private static final List<Sort> SORTS =
      List.of(
          new Sort("Which way the rod is turned", Idea::turn, Idea::way),
          new Sort("How far the rod is turned", t -> turn(t) && sized(t), Idea::size),
          new Sort("Which way a reading goes", t -> !turn(t) && moved(t) && sided(t), Idea::way),
          new Sort("How far a reading goes", t -> !turn(t) && moved(t), Idea::size),
          new Sort("How large a reading is", t -> !turn(t) && !moved(t), Idea::size));

  /** How the ideas stood at first and at last; one that no prediction shows is left out. */
  public static List<Idea> of(List<StudentRecord> students) {
    List<Idea> out = new ArrayList<>();
    for (Sort sort : SORTS) {
      int first = 0;
      int last = 0;
      int of = 0;
      for (StudentRecord student : students) {
        List<Tried> tries = student.tries().stream().filter(Idea::came).filter(sort.in()).toList();
        if (!tries.isEmpty()) {
          of++;
          first += sort.right().test(tries.get(0)) ? 1 : 0;
          last += sort.right().test(tries.get(tries.size() - 1)) ? 1 : 0;
        }
      }
      if (of > 0) {
        out.add(new Idea(sort.name(), first, last, of));
      }
    }
    return out;
  }

  private static boolean turn(Tried tried) {
    return tried.opened().turn();
  }

  private static boolean moved(Tried tried) {
    return tried.opened().before() != null;
  }

  /** Whether a way was asked for; it is not at every reading. */
  private static boolean sided(Tried tried) {
    return tried.prediction().direction() != null;
  }

  /** Whether it was asked how far; it is not at every turn. */
  private static boolean sized(Tried tried) {
    return tried.prediction().size() > 0;
  }

  private static boolean came(Tried tried) {
    return tried.result() != null && !(tried.result() instanceof Value.None);
  }

  private static boolean way(Tried tried) {
    return tried.result() != null
        && tried.prediction().way(tried.opened().before(), tried.result());
  }

  private static boolean size(Tried tried) {
    Prediction prediction = tried.prediction();
    return tried.result() != null && prediction.size(tried.result(), tried.opened().step());
  }
}
