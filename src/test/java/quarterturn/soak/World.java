package quarterturn.soak;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import quarterturn.command.Captured;

/** The folders that rounds are played on, and the time there. */
final class World {
  private static final List<Duration> PAUSES =
      List.of(
          Duration.ofMinutes(1),
          Duration.ofMinutes(10),
          Duration.ofMinutes(70),
          Duration.ofHours(5),
          Duration.ofHours(20),
          Duration.ofHours(25),
          Duration.ofDays(3),
          Duration.ofDays(40));

  private final Path folder;
  private Instant now;

  private World(Path folder, Instant now) {
    this.folder = folder;
    this.now = now;
  }

  /** A new one with two instruments and a lesson. */
  static World in(Path folder) throws IOException {
    World world = new World(folder, Instant.parse("2027-01-04T08:00:00Z"));
    Files.createDirectories(world.data());
    Files.createDirectories(world.home());
    world.must("instrument", "add", "blue", "--kind", "bass-34", "--style", "medium");
    world.must("instrument", "add", "red", "--kind", "electric-25", "--style", "light");
    world.must("lesson", "new", world.lesson().toString(), "--procedure=relief", "--neck=too-much");
    return world;
  }

  /** What is in a folder, as it was kept with a finding. */
  static World kept(Path kept, Path folder, Instant at) throws IOException {
    copy(kept, folder);
    return new World(folder, at);
  }

  private void must(String... args) {
    Captured ran = run(args);
    if (ran.status() != 0) {
      throw new IllegalStateException(ran.out() + ran.err());
    }
  }

  Path folder() {
    return folder;
  }

  Path data() {
    return folder.resolve("data");
  }

  /** Where the settings would stand. */
  Path home() {
    return folder.resolve("home");
  }

  Path lesson() {
    return folder.resolve("lesson");
  }

  Instant now() {
    return now;
  }

  /** Runs a command to its end in this process, with nothing on standard input. */
  Captured run(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--data", data().toString()));
    return Captured.of(Clock.fixed(now, ZoneOffset.UTC), "", all.toArray(String[]::new));
  }

  List<Path> sessions() throws IOException {
    return listed(data().resolve("sessions"), ".jsonl");
  }

  List<String> instruments() throws IOException {
    return listed(data().resolve("instruments"), ".yaml").stream()
        .map(file -> String.valueOf(file.getFileName()).replace(".yaml", ""))
        .toList();
  }

  private static List<Path> listed(Path in, String ending) throws IOException {
    if (!Files.isDirectory(in)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(in)) {
      return all.filter(file -> file.toString().endsWith(ending)).sorted().toList();
    }
  }

  /** It is as late as this. */
  void passed(Instant until) {
    now = until.isAfter(now) ? until : now;
  }

  /** A pause by chance, mostly a short one. */
  void pause(Random random) {
    now = now.plus(PAUSES.get(Math.min(random.nextInt(8), random.nextInt(8))));
  }

  static void copy(Path from, Path to) throws IOException {
    try (Stream<Path> all = Files.walk(from)) {
      for (Path one : all.toList()) {
        Path there = to.resolve(from.relativize(one).toString());
        if (Files.isDirectory(one)) {
          Files.createDirectories(there);
        } else {
          Files.createDirectories(to);
          Files.copy(one, there, java.nio.file.StandardCopyOption.REPLACE_EXISTING);
        }
      }
    }
  }

  static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      all.sorted(Comparator.reverseOrder())
          .forEach(
              one -> {
                try {
                  Files.deleteIfExists(one);
                } catch (IOException e) {
                  throw new UncheckedIOException(e);
                }
              });
    }
  }
}
