package quarterturn.rehearsal;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Library;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Role;
import quarterturn.procedure.Step;
import quarterturn.procedure.Verdict;
import quarterturn.session.Place;

/** What a session would have to be like to go down a certain road, as its conditions tell. */
final class Wishes {
  private final Library library;
  private final RandomGenerator random;
  private final Map<Place, Set<String>> options = new HashMap<>();
  private final Map<Place, Set<String>> avoided = new HashMap<>();
  private final Map<Place, Feel> feels = new HashMap<>();
  private final Map<Quantity, Set<Verdict>> shunned = new EnumMap<>(Quantity.class);
  private final Map<Quantity, Verdict> readings = new EnumMap<>(Quantity.class);
  private final Map<Quantity, Double> values = new EnumMap<>(Quantity.class);
  private boolean lacking;
  private @Nullable Role role;
  private @Nullable Temper temper;

  /** How a neck would have to be. */
  enum Temper {
    SOUND,
    DEAD,
    REVERSED,
    TOUCHING,
    FAR,
    TWISTED
  }

  Wishes(Library library, RandomGenerator random) {
    this.library = library;
    this.random = random;
  }

  /** The wishes of a road; those of its end count before those of its beginning. */
  static Wishes along(List<Roads.Road> road, Library library, RandomGenerator random) {
    Wishes wishes = new Wishes(library, random);
    for (Roads.Road piece : road) {
      Place from = piece.from();
      if (piece.way() != null) {
        wishes.way(from, piece.way().label());
      } else if (!piece.from().procedure().equals(piece.to().procedure())) {
        wishes.lacking |=
            !(library.procedure(from.procedure()).step(from.step()) instanceof Step.Call);
      }
      String procedure = piece.way() == null ? from.procedure() : piece.way().procedure();
      piece.unless().forEach(when -> wishes.unless(procedure, when));
      if (piece.when() != null) {
        wishes.wish(procedure, piece.when());
      }
    }
    return wishes;
  }

  private void way(Place from, String label) {
    Step step = library.procedure(from.procedure()).step(from.step());
    if (step instanceof Step.Choose) {
      options.put(from, Set.of(label));
    } else if (step instanceof Step.TurnRod) {
      for (Feel feel : Feel.values()) {
        if (feel.word().equals(label)) {
          feels.put(from, feel);
        }
      }
    }
  }

  private void wish(String procedure, Condition when) {
    if (when instanceof Condition.All all) {
      all.parts().forEach(part -> wish(procedure, part));
    } else if (when instanceof Condition.Any any) {
      wish(procedure, any.parts().get(random.nextInt(any.parts().size())));
    } else if (when instanceof Condition.Not not) {
      unless(procedure, not.part());
    } else if (when instanceof Condition.Chosen chosen) {
      options.put(new Place(procedure, chosen.step()), chosen.options());
    } else if (when instanceof Condition.Is is) {
      role = is.role();
    } else if (when instanceof Condition.Felt felt) {
      for (Step step : library.procedure(procedure).steps().values()) {
        if (step instanceof Step.TurnRod) {
          feels.put(new Place(procedure, step.id()), felt.feel());
        }
      }
    } else if (when instanceof Condition.Against against) {
      readings.put(against.quantity(), against.verdict());
    } else if (when instanceof Condition.Strings strings) {
      readings.put(strings.quantity(), strings.verdict());
    } else if (when instanceof Condition.Below below) {
      values.put(below.quantity(), below.limit() - below(below.quantity()));
    } else if (when instanceof Condition.AtLeast least) {
      values.put(least.quantity(), least.limit());
    } else {
      temper(when);
    }
  }

  /** That a condition does not hold. */
  private void unless(String procedure, Condition when) {
    if (when instanceof Condition.All all) {
      unless(procedure, all.parts().get(random.nextInt(all.parts().size())));
    } else if (when instanceof Condition.Any any) {
      any.parts().forEach(part -> unless(procedure, part));
    } else if (when instanceof Condition.Not not) {
      wish(procedure, not.part());
    } else if (when instanceof Condition.Chosen chosen) {
      avoided
          .computeIfAbsent(new Place(procedure, chosen.step()), place -> new HashSet<>())
          .addAll(chosen.options());
    } else if (when instanceof Condition.Is is) {
      role = is.role() == Role.BEGINNER ? Role.TECHNICIAN : Role.BEGINNER;
    } else if (when instanceof Condition.Against against) {
      not(against.quantity(), against.verdict());
    } else if (when instanceof Condition.Strings strings) {
      not(strings.quantity(), strings.verdict());
    } else if (when instanceof Condition.Below below) {
      values.put(below.quantity(), below.limit());
    } else if (when instanceof Condition.AtLeast least) {
      values.put(least.quantity(), least.limit() - below(least.quantity()));
    }
  }

  /** Another verdict than this, where it is the one that is wished for, or none is. */
  private void not(Quantity quantity, Verdict verdict) {
    Set<Verdict> shunned = this.shunned.computeIfAbsent(quantity, q -> new HashSet<>());
    shunned.add(verdict);
    Verdict now = readings.get(quantity);
    if (now == null || shunned.contains(now)) {
      List<Verdict> left =
          Arrays.stream(Verdict.values())
              .filter(one -> one != Verdict.NOT_MEASURED && !shunned.contains(one))
              .toList();
      if (!left.isEmpty()) {
        readings.put(quantity, left.get(random.nextInt(left.size())));
      }
    }
  }

  private static double below(Quantity quantity) {
    return quantity.unit().equals("mm") ? 0.05 : 1;
  }

  private void temper(Condition when) {
    if (when instanceof Condition.Answered answered) {
      temper =
          switch (answered.response()) {
            case NOT_TURNED, MOVED -> Temper.SOUND;
            case NO_ANSWER -> Temper.DEAD;
            case WRONG_WAY -> Temper.REVERSED;
            case UNSEEN -> Temper.TOUCHING;
          };
    } else if (when instanceof Condition.Seems seems) {
      temper =
          switch (seems.doubt()) {
            case DEAD, FULLY_LOOSE -> Temper.DEAD;
            case REVERSED -> Temper.REVERSED;
          };
    } else if (when instanceof Condition.Turned) {
      temper = Temper.FAR;
    } else if (when instanceof Condition.Differs) {
      temper = Temper.TWISTED;
    }
  }

  /** Options wished for at a step, in alphabetical order; empty where none is. */
  List<String> options(Place place) {
    return options.getOrDefault(place, Set.of()).stream()
        .filter(option -> !avoids(place, option))
        .sorted()
        .toList();
  }

  /** Whether an option should rather not be chosen. */
  boolean avoids(Place place, String option) {
    return avoided.getOrDefault(place, Set.of()).contains(option);
  }

  @Nullable Feel feel(Place place) {
    return feels.get(place);
  }

  @Nullable Verdict reading(Quantity quantity) {
    return readings.get(quantity);
  }

  @Nullable Double value(Quantity quantity) {
    return values.get(quantity);
  }

  /** Whether nothing should be known from earlier sessions, so that it is read first. */
  boolean lacking() {
    return lacking;
  }

  @Nullable Role role() {
    return role;
  }

  @Nullable Temper temper() {
    return temper;
  }
}
