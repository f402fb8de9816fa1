package quarterturn.craft.rod;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * How long advice on the next turn takes, in microseconds, for a rod never turned and for one with
 * many turns on record: every turn is learned from anew.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class AdviceBench {
  /** Turns on record. */
  @Param({"0", "10", "100"})
  int turns;

  private Advisor.Question question = asked(0);

  @Setup
  public void ask() {
    question = asked(turns);
  }

  /** A new advisor every time, since one keeps its latest belief. */
  @Benchmark
  public Advice advise() {
    return new BeliefAdvisor().advise(question);
  }

  /** An invented neck: 0.20 mm for every quarter, read with leaves of 0.05 mm. */
  private static Advisor.Question asked(int turns) {
    Bracket before = new Bracket(0.60, 0.65);
    Bracket after = new Bracket(0.40, 0.45);
    List<Seen> story = new ArrayList<>();
    story.add(new Seen.Read(before));
    for (int i = 0; i < turns; i++) {
      boolean tightened = i % 2 == 0;
      story.add(new Seen.Turned(tightened ? Turn.QUARTER : Turn.QUARTER.opposite()));
      story.add(new Seen.Read(tightened ? after : before));
    }
    return new Advisor.Question(
        new Window(0.30, 0.45), before, Known.of(Prior.BASS), story, Turn.QUARTER);
  }
}
