package quarterturn.rehearsal.cover;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Place;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.LiveBench;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * A simulated person who may give any answer: usually one toward a coverage goal, and often one
 * that takes a way no session took.
 */
final class AnyHands {
  private final Library library;
  private final FlowGraph graph;
  private final SplittableRandom random;
  private final Window window;
  private AnyNeck neck;
  private final AnyReading readings;
  private final Feel usual;
  private final double steady;
  private final boolean mends;
  private final String gauges;
  private final Map<Place, Integer> asked = new HashMap<>();
  private CoverageGoal coverageGoal;
  private @Nullable Answer low;

  AnyHands(
      Library library,
      FlowGraph graph,
      Kind kind,
      Style style,
      CoverageGoal coverageGoal,
      SplittableRandom random) {
    this.library = library;
    this.graph = graph;
    this.random = random;
    this.coverageGoal = coverageGoal;
    this.window = kind.target(style).window();
    this.neck = neck(coverageGoal.constraints());
    this.gauges = ".050 ".repeat(kind.strings().size()).strip();
    this.readings = new AnyReading(library, kind, style, random.split());
    this.usual = random.nextInt(4) == 0 ? feel() : Feel.SMOOTH;
    this.steady = random.nextBoolean() ? 1 : 0.5 + 0.5 * random.nextDouble();
    this.mends = random.nextBoolean();
  }

  private AnyNeck neck(PathConstraints constraints) {
    NeckConstraint temper = constraints.temper();
    if (temper == null || random.nextInt(4) == 0) {
      NeckConstraint[] all = NeckConstraint.values();
      temper = random.nextBoolean() ? NeckConstraint.SOUND : all[random.nextInt(all.length)];
    }
    Set<Verdict> stands = constraints.relief();
    return new AnyNeck(temper, stands.isEmpty() ? null : any(stands), window, random.split());
  }

  private Verdict any(Set<Verdict> verdicts) {
    return verdicts.stream().sorted().toList().get(random.nextInt(verdicts.size()));
  }

  /** Sets another coverage goal; the neck is usually replaced by one that the goal needs. */
  void goOn(CoverageGoal next) {
    coverageGoal = next;
    NeckConstraint temper = next.constraints().temper();
    if (temper != null && temper != neck.temper() && random.nextInt(4) > 0) {
      neck = neck(next.constraints());
    }
  }

  CoverageGoal coverageGoal() {
    return coverageGoal;
  }

  /** How often a question was answered. */
  int asked(Place place) {
    return asked.getOrDefault(place, 0);
  }

  /** An answer to the present prompt, by a wanted way if one can be taken. */
  Answer answer(LiveBench bench, Set<Way> wanted) {
    Prompt prompt = bench.prompt();
    Place place = new Place(prompt.said().procedure(), prompt.said().step());
    asked.merge(place, 1, Integer::sum);
    Answer record = bench.onRecord();
    if (record != null) {
      return record;
    }
    if (random.nextInt(10) > 0 && graph.near(place, wanted)) {
      List<Answer> all = new ArrayList<>(all(prompt, place));
      // A seeded shuffle needs the older kind of random.
      Collections.shuffle(all, new Random(random.nextLong()));
      for (Answer one : all) {
        if (leads(bench, one, wanted)) {
          return one;
        }
      }
    }
    return usual(prompt, place);
  }

  private boolean leads(LiveBench bench, Answer answer, Set<Way> wanted) {
    try {
      return bench.ahead(answer).stream().anyMatch(passage -> wanted.contains(graph.way(passage)));
    } catch (RefusedException e) {
      return false;
    }
  }

  /** Answers of every kind, for a prompt that takes more than one. */
  private List<Answer> all(Prompt prompt, Place place) {
    Function<Prompt, List<Answer>> one = asked -> List.of(usual(asked, place));
    return prompt.match(
        new Prompt.Cases<>(
            one::apply,
            one::apply,
            choose -> choose.options().stream().map(AnyHands::chosen).toList(),
            one::apply,
            measure -> readings.all(measure, step(measure)),
            turn -> Arrays.stream(Feel.values()).map(feel -> turned(turn, feel)).toList(),
            one::apply,
            one::apply,
            one::apply));
  }

  private static Answer chosen(Prompt.Option option) {
    return new Answer.Chose(option.id());
  }

  private static Answer turned(Prompt.TurnRod turn, Feel feel) {
    return new Answer.Turned(feel == Feel.JAMMED ? Turn.NONE : turn.turn(), feel);
  }

