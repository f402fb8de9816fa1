package quarterturn.procedure.check;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Warmup;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/** All shipped procedures, read, walked and proven anew; whoever saves a file waits for this. */
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class CheckBench {
  @Benchmark
  public int all() throws Exception {
    Shelf shelf = new Shelf(null);
    Walks walks = new Walks();
    int findings = 0;
    for (String id : shelf.procedures()) {
      findings += Checker.check(shelf, id, walks).findings().size();
    }
    return findings;
  }
}
