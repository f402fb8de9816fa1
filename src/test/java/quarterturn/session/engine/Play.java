package quarterturn.session.engine;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;
import quarterturn.unit.BracketParser;
import quarterturn.unit.Turn;

/** A session in memory, played by a test step by step on a clock of its own. */
public final class Play {
  public static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");

  public final List<Event> events = new ArrayList<>();
  final Engine engine;
  public LiveBench bench;

  private Play(Library library, Event.Started started) throws IOException {
    engine = new Engine(library, new BeliefAdvisor());
    bench = LiveBench.start(engine, events::addAll, "test", started, fixed());
  }

  public static Library relief() {
    return library("relief");
  }

  public static Play beginner(String kind) throws IOException {
    return of(relief(), Role.BEGINNER, kind, Style.MEDIUM);
  }

  public static Play technician(String kind) throws IOException {
    return of(relief(), Role.TECHNICIAN, kind, Style.MEDIUM);
  }

  public static Play of(Library library, Role role, @Nullable String kind, @Nullable Style style)
      throws IOException {
    return of(library, role, kind, style, List.of());
  }

  public static Play of(
      Library library,
      Role role,
      @Nullable String kind,
      @Nullable Style style,
      List<Event.Past> past)
      throws IOException {
    String procedure = library.main().id();
    return new Play(
        library,
        new Event.Started(
            NOON, procedure, 1, "digest", role, null, kind, style, null, past, List.of(), null,
            null));
  }

  /** On an instrument that was read before. */
  public static Play of(
      Library library, Role role, String kind, Style style, Event.Before... before)
      throws IOException {
    String procedure = library.main().id();
    return new Play(
        library,
        new Event.Started(
            NOON,
            procedure,
            1,
            "digest",
            role,
            null,
            kind,
            style,
            null,
            List.of(),
            List.of(before),
            null,
            null));
  }

  /** On a named instrument of which earlier sessions were told how it is made. */
  public static Play known(Library library, Role role, String kind, Event.Known... known)
      throws IOException {
    String procedure = library.main().id();
    return new Play(
        library,
        new Event.Started(
            NOON,
            procedure,
            1,
            "digest",
            role,
            "demo",
            kind,
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            null,
            null,
            null,
            List.of(known)));
  }

  public static Library library(String procedure) {
    try {
      return new Shelf(null).load(procedure);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  private static Clock fixed() {
    return Clock.fixed(NOON, ZoneOffset.UTC);
  }

  public Prompt prompt() {
    return bench.prompt();
  }

  public String step() {
    return bench.prompt().said().step();
  }

  public State state() {
    return engine.replay(events);
  }

  /** Takes the session up as after a crash: all is forgotten but the events. */
  public Play resumeAfter(Duration gone) throws IOException {
    Instant now = bench.now().plus(gone);
    bench =
        LiveBench.resume(
            engine,
            events::addAll,
            "test",
            List.copyOf(events),
            new Event.Resumed(now, List.of(), null),
            Clock.fixed(now, ZoneOffset.UTC));
    return this;
  }

  public Play give(Answer answer) {
    try {
      bench.answer(answer);
    } catch (RefusedException | IOException e) {
      throw new AssertionError("at " + step() + ": " + answer + " was refused: " + e.getMessage());
    }
    return this;
  }

  public Play ok() {
    return give(new Answer.Confirmed());
  }

  public Play choose(String option) {
    return give(new Answer.Chose(option));
  }

  public Play read(String typed) {
    return give(new Answer.Measured(BracketParser.parse(typed, 0.05)));
  }

  /** The relief as found: twice on the lowest string, once on the highest. */
  public Play found(String reading) {
    return to("found-low").read(reading).read(reading).read(reading);
  }

  public Play read(Bracket bracket) {
    return give(new Answer.Measured(bracket));
  }

  public Play turned(Feel feel) {
    return give(new Answer.Turned(((Prompt.TurnRod) prompt()).turn(), feel));
  }

  public Play turned(double turns, Feel feel) {
    return give(new Answer.Turned(new Turn(turns), feel));
  }

  public Play waited() {
    if (!(prompt() instanceof Prompt.Wait wait)) {
      throw new AssertionError("not a wait: " + prompt());
    }
    try {
      bench.setClock(wait.until().isAfter(bench.now()) ? wait.until() : bench.now());
    } catch (RefusedException e) {
      throw new AssertionError(e);
    }
    return give(new Answer.Waited(null));
  }

  /** Confirms, accepts and waits with the ordinary answer, up to a step. */
  public Play to(String step) {
    for (int i = 0; i < 200 && !step().equals(step); i++) {
      ordinary();
    }
    while (prompt() instanceof Prompt.Caution) {
      ok();
    }
    if (!step().equals(step)) {
      throw new AssertionError("never came to " + step + ", but to " + step());
    }
    return this;
  }

  /** The ordinary answer, where there is one that needs no reading. */
  public Play ordinary() {
    Prompt prompt = prompt();
    Answer record = bench.onRecord();
    if (record != null) {
      return give(record);
    }
    if (prompt instanceof Prompt.Tell || prompt instanceof Prompt.Caution) {
      return ok();
    } else if (prompt instanceof Prompt.Choose choose) {
      return choose(choose.options().get(0).id());
    } else if (prompt instanceof Prompt.Wait) {
      return waited();
    } else if (prompt instanceof Prompt.Write) {
      return give(new Answer.Wrote("-"));
    } else if (prompt instanceof Prompt.Measure measure && !measure.quantity().bracket()) {
      return give(new Answer.Value(50));
    }
    throw new AssertionError("no ordinary answer at " + step() + " to " + prompt);
  }
}
