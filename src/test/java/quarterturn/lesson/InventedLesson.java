package quarterturn.lesson;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.LessonBench;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.Heard;
import quarterturn.lesson.teacher.Sight;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * A lesson of our own invention in its middle: three benches, whose clocks are ten minutes apart
 * each, and a desk. The red bench waits for its turn to be released, the blue one was stopped, at
 * the green one three have read a gap blind.
 */
public final class InventedLesson {
  public static final Instant NOW = Instant.parse("2027-03-01T09:20:00Z");
  public static final String ID = "2027-03-01-first-turn";
  public static final Plan PLAN =
      new Plan(
          ID,
          "The first turn (invented)",
          List.of("relief"),
          Demo.PLAN.instruments(),
          Level.WORKED,
          true,
          List.of(),
          true,
          List.of(),
          Map.of(),
          Questioning.SOME);
  public static final Set<String> SADDLES = Set.of("action/set-saddles");

  /** The steps in words. */
  public static final Map<String, String> TITLES =
      Map.of(
          "relief/tune", "Relief, before you start: tune to pitch",
          "relief/read", "Relief, measure: relief on the lowest string",
          "relief/slacken", "Relief, the turn: slacken the strings",
          "relief/turn", "Relief, the turn: the turn of the rod");

  /** What the red bench reads to its teacher. */
  public static final Value TURN = new Value.Rod(Turn.EIGHTH);

  public static final Ref RED_HOLD = new Ref("red", 20);
  public static final Ref BLUE_STOP = new Ref("blue", 5);

  private static final String PITCH = "What would the gap be with the strings slack?";

  private InventedLesson() {}

  /** A bench's events with its own clock. */
  private static final class Writing {
    private final List<LessonEvent> events = new ArrayList<>();
    private Instant at;

    Writing(Duration off) {
      this.at = Demo.T.plus(off);
    }

    /** The clock goes on; it is the bench's own. */
    Writing pass(int minutes) {
      at = at.plus(Duration.ofMinutes(minutes));
      return this;
    }

    Writing joined(String name, String... students) {
      events.add(new LessonEvent.Joined(at, name));
      for (String student : students) {
        events.add(new LessonEvent.Came(at, student));
      }
      return this;
    }

    Writing at(String step, String part, int asked) {
      events.add(new LessonEvent.Stepped(at, new Spot("relief", step, part, asked)));
      return this;
    }

    Writing opened(String step, String part, int asked, boolean turn, boolean blind) {
      Spot spot = new Spot("relief", step, part, asked);
      double gauge = turn ? 1 / 16.0 : 0.05;
      String question = turn ? null : PITCH;
      events.add(new LessonEvent.Opened(at, spot, turn, blind, null, gauge, question));
      return this;
    }

    Writing expects(int round, String student, Direction way, double size, String reason) {
      Prediction prediction = new Prediction(way, size, reason, false);
      events.add(new LessonEvent.Predicted(at, round, student, prediction));
      return this;
    }

    Writing then(LessonEvent... more) {
      events.addAll(Arrays.asList(more));
      return this;
    }
  }

  private static LessonEvent reflected(
      Instant at, int round, String student, String reason, boolean missed) {
    return new LessonEvent.Reflected(
        at, round, student, reason, PITCH, "Smaller, the strings pull it.", missed);
  }

  private static List<LessonEvent> red() {
    Writing w = new Writing(Duration.ofMinutes(-10));
    w.joined("Red", "Ana", "Ben").at("tune", "Before you start", 1).pass(2);
    w.at("read", "Measure", 2).opened("read", "Measure", 2, false, false);
    w.expects(6, "Ana", Direction.SAME, 0.6, "It looks bowed.");
    w.expects(6, "Ben", Direction.SAME, 0.2, "The strings are low.").pass(1);
    Value read = new Value.Gap(new Bracket(0.60, 0.65));
    w.then(new LessonEvent.Shown(w.at, 6), new LessonEvent.Resulted(w.at, 6, read)).pass(2);
    w.then(reflected(w.at, 6, "Ana", "The forward bow shows at the middle.", false));
    w.then(reflected(w.at, 6, "Ben", "I looked at the strings, not at the fingerboard.", true));
    w.then(
        new LessonEvent.Accepted(
            w.at, new Ref("desk", 1), new Order.SetLevel("Ben", Level.LAST_MISSING, true)));
    w.at("turn", "The turn", 3).opened("turn", "The turn", 3, true, false);
    w.expects(15, "Ana", Direction.MORE, 0.125, "Tightening pulls the bow flat.");
    w.expects(15, "Ben", Direction.MORE, 0.25, "It is far out.");
    w.then(new LessonEvent.Shown(w.at, 15), new LessonEvent.Ticked(w.at));
    Spot spot = new Spot("relief", "turn", "The turn", 3);
    w.then(new LessonEvent.Held(w.at, spot, "the turn, read back before it is made", TURN));
    w.pass(4).then(new LessonEvent.Ticked(w.at));
    return w.events;
  }

  private static List<LessonEvent> blue() {
    Writing w = new Writing(Duration.ZERO);
    w.joined("Blue", "Cleo").at("tune", "Before you start", 1).pass(3);
    w.at("slacken", "The turn", 2).then(new LessonEvent.Stopped(w.at, "It creaked."));
    w.pass(1).then(new LessonEvent.Ticked(w.at));
    return w.events;
  }

