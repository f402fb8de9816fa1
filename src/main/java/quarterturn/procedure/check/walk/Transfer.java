package quarterturn.procedure.check.walk;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.function.Function;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.bench.BenchState;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Cell;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;

/**
 * What each kind of step does to an {@link AbstractState}: the engine's rules, on what is known.
 */
final class Transfer {
  private final Frame frame;
  private final Limits limits;
  private final Results results;
  private final Function<Step, Fan> fans;

  /** Takes each fork with its outcomes. */
  private final BiConsumer<Fan, Fan.Spread> watch;

  private static final Subject RELIEF = new Subject.Reading(Quantity.RELIEF);
  private static final Subject DIFFERING = new Subject.Differing(Quantity.RELIEF);
  private static final Subject REPEATING = new Subject.Repeating(Quantity.RELIEF);
  private static final Subject CREEPING = new Subject.Creeping(Quantity.RELIEF);
  private static final Subject NECK = new Subject.Neck();
  private static final Subject ROD = new Subject.Rod();
  private static final Subject FEELING = new Subject.Feeling();
  private static final Subject TODAY = new Subject.Turning(Condition.Span.TODAY);
  private static final Subject IN_ALL = new Subject.Turning(Condition.Span.IN_ALL);
  private static final Subject LAST_TIME = new Subject.Turning(Condition.Span.LAST_TIME);

  private final int neck;
  private final int today;

  /** The cells in which the day's turning may be used up. */
  private final int dayUsed;

  Transfer(Frame frame, Function<Step, Fan> fans, BiConsumer<Fan, Fan.Spread> watch) {
    this.watch = watch;
    this.frame = frame;
    this.fans = fans;
    this.limits = frame.library().limits();
    this.results = frame.library().results();
    this.neck = frame.index(NECK);
    this.today = frame.index(TODAY);
    double day = limits.beginnerDay().turns() + Cell.SLACK;
    this.dayUsed =
        frame.where(TODAY, cell -> cell instanceof Cell.Amount amount && amount.below() > day);
  }

  /** A step that can follow, with what is known there. */
  record Onward(String step, AbstractState at, int branch) {}

  /** What a step does: every way on from a state in which it is reached. */
  private interface Effect {
    List<Onward> from(AbstractState before);
  }

  private final Step.Cases<Effect> cases =
      new Step.Cases<>(
          tell -> before -> forked(tell, before.bench().passes(tell) ? before : told(tell, before)),
          choose ->
              before -> choose.options().stream().map(one -> chosen(choose, one, before)).toList(),
          note -> before -> List.of(new Onward(note.go(), before, Fan.REST)),
          pause -> before -> List.of(new Onward(pause.go(), before, Fan.REST)),
          adjust -> before -> adjusted(adjust, before),
          measure -> {
            Effect read = reading(measure);
            return before ->
                before.bench().passes(measure) ? forked(measure, before) : read.from(before);
          },
          compute -> before -> forked(compute, before),
          turn -> before -> turned(turn, before),
          wait ->
              before ->
                  List.of(
                      new Onward(
                          wait.go(),
                          before.bench().passes(wait) ? before : waited(wait, before),
                          Fan.REST)),
          // What a call comes to is walked in the procedure that it calls.
          call -> before -> List.of(),
          done -> before -> List.of(),
          handOver -> before -> List.of());

  /** Found once for each step, since a walk comes by again and again. */
  private final Map<String, Effect> effects = new HashMap<>();

  /** Every way on from a step that asks or does something within this procedure. */
  List<Onward> from(Step step, AbstractState before) {
    return effects.computeIfAbsent(step.id(), id -> step.match(cases)).from(before);
  }

  private AbstractState told(Step.Tell tell, AbstractState before) {
    return done(before, before.bench().told(results, tell), tell.establishes());
  }

