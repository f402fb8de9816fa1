package quarterturn.lesson;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import org.jspecify.annotations.Nullable;

/**
 * Takes one event of a bench into what stood before. Pure, and total: an event that does not fit
 * changes nothing it names; {@link Rules} says what does not fit.
 */
final class LessonFold {
  private final BenchLesson before;
  private String name;
  private List<String> students;
  private Map<String, Levels.Standing> levels;
  private @Nullable Spot spot;
  private List<Round> rounds;
  private List<Keep> keeps;
  private Set<Ref> taken;
  private boolean over;

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
  }

  static BenchLesson after(BenchLesson before, LessonEvent event) {
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
        before.events() + 1,
        event.at());
  }

  private void take(LessonEvent event, int n) {
    if (event instanceof LessonEvent.Joined e) {
      name = e.name();
    } else if (event instanceof LessonEvent.Came e) {
      came(e.student());
    } else if (event instanceof LessonEvent.Went e) {
      students = students.stream().filter(s -> !s.equals(e.student())).toList();
    } else if (event instanceof LessonEvent.Stepped e) {
      spot = e.spot();
    } else if (event instanceof LessonEvent.Opened e) {
      rounds = Grown.with(rounds, Round.of(n, e));
    } else if (event instanceof LessonEvent.Held e) {
      keep(n, Keep.Kind.HOLD_POINT, e.at(), e.waitsFor(), e.value(), e.spot());
    } else if (event instanceof LessonEvent.Stopped e) {
      String reason = e.reason() == null ? "" : e.reason();
      keep(n, Keep.Kind.STOP, e.at(), reason, Value.NONE, spot);
    } else if (event instanceof LessonEvent.Accepted e) {
      tookUp(e.ref());
      accepted(e);
    } else if (event instanceof LessonEvent.Declined e) {
      tookUp(e.ref());
    } else {
      inRound(event);
    }
  }

  private void came(String student) {
    if (!students.contains(student)) {
      students = Grown.with(students, student);
    }
    levels = Grown.with(levels, student, before.standing(student));
  }

  private void inRound(LessonEvent event) {
    if (event instanceof LessonEvent.Predicted e) {
      change(e.round(), r -> r.predicted(e.student(), e.prediction()));
    } else if (event instanceof LessonEvent.Shown e) {
      change(e.round(), r -> r.shown(e.at()));
    } else if (event instanceof LessonEvent.BlindRead e) {
      change(e.round(), r -> r.read(e.student(), e.bracket()));
    } else if (event instanceof LessonEvent.Unveiled e) {
      change(e.round(), r -> r.unveiled(e.at()));
    } else if (event instanceof LessonEvent.Resulted e) {
      change(e.round(), r -> r.resulted(e.result(), e.at()));
    } else if (event instanceof LessonEvent.Reflected e) {
      reflected(e);
    }
  }

  /** A level moves once a round, when the student has said what they make of the result. */
  private void reflected(LessonEvent.Reflected e) {
    Round round = before.round(e.round());
    if (round != null && !round.reflected().contains(e.student())) {
      Levels.Standing now = Levels.after(before.standing(e.student()), round.outcome(e.student()));
      levels = Grown.with(levels, e.student(), now);
      change(e.round(), r -> r.reflected(e.student()));
    }
  }

  private void change(int round, UnaryOperator<Round> to) {
    rounds = rounds.stream().map(r -> r.n() == round ? to.apply(r) : r).toList();
  }

  private void keep(
      int n, Keep.Kind kind, Instant since, String what, Value value, @Nullable Spot at) {
    Ref ref = new Ref(before.bench(), n);
    keeps = Grown.with(keeps, new Keep(ref, kind, since, what, value, at, null));
  }

  private void tookUp(Ref ref) {
    Set<Ref> more = new HashSet<>(taken);
    more.add(ref);
    taken = more;
  }

  private void accepted(LessonEvent.Accepted e) {
    Order order = e.order();
    if (order instanceof Order.Release release) {
      List<Keep> now = new ArrayList<>();
      for (Keep keep : keeps) {
        boolean meant = keep.ref().equals(release.keeps()) && keep.open();
        now.add(meant ? keep.released(e.ref()) : keep);
      }
      keeps = now;
    } else if (order instanceof Order.Hold hold) {
      keeps =
          Grown.with(
              keeps,
              new Keep(e.ref(), Keep.Kind.TEACHER, e.at(), hold.reason(), Value.NONE, null, null));
    } else if (order instanceof Order.SetLevel set) {
      Levels.Standing now = Levels.set(before.standing(set.student()), set.level(), set.frozen());
      levels = Grown.with(levels, set.student(), now);
    } else {
      over = true;
    }
  }
}
