package quarterturn.rehearsal;

import java.util.List;
import java.util.SplittableRandom;
import quarterturn.craft.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Role;
import quarterturn.procedure.Shelf;
import quarterturn.procedure.Style;
import quarterturn.session.Engine;
import quarterturn.session.Event;

/** Rehearsals for tests: a beginner on a bass, with one of the named necks. */
public final class Practising {
  private Practising() {}

  public static Library relief() {
    try {
      return new Shelf(null).load("relief");
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  public static PracticeBench on(NamedNeck named) throws Exception {
    Library library = relief();
    Event.Started started =
        new Event.Started(
            Rehearsal.START,
            "relief",
            1,
            "digest",
            Role.BEGINNER,
            null,
            "bass-34",
            Style.MEDIUM,
            null,
            List.of());
    SimulatedNeck neck = new SimulatedNeck(named.traits(), new SplittableRandom(named.ordinal()));
    return PracticeBench.start(
        library, new Engine(library, new BeliefAdvisor()), started, neck, "Hello.");
  }
}
