package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
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
import quarterturn.unit.Bracket;
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
    Temper temper = wishes.temper();
    if (temper == null || random.nextInt(4) == 0) {
      Temper[] all = Temper.values();
      temper = random.nextBoolean() ? Temper.SOUND : all[random.nextInt(all.length)];
    }
    Set<Verdict> stands = wishes.relief();
    return new AnyNeck(temper, stands.isEmpty() ? null : any(stands), window, random.split());
  }

  private Verdict any(Set<Verdict> verdicts) {
    return verdicts.stream().sorted().toList().get(random.nextInt(verdicts.size()));
  }

  /** From now on; the neck becomes such as the errand needs it, as if the weather had changed. */
  void goOn(Errand next) {
    errand = next;
    Temper temper = next.wishes().temper();
    if (temper != null && temper != neck.temper() && random.nextInt(4) > 0) {
      neck = neck(next.wishes());
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
    Answer record = bench.onRecord();
    if (record != null) {
      return record;
    }
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
      if (slips(30)) {
        return new Answer.CannotMeasure();
      }
      Set<Verdict> hoped = errand.verdicts(place);
      return measure.quantity() == Quantity.RELIEF
          ? relief(measure, hoped)
          : readings.usual(measure, step(measure), hoped, errand.value(place));
    } else if (prompt instanceof Prompt.TurnRod turn) {
      if (turn.canUndo() && slips(20)) {
        return new Answer.Undo();
      }
      Road next = errand.next(place);
      Feel wish = next == null || next.way() == null ? null : Past.feel(next.way().label());
      return turned(turn, slips(8) ? feel() : wish == null ? usual : wish);
    }
    return plain(prompt);
  }

  /** Whether something else than usual happens, once in so many times; not to the steadiest. */
  private boolean slips(int times) {
    return steady < 1 && random.nextInt(times) == 0;
  }

  /** What the neck shows; where that is not what is hoped for, the neck moves. */
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
    low = new Answer.Measured(read);
    return low;
  }

  private static boolean highest(Prompt.Measure measure) {
    return measure.which() == Which.HIGHEST;
  }

  private String option(Prompt.Choose choose, Place place) {
    List<String> ids = choose.options().stream().map(Prompt.Option::id).toList();
    boolean steers = random.nextDouble() < Math.pow(steady, asked.getOrDefault(place, 1));
    Road next = errand.next(place);
    if (steers && next != null && next.way() != null && ids.contains(next.way().label())) {
      return next.way().label();
    }
    boolean first = !steers || roads.out(place).size() != ids.size();
    return first && random.nextInt(4) > 0 ? ids.get(0) : ids.get(random.nextInt(ids.size()));
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
