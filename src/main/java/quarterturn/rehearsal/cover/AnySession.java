package quarterturn.rehearsal.cover;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.session.Answer;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.session.Place;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** One simulated session in memory, with breaks, mistakes and time that passes. */
final class AnySession {
  /** Prompts after which a session is given up. */
  private static final int MOST_PROMPTS = 500;

  /**
   * Times that one question may come up before a session is given up; a choice counts four times.
   */
  private static final int MOST_AGAIN = 60;

  /** How many of its last steps are reported for a session that could not go on. */
  private static final int LAST = 6;

  private static final Duration PACE = Duration.ofMinutes(1);

  private final Engine engine;
  private final FlowGraph graph;
  private final SplittableRandom random;
  private final AnyHands hands;
  private final List<Event> events;
  private final boolean restless;
  private LiveBench bench;
  private int prompts;
  private int again;
  private int seenWays;
  private int seenSteps;
  private final PathState past;
  private Covered.@Nullable Stuck stuck;

  private AnySession(
      Engine engine,
      FlowGraph graph,
      AnyHands hands,
      LiveBench bench,
      List<Event> events,
      PathState past,
      SplittableRandom random) {
    this.engine = engine;
    this.graph = graph;
    this.hands = hands;
    this.bench = bench;
    this.events = events;
    this.past = past;
    this.random = random;
    this.restless = random.nextInt(4) == 0;
  }

  /** Starts a session with a random person and a random instrument. */
  static AnySession start(
      Library library,
      Engine engine,
      FlowGraph graph,
      CoverageGoal coverageGoal,
      SplittableRandom random)
      throws IOException {
    List<Kind> kinds = List.copyOf(library.kinds().values());
    Kind kind = kinds.get(random.nextBoolean() ? 0 : random.nextInt(kinds.size()));
    List<Style> styles = List.copyOf(kind.styles());
    Style style = styles.get(random.nextInt(styles.size()));
    Role wished = coverageGoal.constraints().role();
    Role role =
        wished != null && random.nextInt(8) > 0
            ? wished
            : random.nextInt(3) == 0 ? Role.TECHNICIAN : Role.BEGINNER;
    Procedure main = library.main();
    boolean sets = library.any(main, Step::setsBack);
    List<Event.Past> before = sets ? lesson(random) : random.nextInt(8) == 0 ? turned() : List.of();
    Event.Started started =
        new Event.Started(
            Rehearsal.START,
            main.id(),
            main.revision(),
            main.digest(),
            role,
            null,
            kind.id(),
            style,
            null,
            before,
            coverageGoal.constraints().lacking() ? List.of() : before(kind, style, random),
            null,
            sets ? Carried.NOTHING : null,
            null,
            null,
            List.of(),
            null,
            sets && !before.isEmpty() ? before.get(0).at() : null,
            null);
    List<Event> events = new ArrayList<>();
    LiveBench bench =
        LiveBench.start(
            engine, events::addAll, Overview.REHEARSAL, started, clock(Rehearsal.START));
    AnyHands hands = new AnyHands(library, graph, kind, style, coverageGoal, random.split());
    PathState past = new PathState(graph, role);
    return new AnySession(engine, graph, hands, bench, events, past, random);
  }

  private static Clock clock(Instant at) {
    return Clock.fixed(at, ZoneOffset.UTC);
  }

  /** Turns of a lesson, some days or hours before, that are to be set back: up to five, or none. */
  private static List<Event.Past> lesson(SplittableRandom random) {
    Instant at = Rehearsal.START.minus(Duration.ofMinutes(random.nextInt(360, 3600)));
    List<Event.Past> turns = new ArrayList<>();
    boolean tighter = random.nextInt(3) > 0;
    Bracket before = new Bracket(0.60, 0.65);
    Turn each = random.nextInt(3) > 0 ? Turn.EIGHTH : Turn.QUARTER;
    for (int left = random.nextInt(6); left > 0; left--) {
      turns.add(new Event.Past(at, tighter ? each : each.opposite(), before, null));
      at = at.plus(Duration.ofMinutes(30));
    }
    return turns;
  }

  private static List<Event.Past> turned() {
    Instant then = Rehearsal.START.minus(Duration.ofDays(2));
    return List.of(
        new Event.Past(then, Turn.EIGHTH, new Bracket(0.60, 0.65), new Bracket(0.50, 0.55)));
  }

  /**
   * Readings from an earlier session: usually of every quantity and inside its window, else none.
   */
  private static List<Event.Before> before(Kind kind, Style style, SplittableRandom random) {
    List<Event.Before> before = new ArrayList<>();
    boolean all = random.nextInt(4) > 0;
    Instant then = Rehearsal.START.minus(Duration.ofDays(1));
    for (Quantity quantity : Quantity.values()) {
      if (!kind.windows().containsKey(quantity) || !(all || random.nextInt(3) == 0)) {
        continue;
      }
      for (int i = 0; i < kind.strings().size(); i++) {
        Window window = kind.target(quantity, style, i).window();
        Bracket bracket = quantity.bracket() ? AnyNeck.leaves(window.middleMm()) : null;
        Double value = bracket == null ? window.middleMm() : null;
        String string = kind.strings().get(i);
        before.add(new Event.Before(then, quantity, string, bracket, value, List.of()));
      }
    }
    return before;
  }

