package quarterturn.lesson.teacher;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.LessonFolder;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.PlanFile;
import quarterturn.lesson.Value;
import quarterturn.lesson.WriterFile;
import quarterturn.lesson.WriterLog;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Names;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A board of a lesson: what it sees of the folder, and its own file, in which its orders stand. One
 * thread may look while another gives an order. What is done is said back in a sentence.
 */
public final class Board implements Closeable {
  /** How long the sheets of an ended lesson wait for benches that have not taken the end. */
  static final Duration SHEETS_WAIT = Duration.ofSeconds(10);

  private static final int MOST = 99;

  private final Plan plan;
  private final String name;
  private final WriterFile file;
  private final Following following;
  private final Clock clock;
  private final Sheets sheets;
  private @Nullable Instant ending;
  private String sheetsAre = "";
  private List<WriterLog> logs = List.of();
  private Sight sight;

  private Board(Plan plan, Path folder, String name, WriterFile file, Clock clock, Sheets sheets) {
    this.plan = plan;
    this.name = name;
    this.file = file;
    this.following = new Following(folder);
    this.clock = clock;
    this.sheets = sheets;
    this.sight = see();
  }

  /** Writes the sheets of a lesson. */
  public interface Sheets {
    /** Writes them into a folder of their own and says which. */
    Path write(Plan plan, List<WriterLog> logs) throws IOException;
  }

  /**
   * The plan that a lesson's folder holds.
   *
   * @throws IOException where there is none, saying what to do
   */
  public static Plan plan(Path folder) throws IOException, UnreadableException {
    Path plan = folder.resolve(LessonFolder.PLAN);
    if (!Files.isRegularFile(plan)) {
      throw new IOException(
          folder
              + " holds no lesson: it has no "
              + LessonFolder.PLAN
              + "; make one with lesson new");
    }
    return PlanFile.read(LessonFolder.PLAN, Files.readAllBytes(plan));
  }

  /**
   * Opens a board, for the first time or once more.
   *
   * @throws NotUnderstoodException where it can't be called so
   * @throws IOException where it is open elsewhere, or the name is another's, saying what to do
   */
  public static Board open(Path folder, String typed, Clock clock, Sheets sheets)
      throws IOException, UnreadableException {
    Plan plan = plan(folder);
    String name = Names.check("a board", typed);
    WriterFile file = file(folder, plan.lesson(), name);
    return new Board(plan, folder, writer(file, name), file, clock, sheets);
  }

  /** The board's file in this lesson; in a folder's later lessons it has a number behind it. */
  private static WriterFile file(Path folder, String lesson, String name) throws IOException {
    for (int n = 1; n <= MOST; n++) {
      String writer = n == 1 ? name : name + "-" + n;
      WriterFile file;
      try {
        return WriterFile.create(
            folder, new WriterLog.Header(lesson, writer, WriterLog.Part.BOARD));
      } catch (FileAlreadyExistsException e) {
        file = WriterFile.open(folder, writer);
      }
      WriterLog.Header found = file.found().header();
      if (found != null && found.lesson().equals(lesson)) {
        if (found.role() == WriterLog.Part.BOARD) {
          return file;
        }
        file.close();
        throw new IOException(
            writer + " is a bench of this folder; give this board a name of its own with --name");
      }
      file.close();
    }
    throw new IOException("every name from " + name + " to " + name + "-" + MOST + " is taken");
  }

  private static String writer(WriterFile file, String otherwise) {
    WriterLog.Header header = file.found().header();
    return header == null ? otherwise : header.writer();
  }

  /** What was seen at the last look. */
  public synchronized Sight sight() {
    return sight;
  }

  /** Looks at the folder once more. */
  public synchronized Sight look() {
    sight = see();
    if (ending != null && (sight.over() || !sight.now().isBefore(ending.plus(SHEETS_WAIT)))) {
      writeSheets();
      sight = see();
    }
    return sight;
  }

  private Sight see() {
    Instant now = clock.instant();
    Following.Known known = following.look(now);
    logs = known.logs();
    return new Sight(
        plan, name, now, BoardView.of(plan, logs), known.grown(), known.notices(), sheetsAre);
  }

  /** As {@link #release(String, String, Sight)}, by a teacher who has seen the last look. */
  public synchronized String release(String bench, String typed)
      throws RefusedException, IOException {
    return release(bench, typed, sight);
  }

  /**
   * Lets a bench go on: releases what keeps it, stops first. A stop that the teacher has not been
   * told of is not released: the word was meant for something else.
   *
   * @param typed the value as the bench read it; empty where nothing is read back
   * @param seen what the teacher has been shown
   */
  public synchronized String release(String bench, String typed, Sight seen)
      throws RefusedException, IOException {
    BoardView.Row row = fresh(bench);
    String called = Called.name(row);
    List<Keep> open = sight.toRelease(row);
    if (open.isEmpty()) {
      throw new RefusedException(
          row.releases().isEmpty()
              ? "Nothing keeps " + called + "."
              : called
                  + " was let go on by "
                  + releasing(row)
                  + " already; it has not looked yet.");
    }
    Keep keep = open.get(0);
    BoardView.Row before = seen.row(bench);
    if (keep.kind() == Keep.Kind.STOP
        && (before == null || before.releases().stream().noneMatch(keep::sameAs))) {
      String why = Printable.of(keep.what()).strip().replaceAll("[.]+$", "");
      throw new RefusedException(
          "Not done: "
              + called
              + " was stopped just now"
              + (why.isEmpty() ? "" : ": " + why)
              + ". Look there first, then release it once more.");
    }
    Value value;
    try {
      value = ReadBack.of(typed, keep.value());
    } catch (NotUnderstoodException e) {
      throw new RefusedException("Not done: " + e.getMessage() + ".");
    }
    give(Orders.to(row.bench(), new Order.Release(keep.ref(), value), clock.instant()));
    return "Released " + called + ": " + what(keep) + ".";
  }

