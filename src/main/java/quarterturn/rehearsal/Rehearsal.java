package quarterturn.rehearsal;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Advisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.Ledger;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Plays whole sessions in memory, from the first prompt to the end, with a simulated neck. Only the
 * outcome is kept.
 *
 * @param library with the procedure to play
 * @param kind id of the kind of every neck
 * @param style the style, which sets the window
 * @param role who is at the bench
 */
public record Rehearsal(Library library, String kind, Style style, Role role) {
  /** Rod turns in one session after which a neck counts as not settling. */
  public static final int MOST_MOVES = 14;

  /** Start of the simulated clock; the date has no meaning. */
  public static final Instant START = Instant.parse("2027-03-01T12:00:00Z");

  /** Prompts in one session, above which something must be wrong. */
  private static final int MOST_PROMPTS = 2000;

  /** The relief window for this kind and style. */
  public Window window() {
    return library.kind(kind).target(style).window();
  }

  /**
   * Plays one session; safe to call from several threads, each with a neck and an advisor of its
   * own.
   *
   * @throws IllegalStateException when an answer was refused, which a truthful one should never be
   */
  public Outcome play(SimulatedNeck neck, Advisor advisor) {
    return play(neck, advisor, START, List.of(), new ArrayList<>());
  }

  /**
   * Plays one session.
   *
   * @param past the rod's turns in sessions before it
   * @param log takes the session's events
   */
  Outcome play(
      SimulatedNeck neck, Advisor advisor, Instant start, List<Event.Past> past, List<Event> log) {
    try {
      return played(
          neck,
          new Engine(library, advisor),
          started(library, start, role, kind, style, past, null),
          log);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (RefusedException e) {
      throw new IllegalStateException("a truthful answer was refused: " + e.getMessage(), e);
    }
  }

  private Outcome played(SimulatedNeck neck, Engine engine, Event.Started started, List<Event> log)
      throws IOException, RefusedException {
    Instant start = started.at();
    int before = neck.moves();
    Clock clock = Clock.fixed(start, ZoneOffset.UTC);
    InstrumentTraits traits = InstrumentTraits.of(library.kind(kind), style, neck.traits());
    Hands hands =
        new Hands(new SimulatedInstrument(traits, neck, library.kind(kind)), library, start);
    Ledger ledger =
        events -> {
          hands.happened(events);
          log.addAll(events);
        };
    LiveBench bench = LiveBench.start(engine, ledger, "rehearsal", started, clock);
    Crossings crossings = new Crossings(window());
    crossings.see(neck.relief());
    Bracket first = null;
    for (int i = 0; i < MOST_PROMPTS && !over(bench.prompt(), neck.moves() - before); i++) {
      Prompt prompt = bench.prompt();
      if (prompt instanceof Prompt.Wait wait) {
        hands.waitUntil(wait.until());
      }
      hands.begin(prompt);
      Answer record = bench.onRecord();
      Answer answer = record == null ? hands.truth(prompt) : record;
      if (first == null && answer instanceof Answer.Measured measured) {
        first = measured.bracket();
      }
      hands.act(prompt, answer);
      crossings.see(neck.relief());
      bench.setClock(hands.now());
      bench.answer(answer);
    }
    Prompt end = bench.prompt();
    return new Outcome(
        Objects.requireNonNullElse(Outcome.word(end), Outcome.UNSETTLED),
        FirstGap.of(first),
        end instanceof Prompt.HandOver,
        neck.moves() - before,
        crossings.count(),
        neck.mostNet(),
        Duration.between(start, hands.now()).toMinutes());
  }

  private static boolean over(Prompt prompt, int moves) {
    return prompt.ended() || (prompt instanceof Prompt.TurnRod && moves >= MOST_MOVES);
  }

  /** The start of a session on an instrument without a name. */
  static Event.Started started(Library library, Instant at, Role role, String kind, Style style) {
    return started(library, at, role, kind, style, lesson(library, at), null);
  }

  /** What was read before each turn of an invented lesson. */
  private static final Bracket SEEN = new Bracket(0.60, 0.65);

  /** The turns of an invented lesson, the day before, where a procedure sets one back. */
  private static List<Event.Past> lesson(Library library, Instant at) {
    Instant then = at.minus(library.limits().rest().plus(library.limits().rest()));
    Turn each = library.limits().firstMove();
    return library.any(library.main(), Step::setsBack)
        ? List.of(
            new Event.Past(then, each, SEEN, null),
            new Event.Past(then.plus(Duration.ofMinutes(30)), each, SEEN, null))
        : List.of();
  }

  /**
   * The start of a rehearsal.
   *
   * @param by who practises, or null where that is not said
   */
  static Event.Started started(
      Library library,
      Instant at,
      Role role,
      String kind,
      Style style,
      List<Event.Past> past,
      @Nullable String by) {
    Procedure main = library.main();
    boolean sets = library.any(main, Step::setsBack) && !past.isEmpty();
    return new Event.Started(
        at,
        main.id(),
        main.revision(),
        main.digest(),
        role,
        null,
        kind,
        style,
        null,
        past,
        List.of(),
        null,
        sets ? Carried.NOTHING : null,
        null,
        by,
        List.of(),
        null,
        sets ? past.get(0).at() : null,
        null);
  }
}
