package quarterturn.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.WireList;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Make;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.unit.Bracket;
import quarterturn.unit.Length;
import quarterturn.unit.Turn;

/**
 * A simulated person at a bench with a simulated neck, who reads what a prompt asks for and does
 * what was answered. Every answer takes some time; a wait is waited for.
 */
public final class Hands {
  private static final Duration PACE = Duration.ofMinutes(1);

  /** Factor by which the strings of another set are thicker. */
  private static final double HEAVIER = 1.05;

  /** Relative humidity in percent, always in its window. */
  private static final double HUMIDITY = 50;

  private static final double CELSIUS = 21;

  /** What stands for nothing to write. */
  private static final String NOTHING = "-";

  /** The answer that there is no rod, where a choice asks for its place. */
  private static final String NO_ROD = "none";

  private final SimulatedInstrument instrument;
  private final SimulatedNeck neck;
  private final Library library;
  private Instant now;

  /**
   * Ids of the steps that were answered; a wish is only granted the first time its step comes up.
   */
  private final Set<String> done = new HashSet<>();

  /**
   * @param library the library that the prompts come from, which tells the steps that tune from
   *     those that detune
   * @param now the time at which the first prompt is shown
   */
  public Hands(SimulatedInstrument instrument, Library library, Instant now) {
    this.instrument = instrument;
    this.neck = instrument.neck();
    this.library = library;
    this.now = now;
  }

  /** The time on the simulated clock. */
  public Instant now() {
    return now;
  }

