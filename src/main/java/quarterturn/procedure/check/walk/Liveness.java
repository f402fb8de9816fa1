package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Shortcut;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.BenchState.Compared;
import quarterturn.procedure.bench.Detours;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/** Finds what still matters at each step: what some step from there on asks for. */
final class Liveness {
  private final Frame frame;
  private final Function<Step, Fan> fans;
  private final Set<Subject> decided;
  private final Set<String> loose;
  private final Detours detours;

  /** The conditions that any step states, in pieces of one subject each. */
  private final List<Condition> pieces = new ArrayList<>();

  private final List<Subject> subjects = new ArrayList<>();
  private final Map<Condition, Integer> places = new HashMap<>();
  private final Map<String, Matter> matters = new LinkedHashMap<>();

  /**
   * The conditions and readings that matter at a step, as far as is known.
   *
   * @param next the steps it can lead to
   * @param back the steps at which it goes on after a break, itself undone
   * @param unread the steps it can lead to where nothing could be read
   * @param replaced places of the pieces about what it reads
   * @param gone places of those that do not matter before it, whatever comes after
   * @param own places of those it states itself
   * @param live places of those that matter there
   * @param readings the quantities whose readings matter there
   * @param compared what matters there of the strings that were read
   */
  private record Matter(
      Step step,
      Set<String> next,
      Set<String> back,
      Set<String> unread,
      BitSet replaced,
      BitSet gone,
      BitSet own,
      BitSet live,
      Set<Quantity> readings,
      Set<Compared> compared) {}

  Liveness(Frame frame, Function<Step, Fan> fans) {
    this.frame = frame;
    this.fans = fans;
    this.decided = frame.decided();
    this.loose = Reachability.loose(frame.procedure());
    this.detours = new Detours(frame.procedure());
    List<Step> steps = List.copyOf(frame.procedure().steps().values());
    List<BitSet> own = steps.stream().map(this::own).toList();
    List<Matter> all = new ArrayList<>();
    for (int i = 0; i < steps.size(); i++) {
      Matter matter = matter(steps.get(i), own.get(i));
      all.add(matter);
      matters.put(steps.get(i).id(), matter);
    }
    boolean more = true;
    while (more) {
      more = false;
      // What matters spreads against the way, so the last steps come first.
      for (int i = steps.size() - 1; i >= 0; i--) {
        more |= grow(all.get(i));
      }
    }
  }

  /** The pieces about a subject that matter at a step. */
  Set<Condition> pieces(String step, Domain domain) {
    Set<Condition> live = new HashSet<>();
    Matter matter = matters.get(step);
    if (matter != null) {
      for (Condition piece : domain.pieces()) {
        if (matter.live().get(places.getOrDefault(piece, pieces.size()))) {
          live.add(piece);
        }
      }
    }
    return live;
  }

  /** The quantities whose readings matter at a step. */
  Set<Quantity> readings(String step) {
    Matter matter = matters.get(step);
    return matter == null ? Set.of() : matter.readings();
  }

  /** What matters at a step of the strings on which relief was read. */
  Set<Compared> compared(String step) {
    Matter matter = matters.get(step);
    return matter == null ? Set.of() : matter.compared();
  }

  /** The places of the conditions that a step states; each gets one here. */
  private BitSet own(Step step) {
    BitSet own = new BitSet();
    Condition expects = step.words().expects();
    for (Condition condition : Frame.stated(step)) {
      condition
          .pieces()
          .forEach(
              (piece, subject) -> {
                int place = place(piece, subject);
                // Its own branches are about what it takes: a reading, or how a call ended.
                boolean itself =
                    step instanceof Step.Measure measure
                        ? subject.equals(new Subject.Reading(measure.quantity()))
                        : step instanceof Step.Call
                            && subject.equals(new Subject.Choice(step.id()));
                if (!itself || condition.equals(expects)) {
                  own.set(place);
                }
              });
    }
    return own;
  }

  private int place(Condition piece, Subject subject) {
    return places.computeIfAbsent(
        piece,
        p -> {
          subjects.add(subject);
          pieces.add(piece);
          return pieces.size() - 1;
        });
  }

  private Matter matter(Step step, BitSet own) {
    boolean reads = step instanceof Step.Measure m && m.which() != Which.HIGHEST;
    Subject chosen = new Subject.Choice(step.id());
    BitSet gone =
        about(
            subject ->
                // What is chosen here replaces what was chosen before.
                subject.equals(chosen)
                    || (step instanceof Step.Done && !staysDecided(subject))
                    || (step instanceof Step.TurnRod && subject instanceof Subject.Feeling));
    return new Matter(
        step,
        next(frame.procedure(), step),
        back(step),
        step instanceof Step.Measure measure ? withoutReading(measure) : Set.of(),
        reads ? about(subject -> shows((Step.Measure) step, subject)) : new BitSet(),
        gone,
        own,
        new BitSet(),
        EnumSet.noneOf(Quantity.class),
        EnumSet.noneOf(Compared.class));
  }

