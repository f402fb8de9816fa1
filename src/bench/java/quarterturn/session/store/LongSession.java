package quarterturn.session.store;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.journal.Unforced;
import quarterturn.unit.Bracket;

/**
 * How long an answer takes, from prompt to prompt without the disk, after 100 and after 5,000 of
 * them, and how long to read and resume so long a session, in one process and by the program:
 * {@code FOLDER [ANSWERS]}. The folder is left with the session and its procedure.
 *
 * <p>No proven procedure goes round more than twenty times, so this one is as long as need be.
 */
public final class LongSession {
  private static final int ROUNDS = 20;
  private static final int WINDOW = 50;
  private static final int EARLY = 100;
  private static final int FEW = 10;
  private static final int RUNS = 9;
  private static final double FLAT = 1.2;
  private static final ThreadMXBean PROCESSOR = ManagementFactory.getThreadMXBean();
  private static final double RESUME_MS = 500;

  private LongSession() {}

  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    int answers = args.length > 1 ? Integer.parseInt(args[1]) : 5000;
    Files.createDirectories(folder.resolve("procedures"));
    Path sheet = folder.resolve("procedures/long.yaml");
    Files.writeString(sheet, procedure(answers / ROUNDS / 2 + 1));
    long from = System.nanoTime();
    Library library = Checker.proven(new Shelf(null), sheet.toString());
    System.out.printf("Proven in %.0f ms.%n", ms(from));
    double[] early = new double[RUNS];
    double[] late = new double[RUNS];
    double[] resumes = new double[RUNS];
    double[] busies = new double[RUNS];
    List<Event> events = List.of();
    for (int i = 0; i < RUNS; i++) {
      events = new ArrayList<>();
      double[] times = played(library, answers, events);
      early[i] = median(times, EARLY);
      late[i] = median(times, answers);
      Path file = kept(folder, "long", events);
      from = System.nanoTime();
      long busy = PROCESSOR.getCurrentThreadCpuTime();
      resumed(library, Journal.read(file).events());
      resumes[i] = ms(from);
      busies[i] = (PROCESSOR.getCurrentThreadCpuTime() - busy) / 1e6;
      System.out.printf(
          "%6.1f us at answer %d, %6.1f us at %d: %.2f; resumed in %.0f ms%n",
          early[i], EARLY, late[i], answers, late[i] / early[i], resumes[i]);
    }
    double[] ratios = new double[RUNS];
    Arrays.setAll(ratios, i -> late[i] / early[i]);
    told("Late to early", ratios, FLAT, "");
    told("Resume in process", resumes, RESUME_MS, " ms");
    told("Its time on the processor", busies, RESUME_MS, " ms");
    byProgram(folder, events);
  }

  /**
   * The program resumes the session, and one of a few answers in turn: what both take alike, such
   * as to prove so long a procedure, is no part of a resume.
   */
  private static void byProgram(Path folder, List<Event> events)
      throws IOException, InterruptedException {
    kept(folder, "short", events.subList(0, FEW));
    double[] more = new double[RUNS];
    for (int i = 0; i < RUNS; i++) {
      String own = " --lines --own " + folder;
      Path data = folder.resolve("data");
      double few = Run.of(TenYears.program(), "resume short" + own, data).ms();
      more[i] = Run.of(TenYears.program(), "resume long" + own, data).ms() - few;
    }
    told("Resume by the program, more than one of a few answers", more, RESUME_MS, " ms");
  }

  private static void told(String what, double[] all, double bound, String unit) {
    Arrays.sort(all);
    System.out.printf(
        "%s, median of %d: %.2f%s (%.2f to %.2f); bound %.1f%s%n",
        what, all.length, all[all.length / 2], unit, all[0], all[all.length - 1], bound, unit);
  }

  /** A procedure that asks for a note and a reading many times, twenty times over. */
  static String procedure(int pairs) {
    StringBuilder text = new StringBuilder();
    text.append(
        """
        procedure: long
        revision: 1
        title: Many looks
        purpose: Look at the neck for a long time.
        tools: [capo, feeler gauges from 0.05 to 1.00 mm]
        retune: tune
        reread: read-1
        steps:
          - part: Look
          - use: make-ready
            tune:
              text: Tune all strings to pitch.
            settle:
              text: Let the neck settle for {minutes} under the pull of the strings.
        """);
    for (int i = 1; i <= pairs; i++) {
      text.append(
          """
            - note: seen-%1$d
              text: What do you see?
            - read: relief
              id: read-%1$d
              string: lowest
              text: Hold {lowest} at fret 1 and at {joint}. Which gauge is the thickest to pass?
              cannot: go on
          """
              .formatted(i)
              .indent(2)
              .replaceAll("(?m)^    ", "  "));
    }
    text.append(
        """
          - cases:
              - seen-1 reached at least %d times: go on
              - otherwise: seen-1
          - part: Done
          - done: over
            text: The relief was read.
            outcome: looked
        """
            .formatted(ROUNDS));
    return text.toString();
  }

  private static Event.Started started(Library library) {
    return new Event.Started(
        Instant.parse("2027-03-01T12:00:00Z"),
        library.main().id(),
        library.main().revision(),
        library.main().digest(),
        Role.BEGINNER,
        null,
        "bass-34",
        Style.MEDIUM,
        null,
        List.of(),
        List.of(),
        null,
        null);
  }

  /** Plays answers, a correction among every ten, and times each. */
  private static double[] played(Library library, int answers, List<Event> events)
      throws IOException, RefusedException {
    Instant[] now = {Instant.parse("2027-03-01T12:00:00Z")};
    Clock clock = clock(now);
    Engine engine = new Engine(library, new BeliefAdvisor());
    LiveBench bench = LiveBench.start(engine, events::addAll, "long", started(library), clock);
    double[] times = new double[answers + 1];
    for (int i = 1; i <= answers; i++) {
      Prompt asked = bench.prompt();
      now[0] = asked instanceof Prompt.Wait wait ? wait.until() : now[0].plusSeconds(20);
      boolean corrects = i % 10 == 9 && asked instanceof Prompt.Measure;
      Answer answer = corrects ? new Answer.Correct() : answer(asked, i);
      long from = System.nanoTime();
      bench.answer(answer);
      bench.prompt();
      times[i] = (System.nanoTime() - from) / 1e3;
    }
    return times;
  }

  private static Answer answer(Prompt asked, int i) {
    if (asked instanceof Prompt.Measure) {
      double low = 0.30 + 0.05 * (i % 3);
      return new Answer.Measured(new Bracket(low, low + 0.05));
    }
    if (asked instanceof Prompt.Write) {
      return new Answer.Wrote("Nothing new, look " + i);
    }
    return asked instanceof Prompt.Wait ? new Answer.Waited(null) : new Answer.Confirmed();
  }

  private static Clock clock(Instant[] now) {
    return new Clock() {
      @Override
      public Instant instant() {
        return now[0];
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
  }

  private static double median(double[] times, int at) {
    double[] part = Arrays.copyOfRange(times, at - WINDOW, at);
    Arrays.sort(part);
    return part[WINDOW / 2];
  }

  private static void resumed(Library library, List<Event> events) throws IOException {
    Engine engine = new Engine(library, new BeliefAdvisor());
    Instant last = events.get(events.size() - 1).at();
    Event.Resumed again = new Event.Resumed(last.plusSeconds(60), List.of(), null);
    LiveBench.resume(engine, more -> {}, "long", events, again, Clock.systemUTC()).prompt();
  }

  /** Keeps a session in the folder. */
  private static Path kept(Path folder, String name, List<Event> events) throws IOException {
    Path sessions = Files.createDirectories(folder.resolve("data/sessions"));
    Event.Started was = (Event.Started) events.get(0);
    Journal.Header header = new Journal.Header(name, was.procedure(), was.revision(), was.digest());
    Path file = sessions.resolve(name + LogFormat.ENDING);
    Unforced.write(file, header, events);
    return file;
  }

  private static double ms(long from) {
    return (System.nanoTime() - from) / 1e6;
  }
}
