package quarterturn.rehearsal;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.Quantity;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.session.Ledger;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.Answers;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.unit.Bracket;

/**
 * A session on a simulated neck, for any face. Notes tell what a person would see and feel, waits
 * end at once, and at the end the properties of the neck are told. Nothing is recorded.
 */
public final class PracticeBench implements Bench {
  private final LiveBench bench;
  private final SimulatedInstrument instrument;
  private final Hands hands;
  private final Unveiling unveiling;
  private final String greeting;
  private final List<Event> events;
  private Prompt shown;
  private @Nullable Answer truth;
  private boolean begun;

  private PracticeBench(
      LiveBench bench,
      SimulatedInstrument instrument,
      Hands hands,
      Window window,
      String greeting,
      List<Event> events) {
    this.events = events;
    this.bench = bench;
    this.instrument = instrument;
    this.hands = hands;
    this.unveiling = new Unveiling(instrument, window);
    this.greeting = greeting;
    this.shown = bench.prompt();
    look();
  }

  /**
   * Where the events of a rehearsal are recorded.
   *
   * @param session the name of the session
   * @param found events on record already, the start first; empty for a new session
   * @param ledger where further events are recorded
   */
  public record Kept(String session, List<Event> found, Ledger ledger) {
    /** A place that records nothing. */
    public static final Kept NOWHERE = new Kept(Overview.REHEARSAL, List.of(), more -> {});

    public Kept {
      found = List.copyOf(found);
    }
  }

  /**
   * Resumes a recorded rehearsal by doing everything once more to an instrument as found, which
   * then reads and feels as it did before.
   *
   * @param instrument the instrument as found, its random from the same seed
   * @throws RecordMismatchException where the record does not fit the procedure or the instrument
   */
  public static PracticeBench again(
      Library library, Engine engine, SimulatedInstrument instrument, String greeting, Kept kept)
      throws IOException {
    if (kept.found().isEmpty() || !(kept.found().get(0) instanceof Event.Started started)) {
      throw new RecordMismatchException("the log does not begin with a start");
    }
    PracticeBench bench = start(library, engine, started, instrument, greeting, kept);
    for (Event event : kept.found()) {
      Answer answer = Answers.of(event);
      if (answer != null) {
        try {
          bench.answer(answer);
        } catch (RefusedException e) {
          throw new RecordMismatchException("the log does not fit: " + e.getMessage());
        }
      }
    }
    return bench;
  }

  /**
   * Starts a rehearsal.
   *
   * @param started the first event, with a kind and a style
   * @param greeting a note on the first prompt
   */
  public static PracticeBench start(
      Library library,
      Engine engine,
      Event.Started started,
      SimulatedInstrument instrument,
      String greeting,
      Kept kept)
      throws IOException {
    String kind = started.kind();
    if (kind == null || started.style() == null) {
      throw new IllegalArgumentException("a rehearsal needs a kind and a style");
    }
    Clock clock = Clock.fixed(started.at(), ZoneOffset.UTC);
    Hands hands = new Hands(instrument, library, started.at());
    List<Event> events = new ArrayList<>();
    Ledger ledger =
        more -> {
          keep(more, events.size(), kept);
          events.addAll(more);
          hands.happened(more);
        };
    LiveBench bench = LiveBench.start(engine, ledger, kept.session(), started, clock);
    Window window = library.kind(kind).target(started.style()).window();
    return new PracticeBench(bench, instrument, hands, window, greeting, events);
  }

  /** Records the events that are not on record yet; those that are must be equal. */
  private static void keep(List<Event> more, int from, Kept kept) throws IOException {
    int known = Math.max(0, Math.min(more.size(), kept.found().size() - from));
    if (known > 0 && !more.subList(0, known).equals(kept.found().subList(from, from + known))) {
      throw new RecordMismatchException(
          "the record does not fit this procedure on this instrument");
    }
    if (known < more.size()) {
      kept.ledger().append(more.subList(known, more.size()));
    }
  }

