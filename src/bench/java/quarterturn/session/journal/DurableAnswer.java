package quarterturn.session.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.util.Arrays;
import java.util.List;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * How long an answer takes to disk, by the journal and by writing and forcing the same bytes
 * without one, each in turn in one process: {@code FOLDER [ANSWERS [REPEATS]]}. The folder decides
 * on which disk.
 */
public final class DurableAnswer {
  private static final double BOUND = 1.15;
  private static final int WARM_UP = 300;
  private static final Journal.Header HEADER =
      new Journal.Header("bench", "relief", 1, "ab".repeat(32));

  private DurableAnswer() {}

  public static void main(String[] args) throws IOException {
    Path folder = Files.createTempDirectory(Path.of(args[0]), "durable");
    int answers = args.length > 1 ? Integer.parseInt(args[1]) : 1000;
    int repeats = args.length > 2 ? Integer.parseInt(args[2]) : 9;
    System.out.printf(
        "Microseconds an answer, medians of %d: the journal, and raw bytes written and forced.%n",
        answers);
    double[] ratios = new double[repeats];
    for (int i = 0; i < repeats; i++) {
      double[] medians = medians(folder, "r" + i, answers);
      ratios[i] = medians[0] / medians[1];
      System.out.printf("%8.0f %8.0f  %.3f%n", medians[0], medians[1], ratios[i]);
    }
    Arrays.sort(ratios);
    System.out.printf(
        "Ratio, median of %d: %.3f (%.3f to %.3f); bound %.2f%n",
        repeats, ratios[repeats / 2], ratios[0], ratios[repeats - 1], BOUND);
    Files.delete(folder);
  }

  private static double[] medians(Path folder, String name, int answers) throws IOException {
    Path ours = folder.resolve(name + LogFormat.ENDING);
    Path raw = folder.resolve(name + ".raw");
    double[] journalTimes = new double[answers];
    double[] rawTimes = new double[answers];
    try (Journal journal = Journal.create(ours, HEADER);
        FileChannel channel =
            FileChannel.open(raw, StandardOpenOption.CREATE_NEW, StandardOpenOption.WRITE)) {
      String sum = "";
      long end = 0;
      for (int i = -WARM_UP; i < answers; i++) {
        Event event = event(i);
        SummedLines.Line line = Journal.FORMAT.event(i + WARM_UP + 1, event, sum);
        sum = line.sum();
        byte[] bytes = line.bytes();
        // Which of both comes first changes from one answer to the next.
        double first = i % 2 == 0 ? raw(channel, bytes, end) : journal(journal, event);
        double second = i % 2 == 0 ? journal(journal, event) : raw(channel, bytes, end);
        end += bytes.length;
        if (i >= 0) {
          rawTimes[i] = i % 2 == 0 ? first : second;
          journalTimes[i] = i % 2 == 0 ? second : first;
        }
      }
    }
    Files.delete(ours);
    Files.delete(raw);
    Arrays.sort(journalTimes);
    Arrays.sort(rawTimes);
    return new double[] {journalTimes[answers / 2], rawTimes[answers / 2]};
  }

  private static double journal(Journal journal, Event event) throws IOException {
    long from = System.nanoTime();
    journal.append(List.of(event));
    return (System.nanoTime() - from) / 1e3;
  }

  private static double raw(FileChannel channel, byte[] bytes, long end) throws IOException {
    long from = System.nanoTime();
    ByteBuffer buffer = ByteBuffer.wrap(bytes);
    while (buffer.hasRemaining()) {
      channel.write(buffer, end + buffer.position());
    }
    channel.force(true);
    return (System.nanoTime() - from) / 1e3;
  }

  private static Event event(int i) {
    return new Event.Read(
        Instant.ofEpochSecond(1_800_000_000L + i),
        "read-relief",
        Quantity.RELIEF,
        Which.LOWEST,
        "E1",
        List.of(1, 17),
        8,
        0.05,
        new Bracket(0.30, 0.35),
        null);
  }
}
