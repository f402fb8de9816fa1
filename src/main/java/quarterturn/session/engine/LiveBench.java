package quarterturn.session.engine;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Handover;
import quarterturn.session.Ledger;
import quarterturn.session.Overview;
import quarterturn.session.Passage;
import quarterturn.session.Place;
import quarterturn.session.Program;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.RefusedException;
import quarterturn.session.clock.SessionClock;

/** A session in progress: engine, state and ledger, with a clock that can be set. */
public final class LiveBench implements Bench {
  private final Engine engine;
  private final Ledger ledger;
  private final String name;
  private final SessionClock clock;
  private Program program = Program.here();
  private @Nullable String by;
  private @Nullable String ticket;
  private State state;

  /** The state's own prompt, which may be shown merged with others. */
  private Prompt own;

  private Prompt prompt;

  /** The prompt shown last, and when; null after a change of the state. */
  private Merging.@Nullable Merged together;

  private @Nullable Instant togetherAt;

  private LiveBench(Engine engine, Ledger ledger, String name, Clock clock, State state)
      throws IOException {
    this.engine = engine;
    this.ledger = ledger;
    this.name = name;
    boolean open = state.log().size() > 1 && state.pending().ended() == null;
    this.clock = new SessionClock(clock, engine.clocks(), open ? state.last() : null);
    this.state = state;
    this.own = goOn(state, new ArrayList<>(), now());
    this.prompt = merged(now()).prompt();
  }

  /** Says how the program is called at a shell, where it needs options to find this session. */
  public void calledBy(Program other) {
    this.program = other;
  }

  /** Says who works and by which ticket, which no event here says; null where nobody said. */
  public void doneBy(@Nullable String who, @Nullable String job) {
    this.by = who;
    this.ticket = job;
  }

  /** Starts a session; its first event is on disk when this returns. */
  public static LiveBench start(
      Engine engine, Ledger ledger, String name, Event.Started started, Clock clock)
      throws IOException {
    return start(engine, ledger, name, List.of(started), clock);
  }

  /**
   * Starts a session.
   *
   * @param beginning its start, and events carried over from a session that it replaces
   */
  public static LiveBench start(
      Engine engine, Ledger ledger, String name, List<Event> beginning, Clock clock)
      throws IOException {
    ledger.append(beginning);
    return new LiveBench(engine, ledger, name, clock, engine.replay(beginning));
  }

  /**
   * Resumes a session.
   *
   * @param events all its events, at least one
   * @param again the event that it goes on with; a little earlier than the last one, as by another
   *     machine's clock, it counts as at that time
   * @throws RecordMismatchException when the events do not fit the procedure, or the session has
   *     ended
   */
  public static LiveBench resume(
      Engine engine,
      Ledger ledger,
      String name,
      List<Event> events,
      Event.Resumed again,
      Clock clock)
      throws IOException {
    State state = engine.replay(events);
    if (state.pending().ended() != null) {
      throw new RecordMismatchException("this session has ended");
    }
    Event.Resumed resumed =
        new Event.Resumed(
            engine.clocks().after(state.last(), again.at()),
            again.elsewhere(),
            again.carried(),
            again.by());
    ledger.append(List.of(resumed));
    return new LiveBench(engine, ledger, name, clock, engine.apply(state, resumed));
  }

  /**
   * Opens a session that has ended, to be looked at; nothing is recorded.
   *
   * @throws RecordMismatchException when the events do not fit the procedure, or the session has
   *     not ended
   */
  public static LiveBench ended(Engine engine, String name, List<Event> events, Clock clock)
      throws IOException {
    State state = engine.replay(events);
    if (state.pending().ended() == null) {
      throw new RecordMismatchException("this session has not ended");
    }
    return new LiveBench(engine, more -> {}, name, clock, state);
  }

  @Override
  public Prompt prompt() {
    return prompt;
  }

  /** The events so far, oldest first. */
  public List<Event> events() {
    return List.copyOf(state.log());
  }

  /**
   * Every step entered up to the present prompt, in order, with those that ask nothing or are
   * merged.
   */
  public List<Place> path() {
    return merged(now()).state().position().path();
  }

  /** Every way taken up to the present prompt, in order. */
  public List<Passage> passages() {
    return merged(now()).state().position().passages();
  }

