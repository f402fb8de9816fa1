package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.Duties;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;

/**
 * The duties that each student had at a bench, part by part, and what the bench did in that part.
 * They follow from the order in which duties go round; no file records who really did what.
 */
public final class Roster {
  /** The one duty of a student who is alone at a bench. */
  public static final String ALL = "everything";

  private static final String TURNS = "turns";
  private static final String READS = "reads";

  private final String bench;
  private final Set<String> saddleSteps;
  private final List<Share> shares = new ArrayList<>();
  private final Map<String, Share> now = new LinkedHashMap<>();
  private List<String> students = List.of();
  private String part = "";
  private String step = "";
  private int moves;

  private Roster(String bench, Set<String> saddleSteps) {
    this.bench = bench;
    this.saddleSteps = Set.copyOf(saddleSteps);
  }

  /**
   * A student's share in one part of a procedure at one bench.
   *
   * @param bench as it is called
   * @param part as PROCEDURE, PART
   * @param duties the latest, where the students changed meanwhile
   * @param readings that the student took, as the duties go
   * @param turns of the rod that the student made, as the duties go
   * @param saddles that the student set, as the duties go
   */
  public record Share(
      String bench,
      String student,
      String part,
      List<String> duties,
      int readings,
      int turns,
      int saddles) {
    private boolean has(String duty) {
      return duties.contains(duty) || duties.contains(ALL);
    }

    private Share with(int moreReadings, int moreTurns, int moreSaddles) {
      return new Share(
          bench,
          student,
          part,
          duties,
          readings + moreReadings,
          turns + moreTurns,
          saddles + moreSaddles);
    }
  }

  /** The steps at which a saddle is set, each PROCEDURE/STEP. */
  public static Set<String> saddleSteps(Library library) {
    Set<String> out = new TreeSet<>();
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        if (step instanceof Step.Adjust adjust && adjust.adjustment() != Adjustment.PICKUP_HEIGHT) {
          out.add(procedure.id() + "/" + step.id());
        }
      }
    }
    return out;
  }

  /**
   * Every share, bench by bench, in the order of the parts.
   *
   * @param saddleSteps as {@link #saddleSteps} gives them
   */
  public static List<Share> of(Plan plan, List<WriterLog> logs, Set<String> saddleSteps) {
    List<Share> out = new ArrayList<>();
    for (WriterLog log : DeskView.benches(plan, logs)) {
      BenchLesson lesson = BenchLesson.of(DeskView.writer(log), plan.level(), log.events());
      Roster roster = new Roster(lesson.name(), saddleSteps);
      BenchLesson before = BenchLesson.empty(DeskView.writer(log), plan.level());
      for (int i = 0; i < log.events().size(); i++) {
        LessonEvent event = log.events().get(i);
        BenchLesson after = before.after(event);
        roster.moves = Duties.moves(log.events().subList(0, i + 1));
        roster.take(event, before, after);
        before = after;
      }
      roster.close();
      out.addAll(roster.shares);
    }
    return out;
  }

  private void take(LessonEvent event, BenchLesson before, BenchLesson after) {
    if (event instanceof LessonEvent.Stepped stepped) {
      // The step that is left was done; the last one of all may not have been.
      if (saddleSteps.contains(step)) {
        count(TURNS, 0, 0, 1);
      }
      step = stepped.spot().key();
      begin(stepped.spot().procedure() + ", " + stepped.spot().part());
    }
    if (event instanceof LessonEvent.BlindRead read) {
      now.computeIfPresent(read.student(), (who, share) -> share.with(1, 0, 0));
    }
    if (event instanceof LessonEvent.Resulted resulted) {
      resulted(resulted, before.round(resulted.round()));
    }
    students = after.students();
    deal();
  }

  /**
   * Counts a round's reading or turn once, however often it is corrected; readings that students
   * took alone are counted with those.
   */
  private void resulted(LessonEvent.Resulted event, @Nullable Round of) {
    if (of == null || of.result() != null || event.result() instanceof Value.None) {
      return;
    }
    if (of.opened().turn()) {
      count(TURNS, 0, 1, 0);
    } else if (!of.opened().blind()) {
      count(READS, 1, 0, 0);
    }
  }

  private void count(String duty, int readings, int turns, int set) {
    for (String student : students) {
      now.computeIfPresent(
          student, (who, share) -> share.has(duty) ? share.with(readings, turns, set) : share);
    }
  }

  private void begin(String next) {
    if (!next.equals(part)) {
      close();
      part = next;
    }
  }

  private void close() {
    shares.addAll(now.values());
    now.clear();
  }

  /** Notes the duties in this part of the students who are there now. */
  private void deal() {
    if (moves == 0) {
      return;
    }
    Map<String, List<String>> duties = Duties.of(students, moves);
    for (String student : students) {
      List<String> own = duties.getOrDefault(student, List.of(ALL));
      now.compute(
          student,
          (who, had) ->
              had == null
                  ? new Share(bench, student, part, own, 0, 0, 0)
                  : new Share(
                      bench, student, part, own, had.readings(), had.turns(), had.saddles()));
    }
  }
}
