package quarterturn.craft;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import quarterturn.unit.Force;
import quarterturn.unit.Length;

/** A contact map of 24 frets, and the relief for the lowest action, of an invented bass. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ContactBench {
  private static final int LAST = 24;
  private static final int JOINT = 20;

  private final Scale scale = new Scale(Length.inches(34));
  private final Held held = Held.at(JOINT, 8);
  private final Length nut = Length.mm(0.5);
  private final Force tension = Force.newtons(180);
  private final Pluck pluck = new Pluck(Force.newtons(1.8), Length.mm(120), Pluck.Way.PUSHED, 0.7);
  private final Neck neck = Neck.uniform(scale, JOINT, Length.mm(0.3), held);
  private final StringLine line = StringLine.withAction(neck, nut, 12, Length.mm(2));

  @Benchmark
  public ContactMap contactMap() {
    return ContactMap.of(line, tension, pluck, LAST);
  }

  @Benchmark
  public LowestAction reliefFor() {
    return LowestAction.of(scale, JOINT, held, nut, tension, pluck, LAST);
  }
}
