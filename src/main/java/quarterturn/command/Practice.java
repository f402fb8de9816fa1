package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.SplittableRandom;
import quarterturn.craft.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Role;
import quarterturn.procedure.Style;
import quarterturn.procedure.Unreadable;
import quarterturn.rehearsal.Draw;
import quarterturn.rehearsal.NamedNeck;
import quarterturn.rehearsal.NeckTraits;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.SimulatedNeck;
import quarterturn.session.Engine;
import quarterturn.session.Event;
import quarterturn.unit.NotUnderstood;

/**
 * Opens rehearsals.
 *
 * @param kind of the instrument whose neck is simulated
 */
record Practice(Desk desk, String procedure, String kind, Style style, Role role) {
  /** Necks that are drawn unasked have numbers below this, so that they can be typed again. */
  static final int NUMBERED = 100_000;

  static final String USUAL_KIND = "bass-34";
  static final Style USUAL_STYLE = Style.MEDIUM;

  /** A beginner's relief procedure on a bass. */
  static Practice usual(Desk desk) {
    return new Practice(desk, "relief", USUAL_KIND, USUAL_STYLE, Role.BEGINNER);
  }

  /** On a neck whose name says what is to be learned from it. */
  PracticeBench on(NamedNeck neck) throws IOException, Unreadable {
    String again = "To meet it again: rehearse --neck " + neck.word() + ".";
    return start(neck.traits(), new SplittableRandom(neck.ordinal()), again);
  }

  /** On any neck; the same seed gives the same one. */
  PracticeBench on(long seed) throws IOException, Unreadable {
    SplittableRandom random = new SplittableRandom(seed);
    return start(Draw.any(random), random, "To meet it again: rehearse --seed " + seed + ".");
  }

  private PracticeBench start(NeckTraits traits, SplittableRandom random, String again)
      throws IOException, Unreadable {
    Library library = desk.library(procedure);
    if (!library.kinds().containsKey(kind)) {
      throw new NotUnderstood(
          "there is no kind "
              + kind
              + "; choose one of "
              + String.join(", ", library.kinds().keySet()));
    }
    Procedure main = library.main();
    Instant now = desk.clock().instant().truncatedTo(ChronoUnit.SECONDS);
    Event.Started started =
        new Event.Started(
            now,
            main.id(),
            main.revision(),
            main.digest(),
            role,
            null,
            kind,
            style,
            null,
            List.of());
    String greeting =
        "A rehearsal on a simulated neck; nothing of it is kept. Notes tell what you would see and"
            + " feel; what no note speaks of is in order. At the end the neck is shown as it really"
            + " was. "
            + again;
    Engine engine = new Engine(library, new BeliefAdvisor());
    return PracticeBench.start(
        library, engine, started, new SimulatedNeck(traits, random), greeting);
  }
}