  private static List<LessonEvent> green() {
    Writing w = new Writing(Duration.ofMinutes(10));
    w.joined("Green", "Dov", "Eda", "Fin").at("tune", "Before you start", 1);
    w.at("read", "Measure", 2).opened("read", "Measure", 2, false, true).pass(1);
    w.expects(7, "Dov", Direction.SAME, 0.3, "As most basses.");
    w.expects(7, "Eda", Direction.SAME, 0.5, "I see light under the strings.");
    w.expects(7, "Fin", Direction.SAME, 0.3, "A guess.").pass(1);
    w.then(new LessonEvent.Shown(w.at, 7)).pass(2);
    w.then(
        new LessonEvent.BlindRead(w.at, 7, "Dov", new Bracket(0.40, 0.45)),
        new LessonEvent.BlindRead(w.at, 7, "Eda", new Bracket(0.45, 0.50)),
        new LessonEvent.BlindRead(w.at, 7, "Fin", new Bracket(0.30, 0.35)),
        new LessonEvent.Unveiled(w.at, 7),
        new LessonEvent.Resulted(w.at, 7, new Value.Gap(new Bracket(0.40, 0.45))));
    w.pass(1).then(reflected(w.at, 7, "Dov", "I held the leaf level.", false));
    w.pass(1).then(new LessonEvent.Ticked(w.at));
    return w.events;
  }

  private static List<LessonEvent> desk() {
    Order level = new Order.SetLevel("Ben", Level.LAST_MISSING, true);
    return List.of(new LessonEvent.Ordered(Demo.T, "red", level));
  }

  /** All files, as they would be read. */
  public static List<WriterLog> logs() {
    return List.of(
        log("red", WriterLog.Part.BENCH, red()),
        log("blue", WriterLog.Part.BENCH, blue()),
        log("green", WriterLog.Part.BENCH, green()),
        log("desk", WriterLog.Part.BOARD, desk()));
  }

  private static WriterLog log(String writer, WriterLog.Part part, List<LessonEvent> events) {
    return new WriterLog(new WriterLog.Header(ID, writer, part), events, null, 0);
  }

  /** What a desk sees of it, the red bench just heard of. */
  public static Sight sight() {
    return sight(logs());
  }

  /** What a desk sees of some files. */
  public static Sight sight(List<WriterLog> logs) {
    Map<String, Heard> heard = new TreeMap<>();
    heard.put("red", new Heard(Duration.ofSeconds(4), true, null));
    heard.put("blue", new Heard(Duration.ofMinutes(2), true, null));
    heard.put("green", new Heard(Duration.ofSeconds(40), false, null));
    return new Sight(PLAN, "desk", NOW, DeskView.of(PLAN, logs), heard, TITLES, List.of(), "");
  }

  /** Some files, with events added to those of one writer. */
  public static List<WriterLog> with(List<WriterLog> logs, String writer, LessonEvent... more) {
    List<WriterLog> out = new ArrayList<>();
    for (WriterLog log : logs) {
      List<LessonEvent> events = new ArrayList<>(log.events());
      if (log.header() != null && log.header().writer().equals(writer)) {
        events.addAll(Arrays.asList(more));
      }
      out.add(new WriterLog(log.header(), events, null, 0));
    }
    return out;
  }

  /** As many benches as wanted, named alike, each holding and waiting. */
  public static List<WriterLog> many(int benches) {
    List<WriterLog> out = new ArrayList<>();
    for (int i = 1; i <= benches; i++) {
      Writing w = new Writing(Duration.ZERO).joined("Bench " + i, "Student " + i);
      out.add(log("bench-" + i, WriterLog.Part.BENCH, w.at("tune", "Before", 1).events));
    }
    return out;
  }

  /** Writes plan and files into a folder, and closes them. */
  public static void write(Path folder) throws IOException {
    Files.createDirectories(folder);
    Files.write(
        folder.resolve(LessonFolder.PLAN), PlanFile.text(PLAN).getBytes(StandardCharsets.UTF_8));
    for (WriterLog log : logs()) {
      WriterLog.Header header = log.header();
      if (header != null) {
        try (WriterFile file = WriterFile.create(folder, header)) {
          file.append(log.events());
        }
      }
    }
  }

  /** The bench of a writer, opened as after a crash. */
  public static LessonBench bench(Path folder, String writer) throws IOException {
    return LessonBench.at(WriterFile.open(folder, writer), PLAN.level());
  }

  /** Every bench takes what orders there are and stays as it is. */
  public static void take(Path folder, Instant at) throws Exception {
    for (String writer : List.of("red", "blue", "green")) {
      try (LessonBench bench = bench(folder, writer)) {
        bench.take(LessonFolder.read(folder).logs(), at);
      }
    }
  }

  /** Makes it in a folder and plays its benches for a while, to look at a desk by hand. */
  public static void main(String[] args) throws Exception {
    Path folder = Path.of(args[0]);
    write(folder);
    for (int second = 0; second < Integer.parseInt(args[1]); second++) {
      take(folder, Instant.now());
      Thread.sleep(1000);
    }
  }
}