  private Answer usual(Prompt prompt, Place place) {
    return prompt.match(
        new Prompt.Cases<Answer>(
            tell -> new Answer.Confirmed(),
            caution -> new Answer.Confirmed(),
            choose -> new Answer.Chose(option(choose, place)),
            write -> new Answer.Wrote(written(write)),
            measure -> measured(measure, place),
            turn -> turned(turn, place),
            wait -> new Answer.Waited(wait.mayLift() ? "a simulated session" : null),
            done -> new Answer.Confirmed(),
            handOver -> new Answer.Confirmed()));
  }

  private String written(Prompt.Write write) {
    Step step = step(write);
    // Nothing depends on the size of a key.
    boolean size = step != null && step.records() == Recorded.ROD_KEY;
    return size || random.nextBoolean() ? "-" : gauges;
  }

  private Answer measured(Prompt.Measure measure, Place place) {
    if (slips(30)) {
      return new Answer.CannotMeasure();
    }
    Set<Verdict> hoped = coverageGoal.verdicts(place);
    return measure.quantity() == Quantity.RELIEF
        ? relief(measure, hoped)
        : readings.usual(measure, step(measure), hoped, coverageGoal.value(place));
  }

  private Answer turned(Prompt.TurnRod turn, Place place) {
    if (turn.canUndo() && slips(20)) {
      return new Answer.Undo();
    }
    Edge next = coverageGoal.next(place);
    Feel wish = next == null || next.way() == null ? null : PathState.feel(next.way().label());
    return turned(turn, slips(8) ? feel() : wish == null ? usual : wish);
  }

  /** Whether something unusual happens now, one time in so many; never for the steadiest person. */
  private boolean slips(int times) {
    return steady < 1 && random.nextInt(times) == 0;
  }

  /** A reading of the relief; where the neck does not stand as hoped for, it may change first. */
  private Answer relief(Prompt.Measure measure, Set<Verdict> hoped) {
    if (hoped.equals(Set.of(Verdict.NOT_MEASURED))) {
      return new Answer.CannotMeasure();
    }
    if (highest(measure)) {
      // The steadiest reads both edges alike.
      boolean alike = steady == 1 && low != null && !neck.twisted();
      return alike && low != null ? low : new Answer.Measured(neck.read(true));
    }
    Bracket read = neck.read(false);
    if (!hoped.isEmpty() && !hoped.contains(Verdict.of(read, window)) && random.nextInt(8) > 0) {
      Set<Verdict> readable = EnumSet.copyOf(hoped);
      readable.remove(Verdict.NOT_MEASURED);
      Verdict stands = any(readable);
      neck.stand(stands, window);
      read = neck.read(false);
      if (stands == Verdict.UNDECIDED) {
        // It takes leaves that do not tell.
        return readings.usual(measure, step(measure), Set.of(stands), null);
      }
    }
    readings.relief(read);
    low = new Answer.Measured(read);
    return low;
  }

  private static boolean highest(Prompt.Measure measure) {
    return measure.which() == Which.HIGHEST;
  }

  private String option(Prompt.Choose choose, Place place) {
    List<String> ids = choose.options().stream().map(Prompt.Option::id).toList();
    boolean steers = random.nextDouble() < Math.pow(steady, asked.getOrDefault(place, 1));
    Edge next = coverageGoal.next(place);
    if (steers && next != null && next.way() != null && ids.contains(next.way().label())) {
      return next.way().label();
    }
    boolean first = !steers || graph.out(place).size() != ids.size();
    return first && random.nextInt(4) > 0 ? ids.get(0) : ids.get(random.nextInt(ids.size()));
  }

  private Feel feel() {
    return Feel.values()[random.nextInt(Feel.values().length)];
  }

  private Step.@Nullable Measure step(Prompt.Measure measure) {
    return step((Prompt) measure) instanceof Step.Measure one ? one : null;
  }

  private @Nullable Step step(Prompt prompt) {
    return library.procedure(prompt.said().procedure()).steps().get(prompt.said().step());
  }

  /** Does to the neck what an answer says was done. */
  void act(Prompt prompt, Answer answer) {
    if (answer instanceof Answer.Turned turned) {
      neck.turn(turned.turn().turns());
    }
    boolean told = mends && prompt instanceof Prompt.Tell;
    if (told && step(prompt) instanceof Step.Adjust adjust) {
      readings.mood(adjust.adjustment().quantity(), Verdict.IN);
    }
  }
}
