package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.IntConsumer;
import quarterturn.craft.Window;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;

/**
 * Whole sessions on many necks: sound ones, each adjusted three ways, and as many again in all with
 * a fault. The same number and seed give the same result, on however many processors.
 */
public final class Fleet {
  /** The window that the figures are given for, in millimetres. */
  public static final Window WINDOW = new Window(0.25, 0.40);

  private static final String KIND = "bass-34";
  private static final Style STYLE = Style.MEDIUM;

  /** Spreads neighbouring numbers over all seeds: the golden ratio in 64 bits. */
  private static final long SPREAD = 0x9E3779B97F4A7C15L;

  private static final List<NeckFault> FAULTS =
      Arrays.stream(NeckFault.values()).filter(NeckFault::brokenDown).toList();

  private final Rehearsal rehearsal;
  private final int necks;
  private final long seed;

  /**
   * A fleet to be run.
   *
   * @param library with the procedure to play and the kind bass-34
   * @param necks how many sound ones; there are as many with a fault
   */
  public Fleet(Library library, int necks, long seed) {
    this.rehearsal = new Rehearsal(windowed(library), KIND, STYLE, Role.BEGINNER);
    this.necks = necks;
    this.seed = seed;
  }

  /** What a fleet came to. */
  public record Result(int necks, long seed, SoundNecks sound, FaultyNecks faulty) {}

  /** This library with the figures' window in place of the kind's. */
  private static Library windowed(Library library) {
    Kind kind = library.kind(KIND);
    Map<String, Kind> kinds = new LinkedHashMap<>(library.kinds());
    kinds.put(KIND, kind.withRelief(WINDOW, "the window of the fleet's figures"));
    return new Library(
        library.procedures(), kinds, library.hazards(), library.limits(), library.results());
  }

  /**
   * Runs all of it.
   *
   * @param progress is told from several threads how many of the sound necks are done
   */
  public Result run(IntConsumer progress) throws InterruptedException {
    int workers = Runtime.getRuntime().availableProcessors();
    AtomicInteger next = new AtomicInteger();
    AtomicInteger done = new AtomicInteger();
    List<Worker> work = new ArrayList<>();
    for (int i = 0; i < workers; i++) {
      work.add(new Worker(next, () -> progress.accept(done.incrementAndGet())));
    }
    ExecutorService threads = Executors.newFixedThreadPool(workers);
    try {
      SoundNecks sound = new SoundNecks();
      FaultyNecks faulty = new FaultyNecks();
      for (Future<Worker> finished : threads.invokeAll(work)) {
        sound.add(finished.get().sound);
        faulty.add(finished.get().faulty);
      }
      return new Result(necks, seed, sound, faulty);
    } catch (ExecutionException e) {
      throw new IllegalStateException("a rehearsal broke", e.getCause());
    } finally {
      threads.shutdownNow();
    }
  }

  /** Plays one neck after the other until there is none left. */
  private final class Worker implements Callable<Worker> {
    private final AtomicInteger next;
    private final Runnable done;
    private final SoundNecks sound = new SoundNecks();
    private final FaultyNecks faulty = new FaultyNecks();

    Worker(AtomicInteger next, Runnable done) {
      this.next = next;
      this.done = done;
    }

    @Override
    public Worker call() {
      for (int i = next.getAndIncrement(); i < necks; i = next.getAndIncrement()) {
        play(i);
        done.run();
      }
      return this;
    }

    private void play(int i) {
      long one = seed + i * SPREAD;
      SimulatedNeck known = neck(NeckFault.NONE, one);
      sound.add(
          rehearsal.play(neck(NeckFault.NONE, one), new BeliefAdvisor()),
          rehearsal.play(neck(NeckFault.NONE, one), new RuleOfThumb()),
          rehearsal.play(known, new Knowing(known)));
      SimulatedNeck broken = neck(FAULTS.get(i % FAULTS.size()), ~one);
      Outcome outcome = rehearsal.play(broken, new BeliefAdvisor());
      faulty.add(broken.traits(), outcome, rehearsal.window());
    }

    private SimulatedNeck neck(NeckFault fault, long one) {
      SplittableRandom random = new SplittableRandom(one);
      return new SimulatedNeck(Draw.neck(fault, random), random);
    }
  }
}
