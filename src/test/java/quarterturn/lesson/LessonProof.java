package quarterturn.lesson;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.WriterLog;

/**
 * Proves from the files alone that a bench kept to the order of a lesson, or refutes it: nothing
 * was shown before every prediction was locked, no hidden reading before all were in, nothing went
 * on that was stopped or held, and every order that was taken was given, by a desk, as it stands.
 */
public final class LessonProof {
  private LessonProof() {}

  /** An event that can't stand where it stands. */
  public record Objection(Ref event, String why) {}

  /**
   * What speaks against a bench's file; nothing where it is proven.
   *
   * @param all the files at hand; where a desk's is not among them, its orders are not looked up
   */
  public static List<Objection> of(WriterLog bench, List<WriterLog> all) {
    List<Objection> out = new ArrayList<>();
    WriterLog.Header header = bench.header();
    if (header == null) {
      return out;
    }
    // The level they begin with changes nothing in the order of events.
    BenchLesson lesson = BenchLesson.empty(header.writer(), Level.WORKED);
    for (LessonEvent event : bench.events()) {
      Ref ref = new Ref(header.writer(), lesson.events() + 1);
      String why = LessonRules.objection(lesson, event);
      if (why == null && event instanceof LessonEvent.Accepted accepted) {
        why = given(accepted, header.writer(), all);
      }
      if (why != null) {
        out.add(new Objection(ref, why));
      }
      lesson = LessonFold.after(lesson, event);
    }
    return out;
  }

  private static @Nullable String given(
      LessonEvent.Accepted accepted, String bench, List<WriterLog> all) {
    for (WriterLog log : all) {
      if (log.header() != null
          && log.header().writer().equals(accepted.ref().writer())
          && log.events().size() >= accepted.ref().n()) {
        Order order = WriterLog.orders(bench, List.of(log)).get(accepted.ref());
        return accepted.order().equals(order)
            ? null
            : "The desk " + accepted.ref().writer() + " gave no such order.";
      }
    }
    return null;
  }
}
