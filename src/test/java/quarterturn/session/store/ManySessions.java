package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A folder of invented sessions by chance, on one instrument, another, and some without a name. */
final class ManySessions {
  static final String BASS = "practice-bass";

  private final Random random;
  private final Path folder;
  private final Library library;
  private final List<String> open = new ArrayList<>();
  private final List<String> all = new ArrayList<>();
  private @Nullable String gone;
  private Instant now = Instant.parse("2027-03-01T12:00:00Z");

  ManySessions(Path folder, Library library, long seed) throws IOException {
    this.folder = folder;
    this.library = library;
    this.random = new Random(seed);
    for (String name : List.of(BASS, "other")) {
      Instrument.Build build = Instrument.Build.UNKNOWN;
      sessions()
          .store()
          .add(new Instrument(name, "bass-34", Style.MEDIUM, null, null, now, build, Map.of()));
    }
  }

  Instant now() {
    return now;
  }

  /** Opens the folder anew, as another start of the program does. */
  Sessions sessions() {
    return new Sessions(Store.at(folder), null, Clock.fixed(now, ZoneOffset.UTC));
  }

  List<String> open() {
    return open;
  }

  /** Time passes, and something happens: most often a session that turns the rod a little. */
  void next() throws Exception {
    now = now.plus(Duration.ofHours(random.nextInt(4) == 0 ? 3 : 40 + random.nextInt(2000)));
    int what = random.nextInt(20);
    if (what < 2 && !open.isEmpty()) {
      goOn(open.get(random.nextInt(open.size())));
    } else if (what == 2 && !all.isEmpty()) {
      String one = all.get(random.nextInt(all.size()));
      Files.copy(file(one), file(one + " copy" + all.size()));
    } else if (what == 3 && all.size() > 12) {
      goes(all.get(random.nextInt(all.size())), random.nextBoolean());
    } else {
      begin();
    }
  }

  /**
   * As between two machines: a record goes, or is as it was at first, and the one before that went
   * is back as it became.
   */
  private void goes(String lost, boolean leavesItsBeginning) throws IOException {
    all.remove(lost);
    open.remove(lost);
    Files.move(file(lost), folder.resolve(lost));
    if (leavesItsBeginning) {
      List<String> lines = Files.readAllLines(folder.resolve(lost));
      Files.write(file(lost), lines.subList(0, Math.min(3, lines.size())));
    }
    if (gone != null) {
      Files.move(folder.resolve(gone), file(gone), StandardCopyOption.REPLACE_EXISTING);
      all.add(gone);
    }
    gone = lost;
  }

  private Path file(String session) {
    return folder.resolve("sessions").resolve(session + LogFormat.ENDING);
  }

  private void begin() throws Exception {
    int of = random.nextInt(10);
    String instrument = of < 7 ? BASS : of < 9 ? "other" : null;
    Sessions sessions = sessions();
    Sessions.Wish wish =
        new Sessions.Wish(
            "relief",
            instrument,
            instrument == null ? "bass-34" : null,
            Style.MEDIUM,
            Role.BEGINNER);
    Event.Started started = sessions.started(sessions.beginning(wish, library));
    Store.Created made =
        sessions
            .store()
            .create(
                "relief", 3, started.digest(), LocalDate.ofInstant(now, ZoneOffset.UTC), random);
    try (Journal journal = made.journal()) {
      journal.append(List.of(started));
      work(journal, all.size() > 50 && random.nextInt(20) == 0);
    }
    all.add(made.name());
    if (random.nextInt(12) == 0) {
      goes(made.name(), true);
      return;
    }
    if (random.nextInt(6) == 0) {
      open.add(made.name());
    }
  }

  private void goOn(String session) throws Exception {
    Sessions sessions = sessions();
    try (Journal journal = sessions.store().open(session)) {
      Event.Started was = (Event.Started) journal.found().events().get(0);
      Opening opening = sessions.beginning(session, library).opening();
      journal.append(
          List.of(new Event.Resumed(now, opening.turnsBeside(was), opening.carried(), null)));
      work(journal, false);
    }
  }

  /** A few readings and turns, and now and then a stop. */
  private void work(Journal journal, boolean stop) throws IOException {
    List<Event> events = new ArrayList<>();
    int turns = random.nextInt(5);
    for (int i = 0; i <= turns; i++) {
      now = now.plusSeconds(600);
      events.add(
          new Event.Read(
              now,
              "found-low",
              Quantity.RELIEF,
              Which.LOWEST,
              "E1",
              List.of(1, 17),
              8,
              0.05,
              new Bracket(0.3, 0.35),
              null));
      if (i < turns) {
        now = now.plusSeconds(random.nextInt(2) * 600);
        // Each way as often, and so that the rod seldom gets far.
        Turn turn = random.nextBoolean() ? Turn.SIXTEENTH : Turn.SIXTEENTH.opposite();
        events.add(new Event.Turned(now, "turn", turn, stop ? Feel.JAMMED : Feel.SMOOTH));
      }
    }
    now = now.plusSeconds(60);
    events.add(new Event.Left(now, "strings at pitch"));
    journal.append(events);
  }
}
