package quarterturn.rehearsal;

import java.io.IOException;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.SplittableRandom;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.NeckTraits;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;
import quarterturn.session.store.Sessions;
import quarterturn.unit.NotUnderstoodException;

/**
 * Starts rehearsals for one procedure, kind of instrument, style and role.
 *
 * @param kind id of the kind of the simulated instrument
 */
public record Practice(Sessions sessions, String procedure, String kind, Style style, Role role) {
  /** Upper bound of the seeds of necks drawn by the program, low enough to be typed again. */
  public static final int NUMBERED = 100_000;

  public static final String USUAL_KIND = "bass-34";
  public static final Style USUAL_STYLE = Style.MEDIUM;

  /** The usual rehearsal: a beginner's, on a bass. */
  public static Practice usual(Sessions sessions) throws IOException, UnreadableException {
    return new Practice(sessions, sessions.named(null), USUAL_KIND, USUAL_STYLE, Role.BEGINNER);
  }

  /** Starts a rehearsal on a named neck. */
  public PracticeBench on(NamedNeck neck) throws IOException, UnreadableException {
    Library library = library();
    String again = "To meet it again: " + command(library) + " --neck " + neck.word() + ".";
    InstrumentTraits traits = neck.on(library.kind(kind), style);
    return start(library, traits, new SplittableRandom(neck.ordinal()), again);
  }

  /** Starts a rehearsal on a random neck; the same seed gives the same neck. */
  public PracticeBench on(long seed) throws IOException, UnreadableException {
    SplittableRandom random = new SplittableRandom(seed);
    NeckTraits neck = Draw.any(random);
    Library library = library();
    Kind known = library.kind(kind);
    InstrumentTraits traits =
        usual(library)
            ? InstrumentTraits.of(known, style, neck)
            : InstrumentTraits.neglected(known, style, neck);
    String again = "To meet it again: " + command(library) + " --seed " + seed + ".";
    return start(library, traits, random, again);
  }

  private String command(Library library) {
    return usual(library) ? "rehearse" : "rehearse " + procedure;
  }

  private boolean usual(Library library) {
    return procedure.equals(library.results().usual());
  }

  private Library library() throws IOException, UnreadableException {
    Library library = sessions.library(procedure);
    if (library.kind(kind).styled(style) == null) {
      String known =
          String.join(", ", library.kind(kind).styles().stream().map(Style::word).toList());
      throw new NotUnderstoodException(
          kind + " has no ranges for the style " + style.word() + "; choose one of: " + known);
    }
    return library;
  }

  private PracticeBench start(
      Library library, InstrumentTraits traits, SplittableRandom random, String again)
      throws IOException {
    Instant now = sessions.clock().instant().truncatedTo(ChronoUnit.SECONDS);
    Event.Started started =
        Rehearsal.started(library, now, role, kind, style, List.of(), sessions.by());
    String greeting =
        "A rehearsal on a simulated neck; nothing of it is kept. Notes tell what you would see and"
            + " feel; what no note speaks of is in order. At the end the neck is shown as it really"
            + " was. "
            + again;
    Engine engine = new Engine(library, new BeliefAdvisor());
    SimulatedNeck neck = new SimulatedNeck(traits.neck(), random);
    started.past().forEach(past -> neck.turn(past.turn()));
    SimulatedInstrument instrument = new SimulatedInstrument(traits, neck, library.kind(kind));
    return PracticeBench.start(
        library, engine, started, instrument, greeting, PracticeBench.Kept.NOWHERE);
  }
}
