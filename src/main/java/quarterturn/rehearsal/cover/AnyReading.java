package quarterturn.rehearsal.cover;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.EvenBow;
import quarterturn.craft.Window;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/**
 * Simulated readings of everything but relief, which stand to their windows as drawn for the
 * session, string by string.
 */
final class AnyReading {
  private final Kind kind;
  private final Style style;
  private final SplittableRandom random;
  private final Map<Quantity, List<Double>> edges = new EnumMap<>(Quantity.class);
  private final Map<Quantity, Verdict> moods = new EnumMap<>(Quantity.class);
  private Bracket relief = Bracket.touches();

  AnyReading(Library library, Kind kind, Style style, SplittableRandom random) {
    this.kind = kind;
    this.style = style;
    this.random = random;
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        step.fork().branches().forEach(branch -> edge(branch.when()));
      }
    }
    for (Quantity quantity : Quantity.values()) {
      int draw = random.nextInt(16);
      Verdict[] rare = {
        Verdict.ABOVE, Verdict.BELOW, Verdict.UNDECIDED, Verdict.TOUCHES, Verdict.NOT_MEASURED
      };
      moods.put(quantity, draw < rare.length ? rare[draw] : Verdict.IN);
    }
  }

  /** Collects the values at which a condition's result changes. */
  private void edge(Condition when) {
    when.atoms()
        .filter(atom -> atom.about() instanceof Subject.Reading)
        .forEach(atom -> atom.bounds().forEach(limit -> edge(quantity(atom), limit)));
  }

  private static Quantity quantity(Condition.Atom atom) {
    return ((Subject.Reading) atom.about()).quantity();
  }

  private void edge(Quantity quantity, double limit) {
    edges.computeIfAbsent(quantity, q -> new ArrayList<>()).add(limit);
  }

  /** Takes the last relief of the lowest string, from which the windows of its parts follow. */
  void relief(Bracket read) {
    relief = read;
  }

  /** Sets how readings of a quantity stand to their window from now on. */
  void mood(Quantity quantity, Verdict verdict) {
    moods.put(quantity, verdict);
  }

  /**
   * A reading that stands as drawn for the session, within the step's plausible values.
   *
   * @param hoped how the reading should stand; empty where any will do
   * @param wish the value that should be read, or null
   */
  Answer usual(
      Prompt.Measure asked,
      Step.@Nullable Measure step,
      Set<Verdict> hoped,
      @Nullable Double wish) {
    Quantity quantity = asked.quantity();
    Verdict mood = mood(quantity, hoped);
    // Strings that are neither all in nor one of them out are not all read.
    boolean unread = mood == Verdict.UNDECIDED && !hoped.isEmpty() && !quantity.bracket();
    if (mood == Verdict.NOT_MEASURED || (unread && random.nextInt(3) == 0)) {
      return new Answer.CannotMeasure();
    }
    if (unread) {
      mood = Verdict.IN;
    }
    if (wish != null && !quantity.bracket()) {
      return new Answer.Value(plausible(wish, step));
    }
    Window window = window(asked);
    if (window == null) {
      List<Answer> all = all(asked, step);
      return all.get(random.nextInt(all.size()));
    }
    if (mood == Verdict.UNDECIDED && quantity.ofBow()) {
      List<Bracket> all =
          AnyNeck.all(window).stream()
              .filter(bracket -> Verdict.of(bracket, window) == Verdict.UNDECIDED)
              .toList();
      return new Answer.Measured(all.get(random.nextInt(all.size())));
    }
    return of(asked, step, mood == Verdict.UNDECIDED ? any() : mood, window);
  }

  private Verdict mood(Quantity quantity, Set<Verdict> hoped) {
    Verdict mood = moods.getOrDefault(quantity, Verdict.IN);
    if (hoped.isEmpty() || hoped.contains(mood)) {
      return mood;
    }
    List<Verdict> some = hoped.stream().sorted().toList();
    return hoped.contains(Verdict.IN) ? Verdict.IN : some.get(random.nextInt(some.size()));
  }

  private Verdict any() {
    return List.of(Verdict.IN, Verdict.ABOVE, Verdict.BELOW).get(random.nextInt(3));
  }

  private static Answer of(
      Prompt.Measure asked, Step.@Nullable Measure step, Verdict verdict, Window window) {
    double width = Math.max(0.1, window.highMm() - window.lowMm());
    double value =
        switch (verdict) {
          case ABOVE -> window.highMm() + width;
          case BELOW -> window.lowMm() - width;
          default -> window.middleMm();
        };
    if (asked.quantity().bracket()) {
      Bracket leaves =
          verdict == Verdict.TOUCHES ? Bracket.touches() : AnyNeck.leaves(Math.max(0.01, value));
      return new Answer.Measured(leaves);
    }
    return new Answer.Value(plausible(value, step));
  }

  /** Readings of every kind. */
  List<Answer> all(Prompt.Measure asked, Step.@Nullable Measure step) {
    List<Answer> all = new ArrayList<>();
    all.add(new Answer.CannotMeasure());
    Window window = window(asked);
    if (asked.quantity().bracket()) {
      if (window != null) {
        AnyNeck.all(window).forEach(bracket -> all.add(new Answer.Measured(bracket)));
      }
      for (double edge : edges.getOrDefault(asked.quantity(), List.of())) {
        all.add(new Answer.Measured(AnyNeck.leaves(edge - 0.06)));
        all.add(new Answer.Measured(AnyNeck.leaves(edge + 0.01)));
      }
      return all;
    }
    if (window != null) {
      for (Verdict verdict : List.of(Verdict.IN, Verdict.ABOVE, Verdict.BELOW)) {
        all.add(of(asked, step, verdict, window));
      }
    } else {
      double middle = step == null ? 0 : (step.least() + step.most()) / 2;
      all.add(new Answer.Value(middle));
    }
    for (double edge : edges.getOrDefault(asked.quantity(), List.of())) {
      for (int side = -1; side <= 1; side++) {
        all.add(new Answer.Value(plausible(edge + side * asked.step(), step)));
      }
    }
    return all;
  }

  private static double plausible(double value, Step.@Nullable Measure step) {
    return step == null ? value : Math.max(step.least(), Math.min(step.most(), value));
  }

  private @Nullable Window window(Prompt.Measure asked) {
    if (asked.quantity().ofPart()) {
      return EvenBow.window(asked.quantity().share(kind), relief, asked.step());
    }
    int string = Math.max(0, kind.strings().indexOf(String.valueOf(asked.string())));
    return kind.windows().containsKey(asked.quantity())
        ? kind.target(asked.quantity(), style, string).window()
        : null;
  }
}
