package quarterturn.lesson.teacher;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.Keep;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Names;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A desk of a lesson: what it sees of the folder, and its own file of orders. One thread may look
 * while another gives an order. Each order returns a sentence on what was done.
 */
public final class Desk implements Closeable {
  /** How long the sheets of an ended lesson wait for benches that have not taken the end. */
  static final Duration SHEETS_WAIT = Duration.ofSeconds(10);

  private final Plan plan;
  private final WriterFile file;
  private final Following following;
  private final Clock clock;
  private final Sheets sheets;
  private final Map<String, String> titles;
  private @Nullable Instant ending;
  private String sheetsAre = "";
  private List<WriterLog> logs = List.of();
  private Sight sight;

  private Desk(
      Plan plan,
      Path folder,
      WriterFile file,
      Clock clock,
      Sheets sheets,
      Map<String, String> titles) {
    this.plan = plan;
    this.file = file;
    this.following = new Following(folder);
    this.clock = clock;
    this.sheets = sheets;
    this.titles = Map.copyOf(titles);
    this.sight = see();
  }

  /** Writes the sheets of a lesson. */
  public interface Sheets {
    /** Writes the sheets into a folder of their own, and returns that folder. */
    Path write(Plan plan, List<WriterLog> logs) throws IOException;
  }

  /**
   * Opens a desk, for the first time or once more.
   *
   * @param titles of the steps in words, by procedure and step
   * @throws NotUnderstoodException where it can't be called so
   * @throws IOException where it is open elsewhere, saying what to do
   */
  public static Desk open(
      Path folder, String typed, Clock clock, Sheets sheets, Map<String, String> titles)
      throws IOException, UnreadableException {
    Plan plan = PlanFile.in(folder);
    String name = Names.check("a desk", typed);
    WriterFile file = WriterFile.of(folder, plan.lesson(), name, WriterLog.Part.BOARD);
    return new Desk(plan, folder, file, clock, sheets, titles);
  }

  /** What the desk saw at its last look. */
  public synchronized Sight sight() {
    return sight;
  }

  /** Looks at the folder once more and returns what it sees. */
  public synchronized Sight look() {
    sight = see();
    if (ending != null && (sight.over() || waited(ending, sight.now()))) {
      writeSheets();
      sight = see();
    }
    return sight;
  }

  /** Whether the sheets have waited long enough, or nobody knows since the clock was set back. */
  private static boolean waited(Instant ending, Instant now) {
    return now.isBefore(ending) || !now.isBefore(ending.plus(SHEETS_WAIT));
  }

  private Sight see() {
    Instant now = clock.instant();
    Following.Known known = following.look(System.nanoTime());
    logs = known.logs();
    return new Sight(
        plan,
        file.writer(),
        now,
        DeskView.of(plan, logs, known.heard()),
        known.heard(),
        titles,
        known.notices(),
        sheetsAre);
  }

  /**
   * Lets a bench go on: releases what keeps it, stops first. A stop that the teacher has not been
   * told of is not released: the word was meant for something else.
   *
   * @param typed the value as the bench read it; empty where nothing is read back
   * @param seen what the teacher has been shown
   * @throws NotUnderstoodException where that is no such value
   */
  public synchronized String release(String bench, String typed, Sight seen)
      throws RefusedException, IOException {
    DeskView.Row row = fresh(bench);
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
    DeskView.Row before = seen.row(bench);
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
    Order.Release order = new Order.Release(keep.ref(), ReadBack.of(typed, keep.value()));
    boolean last =
        sight.view().rows().stream()
            .filter(other -> !other.bench().bench().equals(bench))
            .noneMatch(other -> holds(other, keep));
    // The last bench ends it for those too that join later.
    give(last && forAll(keep) ? null : row, order);
    return "Released " + called + ": " + what(keep) + ".";
  }

  private String releasing(DeskView.Row row) {
    return row.releases().stream()
        .map(keep -> sight.pending(row, keep))
        .map(given -> given == null ? "" : given.ref().writer())
        .distinct()
        .collect(Collectors.joining(", "));
  }

  /** Whether a bench is held by this too, or will be once it looks, and was not let go on. */
  private boolean holds(DeskView.Row row, Keep keep) {
    boolean later = !row.bench().gone() && !row.bench().taken().contains(keep.ref());
    return later || sight.toRelease(row).stream().anyMatch(keep::sameAs);
  }