  /**
   * Whether what is known of a subject outlasts one run of the procedure; a choice that no branch
   * asks for does not.
   */
  private boolean staysDecided(Subject subject) {
    return Knowledge.of(subject).stays()
        && (!(subject instanceof Subject.Choice) || decided.contains(subject));
  }

  /** The places of the pieces about subjects of which {@code so} holds. */
  private BitSet about(Predicate<Subject> so) {
    BitSet about = new BitSet();
    for (int i = 0; i < subjects.size(); i++) {
      about.set(i, so.test(subjects.get(i)));
    }
    return about;
  }

  private boolean grow(Matter matter) {
    BitSet live = new BitSet();
    Set<Quantity> read = EnumSet.noneOf(Quantity.class);
    add(matter.next(), live, read);
    if (matter.step() instanceof Step.Measure measure
        && measure.which() != Which.HIGHEST
        && !Shortcut.once(measure)) {
      // A reading replaces the one before, but on the ways on where nothing could be read.
      live.andNot(matter.replaced());
      read.remove(measure.quantity());
      add(matter.unread(), live, read);
    }
    live.andNot(matter.gone());
    add(matter.back(), live, read);
    live.or(matter.own());
    read.addAll(Uses.of(matter.step()));
    boolean more = !live.equals(matter.live()) || !read.equals(matter.readings());
    matter.live().or(live);
    matter.readings().addAll(read);
    return more | matter.compared().addAll(compared(matter));
  }

  /** What matters at a step of the strings that were read, as far as is known of those after it. */
  private Set<Compared> compared(Matter matter) {
    Step step = matter.step();
    Set<Compared> compared = comparedAfter(matter.next());
    compared.addAll(comparedAfter(matter.back()));
    for (Condition condition : Frame.conditions(step)) {
      if (condition.subjects().stream().anyMatch(Subject.Repeating.class::isInstance)) {
        compared.add(Compared.TWICE);
      }
    }
    if (step instanceof Step.TurnRod) {
      compared.clear();
    }
    if (step instanceof Step.Measure measure && measure.quantity() == Quantity.RELIEF) {
      // A reading replaces what was known of the last two, and tells of one with the last before
      // it.
      boolean twice = compared.contains(Compared.TWICE);
      compared.clear();
      compared.addAll(comparedAfter(matter.unread()));
      compared.addAll(twice ? LAST : Set.of());
    }
    return compared;
  }

  private static final Set<Compared> LAST = Set.of(Compared.LOWEST_LAST, Compared.HIGHEST_LAST);

  private Set<Compared> comparedAfter(Set<String> steps) {
    Set<Compared> after = EnumSet.noneOf(Compared.class);
    for (String step : steps) {
      after.addAll(compared(step));
    }
    return after;
  }

  private void add(Set<String> steps, BitSet live, Set<Quantity> read) {
    for (String step : steps) {
      Matter next = matters.get(step);
      if (next != null) {
        live.or(next.live());
        read.addAll(next.readings());
      }
    }
  }

  private static boolean shows(Step.Measure step, Subject subject) {
    Quantity quantity = step.quantity();
    return subject.equals(new Subject.Reading(quantity))
        || subject.equals(new Subject.Each(quantity))
        || (quantity == Quantity.RELIEF && subject instanceof Subject.Neck);
  }

  private Set<String> withoutReading(Step.Measure step) {
    Fan fan = fans.apply(step);
    int[] masks = new int[fan.subjects().length];
    for (int i = 0; i < masks.length; i++) {
      Domain domain = frame.domains().get(fan.subjects()[i]);
      boolean own = domain.subject().equals(new Subject.Reading(step.quantity()));
      masks[i] = own ? domain.where(Frame.unread(step.quantity())) : domain.all();
    }
    return fan.spread(masks).taken().stream()
        .<@Nullable String>map(fan::to)
        .filter(Objects::nonNull)
        .collect(Collectors.toSet());
  }

  private static final BenchState PITCH =
      BenchState.NONE.established(Set.of(Fact.AT_PITCH)).with(Quantity.RELIEF, Freshness.FRESH);

  private static final BenchState LOOSE = PITCH.established(Set.of(Fact.NECK_LOOSE));

  private Set<String> next(Procedure procedure, Step step) {
    Set<String> next = new HashSet<>(Ways.from(step));
    if (step instanceof Step.Done) {
      next.add(procedure.begin());
    }
    if (step instanceof Step.Call) {
      Ways.from(step).forEach(to -> next.add(detours.afterCall(to, BenchState.NONE)));
    }
    return next;
  }

  private Set<String> back(Step step) {
    Set<String> back = new HashSet<>();
    for (BenchState bench : loose.contains(step.id()) ? List.of(PITCH, LOOSE) : List.of(PITCH)) {
      for (boolean drifted : new boolean[] {false, true}) {
        String to = detours.afterBreak(step, bench, drifted, step instanceof Step.Wait);
        back.add(to == null ? step.id() : to);
      }
      String to = detours.afterBreak(step, bench, false, false);
      back.add(to == null ? step.id() : to);
    }
    return back;
  }
}
