package quarterturn.rehearsal.life;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.Rehearsal;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/**
 * The life of a simulated instrument, and of another of its kind beside it: many sessions with a
 * name and without, by a beginner and a technician, left and taken up again, under stricter and
 * looser rule files, with records damaged, copied and lost, and with a clock that is set wrong. The
 * same seed gives the same life.
 *
 * <p>The owner tells the truth or says "not sure". Two things no program can know are left out: a
 * record that was cut exactly between two lines, or lost before another session began.
 */
public final class Life {
  private static final String KIND = "bass-34";
  private static final Style STYLE = Style.MEDIUM;
  private static final List<Duration> PAUSES =
      List.of(
          Duration.ofMinutes(5),
          Duration.ofHours(1),
          Duration.ofHours(5),
          Duration.ofHours(20),
          Duration.ofHours(25),
          Duration.ofDays(3),
          Duration.ofDays(40));
  private static final List<Duration> WRONG =
      List.of(
          Duration.ZERO,
          Duration.ZERO,
          Duration.ofHours(-3),
          Duration.ofHours(-30),
          Duration.ofDays(-4000),
          Duration.ofDays(4000));

  private final LifeRules rules;
  private final List<Channel> channels;
  private final SplittableRandom random;
  private final MachineClock clock = new MachineClock(Rehearsal.START);
  private final Path folder;
  private final Sessions sessions;
  private final List<Subject> subjects = new ArrayList<>();

  /** The sessions in the order in which they began, since their names are drawn by chance. */
  private final List<String> begun = new ArrayList<>();

  private final List<String> lines = new ArrayList<>();
  private final Dates dates = new Dates(ZoneOffset.UTC);
  private int played;
  private int mishaps;

  private Life(long seed, Path folder, LifeRules rules, List<Channel> channels) throws IOException {
    this.channels = List.copyOf(channels);
    this.rules = rules;
    this.random = new SplittableRandom(seed);
    this.folder = folder;
    Store store = Store.at(folder);
    this.sessions = new Sessions(store, null, clock);
    Kind kind = rules.shipped().kind(KIND);
    for (String name : List.of("blue", "red")) {
      SimulatedNeck neck = new SimulatedNeck(Draw.any(random), random.split());
      InstrumentTraits traits = InstrumentTraits.of(kind, STYLE, neck.traits());
      SimulatedInstrument instrument = new SimulatedInstrument(traits, neck, kind);
      TrueHistory history = new TrueHistory(rules.shipped().limits());
      subjects.add(new Subject(name, instrument, history));
      Map<FormField, String> known = Map.of(FormField.KIND, KIND, FormField.STYLE, STYLE.word());
      store.add(FormFields.instrument(name, clock.instant(), known));
    }
  }

  /**
   * What became of a life.
   *
   * @param lines what happened, in order
   * @param breaches the limits that were broken, a line each; none is as it should be
   * @param turns how often a rod was truly turned
   */
  public record Lived(List<String> lines, List<String> breaches, int sessions, int turns) {
    public Lived {
      lines = List.copyOf(lines);
      breaches = List.copyOf(breaches);
    }
  }

  /**
   * Lives a life.
   *
   * @param folder an empty folder for its records
   * @param channels ways of answering, one of which is drawn for each session
   */
  public static Lived of(long seed, Path folder, LifeRules rules, List<Channel> channels)
      throws IOException {
    return new Life(seed, folder, rules, channels).lived();
  }

  private Lived lived() throws IOException {
    int episodes = 4 + random.nextInt(8);
    for (int i = 0; i < episodes; i++) {
      clock.go(clock.truth().plus(PAUSES.get(random.nextInt(PAUSES.size()))));
      if (random.nextInt(4) == 0) {
        clock.set(WRONG.get(random.nextInt(WRONG.size())));
      }
      if (random.nextInt(3) == 0) {
        befall();
      }
      episode(subjects.get(random.nextInt(5) == 0 ? 1 : 0));
    }
    List<String> breaches = new ArrayList<>();
    int turns = 0;
    for (Subject subject : subjects) {
      TrueHistory history = subject.history();
      turns += history.turns();
      history.breaches().forEach(breach -> breaches.add(subject.name() + ", " + breach));
      lines.add(
          "%s, %s: %s, at most %s within a day, at most %s from as found"
              .formatted(
                  subject.name(),
                  subject.instrument().neck().traits().fault().words(),
                  Counted.of(history.turns(), "turn"),
                  new Turn(history.mostToday()),
                  new Turn(history.mostNet())));
    }
    lines.add(
        "%s, %s; limits broken: %d"
            .formatted(
                Counted.of(played, "session"), Counted.of(mishaps, "mishap"), breaches.size()));
    return new Lived(lines, breaches, played, turns);
  }

  private void befall() throws IOException {
    List<Path> files =
        begun.stream()
            .map(name -> folder.resolve("sessions").resolve(name + ".jsonl"))
            .filter(Files::isRegularFile)
            .toList();
    if (files.isEmpty()) {
      return;
    }
    Path file = files.get(random.nextInt(files.size()));
    Mishap mishap = Mishap.values()[random.nextInt(Mishap.values().length)];
    if ((mishap != Mishap.LOST || remembered(file)) && mishap.befall(file, random)) {
      mishaps++;
      say("the file of " + file.getFileName() + " is " + mishap.word());
    }
  }

  /** Whether a later session's record, which nothing has befallen, knows all of a session. */
  private boolean remembered(Path file) throws IOException {
    return Remembered.in(folder.resolve("sessions"), file);
  }

  private void episode(Subject subject) throws IOException {
    if (subject.history().stopped() && random.nextBoolean()) {
      subject.repaired(true);
      say("a repairer looks at " + subject.name());
    }
    Library library = rules();
    List<String> open = subject.unfinished();
    String session =
        open.isEmpty() || random.nextInt(5) > 1 ? null : open.get(random.nextInt(open.size()));
    Role role = random.nextInt(3) == 0 ? Role.TECHNICIAN : Role.BEGINNER;
    try {
      Beginning beginning =
          session == null
              ? sessions.beginning(wish(subject, role, library), library)
              : sessions.beginning(session, library);
      played++;
      Channel channel = channels.get(random.nextInt(channels.size()));
      new LifeSession(
              sessions, clock, subject, random.split(), dates, folder.resolve("sessions"), channel)
          .play(beginning, library, this::say);
      subject.sessions().keySet().stream()
          .filter(name -> !begun.contains(name))
          .forEach(begun::add);
    } catch (IOException | IllegalArgumentException refused) {
      say("not opened: " + refused.getMessage());
    }
  }

  private Sessions.Wish wish(Subject subject, Role role, Library library) {
    String name = random.nextInt(5) < 3 ? subject.name() : null;
    String procedure = library.main().id();
    return new Sessions.Wish(procedure, name, name == null ? KIND : null, STYLE, role);
  }

  /** The library under the program's rules or, at times, a user's own. */
  private Library rules() {
    LifeRules.Own own =
        random.nextInt(3) > 0
            ? LifeRules.Own.NONE
            : LifeRules.Own.values()[random.nextInt(LifeRules.Own.values().length)];
    @Nullable Library library = rules.library(own);
    if (own != LifeRules.Own.NONE) {
      say("limits of the user's own, " + own.word() + (library == null ? ": refused" : ""));
    }
    return library == null ? rules.shipped() : library;
  }

  private void say(String what) {
    lines.add(dates.minute(clock.instant()) + "  " + what);
  }
}