  /** Whether a desk began a hold at every bench, also at those that join later. */
  private boolean forAll(Keep keep) {
    return logs.stream()
        .filter(log -> DeskView.writer(log).equals(keep.ref().writer()))
        .flatMap(log -> log.events().stream().skip(keep.ref().n() - 1L).limit(1))
        .anyMatch(e -> e instanceof LessonEvent.Ordered ordered && ordered.bench() == null);
  }

  private static String what(Keep keep) {
    return keep.kind() == Keep.Kind.STOP ? "the stop" : Printable.of(keep.what());
  }

  /** Lets every bench go on that a desk holds; stops and hold points stay. */
  public synchronized String releaseAll() throws RefusedException, IOException {
    look();
    List<String> done = new ArrayList<>();
    Set<Ref> ended = new HashSet<>();
    Sight before = sight;
    for (DeskView.Row row : before.view().rows()) {
      for (Keep keep : before.toRelease(row)) {
        if (keep.kind() == Keep.Kind.TEACHER) {
          boolean all = forAll(keep);
          if (!all || ended.add(keep.ref())) {
            give(all ? null : row, new Order.Release(keep.ref(), Value.NONE));
          }
          done.add(Called.name(row));
        }
      }
    }
    if (done.isEmpty()) {
      throw new RefusedException(
          "No bench is held by a desk; stops and hold points are released one by one.");
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
    DeskView.Row row = bench == null ? null : fresh(bench);
    if (row == null && look().ended()) {
      throw new RefusedException("The lesson is over.");
    }
    give(row, new Order.Hold(reason.strip()));
    return "Held " + (row == null ? "every bench" : Called.name(row)) + ".";
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
    DeskView.Row row = fresh(bench);
    boolean keep = frozen == null ? row.bench().standing(student).frozen() : frozen;
    give(row, new Order.SetLevel(student, level, keep));
    String now = (level == null ? row.bench().standing(student).level() : level).words();
    String shown = Printable.of(student) + " at " + Called.name(row) + ": " + now;
    return shown + (keep ? ", kept so" : "") + ".";
  }

  /** The questions asked of those at a bench, and whether each comes back next time. */
  public synchronized List<Order.ComeBack> asked(String bench) throws RefusedException {
    DeskView.Row row = fresh(bench);
    List<Order.ComeBack> out = new ArrayList<>();
    for (StudentRecord record : StudentRecord.of(plan, logs)) {
      if (row.bench().levels().containsKey(record.student())) {
        for (String question : record.questions()) {
          boolean again = record.returning().contains(question);
          out.add(new Order.ComeBack(record.student(), question, again));
        }
      }
    }
    return out;
  }

  /** Decides whether a question comes back next time. */
  public synchronized String decide(Order.ComeBack order) throws RefusedException, IOException {
    give(null, order);
    return Printable.of(order.student())
        + (order.again() ? ": it comes back next time." : ": it does not come back.");
  }

  /** Ends the lesson at every bench; the sheets are written once the benches have taken it. */
  public synchronized String end() throws RefusedException, IOException {
    look();
    if (sight.ended()) {
      throw new RefusedException(
          "The lesson has been ended already. The sheets can be written anew.");
    }
    give(null, new Order.End());
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
            .filter(row -> sight.ended() && !row.bench().gone())
            .map(Called::name)
            .collect(Collectors.joining(", "));
    return benches.isEmpty()
        ? ""
        : " Not there yet: what " + benches + " still writes. Write the sheets again later.";
  }

  private DeskView.Row fresh(String bench) throws RefusedException {
    look();
    DeskView.Row row = sight.row(bench);
    if (row == null) {
      throw new RefusedException("There is no such bench any more.");
    }
    return row;
  }

  /** Writes an order for a bench, or for all benches where {@code row} is null. */
  private void give(DeskView.@Nullable Row row, Order order) throws RefusedException, IOException {
    Refusal refusal = row == null ? null : Acceptance.refusal(row.bench(), order);
    if (refusal != null) {
      throw new RefusedException("Not done: " + refusal.words() + ".");
    }
    String bench = row == null ? null : row.bench().bench();
    file.append(List.of(new LessonEvent.Ordered(clock.instant(), bench, order)));
    sight = see();
  }

  /** Writes the sheets where they still wait for benches, and returns what to say at the end. */
  public synchronized String leave() {
    if (ending != null) {
      look();
    }
    if (ending != null) {
      writeSheets();
    }
    return sight.ended()
        ? ("The lesson is ended. " + sheetsAre).strip()
        : "The desk is left; the lesson goes on. Open it again to see it.";
  }

  /** Closes the desk's file. */
  @Override
  public synchronized void close() throws IOException {
    leave();
    file.close();
  }
}