  /** The present answer of a person who looks well and tells the truth. */
  public Answer truth() {
    if (truth == null) {
      throw new IllegalStateException("a session that has ended asks nothing");
    }
    return truth;
  }

  /**
   * A reading with leaves by another careful person, without any effect on the simulated neck.
   *
   * @param random the source of that person's errors
   */
  public Bracket another(SplittableRandom random) {
    if (!(bench.prompt() instanceof Prompt.Measure measure) || !measure.quantity().bracket()) {
      throw new IllegalStateException("no gap is read here");
    }
    return hands.read(measure, random);
  }

  /** Whether the last reading asks for a turn of the rod, whatever comes before it. */
  public boolean asksForTurn() {
    return bench.asksForTurn();
  }

  /** The prompt without the notes on what would be seen. */
  public Prompt asked() {
    return bench.prompt();
  }

  @Override
  public Prompt prompt() {
    return shown;
  }

  @Override
  public void answer(Answer answer) throws RefusedException, IOException {
    Prompt asked = bench.prompt();
    int before = events.size();
    bench.answer(answer);
    begun = true;
    for (Event event : events.subList(before, events.size())) {
      if (event instanceof Event.Read read) {
        unveiling.read(read, truth);
      }
    }
    hands.act(asked, answer);
    unveiling.see();
    bench.setClock(hands.now());
    look();
  }

  /**
   * Adds to the prompt what is seen: a wait is waited for, and a reading shows what the leaves say.
   */
  private void look() {
    Prompt prompt = bench.prompt();
    List<String> notes = new ArrayList<>();
    if (!begun) {
      notes.add(greeting);
    }
    if (prompt instanceof Prompt.Wait wait) {
      hands.waitUntil(wait.until());
      unveiling.see();
      setOn(hands.now());
      notes.add("In a rehearsal the time has passed already.");
    }
    if (!prompt.said().first().isEmpty()) {
      hands.begin(prompt);
      setOn(hands.now());
    }
    Answer record = bench.onRecord();
    truth = prompt.ended() ? null : record == null ? hands.truth(prompt) : record;
    if (truth != null) {
      // What is on record is said from memory, not seen once more.
      notes.addAll(record == null ? Sights.of(prompt, truth, hands) : List.of());
    } else {
      notes.addAll(unveiling.lines(Corrections.standing(events)));
    }
    shown = prompt.noting(notes);
  }

  private void setOn(Instant then) {
    try {
      bench.setClock(then);
    } catch (RefusedException e) {
      throw new IllegalStateException("time at a bench only goes forward", e);
    }
  }

  @Override
  public Overview overview() {
    Overview overview = bench.overview();
    return overview.of("Rehearsal: " + overview.instrument());
  }

  @Override
  public Instant now() {
    return bench.now();
  }

  @Override
  public void setClock(Instant at) throws RefusedException {
    bench.setClock(at);
    hands.waitUntil(at);
    unveiling.see();
  }

  @Override
  public String leave() throws IOException {
    return bench.leave();
  }

  /** News of the session, without what is seen of the neck, which the prompt's notes tell. */
  @Override
  public List<String> news() {
    return bench.news();
  }

  @Override
  public boolean saysAgain() {
    return bench.saysAgain();
  }

  @Override
  public List<String> upcoming() {
    return bench.upcoming();
  }

  @Override
  public Map<Quantity, Plausible> plausible() {
    return bench.plausible();
  }

  @Override
  public List<OnRecord> recorded() {
    return bench.recorded();
  }

  @Override
  public Map<String, List<String>> choices() {
    return bench.choices();
  }

  @Override
  public String standing() {
    return bench.standing();
  }

  /** The events so far, oldest first; nothing is recorded by this call. */
  public List<Event> events() {
    return List.copyOf(events);
  }

  /** The simulated neck with its true properties. */
  public SimulatedNeck neck() {
    return instrument.neck();
  }
}