  /**
   * The answer of a person who looks well and tells the truth.
   *
   * @throws IllegalArgumentException for the end of a session, which asks nothing
   */
  public Answer truth(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> new Answer.Confirmed(),
            caution -> new Answer.Confirmed(),
            choose -> new Answer.Chose(chosen(choose).id()),
            write -> new Answer.Wrote(written(write)),
            this::read,
            this::turned,
            wait -> new Answer.Waited(null),
            Hands::ended,
            Hands::ended));
  }

  private Prompt.Option chosen(Prompt.Choose choose) {
    Prompt.Option seen = seen(choose);
    return seen == null ? choose.options().get(0) : seen;
  }

  private Answer turned(Prompt.TurnRod turn) {
    boolean turns = neck.traits().fault().turns();
    return new Answer.Turned(turns ? turn.turn() : Turn.NONE, neck.feel(turn.turn()));
  }

  private static Answer ended(Prompt end) {
    throw new IllegalArgumentException("a session that has ended asks nothing: " + end);
  }

  /**
   * The option that names something unusual about this neck or instrument, or null where none does.
   */
  Prompt.@Nullable Option seen(Prompt.Choose choose) {
    if (unusual(choose)) {
      return choose.options().get(choose.options().size() - 1);
    }
    String shows = shows(choose);
    for (Prompt.Option option : choose.options()) {
      if (option.id().equals(shows)) {
        return option;
      }
    }
    return null;
  }

  /** The id of the option that names how the instrument is made, or else its neck's fault. */
  private @Nullable String shows(Prompt.Choose choose) {
    Make make = instrument.kind().make();
    if (records(choose) == Recorded.BRIDGE) {
      return make.bridge().word();
    }
    if (!make.rod() && records(choose) == Recorded.ROD) {
      return RodKind.NONE_FITTED.word();
    }
    return make.rod() || !identifies(choose) ? neck.traits().fault().shows() : NO_ROD;
  }

  /** Whether a choice asks where the rod is. */
  private boolean identifies(Prompt.Choose choose) {
    return step(choose) instanceof Step.Choose asked
        && asked.options().stream().anyMatch(o -> o.establishes().contains(Fact.ROD_IDENTIFIED));
  }

  /**
   * Whether the last option of a choice, which is not the ordinary one, is true of this instrument.
   */
  private boolean unusual(Prompt.Choose choose) {
    Recorded what = records(choose);
    if (what == Recorded.SADDLES) {
      return !instrument.adjustable();
    }
    if (what == Recorded.PICKUPS) {
      return !instrument.pickups();
    }
    return what != null
        && instrument.traits().wishes().contains(what)
        && !done.contains(key(choose));
  }

  /** The answer on how the instrument is made, which nobody can see of a simulated one; or null. */
  Prompt.@Nullable Option made(Prompt.Choose choose) {
    Recorded what = records(choose);
    Prompt.Option first = choose.options().get(0);
    // How it is built can be told from its name.
    boolean unseen = what != null && what != Recorded.BUILD && what.names(first.id());
    return unseen ? first : null;
  }

  private @Nullable Recorded records(Prompt prompt) {
    Step step = step(prompt);
    return step == null ? null : step.records();
  }

  private Answer read(Prompt.Measure measure) {
    int string = string(measure);
    return switch (measure.quantity()) {
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END ->
          new Answer.Measured(neck.read(edge(measure), share(measure.quantity())));
      case NUT_CLEARANCE ->
          new Answer.Measured(neck.traits().feelers().read(instrument.nutClearance(string)));
      case PICKUP_GAP ->
          instrument.pickups()
              ? new Answer.Value(instrument.read(Quantity.PICKUP_GAP, string))
              : new Answer.CannotMeasure();
      case ACTION, INTONATION -> new Answer.Value(instrument.read(measure.quantity(), string));
      case HUMIDITY -> new Answer.Value(HUMIDITY);
      case TEMPERATURE -> new Answer.Value(CELSIUS);
    };
  }

  /** A reading with leaves by another person, whose errors come from another random. */
  Bracket read(Prompt.Measure measure, SplittableRandom random) {
    if (measure.quantity().ofBow()) {
      return neck.read(edge(measure), share(measure.quantity()), random);
    }
    return neck.traits().feelers().read(instrument.nutClearance(string(measure)));
  }

  private double share(Quantity quantity) {
    return quantity.ofPart() ? quantity.share(instrument.kind()) : 1;
  }

  private static Which edge(Prompt.Measure measure) {
    return measure.which() == Which.HIGHEST ? Which.HIGHEST : Which.LOWEST;
  }

  /** Index of the string that is read, 0 for the lowest, or -1. */
  private int string(Prompt.Measure measure) {
    String note = measure.string();
    return note == null ? -1 : instrument.kind().strings().indexOf(note);
  }

  private String written(Prompt prompt) {
    Recorded what = records(prompt);
    if (what == Recorded.COMPLAINT) {
      return "It buzzes low down and plays high (invented)";
    }
    if (what == Recorded.PLAY_FOUND) {
      return "Frets 1 to 5 on the lowest string (invented)";
    }
    if (what == Recorded.SADDLE_STANDS) {
      return "6 5.5";
    }
    if (what == Recorded.ROD_KEY) {
      return "5 mm";
    }
    return what == Recorded.GAUGES
        ? gauges(1)
        : what == Recorded.NEW_GAUGES ? gauges(HEAVIER) : NOTHING;
  }

  /** The kind's usual string diameters in inches, times a factor, as they are typed. */
  private String gauges(double factor) {
    List<Length> usual = instrument.kind().make().gauges();
    return usual.isEmpty()
        ? NOTHING
        : usual.stream()
            .map(gauge -> WireList.inch(Length.mm(gauge.mm() * factor)))
            .collect(Collectors.joining(" "));
  }

  /**
   * Applies recorded events to the instrument: saddles and pickups that were set, and a turn that
   * was only told of when it was asked about.
   */
  public void happened(List<Event> events) {
    for (Event event : events) {
      if (event instanceof Event.Recalled recalled) {
        neck.turn(recalled.turned());
      }
      if (event instanceof Event.Adjusted adjusted) {
        int string = instrument.kind().strings().indexOf(adjusted.string());
        for (Adjustment what : Adjustment.values()) {
          if (what.word().equals(adjusted.change())) {
            instrument.adjust(what, string, adjusted.amount());
          }
        }
      }
    }
  }

  private static String key(Prompt prompt) {
    return prompt.said().procedure() + "/" + prompt.said().step();
  }

  /** Does to the neck what an answer says was done. */
  public void act(Prompt prompt, Answer answer) {
    pass(PACE);
    done.add(key(prompt));
    if (prompt instanceof Prompt.Tell && answer instanceof Answer.Confirmed) {
      told(step(prompt));
    }
    if (answer instanceof Answer.Turned turned) {
      neck.turn(turned.turn());
    }
  }

  /** Moves the simulated clock on to {@code then}, unless that time has passed. */
  public void waitUntil(Instant then) {
    pass(Duration.between(now, then));
  }

  private void pass(Duration time) {
    if (!time.isNegative()) {
      now = now.plus(time);
      neck.pass(time);
    }
  }

  /** Does what a prompt asks to be done before it is answered. */
  public void begin(Prompt prompt) {
    for (PromptText.First first : prompt.said().first()) {
      Step step = library.procedure(first.procedure()).steps().get(first.step());
      // What a step says before its own order takes part of that step's time.
      boolean same = step == null || step.id().equals(prompt.said().step());
      pass(same || step instanceof Step.Wait ? Duration.ZERO : PACE);
      told(step);
    }
  }

  private void told(@Nullable Step step) {
    if (step instanceof Step.Tell tell) {
      if ("new-set".equals(tell.changes())) {
        instrument.otherSet();
      } else if (Adjustment.SADDLE_HEIGHT.word().equals(tell.changes())) {
        instrument.setPosts();
      }
      Set<Fact> facts = tell.establishes();
      if (facts.contains(Fact.DETUNED)) {
        neck.detune();
      } else if (facts.contains(Fact.AT_PITCH)) {
        neck.tune();
      }
    }
  }

  /** The procedure's step of a prompt, or null where the engine asks its own question. */
  private @Nullable Step step(Prompt prompt) {
    return library.procedure(prompt.said().procedure()).steps().get(prompt.said().step());
  }
}
