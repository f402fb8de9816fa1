package quarterturn.session;

import java.time.Instant;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.function.Supplier;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Decision;
import quarterturn.craft.Window;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Kind;
import quarterturn.procedure.Library;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Style;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.Which;
import quarterturn.unit.Bracket;

/** Decides conditions on a state, whole brackets against whole windows. */
final class Judge {
  private static final double SLACK = 1e-6;

  private final State state;
  private final Library library;
  private final @Nullable Kind kind;
  private final @Nullable Window window;
  private final Instant now;

  /** The reading just taken, where the step that branches is a measurement. */
  private final Event.@Nullable Read just;

  /** What the readings say of the rod; asked only where a condition needs it. */
  private final Supplier<Optional<Decision.Reason>> fault;

  Judge(
      State state,
      Library library,
      @Nullable Kind kind,
      @Nullable Window window,
      Instant now,
      Event.@Nullable Read just,
      Supplier<Optional<Decision.Reason>> fault) {
    this.state = state;
    this.library = library;
    this.kind = kind;
    this.window = window;
    this.now = now;
    this.just = just;
    this.fault = fault;
  }

  /** The first branch that holds, their number where none does. */
  int choose(Branch.Fork fork) {
    int way = 0;
    while (way < fork.branches().size() && !holds(fork.branches().get(way).when())) {
      way++;
    }
    return way;
  }

  boolean holds(Condition condition) {
    if (condition instanceof Condition.All all) {
      return all.parts().stream().allMatch(this::holds);
    } else if (condition instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(this::holds);
    } else if (condition instanceof Condition.Not not) {
      return !holds(not.part());
    } else if (condition instanceof Condition.Felt felt) {
      int turns = state.turns.size();
      return turns > 0 && state.turns.get(turns - 1).feel() == felt.feel();
    } else if (condition instanceof Condition.Against against) {
      return verdict(against.quantity()) == against.verdict();
    } else if (condition instanceof Condition.Leans leans) {
      Bracket bracket = bracket(leans.quantity());
      return bracket != null
          && window != null
          && verdict(leans.quantity()) == Verdict.UNDECIDED
          && Verdict.leaning(bracket, window) == leans.towards();
    } else if (condition instanceof Condition.Strings strings) {
      return strings(strings);
    } else if (condition instanceof Condition.Called called) {
      int callers = state.places.size() - 1;
      return state.places.subList(0, Math.max(0, callers)).stream()
          .anyMatch(place -> place.procedure().equals(called.procedure()));
    } else if (condition instanceof Condition.Below below) {
      Double value = value(below.quantity());
      return value != null && value < below.limit() - SLACK;
    } else if (condition instanceof Condition.AtLeast least) {
      Double value = value(least.quantity());
      return value != null && value >= least.limit() - SLACK;
    } else if (condition instanceof Condition.Differs differs) {
      return differs(differs.limit());
    } else if (condition instanceof Condition.Repeats repeats) {
      return repeats(repeats.limit());
    } else if (condition instanceof Condition.Chosen chosen) {
      String option = state.chosen.get(Fold.key(state.place().procedure(), chosen.step()));
      return option != null && chosen.options().contains(option);
    } else if (condition instanceof Condition.Is is) {
      return state.started.role() == is.role();
    } else if (condition instanceof Condition.Turned turned) {
      return switch (turned.span()) {
        case TODAY -> Account.today(state, library.limits(), now).atLeast(turned.least());
        case IN_ALL -> Account.net(state).size().atLeast(turned.least());
      };
    } else if (condition instanceof Condition.Answered answered) {
      return Account.times(state, library.limits(), answered.response()) >= answered.times();
    } else if (condition instanceof Condition.Seems seems) {
      return fault.get().filter(reason -> reason == seems.doubt().reason()).isPresent();
    } else if (condition instanceof Condition.Reached reached) {
      String key = Fold.key(state.place().procedure(), reached.step());
      return state.reached.getOrDefault(key, 0) >= reached.times();
    }
    throw new IllegalStateException("a condition the engine does not know: " + condition);
  }

  private boolean strings(Condition.Strings strings) {
    Style style = state.style;
    if (kind == null || style == null) {
      return false;
    }
    IntPredicate holds =
        i ->
            Values.verdict(state, library.results(), kind, style, strings.quantity(), i)
                == strings.verdict();
    IntStream all = IntStream.range(0, kind.strings().size());
    return strings.every() ? all.allMatch(holds) : all.anyMatch(holds);
  }

  private Verdict verdict(Quantity quantity) {
    if (quantity != Quantity.RELIEF && quantity.bracket()) {
      return value(quantity) == null ? Verdict.NOT_MEASURED : Verdict.UNDECIDED;
    }
    Bracket bracket = bracket(quantity);
    if (quantity.bracket() && bracket != null && window != null) {
      return Verdict.of(bracket, window);
    }
    return value(quantity) == null ? Verdict.NOT_MEASURED : Verdict.UNDECIDED;
  }

  private @Nullable Bracket bracket(Quantity quantity) {
    if (!quantity.bracket()) {
      return null;
    }
    if (just != null && just.quantity() == quantity) {
      return just.bracket();
    }
    Reading reading = Account.last(state, Which.LOWEST);
    return reading == null ? null : reading.read().bracket();
  }

  private @Nullable Double value(Quantity quantity) {
    if (quantity.bracket()) {
      Bracket bracket = bracket(quantity);
      return bracket == null ? null : Double.valueOf(bracket.middleMm());
    }
    if (just != null && just.quantity() == quantity) {
      return just.value();
    }
    Reading reading = Account.last(state, quantity);
    return reading == null ? null : reading.read().value();
  }

  /** Lowest string against highest, both read since the last turn. */
  private boolean differs(double limit) {
    Reading low = Account.last(state, Which.LOWEST);
    Reading high = Account.last(state, Which.HIGHEST);
    if (low == null || high == null || low.turnsBefore() != high.turnsBefore()) {
      return false;
    }
    return apart(low, high) > limit + SLACK;
  }

  /** The last two readings on the string read last. */
  private boolean repeats(double limit) {
    Reading last = null;
    for (int i = state.readings.size() - 1; i >= 0; i--) {
      Reading reading = state.readings.get(i);
      if (!reading.relief()) {
        continue;
      }
      if (last == null) {
        last = reading;
      } else if (reading.read().which() == last.read().which()) {
        return reading.turnsBefore() == last.turnsBefore() && apart(reading, last) <= limit + SLACK;
      }
    }
    return false;
  }

  private static double apart(Reading one, Reading other) {
    Bracket a = one.read().bracket();
    Bracket b = other.read().bracket();
    return a == null || b == null ? 0 : Math.abs(a.middleMm() - b.middleMm());
  }
}
