package quarterturn.procedure.check;

import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Step;
import quarterturn.procedure.Ways;
import quarterturn.procedure.Which;

/**
 * What can still matter at each step; the rest is forgotten there, so that ways that differ in
 * nothing that matters are one.
 */
final class Live {
  private final Frame frame;
  private final Map<String, Set<Condition>> pieces = new HashMap<>();
  private final Map<String, Set<Quantity>> readings = new HashMap<>();
  private final Map<String, int[][]> alike = new HashMap<>();

  private final Map<String, Set<String>> ways = new HashMap<>();
  private final Fans fans;
  private final Set<Subject> decided;
  private final Set<String> loose;

  Live(Frame frame, Fans fans) {
    this.frame = frame;
    this.fans = fans;
    this.decided = frame.decided();
    this.loose = Paths.loose(frame.procedure());
    Procedure procedure = frame.procedure();
    for (String id : procedure.steps().keySet()) {
      pieces.put(id, Set.of());
      readings.put(id, EnumSet.noneOf(Quantity.class));
    }
    List<Step> steps = List.copyOf(procedure.steps().values());
    boolean more = true;
    while (more) {
      more = false;
      // What matters spreads against the way, so the last steps come first.
      for (int i = steps.size() - 1; i >= 0; i--) {
        more |= grow(procedure, steps.get(i));
      }
    }
    procedure.steps().keySet().forEach(id -> alike.put(id, alike(id)));
  }

  private boolean grow(Procedure procedure, Step step) {
    Set<Condition> live = new HashSet<>();
    Set<Quantity> read = EnumSet.noneOf(Quantity.class);
    for (String next : next(procedure, step)) {
      live.addAll(pieces.getOrDefault(next, Set.of()));
      read.addAll(readings.getOrDefault(next, Set.of()));
    }
    if (step instanceof Step.Measure measure && measure.which() != Which.HIGHEST) {
      replaced(measure, live, read);
    }
    // What is chosen here replaces what was chosen before.
    Subject own = new Subject.Choice(step.id());
    live.removeIf(piece -> Subject.subjects(piece).contains(own));
    if (step instanceof Step.Done) {
      // What is only expected is about the answers of one time through.
      live.removeIf(
          piece ->
              Subject.subjects(piece).stream()
                  .allMatch(s -> s instanceof Subject.Choice && !decided.contains(s)));
    }
    if (step instanceof Step.TurnRod) {
      live.removeIf(piece -> Subject.subjects(piece).contains(new Subject.Feeling()));
    }
    Condition expects = step.words().expects();
    for (Condition condition : Frame.stated(step)) {
      Subject.pieces(condition)
          .forEach(
              (piece, subject) -> {
                // A reading's own branches are about the reading that is just taken.
                boolean itself =
                    step instanceof Step.Measure measure
                        && subject.equals(new Subject.Reading(measure.quantity()));
                if (!itself || condition.equals(expects)) {
                  live.add(piece);
                }
              });
    }
    read.addAll(Uses.of(step));
    boolean more = !live.equals(pieces.get(step.id())) || !read.equals(readings.get(step.id()));
    pieces.put(step.id(), live);
    readings.put(step.id(), read);
    return more;
  }

  /** A reading replaces the one before, but on the ways on where nothing could be read. */
  private void replaced(Step.Measure step, Set<Condition> live, Set<Quantity> read) {
    Set<String> unread = ways.computeIfAbsent(step.id(), id -> withoutReading(step));
    live.removeIf(piece -> Subject.subjects(piece).stream().allMatch(s -> shows(step, s)));
    read.remove(step.quantity());
    for (String next : unread) {
      live.addAll(pieces.getOrDefault(next, Set.of()));
      read.addAll(readings.getOrDefault(next, Set.of()));
    }
  }

  private static boolean shows(Step.Measure step, Subject subject) {
    Quantity quantity = step.quantity();
    return subject.equals(new Subject.Reading(quantity))
        || subject.equals(new Subject.Each(quantity))
        || (quantity == Quantity.RELIEF && subject instanceof Subject.Neck);
  }

  private Set<String> withoutReading(Step.Measure step) {
    Fan fan = fans.of(step, step.then());
    int[] masks = new int[fan.subjects().length];
    for (int i = 0; i < masks.length; i++) {
      Domain domain = frame.domains().get(fan.subjects()[i]);
      boolean own = domain.subject().equals(new Subject.Reading(step.quantity()));
      masks[i] = own ? domain.where(Frame.unread(step.quantity())) : domain.all();
    }
    Set<String> found = new HashSet<>();
    for (Fan.Taken taken : fan.spread(masks).taken()) {
      if (taken.branch() >= 0) {
        found.add(step.then().branches().get(taken.branch()).go());
      } else if (taken.branch() == Fan.REST) {
        found.add(String.valueOf(step.then().otherwise()));
      }
    }
    return found;
  }

  private Set<String> next(Procedure procedure, Step step) {
    Set<String> next = new HashSet<>(Ways.from(step));
    if (step instanceof Step.Done) {
      next.add(procedure.begin());
    }
    boolean ahead = Ways.turnBeforeReading(procedure, step.id());
    if (ahead || Paths.drifts(step)) {
      next.add(procedure.retune());
      if (loose.contains(step.id())) {
        next.addAll(Paths.seating(procedure).stream().limit(1).toList());
      }
    }
    if (ahead) {
      next.add(procedure.reread());
    }
    return next;
  }

  /** By subject, the cells that are one; none where all are still told apart. */
  private int[][] alike(String id) {
    int[][] all = new int[frame.domains().size()][];
    for (int i = 0; i < all.length; i++) {
      Domain domain = frame.domains().get(i);
      Set<Condition> live = new HashSet<>(pieces.getOrDefault(id, Set.of()));
      live.retainAll(domain.pieces());
      int[] alike = domain.alike(live);
      boolean apart = true;
      for (int cell = 0; cell < alike.length; cell++) {
        apart &= alike[cell] == 1 << cell;
      }
      all[i] = apart ? new int[0] : alike;
    }
    return all;
  }

  /** Forgets what does not matter from {@code id} on, and what a spoiled reading said. */
  void forget(String id, Situation at) {
    int[][] cells = alike.get(id);
    if (cells == null) {
      return;
    }
    for (Quantity quantity : Quantity.values()) {
      if (at.held(quantity).compareTo(Held.STALE) >= 0 && !at.held(quantity).usable()) {
        open(at, new Subject.Reading(quantity));
        open(at, new Subject.Each(quantity));
      }
    }
    for (int i = 0; i < cells.length; i++) {
      if (cells[i].length > 0) {
        int wide = 0;
        for (int mask = at.mask(i); mask != 0; mask &= mask - 1) {
          wide |= cells[i][Integer.numberOfTrailingZeros(mask)];
        }
        at.mask(i, wide);
      }
    }
    Set<Quantity> read = readings.getOrDefault(id, Set.of());
    for (Quantity quantity : Quantity.values()) {
      if (!read.contains(quantity)) {
        at.held(quantity, Held.NEVER);
      }
    }
  }

  private void open(Situation at, Subject subject) {
    int place = frame.index(subject);
    if (place < 0) {
      return;
    }
    Domain domain = frame.domains().get(place);
    int read = domain.all();
    if (subject instanceof Subject.Reading reading) {
      read &= ~domain.where(Frame.unread(reading.quantity()));
    }
    at.mask(place, read == 0 ? domain.all() : read);
  }
}
