package quarterturn.rehearsal;

import java.io.IOException;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Engine;
import quarterturn.session.Event;
import quarterturn.session.Ledger;
import quarterturn.session.LiveBench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;

/**
 * A session on a simulated neck, for any face: notes tell what a person would see and feel, waits
 * pass at once, and at the end the neck is shown as it really was. Nothing is kept.
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
   * Begins.
   *
   * @param started with a kind and a style
   * @param greeting a note on the first prompt
   */
  public static PracticeBench start(
      Library library,
      Engine engine,
      Event.Started started,
      SimulatedInstrument instrument,
      String greeting)
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
          events.addAll(more);
          hands.happened(more);
        };
    LiveBench bench = LiveBench.start(engine, ledger, Overview.REHEARSAL, started, clock);
    Window window = library.kind(kind).target(started.style()).window();
    return new PracticeBench(bench, instrument, hands, window, greeting, events);
  }

  /** What somebody would answer now who looks well and tells the truth. */
  public Answer truth() {
    if (truth == null) {
      throw new IllegalStateException("a session that has ended asks nothing");
    }
    return truth;
  }

  @Override
  public Prompt prompt() {
    return shown;
  }

  @Override
  public void answer(Answer answer) throws Refused, IOException {
    Prompt asked = bench.prompt();
    bench.answer(answer);
    begun = true;
    unveiling.answered(asked, answer, truth);
    hands.act(asked, answer);
    unveiling.see();
    bench.setClock(hands.now());
    look();
  }

  /** Sees to what is asked now: a wait is waited out, a reading shows what the leaves say. */
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
      notes.addAll(unveiling.lines());
    }
    shown = prompt.noting(notes);
  }

  private void setOn(Instant then) {
    try {
      bench.setClock(then);
    } catch (Refused e) {
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
  public void setClock(Instant at) throws Refused {
    bench.setClock(at);
    hands.waitUntil(at);
    unveiling.see();
  }

  @Override
  public String leave() throws IOException {
    return bench.leave();
  }

  @Override
  public boolean saysAgain() {
    return bench.saysAgain();
  }

  @Override
  public List<String> coming() {
    return bench.coming();
  }

  @Override
  public Map<String, List<String>> choices() {
    return bench.choices();
  }

  @Override
  public String standing() {
    return bench.standing();
  }

  /** What happened so far, oldest first; it goes nowhere by itself. */
  public List<Event> events() {
    return List.copyOf(events);
  }

  /** The neck as it really is. */
  public SimulatedNeck neck() {
    return instrument.neck();
  }
}
