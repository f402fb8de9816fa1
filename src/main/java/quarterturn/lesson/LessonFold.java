package quarterturn.lesson;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Lists;

/**
 * Adds one event of a bench to its lesson. Pure, and total: an event that does not fit changes
 * nothing it names; {@link LessonRules} says what does not fit.
 */
public final class LessonFold {
  private final BenchLesson before;
  private String name;
  private List<String> students;
  private Map<String, Levels.Standing> levels;
  private @Nullable Spot spot;
  private List<Round> rounds;
  private List<Keep> keeps;
  private Set<Ref> taken;
  private boolean over;
  private LessonEvent.@Nullable Left left;

  private LessonFold(BenchLesson before) {
    this.before = before;
    this.name = before.name();
    this.students = before.students();
    this.levels = before.levels();
    this.spot = before.spot();
    this.rounds = before.rounds();
    this.keeps = before.keeps();
    this.taken = before.taken();
    this.over = before.over();
    this.left = before.left();
  }

  public static BenchLesson after(BenchLesson before, LessonEvent event) {
    LessonFold fold = new LessonFold(before);
    fold.take(event, before.events() + 1);
    return new BenchLesson(
        before.bench(),
        fold.name,
        before.begin(),
        fold.students,
        fold.levels,
        fold.spot,
        fold.rounds,
        fold.keeps,
        fold.taken,
        fold.over,
        fold.left,
        before.events() + 1,
        event.at());
  }

  private void take(LessonEvent event, int n) {
    event
        .match(
            new LessonEvent.Cases<Runnable>(
                joined -> () -> joined(joined),
                came -> () -> came(came),
                went -> () -> went(went.student()),
                stepped -> () -> spot = stepped.spot(),
                this::nothing,
                opened -> () -> rounds = Lists.with(rounds, Round.of(n, opened)),
                e -> change(e, r -> r.predicted(e.student(), e.prediction())),
                e -> change(e, r -> r.shown(e.at())),
                e -> change(e, r -> r.read(e.student(), e.bracket())),
                e -> change(e, r -> r.unveiled(e.at())),
                e -> change(e, r -> r.resulted(e.result(), e.at())),
                reflected -> () -> reflected(reflected),
                e -> keep(n, Keep.Kind.HOLD_POINT, e, e.waitsFor(), e.value(), e.spot()),
                e -> keep(n, Keep.Kind.STOP, e, shown(e.reason()), Value.NONE, spot),
                this::nothing,
                accepted -> () -> accepted(accepted),
                declined -> () -> taken = Lists.union(taken, List.of(declined.ref())),
                this::nothing,
                this::nothing,
                e -> () -> left = e))
        .run();
  }

  private Runnable nothing(LessonEvent event) {
    return () -> {};
  }

  private void joined(LessonEvent.Joined e) {
    name = e.name();
    left = null;
  }

  private void went(String student) {
    students = students.stream().filter(s -> !s.equals(student)).toList();
  }

  private void came(LessonEvent.Came e) {
    if (!students.contains(e.student())) {
      students = Lists.with(students, e.student());
    }
    boolean first = e.level() != null && !levels.containsKey(e.student());
    Levels.Standing now =
        first
            ? Levels.set(before.standing(e.student()), e.level(), false)
            : before.standing(e.student());
    levels = Lists.with(levels, e.student(), now);
  }

  /** Notes a student's reason, and moves the student's level once a round. */
  private void reflected(LessonEvent.Reflected e) {
    Round round = before.round(e.round());
    if (round != null && !round.reflected().contains(e.student())) {
      Levels.Standing now = Levels.after(before.standing(e.student()), round.outcome(e.student()));
      levels = Lists.with(levels, e.student(), now);
      change(e, r -> r.reflected(e.student())).run();
    }
  }

  private Runnable change(LessonEvent.InRound event, UnaryOperator<Round> to) {
    return () ->
        rounds = rounds.stream().map(r -> r.n() == event.round() ? to.apply(r) : r).toList();
  }

  private Runnable keep(
      int n, Keep.Kind kind, LessonEvent event, String what, Value value, @Nullable Spot at) {
    Ref ref = new Ref(before.bench(), n);
    return () -> keeps = Lists.with(keeps, new Keep(ref, kind, event.at(), what, value, at, null));
  }

  private static String shown(@Nullable String reason) {
    return reason == null ? "" : reason;
  }

  private void accepted(LessonEvent.Accepted e) {
    taken = Lists.union(taken, List.of(e.ref()));
    Order order = e.order();
    if (order instanceof Order.Release release) {
      keeps = keeps.stream().map(k -> k.released(release.keeps(), e.ref())).toList();
    } else if (order instanceof Order.Hold hold) {
      keeps =
          Lists.with(
              keeps,
              new Keep(e.ref(), Keep.Kind.TEACHER, e.at(), hold.reason(), Value.NONE, null, null));
    } else if (order instanceof Order.SetLevel set) {
      Levels.Standing now = Levels.set(before.standing(set.student()), set.level(), set.frozen());
      levels = Lists.with(levels, set.student(), now);
    } else if (order instanceof Order.End) {
      over = true;
    }
  }
}
