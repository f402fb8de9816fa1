package quarterturn.lesson;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.rehearsal.simulated.NamedNeck;

/**
 * A lesson as its teacher plans it.
 *
 * @param lesson its id, which begins with its day, so that ids sort by it
 * @param procedures ids, in the order they are run
 * @param instruments what the benches work on
 * @param level that students begin with
 * @param everyTurn whether each rod turn waits for the teacher
 * @param holds steps that wait for the teacher, each STEP or PROCEDURE/STEP
 * @param blind whether every student reads a gap for themselves
 * @param students who is expected; others may come too
 * @param levels that students begin with who were at an earlier lesson, where it is another one
 * @param questions how many of the procedures' questions are asked
 */
public record Plan(
    String lesson,
    String title,
    List<String> procedures,
    List<Setup> instruments,
    Level level,
    boolean everyTurn,
    List<String> holds,
    boolean blind,
    List<String> students,
    Map<String, Level> levels,
    Questioning questions) {
  /** How a plan states that each rod turn waits for the teacher. */
  public static final String EVERY_TURN = "every turn";

  /** How a plan states a real instrument in place of a simulated neck. */
  public static final String REAL = "real";

  /**
   * An instrument that benches work on.
   *
   * @param bench the bench it is for, or null for every bench without one of its own
   * @param kind id of its kind
   * @param neck the simulated neck, or null for a real one
   * @param seed of the simulated neck's chance
   */
  public record Setup(@Nullable String bench, String kind, @Nullable NamedNeck neck, int seed) {}

  /** The instrument that a bench works on, or null where the plan has none for it. */
  public @Nullable Setup forBench(String bench) {
    Setup common = null;
    for (Setup setup : instruments) {
      if (bench.equals(setup.bench())) {
        return setup;
      }
      common = setup.bench() == null ? setup : common;
    }
    return common;
  }

  private Plan with(List<Setup> setups, List<String> expected, Map<String, Level> begin) {
    return new Plan(
        lesson,
        title,
        procedures,
        setups,
        level,
        everyTurn,
        holds,
        blind,
        expected,
        begin,
        questions);
  }

  /** This plan for other instruments. */
  public Plan on(List<Setup> setups) {
    return with(setups, students, levels);
  }

  /** Whether a bench works on a real instrument. */
  public boolean real(String bench) {
    Setup setup = forBench(bench);
    return setup != null && setup.neck() == null;
  }

  /** Whether some bench works on a real instrument. */
  public boolean real() {
    return instruments.stream().anyMatch(setup -> setup.neck() == null);
  }

  /** This plan with these students expected. */
  public Plan expecting(List<String> expected) {
    return with(instruments, expected, levels);
  }

  /** This plan where students begin with these levels; its own needs no word. */
  public Plan from(Map<String, Level> begin) {
    Map<String, Level> other = new TreeMap<>(begin);
    other.values().removeIf(level::equals);
    return with(instruments, students, other);
  }

  /** This plan where a student is not expected any more. */
  public Plan without(String student) {
    Map<String, Level> others = new TreeMap<>(levels);
    others.remove(student);
    return with(instruments, students.stream().filter(s -> !s.equals(student)).toList(), others);
  }

  /** What is recorded when a student sits down. */
  public LessonEvent.Came came(Instant at, String student) {
    return new LessonEvent.Came(at, student, levels.get(student));
  }

  /** Whether the teacher is waited for at a step. */
  public boolean holds(Spot spot, boolean turn) {
    return (turn && everyTurn) || holds.contains(spot.step()) || holds.contains(spot.key());
  }
}
