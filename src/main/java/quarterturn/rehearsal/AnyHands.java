package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.Style;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.Way;
import quarterturn.procedure.Which;
import quarterturn.session.Answer;
import quarterturn.session.LiveBench;
import quarterturn.session.Place;
import quarterturn.session.Prompt;
import quarterturn.session.Refused;
import quarterturn.unit.Turn;

/**
 * Somebody at the bench who may answer anything: on an errand as a rule, and quick to go where
 * nobody went before.
 */
final class AnyHands {
  private final Library library;
  private final Roads roads;
  private final SplittableRandom random;
  private final Window window;
  private AnyNeck neck;
  private final AnyReading readings;
  private final Feel usual;
  private final double steady;
  private final boolean mends;
  private final Map<Place, Integer> asked = new HashMap<>();
  private Errand errand;
  private @Nullable Answer low;

  AnyHands(
      Library library,
      Roads roads,
      Kind kind,
      Style style,
      Errand errand,
      SplittableRandom random) {
    this.library = library;
    this.roads = roads;
    this.random = random;
    this.errand = errand;
    this.window = kind.target(style).window();
    this.neck = neck(errand.wishes());
    this.readings = new AnyReading(library, kind, style, random.split());
    this.usual = random.nextInt(4) == 0 ? feel() : Feel.SMOOTH;
    this.steady = random.nextBoolean() ? 1 : 0.5 + 0.5 * random.nextDouble();
    this.mends = random.nextBoolean();
  }

  private AnyNeck neck(Wishes wishes) {
    Wishes.Temper temper = wishes.temper();
    if (temper == null || random.nextInt(4) == 0) {
      Wishes.Temper[] all = Wishes.Temper.values();
      temper = random.nextBoolean() ? Wishes.Temper.SOUND : all[random.nextInt(all.length)];
    }
    return new AnyNeck(temper, wishes.reading(Quantity.RELIEF), window, random.split());
  }

  /** From now on; the neck becomes such as the errand needs it, as if the weather had changed. */
  void goOn(Errand next) {
    errand = next;
    Wishes wishes = next.wishes();
    boolean asks = wishes.temper() != null || wishes.reading(Quantity.RELIEF) != null;
    if (asks && random.nextInt(4) > 0) {
      neck = neck(wishes);
    }
  }

  Errand errand() {
    return errand;
  }

  /** How often a question was answered. */
  int asked(Place place) {
    return asked.getOrDefault(place, 0);
  }

  /** An answer to what a bench asks, by ways that are wanted where there are some at hand. */
  Answer answer(LiveBench bench, Set<Way> wanted) {
    Prompt prompt = bench.prompt();
    Place place = new Place(prompt.said().procedure(), prompt.said().step());
    asked.merge(place, 1, Integer::sum);
    if (random.nextInt(10) > 0 && roads.near(place, wanted)) {
      List<Answer> all = all(prompt);
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
      return bench.ahead(answer).stream().anyMatch(passage -> wanted.contains(roads.way(passage)));
    } catch (Refused e) {
      return false;
    }
  }

  /** Answers of every kind, where there is more than one. */
  private List<Answer> all(Prompt prompt) {
    List<Answer> all = new ArrayList<>();
    if (prompt instanceof Prompt.Choose choose) {
      choose.options().forEach(option -> all.add(new Answer.Chose(option.id())));
    } else if (prompt instanceof Prompt.Measure measure) {
      all.addAll(readings.all(measure, step(measure)));
    } else if (prompt instanceof Prompt.TurnRod turn) {
      for (Feel feel : Feel.values()) {
        all.add(turned(turn, feel));
      }
    } else {
      all.add(plain(prompt));
    }
    return all;
  }

  private static Answer turned(Prompt.TurnRod turn, Feel feel) {
    return new Answer.Turned(feel == Feel.JAMMED ? Turn.NONE : turn.turn(), feel);
  }

