package quarterturn.lesson.teacher;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Plan;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.StoredSessions;
import quarterturn.procedure.Limits;
import quarterturn.session.Event;
import quarterturn.session.Neck;
import quarterturn.session.Program;
import quarterturn.session.store.Store;
import quarterturn.unit.Turn;

/**
 * A real neck that the lessons at a bench have turned, and that is not set back yet.
 *
 * @param bench as it is called
 * @param instrument its name in the bench's records
 * @param data the folder of these records
 * @param left how far it stands from where the last lesson found it; plus is tighter
 * @param today how far it may still be turned within a day of its last turns
 */
public record TurnedNeck(String bench, String instrument, Path data, Turn left, Turn today) {
  /** Those of a lesson, by their benches. */
  public static List<TurnedNeck> of(
      Path folder, Plan plan, List<WriterLog> logs, Limits limits, Instant now) throws IOException {
    List<TurnedNeck> out = new ArrayList<>();
    for (WriterLog log : DeskView.benches(plan, logs)) {
      String writer = DeskView.writer(log);
      String name = BenchLesson.of(writer, plan.level(), log.events()).name();
      Path data = StoredSessions.folder(folder, plan, writer, name);
      for (Neck neck : plan.real(name) ? Store.at(data).necks(limits) : List.<Neck>of()) {
        String instrument = neck.instrument();
        if (instrument != null && neck.left().turns() != 0) {
          out.add(new TurnedNeck(name, instrument, data, neck.left(), today(neck, limits, now)));
        }
      }
    }
    return out;
  }

  private static Turn today(Neck neck, Limits limits, Instant now) {
    Instant since = now.minus(limits.day());
    double turned =
        neck.turns().stream()
            .filter(past -> past.when().isAfter(since))
            .mapToDouble(Event.Past::moved)
            .sum();
    return new Turn(Math.max(0, limits.beginnerDay().turns() - turned));
  }

  /** How the rod stands, and how much of the day is left, in words. */
  public String words() {
    String way = left.turns() > 0 ? " tighter" : " looser";
    String day = today.turns() == 0 ? "nothing" : today.toString();
    return left.size() + way + " than the lesson found it; " + day + " more today";
  }

  /**
   * What is typed to set it back.
   *
   * @param procedure that does it
   */
  public String typed(String procedure) {
    return Program.here()
        .typed(
            "start "
                + procedure
                + " --instrument "
                + Program.word(instrument)
                + " --data "
                + Program.word(data.toString()));
  }
}