  private static AbstractState done(AbstractState before, BenchState bench, Set<Fact> facts) {
    AbstractState now = before.with(bench);
    if (facts.contains(Fact.AT_PITCH)) {
      now.sinceTuned(0);
    }
    return now;
  }

  private List<Onward> forked(Step.Forked step, AbstractState now) {
    List<Onward> ways = new ArrayList<>();
    spread(ways, step, now);
    return ways;
  }

  private Onward chosen(Step.Choose choose, Step.Option option, AbstractState before) {
    AbstractState now = done(before, before.bench().chosen(results, option), option.establishes());
    Subject answer = new Subject.Choice(choose.id());
    frame.set(now, answer, frame.where(answer, new Cell.Option(option.id())::equals));
    return new Onward(option.go(), now, Fan.REST);
  }

  /** The ways on from an adjust step, with no string out of its window or with some. */
  private List<Onward> adjusted(Step.Adjust step, AbstractState before) {
    List<Onward> ways = forked(step, before);
    BenchState set = before.bench().adjusted(results, step.adjustment());
    ways.addAll(forked(step, before.with(set)));
    return ways;
  }

  private List<Onward> turned(Step.TurnRod turn, AbstractState before) {
    List<Onward> ways = new ArrayList<>();
    turn.felt().forEach((feel, go) -> ways.add(new Onward(go, turned(before, feel), Fan.REST)));
    return ways;
  }

  private AbstractState turned(AbstractState before, Feel feel) {
    AbstractState now = before.with(before.bench().turned(results, true));
    now.dayLeft(false);
    if (limits.stopFeels().contains(feel)) {
      now.stop();
    }
    frame.open(now, RELIEF, DIFFERING, REPEATING, CREEPING, ROD, TODAY, IN_ALL, LAST_TIME);
    frame.set(now, NECK, answered(Response.UNSEEN));
    frame.set(now, FEELING, frame.where(FEELING, new Cell.Felt(feel)::equals));
    return now;
  }

  /** The mask of the cells in which the neck gave this response. */
  private int answered(Response response) {
    return frame.where(
        NECK, cell -> cell instanceof Cell.Answer answer && answer.response() == response);
  }

  /** The mask of the cells in which the neck was turned and gave some response. */
  private int answers() {
    return frame.where(
        NECK, cell -> cell instanceof Cell.Answer one && one.response() != Response.NOT_TURNED);
  }

  private AbstractState waited(Step.Wait wait, AbstractState before) {
    boolean settles = wait.minutes() >= limits.settleMinutes() && before.has(Fact.AT_PITCH);
    AbstractState now = before.with(before.bench().waited(wait, settles));
    // Pitch drifts and the neck moves on: waits one after the other count as one.
    now.sinceTuned(added(before.sinceTuned(), wait));
    now.sinceRead(added(before.sinceRead(), wait));
    if (now.sinceTuned() > limits.readingHoldsMinutes()) {
      now.bench(now.bench().offPitch());
      frame.open(now, TODAY);
    }
    if (now.sinceRead() > limits.readingHoldsMinutes()) {
      now.bench(now.bench().spoiled(Quantity.RELIEF));
    }
    now.dayLeft(now.dayLeft() || (wait.rest() && wait.minutes() >= limits.restHours() * 60));
    return now;
  }

  /** Minutes of waits after one more; beyond what a reading holds they are not told apart. */
  private int added(int before, Step.Wait wait) {
    return Math.min(before + wait.minutes(), limits.readingHoldsMinutes() + 1);
  }

  private Effect reading(Step.Measure step) {
    int subject = frame.index(new Subject.Reading(step.quantity()));
    int plausible = plausible(step);
    int missing = frame.where(Frame.unread(step.quantity()));
    return before -> {
      AbstractState asked = before.copy();
      asked.mask(subject, plausible);
      return read(step, subject, missing, asked, before);
    };
  }

