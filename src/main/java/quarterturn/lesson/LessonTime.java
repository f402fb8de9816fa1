package quarterturn.lesson;

import java.io.IOException;
import java.time.Duration;
import java.util.EnumSet;
import java.util.Set;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.store.Sessions;
import quarterturn.unit.Dates;

/**
 * How long a lesson takes at one bench, from a rehearsal of what it plans.
 *
 * @param procedures how many there are
 * @param steps prompts of its procedures
 * @param readings that are predicted by themselves
 * @param turns of the rod
 * @param waits that a real neck takes; on a simulated one they pass at once
 */
public record LessonTime(int procedures, int steps, int readings, int turns, Duration waits) {
  /** Students at a full bench, for which a time is told beside that of two. */
  private static final int FULL = 8;

  /** Rehearses a plan on the neck of its first bench; a real one is taken to be the usual. */
  public static LessonTime of(Plan plan, Sessions sessions)
      throws IOException, UnreadableException {
    Plan.Setup setup = plan.instruments().get(0);
    NamedNeck neck = setup.neck() == null ? NamedNeck.TOO_MUCH : setup.neck();
    LessonTime time = new LessonTime(plan.procedures().size(), 0, 0, 0, Duration.ZERO);
    for (String procedure : plan.procedures()) {
      PracticeBench bench =
          new Practice(sessions, procedure, setup.kind(), Practice.USUAL_STYLE, Role.BEGINNER)
              .on(neck);
      time = time.plus(bench, setup.neck() == null);
    }
    return time;
  }

  private LessonTime plus(PracticeBench bench, boolean real) throws IOException {
    LessonTime time = this;
    Set<Quantity> read = EnumSet.noneOf(Quantity.class);
    try {
      for (Prompt now = bench.prompt(); !now.ended(); now = bench.prompt()) {
        boolean turn = now instanceof Prompt.TurnRod;
        if (turn) {
          // What a turn does is predicted with the turn.
          read.clear();
          read.add(Quantity.RELIEF);
        }
        boolean first =
            now instanceof Prompt.Measure measure
                && measure.quantity().onString()
                && read.add(measure.quantity());
        Duration waits =
            real && now instanceof Prompt.Wait wait && !wait.rest()
                ? time.waits.plus(wait.length())
                : time.waits;
        time =
            new LessonTime(
                procedures,
                time.steps + 1,
                time.readings + (first ? 1 : 0),
                time.turns + (turn ? 1 : 0),
                waits);
        bench.answer(bench.truth());
      }
    } catch (RefusedException e) {
      throw new IllegalStateException("a truthful answer was refused: " + e.getMessage(), e);
    }
    return time;
  }

  /** How long it takes, to five minutes. */
  Duration lasts(int students, Questioning questions, Pace pace) {
    int rounds = readings + turns;
    boolean few = questions == Questioning.FEW;
    int each = readings + 2 * turns + (few ? procedures : rounds);
    int together = rounds + (few ? 0 : turns);
    Duration all =
        waits
            .plus(pace.step().multipliedBy(steps))
            .plus(pace.answer().multipliedBy((long) students * each + together));
    return Duration.ofMinutes(5 * Math.max(1, Math.round(all.toSeconds() / 300.0)));
  }

  /** How long it takes, in a sentence. */
  public String words(Questioning questions, Pace pace) {
    return "It takes about "
        + Dates.lasting(lasts(2, questions, pace))
        + " with two students at a bench, "
        + Dates.lasting(lasts(FULL, questions, pace))
        + " with eight ("
        + pace.words()
        + ").";
  }
}