  /**
   * The ways that an answer would take up to the next prompt; nothing is recorded.
   *
   * @throws RefusedException where the answer would be refused
   * @throws RecordMismatchException where the procedure could not go on
   */
  public List<Passage> ahead(Answer answer) throws RefusedException {
    Merging.Merged merged = merged(now());
    boolean back = answer instanceof Answer.Correct;
    State from = back ? state : merged.state();
    Prompt asked = back ? own : merged.prompt();
    Event event = engine.examine(from, asked, answer, now());
    State after = engine.apply(from, event);
    if (event instanceof Event.Doubted) {
      after = engine.apply(after, engine.examine(after, asked, answer, now()));
    }
    int before =
        Math.min(merged.state().position().passages().size(), after.position().passages().size());
    return after.position().passages().subList(before, after.position().passages().size());
  }

  @Override
  public void answer(Answer answer) throws RefusedException, IOException {
    Instant now = now();
    if (answer instanceof Answer.Correct || answer instanceof Answer.Differs) {
      Event event = engine.examine(state, own, answer, now);
      own = goOn(engine.apply(state, event), new ArrayList<>(List.of(event)), now);
    } else {
      Merging.Merged merged = merged(now);
      Event event = engine.examine(merged.state(), merged.prompt(), answer, now);
      // What could hardly be true confirms nothing: the stage begins again with what was merged.
      boolean doubted = event instanceof Event.Doubted;
      List<Event> events = new ArrayList<>(doubted ? List.of() : merged.confirms());
      events.add(event);
      own = goOn(engine.apply(doubted ? state : merged.state(), event), events, now);
    }
    together = null;
    prompt = merged(now).prompt();
  }

  /** The prompt to show, and the events that an answer to it confirms. */
  private Merging.Merged merged(Instant now) {
    Merging.Merged known = together;
    if (known == null || !now.equals(togetherAt)) {
      known = engine.merged(state, own, now);
      together = known;
      togetherAt = now;
    }
    return known;
  }

  /** The recorded value that a pause asks for, or null where no pause asks. */
  public @Nullable Answer onRecord() {
    return engine.onRecord(merged(now()).state());
  }

  /** Whether the last reading asks for a turn of the rod, whatever comes before it. */
  public boolean asksForTurn() {
    return engine.asksForTurn(merged(now()).state(), now());
  }

  /**
   * The next prompt after {@code events}, which led to {@code after}. They are recorded together
   * with the engine's own events; if that fails, the prompt before stays.
   */
  private Prompt goOn(State after, List<Event> events, Instant now) throws IOException {
    while (true) {
      Prompter.Next next = engine.next(after, now);
      if (next instanceof Prompter.Next.Show show) {
        if (!events.isEmpty()) {
          ledger.append(events);
        }
        state = after;
        return printable(show.prompt());
      }
      Event own = ((Prompter.Next.Record) next).event();
      events.add(own);
      after = engine.apply(after, own);
    }
  }

  /** The end of a session that is kept, with how to print what it leaves to a repairer. */
  private Prompt printable(Prompt shown) {
    boolean note =
        shown.ended() && !name.equals(Overview.REHEARSAL) && !engine.forRepairer(state).isEmpty();
    return note ? shown.noting(List.of(Handover.printed(name, program))) : shown;
  }

  @Override
  public Overview overview() {
    Overview now = engine.overview(merged(now()).state(), name, now());
    return now.calledBy(program).doneBy(by, ticket);
  }

  /**
   * The session's time, never before the last event, even where the machine's clock was set back.
   */
  @Override
  public Instant now() {
    return clock.now();
  }

  /**
   * The earliest time that the clock may be set to: the last event's, or any time before the first
   * answer, for a session that is played back.
   */
  private Instant floor() {
    return state.log().size() > 1 ? state.last() : Instant.MIN;
  }

  @Override
  public void setClock(Instant at) throws RefusedException {
    if (at.isBefore(floor())) {
      throw new RefusedException(
          "\"at\" lies before the last event, which was at " + state.last() + ".");
    }
    clock.set(at);
  }

  @Override
  public String leave() throws IOException {
    String standing = Standing.of(state);
    if (!prompt.ended()) {
      Event left = new Event.Left(now(), standing);
      ledger.append(List.of(left));
      state = engine.apply(state, left);
      together = null;
    }
    return standing;
  }

  @Override
  public String standing() {
    return Standing.of(state);
  }

  @Override
  public boolean saysAgain() {
    return onRecord() != null;
  }

  @Override
  public List<String> upcoming() {
    Instant now = now();
    return engine.coming(merged(now).state(), now);
  }

  @Override
  public Map<Quantity, Plausible> plausible() {
    return engine.plausible();
  }

  @Override
  public List<OnRecord> recorded() {
    return engine.recorded(state);
  }

  @Override
  public Map<String, List<String>> choices() {
    return engine.choices();
  }
}