  private Answer plain(Prompt prompt) {
    if (prompt instanceof Prompt.Write) {
      return new Answer.Wrote(random.nextBoolean() ? "-" : "110 90 70 50");
    } else if (prompt instanceof Prompt.Wait wait) {
      return new Answer.Waited(wait.mayLift() ? "a simulated session" : null);
    }
    return new Answer.Confirmed();
  }

  private Answer usual(Prompt prompt, Place place) {
    if (prompt instanceof Prompt.Choose choose) {
      return new Answer.Chose(option(choose, place));
    } else if (prompt instanceof Prompt.Measure measure) {
      boolean relief = measure.quantity() == Quantity.RELIEF;
      if (slips(30)) {
        return new Answer.CannotMeasure();
      }
      if (relief && steady == 1 && highest(measure) && low != null && !neck.twisted()) {
        // The steadiest reads both edges alike.
        return low;
      }
      Answer read =
          relief && !undecided(measure)
              ? new Answer.Measured(neck.read(highest(measure)))
              : readings.usual(measure, step(measure), errand.wishes());
      low = relief && !highest(measure) ? read : low;
      return read;
    } else if (prompt instanceof Prompt.TurnRod turn) {
      if (turn.canUndo() && slips(20)) {
        return new Answer.Undo();
      }
      Feel wish = errand.wishes().feel(place);
      return turned(turn, slips(8) ? feel() : wish == null ? usual : wish);
    }
    return plain(prompt);
  }

  /** Whether something else than usual happens, once in so many times; not to the steadiest. */
  private boolean slips(int times) {
    return steady < 1 && random.nextInt(times) == 0;
  }

  /** Whether leaves should be used that do not tell how the relief stands. */
  private boolean undecided(Prompt.Measure measure) {
    return errand.wishes().reading(Quantity.RELIEF) == Verdict.UNDECIDED
        && !highest(measure)
        && random.nextInt(4) > 0;
  }

  private static boolean highest(Prompt.Measure measure) {
    return measure.which() == Which.HIGHEST;
  }

  private String option(Prompt.Choose choose, Place place) {
    List<String> ids = choose.options().stream().map(Prompt.Option::id).toList();
    List<Way> ways = roads.out(place);
    boolean steers = random.nextDouble() < Math.pow(steady, asked.getOrDefault(place, 1));
    if (ways.size() != ids.size() || (!steers && random.nextBoolean())) {
      return random.nextInt(4) > 0 ? ids.get(0) : ids.get(random.nextInt(ids.size()));
    }
    List<String> wished = errand.wishes().options(place);
    if (steers && !wished.isEmpty()) {
      String one = wished.get(random.nextInt(wished.size()));
      if (ids.contains(one)) {
        return one;
      }
    }
    String best = null;
    double least = Double.POSITIVE_INFINITY;
    for (Way way : ways) {
      double length =
          way.equals(errand.goal()) ? 0 : errand.length(new Place(way.procedure(), way.to()));
      if (steers && length < least && !errand.wishes().avoids(place, way.label())) {
        best = way.label();
        least = length;
      }
    }
    return best == null ? ids.get(random.nextInt(ids.size())) : best;
  }

  private Feel feel() {
    return Feel.values()[random.nextInt(Feel.values().length)];
  }

  private Step.@Nullable Measure step(Prompt.Measure measure) {
    Step step = library.procedure(measure.said().procedure()).steps().get(measure.said().step());
    return step instanceof Step.Measure one ? one : null;
  }

  /** Does what was answered. */
  void act(Prompt prompt, Answer answer) {
    if (answer instanceof Answer.Turned turned) {
      neck.turn(turned.turn().turns());
    } else if (prompt instanceof Prompt.Tell
        && library.procedure(prompt.said().procedure()).steps().get(prompt.said().step())
            instanceof Step.Adjust adjust) {
      if (mends) {
        readings.mood(adjust.adjustment().quantity(), Verdict.IN);
      }
    }
  }
}