  private String releasing(BoardView.Row row) {
    return row.releases().stream()
        .map(keep -> sight.pending(row, keep))
        .map(given -> given == null ? "" : given.ref().writer())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static String what(Keep keep) {
    return keep.kind() == Keep.Kind.STOP ? "the stop" : Printable.of(keep.what());
  }

  /** Lets every bench go on that a board holds; stops and hold points stay. */
  public synchronized String releaseAll() throws RefusedException, IOException {
    look();
    List<String> done = new ArrayList<>();
    for (BoardView.Row row : sight.view().rows()) {
      for (Keep keep : sight.toRelease(row)) {
        if (keep.kind() == Keep.Kind.TEACHER) {
          give(Orders.to(row.bench(), new Order.Release(keep.ref(), Value.NONE), clock.instant()));
          done.add(Called.name(row));
        }
      }
    }
    if (done.isEmpty()) {
      throw new RefusedException(
          "No bench is held by a board; stops and hold points are released one by one.");
    }
    return "Released " + String.join(", ", done.stream().distinct().toList()) + ".";
  }

  /**
   * Holds a bench until it is released.
   *
   * @param bench null for all of them
   */
  public synchronized String hold(@Nullable String bench, String reason)
      throws RefusedException, IOException {
    if (reason.isBlank()) {
      throw new RefusedException("Say why, in a few words: the bench shows it.");
    }
    Order order = new Order.Hold(reason.strip());
    if (bench == null) {
      look();
      if (sight.ended()) {
        throw new RefusedException("The lesson is over.");
      }
      give(Orders.toAll(order, clock.instant()));
      return "Held every bench.";
    }
    BoardView.Row row = fresh(bench);
    give(Orders.to(row.bench(), order, clock.instant()));
    return "Held " + Called.name(row) + ".";
  }

  /**
   * Sets where a student stands.
   *
   * @param level null where it stays
   * @param frozen whether it is kept from rising and falling; null where that stays as it is
   */
  public synchronized String level(
      String bench, String student, @Nullable Level level, @Nullable Boolean frozen)
      throws RefusedException, IOException {
    BoardView.Row row = fresh(bench);
    boolean keep = frozen == null ? row.bench().standing(student).frozen() : frozen;
    give(Orders.to(row.bench(), new Order.SetLevel(student, level, keep), clock.instant()));
    String now = (level == null ? row.bench().standing(student).level() : level).words();
    String shown = Printable.of(student) + " at " + Called.name(row) + ": " + now;
    return shown + (keep ? ", kept so" : "") + ".";
  }

  /** Ends the lesson at every bench; the sheets are written once the benches have taken it. */
  public synchronized String end() throws RefusedException, IOException {
    look();
    if (sight.ended()) {
      throw new RefusedException(
          "The lesson has been ended already. The sheets can be written anew.");
    }
    give(Orders.toAll(new Order.End(), clock.instant()));
    ending = clock.instant();
    look();
    return "The lesson is ended. Each bench leaves its instrument in order.";
  }

  /** Writes the sheets as things stand now. */
  public synchronized String sheets() {
    look();
    writeSheets();
    sight = see();
    return sheetsAre;
  }

  private void writeSheets() {
    ending = null;
    try {
      sheetsAre = "The sheets are in " + sheets.write(plan, logs) + "." + notLeft();
    } catch (IOException e) {
      sheetsAre =
          "The sheets could not be written ("
              + Printable.of(String.valueOf(e.getMessage()))
              + "). Make room, then write them again.";
    }
  }

  private String notLeft() {
    String benches =
        sight.view().rows().stream()
            .filter(row -> sight.ended() && !row.bench().over())
            .map(Called::name)
            .collect(Collectors.joining(", "));
    return benches.isEmpty()
        ? ""
        : " Not there yet: what " + benches + " still writes. Write the sheets again later.";
  }

  private BoardView.Row fresh(String bench) throws RefusedException {
    look();
    BoardView.Row row = sight.row(bench);
    if (row == null) {
      throw new RefusedException("There is no such bench any more.");
    }
    return row;
  }

  private void give(LessonEvent.Ordered order) throws IOException {
    file.append(List.of(order));
    sight = see();
  }

  /** Sheets that still wait for benches are written now; what is to be said at the end. */
  public synchronized String leave() {
    if (ending != null) {
      look();
    }
    if (ending != null) {
      writeSheets();
    }
    return sight.ended()
        ? ("The lesson is ended. " + sheetsAre).strip()
        : "The board is left; the lesson goes on. Open it again to see it.";
  }

  /** Closes the board's file. */
  @Override
  public synchronized void close() throws IOException {
    leave();
    file.close();
  }
}
