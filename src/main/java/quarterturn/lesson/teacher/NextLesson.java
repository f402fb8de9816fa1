package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanPart;
import quarterturn.lesson.store.WriterLog;
import quarterturn.unit.Counted;

/** A lesson that follows another one: what is not typed anew stays as it was. */
public final class NextLesson {
  private NextLesson() {}

  /** The parts of a plan as they would be typed, so that another can follow it. */
  public static Map<PlanPart, String> typed(Plan plan) {
    Map<PlanPart, String> out = new EnumMap<>(PlanPart.class);
    for (PlanPart part : PlanPart.values()) {
      out.put(part, typed(plan, part));
    }
    return out;
  }

  private static String typed(Plan plan, PlanPart part) {
    return switch (part) {
      case TITLE -> plan.title();
      case PROCEDURES -> String.join(", ", plan.procedures());
      case KIND -> plan.instruments().get(0).kind();
      case NECKS ->
          plan.instruments().stream().map(NextLesson::neck).collect(Collectors.joining(", "));
      case LEVEL -> plan.level().word();
      case HOLDS -> holds(plan);
      case BLIND -> plan.blind() ? "yes" : "no";
      case QUESTIONS -> plan.questions().word();
      case STUDENTS ->
          plan.students().isEmpty() ? part.usual() : String.join(", ", plan.students());
    };
  }

  private static String neck(Plan.Setup setup) {
    String neck = setup.neck() == null ? Plan.REAL : setup.neck().word();
    return setup.bench() == null ? neck : setup.bench() + "=" + neck;
  }

  private static String holds(Plan plan) {
    List<String> holds = new ArrayList<>(plan.holds());
    if (plan.everyTurn()) {
      holds.add(Plan.EVERY_TURN);
    }
    return holds.isEmpty() ? "none" : String.join(", ", holds);
  }

  /**
   * A plan with what no part of it says: the same simulated necks, everybody who came, and each
   * student's level as it stood at last. Another level for all is one for all.
   *
   * @param logs all files of the folder
   */
  public static Plan after(Plan former, Plan plan, List<WriterLog> logs) {
    Plan next = plan;
    if (typed(plan, PlanPart.KIND).equals(typed(former, PlanPart.KIND))
        && typed(plan, PlanPart.NECKS).equals(typed(former, PlanPart.NECKS))) {
      next = next.on(anew(former.instruments()));
    }
    if (plan.students().equals(former.students())) {
      next = next.expecting(roster(former, logs));
    }
    return plan.level() == former.level() ? next.from(levels(former, logs)) : next;
  }

  /** The same instruments; each simulated neck has another seed, so that its readings are new. */
  private static List<Plan.Setup> anew(List<Plan.Setup> setups) {
    return setups.stream()
        .map(s -> new Plan.Setup(s.bench(), s.kind(), s.neck(), s.seed() + setups.size()))
        .toList();
  }

  private static List<String> roster(Plan former, List<WriterLog> logs) {
    Set<String> all = new LinkedHashSet<>(former.students());
    for (StudentRecord student : StudentRecord.of(former, logs)) {
      all.add(student.student());
    }
    logs.forEach(log -> log.all(LessonEvent.Struck.class).forEach(e -> all.remove(e.student())));
    return List.copyOf(all);
  }

  private static Map<String, Level> levels(Plan former, List<WriterLog> logs) {
    Map<String, Level> levels = new TreeMap<>(former.levels());
    for (StudentRecord student : StudentRecord.of(former, logs)) {
      List<StudentRecord.Stood> stood = student.levels();
      if (!stood.isEmpty()) {
        levels.put(student.student(), stood.get(stood.size() - 1).standing().level());
      }
    }
    return levels;
  }

  /** What a plan keeps of the one before it, in a sentence. */
  public static String words(Plan former, Plan plan) {
    List<String> other = new ArrayList<>();
    for (PlanPart part : PlanPart.values()) {
      if (part != PlanPart.STUDENTS && !typed(former, part).equals(typed(plan, part))) {
        other.add(part.label().toLowerCase(Locale.ROOT));
      }
    }
    String but = other.isEmpty() ? "as before" : "as before but for " + String.join(", ", other);
    int expected = plan.students().size();
    String who = expected == 0 ? "anybody may come" : Counted.of(expected, "student");
    String levels = plan.level() == former.level() ? ", each at the level that was reached" : "";
    boolean simulated = plan.instruments().stream().anyMatch(setup -> setup.neck() != null);
    String readings = simulated ? " The simulated necks read anew." : "";
    return "It is planned " + but + "; " + who + levels + "." + readings;
  }
}
