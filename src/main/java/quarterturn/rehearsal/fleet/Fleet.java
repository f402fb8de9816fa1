package quarterturn.rehearsal.fleet;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import quarterturn.craft.Window;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.Knowing;
import quarterturn.rehearsal.Outcome;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.rehearsal.Visits;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.SimulatedNeck;

/**
 * Simulates whole sessions on many necks: sound ones, each adjusted in three ways, and an equal
 * number with faults; on request also as many under each {@link Condition}, with each fault of the
 * rod by each first reading, and set back between sessions. The same number and seed give the same
 * result, on however many processors.
 */
public final class Fleet {
  /** The relief window for all of the fleet's sessions, in millimetres. */
  public static final Window WINDOW = new Window(0.25, 0.40);

  private static final String KIND = "bass-34";
  private static final Style STYLE = Style.MEDIUM;

  /**
   * Multiplier that spreads neighbouring seeds over all 64-bit numbers: the golden ratio in 64
   * bits.
   */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private static final List<NeckFault> FAULTS =
      Arrays.stream(NeckFault.values()).filter(NeckFault::brokenDown).toList();

  /** The faults of a rod that only readings show. */
  private static final List<NeckFault> SILENT =
      List.of(NeckFault.DEAD, NeckFault.REVERSED, NeckFault.FULLY_TIGHT, NeckFault.FULLY_LOOSE);

  private static final List<Double> WEIGHTS =
      List.of(0.0, 1.0, 2.0, 3.0, 5.0, 8.0, 12.0, 16.0, 20.0, 40.0);

  private final Rehearsal rehearsal;
  private final int necks;
  private final long seed;
  private final boolean rows;

  /**
   * A fleet to be run.
   *
   * @param library the library with the procedure to play and the kind bass-34
   * @param necks how many sound necks to simulate; an equal number has faults
   * @param rows whether to play the conditions, the rod's faults and the set-backs too
   */
  public Fleet(Library library, int necks, long seed, boolean rows) {
    this.rows = rows;
    this.rehearsal = new Rehearsal(windowed(library), KIND, STYLE, Role.BEGINNER);
    this.necks = necks;
    this.seed = seed;
  }

  /** The result of a fleet. */
  public record Result(
      int necks,
      long seed,
      SoundNecks sound,
      FaultyNecks faulty,
      Map<Condition, SoundNecks> conditions,
      SetBacks setBacks) {
    private Result(int necks, long seed) {
      this(
          necks,
          seed,
          new SoundNecks(),
          new FaultyNecks(),
          new EnumMap<>(Condition.class),
          new SetBacks());
    }
  }

  /** A copy of a library in which the fleet's kind has the window {@link #WINDOW}. */
  private static Library windowed(Library library) {
    Kind kind = library.kind(KIND);
    Map<String, Kind> kinds = new LinkedHashMap<>(library.kinds());
    kinds.put(KIND, kind.withRelief(WINDOW, "the range of the fleet's figures"));
    return new Library(
        library.procedures(), kinds, library.hazards(), library.limits(), library.results());
  }

  /**
   * Simulates all necks, on every processor.
   *
   * @param progress is told how many sound necks are done
   */
  public Result run(IntConsumer progress) {
    Result all = new Result(necks, seed);
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, necks)
        .parallel()
        .forEach(
            i -> {
              boolean inReach = play(i, all);
              if (rows) {
                rows(i, all, inReach);
              }
              progress.accept(done.incrementAndGet());
            });
    return all;
  }

  /** What {@code crossing} of {@link BeliefAdvisor} costs in moves and spares in overshoots. */
  public Map<Double, SoundNecks> weights() {
    Map<Double, SoundNecks> weights = new TreeMap<>();
    IntStream.range(0, necks)
        .parallel()
        .forEach(
            i -> {
              long one = seed + i * SPREAD;
              Outcome knowing = knowing(sound(Condition.USUAL, one));
              for (double weight : WEIGHTS) {
                SimulatedNeck neck = sound(Condition.USUAL, one);
                Outcome advised = rehearsal.play(neck, new BeliefAdvisor(weight));
                synchronized (weights) {
                  weights.computeIfAbsent(weight, w -> new SoundNecks()).add(advised, knowing);
                }
              }
            });
    return weights;
  }

  /** Plays a sound neck and a faulty one; true where the sound one can be settled. */
  private boolean play(int i, Result all) {
    long one = seed + i * SPREAD;
    Outcome advised = advised(sound(Condition.USUAL, one));
    Outcome thumb = rehearsal.play(sound(Condition.USUAL, one), new RuleOfThumb());
    Outcome knowing = knowing(sound(Condition.USUAL, one));
    SimulatedNeck broken = neck(FAULTS.get(i % FAULTS.size()), ~one);
    Outcome found = advised(broken);
    synchronized (all) {
      all.sound().add(advised, knowing);
      all.sound().addThumb(thumb, knowing);
      all.faulty().add(broken.traits(), found, rehearsal.window());
    }
    return knowing.settled();
  }

  private void rows(int i, Result all, boolean inReach) {
    long one = seed + i * SPREAD;
    for (Condition condition : Condition.values()) {
      if (condition != Condition.USUAL) {
        Outcome advised = advised(sound(condition, one));
        Outcome knowing = knowing(sound(condition, one));
        synchronized (all) {
          all.conditions().computeIfAbsent(condition, c -> new SoundNecks()).add(advised, knowing);
        }
      }
    }
    for (NeckFault fault : SILENT) {
      for (FirstGap gap : FirstGap.read()) {
        SplittableRandom random = new SplittableRandom(~one);
        SimulatedNeck broken = new SimulatedNeck(Draw.neck(fault, gap, random), random);
        Outcome found = advised(broken);
        synchronized (all) {
          all.faulty().add(broken.traits(), found, rehearsal.window());
        }
      }
    }
    if (!inReach) {
      return;
    }
    SimulatedNeck often = sound(Condition.USUAL, one);
    List<Outcome> outcomes =
        SetBacks.play(
            new Visits(rehearsal, often, new BeliefAdvisor()), new SplittableRandom(-one));
    synchronized (all) {
      all.setBacks().add(outcomes);
    }
  }

  private Outcome advised(SimulatedNeck neck) {
    return rehearsal.play(neck, new BeliefAdvisor());
  }

  private Outcome knowing(SimulatedNeck neck) {
    return rehearsal.play(neck, new Knowing(neck));
  }

  private static SimulatedNeck sound(Condition condition, long one) {
    SplittableRandom random = new SplittableRandom(one);
    return new SimulatedNeck(condition.of(Draw.neck(NeckFault.NONE, random)), random);
  }

  private static SimulatedNeck neck(NeckFault fault, long one) {
    SplittableRandom random = new SplittableRandom(one);
    return new SimulatedNeck(Draw.neck(fault, random), random);
  }
}
