package quarterturn.session.engine;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Decision;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Doubt;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Place;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Decides whether conditions hold in a state; brackets are compared with windows as a whole.
 *
 * @param just the reading just taken, where the branching step is a measurement; or null
 * @param fault finds a fault of the rod in the readings; only called where a condition asks for it
 */
record Judge(
    State state,
    Library library,
    @Nullable Kind kind,
    @Nullable Window window,
    Instant now,
    Event.@Nullable Read just,
    Supplier<Optional<Decision.Reason>> fault) {
  /** Index of the first branch that holds; the number of branches where none does. */
  int choose(Branch.Fork fork) {
    int way = 0;
    while (way < fork.branches().size() && !holds(fork.branches().get(way).when())) {
      way++;
    }
    return way;
  }

  boolean holds(Condition condition) {
    Subject.Cases<Cell> stands = stands();
    return condition.holds(subject -> subject.match(stands));
  }

  /** The present value of each subject that a condition can ask about. */
  private Subject.Cases<Cell> stands() {
    return new Subject.Cases<>(
        reading -> standing(reading.quantity()),
        differing -> Cell.Apart.by(differing()),
        repeating -> Cell.Apart.by(repeating()),
        creeping -> new Cell.Creep(creepsOut()),
        each -> new Cell.Strings(verdicts(each.quantity())),
        choice -> new Cell.Option(chosen(choice.step())),
        count -> Cell.Amount.of(state.position().reached(count.step())),
        person -> new Cell.Person(state.started().role()),
        turning -> Cell.Amount.of(turned(turning.span()).turns() + Turn.SLACK),
        neck -> answer(),
        rod -> new Cell.Rod(doubt()),
        feeling -> new Cell.Felt(feel()),
        callers -> new Cell.Within(callers()));
  }

  private String chosen(String step) {
    String chosen = state.position().chosen(step);
    return chosen == null ? "" : chosen;
  }

  private Turn turned(Condition.Span span) {
    return switch (span) {
      case TODAY -> state.history().today(now);
      case IN_ALL -> state.history().net();
      case LAST_TIME ->
          new Turn(state.history().left().stream().mapToDouble(t -> t.size().turns()).sum());
    };
  }

  private Cell answer() {
    Response response = state.history().response();
    int times = state.history().times(response);
    return new Cell.Answer(response, times, times + 1);
  }

  private @Nullable Doubt doubt() {
    Decision.Reason reason = fault.get().orElse(null);
    for (Doubt doubt : Doubt.values()) {
      if (doubt.reason() == reason) {
        return doubt;
      }
    }
    return null;
  }

  private @Nullable Feel feel() {
    TurnMade last = state.history().lastTurn();
    return last == null ? null : last.feel();
  }

  private Set<String> callers() {
    List<Place> places = state.position().places();
    return places.subList(0, places.size() - 1).stream()
        .map(Place::procedure)
        .collect(Collectors.toSet());
  }

  /** How the last reading on each string stands to its window. */
  private Set<Verdict> verdicts(Quantity quantity) {
    Style style = state.style();
    return kind == null || style == null
        ? Set.of()
        : IntStream.range(0, kind.strings().size())
            .mapToObj(i -> Values.verdict(state, library.results(), kind, style, quantity, i))
            .collect(Collectors.toSet());
  }

  private Cell standing(Quantity quantity) {
    Event.Read read = read(quantity);
    Bracket bracket = read == null ? null : read.bracket();
    Double value = read == null ? null : read.value();
    value = bracket == null ? value : Double.valueOf(bracket.middleMm());
    if (read == null || value == null) {
      return Cell.Standing.NOTHING;
    }
    Window held = quantity.ofPart() ? part(quantity, read) : window;
    // Only a bow is held to its window by one reading; the others are, string by string.
    if (bracket == null || held == null || !quantity.ofBow()) {
      return Cell.Standing.at(Verdict.UNDECIDED, null, null, value);
    }
    Verdict verdict = Verdict.of(bracket, held);
    Verdict lean = verdict == Verdict.UNDECIDED ? Verdict.leaning(bracket, held) : null;
    return Cell.Standing.at(verdict, lean, Verdict.near(bracket, held, read.gaugeStep()), value);
  }

  /** The window of a part of the bow, on the string that was read; null where there is none. */
  private @Nullable Window part(Quantity quantity, Event.Read read) {
    Style style = state.style();
    if (kind == null || style == null) {
      return null;
    }
    int string = Math.max(0, kind.strings().indexOf(String.valueOf(read.string())));
    return Values.window(state, library.results(), kind, style, quantity, string, read.gaugeStep());
  }

  /** The reading just taken, or else the last one; of relief, the one on the lowest string. */
  private Event.@Nullable Read read(Quantity quantity) {
    if (just != null && just.quantity() == quantity) {
      return just;
    }
    Reading last =
        quantity == Quantity.RELIEF
            ? state.history().last(Which.LOWEST)
            : state.history().last(quantity);
    return last == null ? null : last.read();
  }

  /**
   * Millimetres by which the lowest string reads more than the highest; 0 unless both were read
   * after the same number of turns. Without end where one touches and the other is in its window,
   * since how far the first is bowed back can't be read.
   */
  private double differing() {
    Reading low = state.history().last(Which.LOWEST);
    Reading high = state.history().last(Which.HIGHEST);
    if (low == null || high == null || low.turnsBefore() != high.turnsBefore()) {
      return 0;
    }
    double more = more(low, high);
    return (touches(low) && inside(high)) || (touches(high) && inside(low))
        ? Math.copySign(Double.POSITIVE_INFINITY, more)
        : more;
  }

  private boolean touches(Reading reading) {
    return Bracket.touches().equals(reading.read().bracket());
  }

  private boolean inside(Reading reading) {
    Bracket bracket = reading.read().bracket();
    return bracket != null && window != null && Verdict.of(bracket, window) == Verdict.IN;
  }

  /**
   * Difference in millimetres between the last two readings of the string read last; infinite where
   * there are no two, or the rod was turned between them.
   */
  private double repeating() {
    List<Reading> relief = state.history().readings().of(Quantity.RELIEF);
    Reading last = Lists.last(relief, Reading::relief);
    Reading before =
        last == null
            ? null
            : Lists.last(
                relief,
                one -> one != last && one.relief() && one.read().which() == last.read().which());
    return last == null || before == null || before.turnsBefore() != last.turnsBefore()
        ? Double.POSITIVE_INFINITY
        : apart(before, last);
  }

  /**
   * Whether a share of what the relief was moved in the last days, going on the same way, would
   * take the last reading out of its window. That share comes within the rest after a turn.
   */
  private boolean creepsOut() {
    Reading last = state.history().last(Which.LOWEST);
    Bracket bracket = last == null ? null : last.read().bracket();
    TurnMade turn = state.history().lastMoved();
    if (last == null || bracket == null || window == null || turn == null) {
      return false;
    }
    if (!last.at().isBefore(turn.at().plus(library.limits().rest()))) {
      return false;
    }
    double on = state.history().movedMm() * library.limits().creepShare();
    double then = bracket.middleMm() + on;
    return then < window.lowMm() || then > window.highMm();
  }

  private static double apart(Reading one, Reading other) {
    return Math.abs(more(one, other));
  }

  private static double more(Reading one, Reading other) {
    Bracket a = one.read().bracket();
    Bracket b = other.read().bracket();
    return a == null || b == null ? 0 : a.middleMm() - b.middleMm();
  }
}