  private List<Onward> read(
      Step.Measure step, int subject, int missing, AbstractState asked, AbstractState before) {
    if (step.quantity() == Quantity.RELIEF) {
      frame.open(asked, DIFFERING, REPEATING, CREEPING, ROD);
    }
    List<Onward> ways = new ArrayList<>();
    for (Onward way : forked(step, asked)) {
      int mask = way.at().mask(subject);
      if ((mask & missing) != 0) {
        ways.add(new Onward(way.step(), missed(step, subject, way.at(), before), way.branch()));
      }
      if ((mask & ~missing) != 0) {
        AbstractState now = way.at().copy();
        now.mask(subject, mask & ~missing);
        taken(step, subject, now, before);
        ways.add(new Onward(way.step(), now, way.branch()));
      }
    }
    return ways;
  }

  /** The mask of the answers to a measure step: plausible readings, and no reading. */
  private int plausible(Step.Measure step) {
    return frame.where(
        new Subject.Reading(step.quantity()),
        cell ->
            cell instanceof Cell.Standing s
                && (s.equals(Cell.Standing.NOTHING)
                    || (s.from() <= step.most() && s.below() > step.least())));
  }

  /** The state where nothing was read and an earlier reading is kept. */
  private AbstractState missed(
      Step.Measure step, int subject, AbstractState after, AbstractState before) {
    AbstractState now = after.copy();
    if (step.which() == Which.EACH) {
      // Some strings may have been read for all that.
      taken(step, subject, now, before);
      boolean counts = now.held(step.quantity()).usable();
      now.bench(counts ? now.bench().with(step.quantity(), Freshness.MISSED) : now.bench());
    } else {
      now.bench(before.bench().missed(step.quantity(), step.which()));
      now.mask(subject, before.mask(subject));
    }
    return now;
  }

  private void taken(Step.Measure step, int subject, AbstractState now, AbstractState before) {
    Quantity quantity = step.quantity();
    now.bench(now.bench().read(quantity, step.which(), true));
    if (quantity == Quantity.RELIEF && step.which() == Which.HIGHEST) {
      now.mask(subject, before.mask(subject));
      return;
    }
    now.dayLeft(now.dayLeft() && quantity != Quantity.RELIEF);
    now.sinceRead(quantity == Quantity.RELIEF ? 0 : now.sinceRead());
    frame.open(now, new Subject.Each(quantity));
    if (quantity == Quantity.RELIEF && now.held(quantity) == Freshness.FRESH && neck >= 0) {
      // Cells that no condition tells apart are one: an answer can share one with none.
      now.mask(neck, now.turned() ? answers() : answered(Response.NOT_TURNED));
    }
  }

  /** Adds the ways on by each branch that can hold. */
  void spread(List<Onward> ways, Step step, AbstractState now) {
    Fan fan = fans.apply(step);
    int[] subjects = fan.subjects();
    Fan.Spread spread = fan.spread(now);
    watch.accept(fan, spread);
    for (Fan.Taken taken : spread.taken()) {
      String go = fan.to(taken);
      if (go == null) {
        continue;
      }
      AbstractState then = now.copy();
      for (int i = 0; i < subjects.length; i++) {
        then.mask(subjects[i], taken.masks()[i]);
      }
      if (today >= 0 && (then.mask(today) & dayUsed) == 0) {
        then.dayLeft(true);
      }
      ways.add(new Onward(go, then, taken.branch()));
    }
  }

  /** The state after a break: readings are from before it, and pitch may have drifted. */
  AbstractState back(AbstractState before, boolean drifted) {
    AbstractState now = before.with(before.bench().back(drifted));
    now.dayLeft(false);
    frame.open(now, TODAY, IN_ALL, LAST_TIME, ROD);
    if (neck >= 0 && now.turned()) {
      // Turned elsewhere meanwhile, nothing more is learned of the last turn here.
      now.mask(neck, now.mask(neck) | answered(Response.UNSEEN));
    }
    return now;
  }
}
