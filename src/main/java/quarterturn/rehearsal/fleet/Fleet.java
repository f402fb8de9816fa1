package quarterturn.rehearsal.fleet;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
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
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.SimulatedNeck;

/**
 * Simulates whole sessions on many necks: sound ones, each adjusted in three ways, and an equal
 * number with faults. The same number and seed give the same result, on however many processors.
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

  private final Rehearsal rehearsal;
  private final int necks;
  private final long seed;

  /**
   * A fleet to be run.
   *
   * @param library the library with the procedure to play and the kind bass-34
   * @param necks how many sound necks to simulate; an equal number has faults
   */
  public Fleet(Library library, int necks, long seed) {
    this.rehearsal = new Rehearsal(windowed(library), KIND, STYLE, Role.BEGINNER);
    this.necks = necks;
    this.seed = seed;
  }

  /** The result of a fleet. */
  public record Result(int necks, long seed, SoundNecks sound, FaultyNecks faulty) {}

  /** A copy of a library in which the fleet's kind has the window {@link #WINDOW}. */
  private static Library windowed(Library library) {
    Kind kind = library.kind(KIND);
    Map<String, Kind> kinds = new LinkedHashMap<>(library.kinds());
    kinds.put(KIND, kind.withRelief(WINDOW, "the window of the fleet's figures"));
    return new Library(
        library.procedures(), kinds, library.hazards(), library.limits(), library.results());
  }

  /**
   * Simulates all necks, on every processor.
   *
   * @param progress is told how many sound necks are done
   */
  public Result run(IntConsumer progress) {
    Result all = new Result(necks, seed, new SoundNecks(), new FaultyNecks());
    AtomicInteger done = new AtomicInteger();
    IntStream.range(0, necks)
        .parallel()
        .forEach(
            i -> {
              play(i, all);
              progress.accept(done.incrementAndGet());
            });
    return all;
  }

  private void play(int i, Result all) {
    long one = seed + i * SPREAD;
    SimulatedNeck known = neck(NeckFault.NONE, one);
    Outcome advised = rehearsal.play(neck(NeckFault.NONE, one), new BeliefAdvisor());
    Outcome thumb = rehearsal.play(neck(NeckFault.NONE, one), new RuleOfThumb());
    Outcome knowing = rehearsal.play(known, new Knowing(known));
    SimulatedNeck broken = neck(FAULTS.get(i % FAULTS.size()), ~one);
    Outcome found = rehearsal.play(broken, new BeliefAdvisor());
    synchronized (all) {
      all.sound().add(advised, thumb, knowing);
      all.faulty().add(broken.traits(), found, rehearsal.window());
    }
  }

  private static SimulatedNeck neck(NeckFault fault, long one) {
    SplittableRandom random = new SplittableRandom(one);
    return new SimulatedNeck(Draw.neck(fault, random), random);
  }
}