  boolean goesOn() {
    return stuck == null && !bench.prompt().ended() && prompts < MOST_PROMPTS && again < MOST_AGAIN;
  }

  AnyHands hands() {
    return hands;
  }

  /** All events on record, oldest first. */
  List<Event> events() {
    return Collections.unmodifiableList(events);
  }

  /** The session's present step. */
  Place place() {
    return new Place(bench.prompt().said().procedure(), bench.prompt().said().step());
  }

  /** What has happened so far in the session. */
  PathState past() {
    return past;
  }

  /** Gives one answer, or resumes after a break. */
  void step(Set<Way> wanted) throws IOException {
    prompts++;
    try {
      Edge next = hands.coverageGoal().next(place());
      if (next != null && next.breaks()) {
        away(Duration.ofMinutes(100 + random.nextInt(1000)));
        return;
      }
      if (random.nextInt(1000) < perMilleAway()) {
        // Some days as a rule, now and then some weeks.
        away(Duration.ofMinutes(random.nextInt(random.nextInt(3) == 0 ? 30_000 : 5000)));
        return;
      }
      if (restless && random.nextInt(60) == 0) {
        take(new Answer.Correct());
        return;
      }
      pass();
      Prompt asked = bench.prompt();
      Answer answer = hands.answer(bench, wanted);
      again = Math.max(again, hands.asked(place()) * (asked instanceof Prompt.Choose ? 4 : 1));
      if (take(answer)) {
        hands.act(asked, answer);
      } else if (asked instanceof Prompt.Measure) {
        take(new Answer.CannotMeasure());
      }
    } catch (RecordMismatchException e) {
      stuck = new Covered.Stuck("astray", String.valueOf(e.getMessage()), last());
    }
  }

  /** Waits as long as a prompt asks, unless a technician ends the wait early. */
  private void pass() {
    Instant then = bench.now().plus(PACE);
    if (bench.prompt() instanceof Prompt.Wait wait && !(wait.mayLift() && random.nextInt(4) == 0)) {
      then = wait.until().isAfter(then) ? wait.until() : then;
    }
    if (restless && random.nextInt(20) == 0) {
      then = then.plus(Duration.ofMinutes(random.nextInt(600)));
    }
    try {
      bench.setClock(then);
    } catch (RefusedException e) {
      throw new IllegalStateException("time at a bench only goes forward", e);
    }
  }

  /** Gives an answer; false where it was refused. */
  boolean take(Answer answer) throws IOException {
    try {
      bench.answer(answer);
      return true;
    } catch (RefusedException e) {
      return false;
    }
  }

  /**
   * Chance of a break before the next answer, in thousandths. It is higher where no path leads to
   * the goal, since a break leads back to tuning and makes readings stale.
   */
  private int perMilleAway() {
    CoverageGoal coverageGoal = hands.coverageGoal();
    if (coverageGoal.lost()) {
      return 120;
    }
    return coverageGoal.constraints().lacking() ? 50 : restless ? 30 : 0;
  }

  private void away(Duration gone) throws IOException {
    List<Event> record = List.copyOf(events);
    Clock clock = clock(bench.now().plus(gone));
    Event.Resumed again = new Event.Resumed(clock.instant(), List.of(), null);
    bench = LiveBench.resume(engine, events::addAll, Overview.REHEARSAL, record, again, clock);
  }

  /** The ways taken since the last call. */
  List<Way> fresh() {
    int size = bench.passages().size();
    List<Way> fresh =
        bench.passages().subList(Math.min(seenWays, size), size).stream().map(graph::way).toList();
    seenWays = size;
    fresh.forEach(past::take);
    return fresh;
  }

  /** The steps entered since the last call. */
  List<Place> entered() {
    int size = bench.path().size();
    List<Place> entered = bench.path().subList(Math.min(seenSteps, size), size);
    seenSteps = size;
    entered.forEach(past::enter);
    return entered;
  }

  /** The outcome that the session ended with, or null where it has not ended. */
  @Nullable String outcome() {
    return Outcome.word(bench.prompt());
  }

  /** Why the session could not go on, or null where it could. */
  Covered.@Nullable Stuck stuck() {
    boolean fault = "procedure-fault".equals(outcome());
    return fault
        ? new Covered.Stuck("procedure-fault", bench.prompt().said().text(), last())
        : stuck;
  }

  private List<String> last() {
    List<Place> path = bench.path();
    return path.subList(Math.max(0, path.size() - LAST), path.size()).stream()
        .map(place -> place.procedure() + "/" + place.step())
        .toList();
  }
}
