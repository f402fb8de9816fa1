package quarterturn.rehearsal.simulated;

import java.util.List;
import java.util.SplittableRandom;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;

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
    return on(named, "relief", "bass-34");
  }

  /** A beginner with a named neck, in this procedure and on an instrument of this kind. */
  public static PracticeBench on(NamedNeck named, String procedure, String kind) throws Exception {
    return on(named, procedure, kind, Role.BEGINNER);
  }

  /** This person with a named neck, in this procedure and on an instrument of this kind. */
  public static PracticeBench on(NamedNeck named, String procedure, String kind, Role role)
      throws Exception {
    return on(named, new Shelf(null).load(procedure), kind, role);
  }

  /** This person with a named neck, in a library's first procedure. */
  public static PracticeBench on(NamedNeck named, Library library, String kind, Role role)
      throws Exception {
    return on(named, library, kind, role, named.ordinal());
  }

  /** The same, with the errors of the readings drawn from this seed. */
  public static PracticeBench on(
      NamedNeck named, Library library, String kind, Role role, long seed) throws Exception {
    Event.Started started =
        new Event.Started(
            Rehearsal.START,
            library.main().id(),
            1,
            "digest",
            role,
            null,
            kind,
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            null);
    InstrumentTraits traits = named.on(library.kind(kind), Style.MEDIUM);
    SimulatedNeck neck = new SimulatedNeck(traits.neck(), new SplittableRandom(seed));
    SimulatedInstrument instrument = new SimulatedInstrument(traits, neck, library.kind(kind));
    return PracticeBench.start(
        library,
        new Engine(library, new BeliefAdvisor()),
        started,
        instrument,
        "Hello.",
        PracticeBench.Kept.NOWHERE);
  }
}
