package quarterturn.session.store;

import java.nio.file.Path;
import java.time.Instant;

/** Makes a data folder with ten years of sessions: {@code make DIR [SESSIONS]}. */
public final class TenYears {
  private static final String USUAL = "10000";

  private TenYears() {}

  public static void main(String[] args) throws Exception {
    String many = args.length > 2 ? args[2] : USUAL;
    long from = System.nanoTime();
    TenYearsFolder.make(Path.of(args[1]), Integer.parseInt(many), Instant.now());
    System.out.printf("%s sessions in %.1f s%n", many, (System.nanoTime() - from) / 1e9);
  }
}
