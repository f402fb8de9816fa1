package quarterturn.soak;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Random;
import quarterturn.soak.Tally.Count;

/**
 * Plays rounds by chance on the packaged program until a time is over: {@code --minutes 30 --seed 1
 * --jar target/quarterturn.jar}, or one of them again: {@code --round SEED --at TIME --folder
 * FINDING/before}. Names of sessions and times on the machine are not drawn from the seed.
 */
public final class RandomPlay {
  private static final int ROUNDS_IN_A_WORLD = 40;

  private final Path work;
  private final PrintStream out = System.out;
  private final Tally tally = new Tally();
  private final Starting starting = new Starting();

  private RandomPlay(Path work) {
    this.work = work;
  }

  public static void main(String[] args) throws Exception {
    List<String> words = List.of(args);
    Path jar = Path.of(option(words, "--jar", "target/quarterturn.jar"));
    Path work = Path.of(option(words, "--work", "target/soak"));
    work = Files.createDirectories(work.resolve("seed-" + option(words, "--seed", "1")));
    RandomPlay play = on(jar, work);
    String round = option(words, "--round", "");
    if (round.isEmpty()) {
      Duration time =
          Duration.ofSeconds(Math.round(60 * Double.parseDouble(option(words, "--minutes", "30"))));
      play.play(Long.parseLong(option(words, "--seed", "1")), time);
    } else {
      World world = World.in(fresh(work.resolve("world")));
      String kept = option(words, "--folder", "");
      if (!kept.isEmpty()) {
        Instant at = Instant.parse(option(words, "--at", "2027-01-04T08:00:00Z"));
        world = World.kept(Path.of(kept), fresh(work.resolve("world")), at);
      }
      play.round(Long.parseLong(round), world);
    }
    System.exit(play.findings() == 0 ? 0 : 1);
  }

  private static String option(List<String> words, String name, String or) {
    int at = words.indexOf(name);
    return at < 0 ? or : words.get(at + 1);
  }

  private static Path fresh(Path folder) throws IOException {
    World.delete(folder);
    return folder;
  }

  /** On a copy of the jar, so that a build meanwhile changes nothing. */
  static RandomPlay on(Path jar, Path work) throws IOException {
    Path copy = work.resolve("quarterturn.jar");
    Files.copy(jar, copy, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
    System.setProperty("quarterturn.jar", copy.toAbsolutePath().toString());
    return new RandomPlay(work.toAbsolutePath());
  }

  int findings() {
    return tally.of(Count.FINDINGS);
  }

  /** Plays until the time is over. */
  void play(long seed, Duration time) throws IOException, InterruptedException {
    Random seeds = new Random(seed);
    long end = System.nanoTime() + time.toNanos();
    World world = World.in(fresh(work.resolve("world")));
    for (int i = 1; System.nanoTime() < end; i++) {
      if (i % ROUNDS_IN_A_WORLD == 0) {
        world = World.in(fresh(work.resolve("world")));
      }
      round(seeds.nextLong() >>> 20, world);
    }
    out.println("seed " + seed + ": " + tally);
  }

  private void round(long seed, World world) throws IOException, InterruptedException {
    Path before = fresh(work.resolve("before"));
    World.copy(world.folder(), before);
    String now = world.now().toString();
    Round round = new Round(seed, world, tally, starting);
    out.println("round " + seed + " at " + now + ": " + round);
    long began = System.nanoTime();
    List<String> findings = round.play();
    long millis = (System.nanoTime() - began) / 1_000_000;
    out.println("  " + round.inputs().size() + " inputs, " + millis + " ms");
    if (findings.isEmpty()) {
      return;
    }
    tally.add(Count.FINDINGS);
    Path kept = fresh(work.resolve("finding-" + seed));
    World.copy(before, kept.resolve("before"));
    World.copy(world.folder(), kept.resolve("after"));
    Files.write(kept.resolve("inputs.txt"), round.inputs());
    Files.writeString(kept.resolve("printed.txt"), round.printed());
    Files.write(kept.resolve("findings.txt"), findings);
    out.println("FINDING in round " + seed + ", kept in " + kept);
    findings.forEach(finding -> out.println("  " + finding));
  }
}
