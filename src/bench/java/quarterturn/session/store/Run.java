package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;

/**
 * One run of the program, with nothing to read.
 *
 * @param ms its wall time from start to end, in milliseconds
 * @param mb the most memory that was resident, in megabytes; 0 where the system does not tell
 */
record Run(double ms, double mb) {
  private static final String PEAK = "VmHWM:";
  private static final int MOST_SECONDS = 120;

  /** Runs the program once, on a data folder. */
  static Run of(List<String> program, String command, Path data)
      throws IOException, InterruptedException {
    List<String> words = new ArrayList<>(program);
    words.addAll(List.of(command.split(" ")));
    words.addAll(List.of("--data", data.toString()));
    ProcessBuilder builder = new ProcessBuilder(words);
    builder.redirectErrorStream(true).redirectOutput(ProcessBuilder.Redirect.DISCARD);
    long from = System.nanoTime();
    Process process = builder.start();
    process.getOutputStream().close();
    Path status = Path.of("/proc", String.valueOf(process.pid()), "status");
    double most = 0;
    while (!process.waitFor(3, TimeUnit.MILLISECONDS)) {
      most = Math.max(most, peak(status));
      if (System.nanoTime() - from > TimeUnit.SECONDS.toNanos(MOST_SECONDS)) {
        process.destroyForcibly();
        throw new IOException(command + " takes more than " + MOST_SECONDS + " s");
      }
    }
    double ms = (System.nanoTime() - from) / 1e6;
    if (process.exitValue() > 1) {
      throw new IOException(command + " ended with " + process.exitValue());
    }
    return new Run(ms, most);
  }

  private static double peak(Path status) {
    try {
      for (String line : Files.readAllLines(status)) {
        if (line.startsWith(PEAK)) {
          return Integer.parseInt(line.replaceAll("\\D", "")) / 1024.0;
        }
      }
    } catch (IOException e) {
      // It has ended, or the system is no Linux.
    }
    return 0;
  }
}
