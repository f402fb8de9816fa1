package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Stream;
import quarterturn.procedure.UnreadableException;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Names;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.journal.Unforced;

/**
 * Makes a data folder with ten years of sessions. Each begins as the program would have begun it
 * then, and goes on like one of a few dozen that were played; a tenth are of one instrument.
 */
final class TenYearsFolder {
  static final String MAIN = "my-bass";
  private static final List<String> KINDS = List.of("bass-34", "electric-25", "acoustic-steel");
  private static final int PLAYED = 20;
  private static final int INSTRUMENTS = 200;
  private static final int UNFINISHED = 10;
  private static final Duration YEARS = Duration.ofDays(3650);

  /** A folder in memory, where there is one: what lies there has no disk to wait for. */
  private static final Path MEMORY = Path.of("/dev/shm");

  /** How far any rod stands from as found at most, in turns. */
  private static final double FAR = 0.5;

  private final Path folder;
  private final Store store;
  private final Random random = new Random(1);
  private final Instant until;
  private final List<List<Played>> pools = new ArrayList<>();
  private Instant now;

  private final Clock clock =
      new Clock() {
        @Override
        public Instant instant() {
          return now;
        }

        @Override
        public ZoneId getZone() {
          return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
          throw new UnsupportedOperationException();
        }
      };

  private TenYearsFolder(Path folder, Instant until) {
    this.folder = folder;
    this.store = Store.at(folder);
    this.until = until.truncatedTo(ChronoUnit.DAYS);
    this.now = this.until.minus(YEARS);
  }

  /** Makes the folder, which must not be there yet. */
  static void make(Path folder, int many, Instant until) throws IOException, UnreadableException {
    if (Files.exists(folder)) {
      throw new IOException(folder + " is there already");
    }
    Files.createDirectories(folder.resolve("sessions"));
    new TenYearsFolder(folder, until).made(many);
  }

  private void made(int many) throws IOException, UnreadableException {
    for (String kind : KINDS) {
      pools.add(Played.pool(new Sessions(store, null, clock), kind, PLAYED));
    }
    int unfinished = Math.max(1, Math.min(UNFINISHED, many / 10));
    for (int i = 0; i < unfinished; i++) {
      unfinished(i);
    }
    int main = many / 10;
    write(MAIN, 0, main);
    int rest = many - main - unfinished;
    int others = Math.min(INSTRUMENTS, Math.max(1, rest / 4));
    for (int i = 0; i < others; i++) {
      write("other-" + i, i % KINDS.size(), rest * (i + 1) / others - rest * i / others);
    }
  }

  private void add(String name, String kind) throws IOException {
    store.add(
        FormFields.instrument(name, now, Map.of(FormField.KIND, kind, FormField.STYLE, "medium")));
  }

  /** A session left in its middle within the last days, begun and recorded by the program. */
  private void unfinished(int i) throws IOException, UnreadableException {
    now = until.minus(Duration.ofDays(1 + i));
    String name = "open-" + i;
    List<Played> pool = pools.get(i % pools.size());
    Played like = pool.get(i % pool.size());
    add(name, like.kind());
    Sessions sessions = new Sessions(store, null, clock);
    Sessions.Wish wish =
        new Sessions.Wish(like.library().main().id(), name, null, null, like.role());
    int answers = 5 + 3 * i;
    try (Sessions.Opened opened = sessions.open(sessions.beginning(wish, like.library()))) {
      PracticeBench told = Played.bench(like.library(), like.kind(), like.role(), i, now);
      LiveBench bench = opened.bench();
      for (int a = 0; a < answers && !told.prompt().ended() && !bench.prompt().ended(); a++) {
        if (told.now().isAfter(until)) {
          break;
        }
        now = told.now();
        Answer answer = told.truth();
        told.answer(answer);
        bench.answer(answer);
      }
      if (!bench.prompt().ended()) {
        bench.leave();
      }
    } catch (RefusedException e) {
      throw new IllegalStateException(e);
    }
  }

  /** The sessions of one instrument, one after another. */
  private void write(String name, int kind, int many) throws IOException {
    now = until.minus(YEARS);
    add(name, KINDS.get(kind));
    Duration apart = YEARS.dividedBy(many + 1);
    Instant from = now.plusSeconds(name.equals(MAIN) ? 0 : random.nextLong(apart.toSeconds()));
    Path scratch =
        Files.isWritable(MEMORY)
            ? Files.createTempDirectory(MEMORY, "ten-years")
            : Files.createTempDirectory("ten-years");
    try {
      Files.createDirectories(scratch.resolve("instruments"));
      Files.createDirectories(scratch.resolve("sessions"));
      Path known = Path.of("instruments", name + ".yaml");
      Files.copy(folder.resolve(known), scratch.resolve(known));
      Sessions sessions = new Sessions(Store.at(scratch), null, clock);
      double net = 0;
      for (int i = 1; i <= many; i++) {
        now = from.plus(apart.multipliedBy(i)).plusSeconds(random.nextInt(36_000));
        now = now.truncatedTo(ChronoUnit.SECONDS);
        Played played = drawn(pools.get(kind), net);
        net += played.net();
        begun(sessions, name, played, scratch.resolve("sessions"));
      }
    } finally {
      try (Stream<Path> all = Files.walk(scratch)) {
        for (Path file : all.sorted(Comparator.reverseOrder()).toList()) {
          Files.delete(file);
        }
      }
    }
  }

  private Played drawn(List<Played> pool, double net) {
    List<Played> fit = pool.stream().filter(played -> Math.abs(net + played.net()) <= FAR).toList();
    return fit.get(random.nextInt(fit.size()));
  }

  /** Writes a session like one that was played, and a copy of it in the folder beside. */
  private void begun(Sessions sessions, String name, Played played, Path beside)
      throws IOException {
    Sessions.Wish wish =
        new Sessions.Wish(played.library().main().id(), name, null, null, played.role());
    Event.Started started = sessions.started(sessions.beginning(wish, played.library()));
    List<Event> events = new ArrayList<>(List.of(started));
    Duration later = Duration.between(played.events().get(0).at(), started.at());
    events.addAll(Shifted.by(later, played.events().subList(1, played.events().size())));
    String session =
        Names.session(LocalDate.ofInstant(now, ZoneOffset.UTC), started.procedure(), random);
    Journal.Header header =
        new Journal.Header(session, started.procedure(), started.revision(), started.digest());
    byte[] bytes = Unforced.bytes(header, events);
    Files.write(folder.resolve("sessions").resolve(session + LogFormat.ENDING), bytes);
    Files.write(beside.resolve(session + LogFormat.ENDING), bytes);
  }
}
