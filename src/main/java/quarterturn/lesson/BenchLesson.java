package quarterturn.lesson;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Lists;

/**
 * The state of one bench, added up from its events. An order of a desk counts from the moment the
 * bench accepted it, and the acceptance carries the order, so that the bench's own file holds
 * everything.
 *
 * @param bench the writer's id
 * @param name as its students call it
 * @param begin the level that students begin with
 * @param students those present, in the order they came
 * @param levels where each stands who was ever here
 * @param spot where the bench is, or null
 * @param rounds every reading and turn, oldest first
 * @param keeps what kept and keeps the bench, oldest first
 * @param taken the orders that were accepted or declined
 * @param over whether the teacher has ended the lesson
 * @param left that it was left in order and has not joined again, or null
 * @param events how many there were
 * @param last when the last of them was, by the bench's own clock, or null
 */
public record BenchLesson(
    String bench,
    String name,
    Level begin,
    List<String> students,
    Map<String, Levels.Standing> levels,
    @Nullable Spot spot,
    List<Round> rounds,
    List<Keep> keeps,
    Set<Ref> taken,
    boolean over,
    LessonEvent.@Nullable Left left,
    int events,
    @Nullable Instant last) {
  /** The lesson of a bench at which nothing has happened yet. */
  public static BenchLesson empty(String bench, Level begin) {
    return new BenchLesson(
        bench, bench, begin, List.of(), Map.of(), null, List.of(), List.of(), Set.of(), false, null,
        0, null);
  }

  /** The lesson of a bench after all of {@code events}. */
  public static BenchLesson of(String bench, Level begin, List<LessonEvent> events) {
    BenchLesson lesson = empty(bench, begin);
    for (LessonEvent event : events) {
      lesson = LessonFold.after(lesson, event);
    }
    return lesson;
  }

  /** This lesson with a later sign of life, by the bench's own clock. */
  BenchLesson heard(@Nullable Instant at) {
    return new BenchLesson(
        bench, name, begin, students, levels, spot, rounds, keeps, taken, over, left, events, at);
  }

  /**
   * Whether nobody is at work here any more: the lesson is over, or the bench was left in order.
   */
  public boolean gone() {
    return over || left != null;
  }

  /** This lesson after one more event. */
  public BenchLesson after(LessonEvent event) {
    return LessonFold.after(this, event);
  }

  /** The round numbered {@code n}, or null. */
  public @Nullable Round round(int n) {
    return rounds.stream().filter(r -> r.n() == n).findFirst().orElse(null);
  }

  /**
   * The last round without a result, or null.
   *
   * @param turn whether it is about the way of a turn, or about a reading
   */
  public @Nullable Round pending(boolean turn) {
    Round last = Lists.last(rounds, round -> round.opened().turn() == turn);
    return last == null || last.result() != null ? null : last;
  }

  /** The step that a round is about: of the way of a turn, the turn's own. */
  public Spot about(Round round) {
    int next = rounds.indexOf(round) + 1;
    boolean early = round.wayAlone() && next < rounds.size();
    return (early ? rounds.get(next) : round).opened().spot();
  }

  /** The last rounds, in which something may still come or be corrected, oldest first. */
  public List<Round> recent() {
    Round way = Lists.last(rounds, round -> round.opened().turn());
    List<Round> last = rounds.subList(Math.max(0, rounds.size() - 2), rounds.size());
    return way == null || last.contains(way)
        ? last
        : Stream.concat(Stream.of(way), last.stream()).toList();
  }

  /** The round that students who are here have still to think about, or null. */
  public @Nullable Round reflecting() {
    return recent().stream()
        .filter(round -> !round.toReflect(students).isEmpty())
        .findFirst()
        .orElse(null);
  }

  /** The last round, or null. */
  public @Nullable Round lastRound() {
    return rounds.isEmpty() ? null : rounds.get(rounds.size() - 1);
  }

  /** The thing that has kept the bench since the event {@code ref}, or null. */
  public @Nullable Keep keep(Ref ref) {
    return keeps.stream().filter(k -> k.ref().equals(ref)).findFirst().orElse(null);
  }

  /** What keeps the bench now: stops first, then in the order they began. */
  public List<Keep> keptBy() {
    return keeps.stream()
        .filter(Keep::open)
        .sorted((a, b) -> Boolean.compare(b.kind() == Keep.Kind.STOP, a.kind() == Keep.Kind.STOP))
        .toList();
  }

  /** The level and standing of a student. */
  public Levels.Standing standing(String student) {
    return Objects.requireNonNullElse(levels.get(student), Levels.Standing.at(begin));
  }

  /** The level that the bench shows: that of the student who needs most help. */
  public Level level() {
    return students.stream().map(s -> standing(s).level()).min(Level::compareTo).orElse(begin);
  }
}
