package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Facts;
import quarterturn.procedure.Feel;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Response;
import quarterturn.procedure.Results;
import quarterturn.procedure.Step;
import quarterturn.procedure.Verdict;
import quarterturn.procedure.Which;

/** What each kind of step does to a {@link Situation}: the engine's rules, on what is known. */
final class Effects {
  private final Frame frame;
  private final Limits limits;
  private final Results results;
  private final Fans fans;

  /** Is told what came of each fork. */
  private final BiConsumer<Fan, Fan.Spread> watch;

  private final int relief;
  private final int differing;
  private final int repeating;
  private final int neck;
  private final int rod;
  private final int feeling;
  private final int today;
  private final int inAll;

  /** The cells in which the day's turning may be used up. */
  private final int dayUsed;

  Effects(Frame frame, Fans fans, BiConsumer<Fan, Fan.Spread> watch) {
    this.watch = watch;
    this.frame = frame;
    this.fans = fans;
    this.limits = frame.library().limits();
    this.results = frame.library().results();
    this.relief = frame.index(new Subject.Reading(Quantity.RELIEF));
    this.differing = frame.index(new Subject.Differing(Quantity.RELIEF));
    this.repeating = frame.index(new Subject.Repeating(Quantity.RELIEF));
    this.neck = frame.index(new Subject.Neck());
    this.rod = frame.index(new Subject.Rod());
    this.feeling = frame.index(new Subject.Feeling());
    this.today = frame.index(new Subject.Turning(Condition.Span.TODAY));
    this.inAll = frame.index(new Subject.Turning(Condition.Span.IN_ALL));
    double day = limits.beginnerDay().turns() + Cell.SLACK;
    this.dayUsed =
        today < 0
            ? 0
            : frame
                .domains()
                .get(today)
                .where(cell -> cell instanceof Cell.Amount amount && amount.below() > day);
  }

  /** Where a step can go, and what is known there. */
  record Onward(String step, Situation at, int branch) {}

  /** Every way on from a step that asks or does something within this procedure. */
  List<Onward> from(Step step, Situation before) {
    List<Onward> ways = new ArrayList<>();
    if (step instanceof Step.Tell tell) {
      Situation now = before.copy();
      change(now, tell.changes());
      establish(now, tell.establishes());
      spread(ways, step, tell.then(), now);
    } else if (step instanceof Step.Choose choose) {
      choose.options().forEach(option -> ways.add(chosen(choose, option, before)));
    } else if (step instanceof Step.Note note) {
      ways.add(new Onward(note.go(), before, Fan.REST));
    } else if (step instanceof Step.Pause pause) {
      ways.add(new Onward(pause.go(), before, Fan.REST));
    } else if (step instanceof Step.Measure measure) {
      read(ways, measure, before);
    } else if (step instanceof Step.Compute compute) {
      spread(ways, step, compute.then(), before);
    } else if (step instanceof Step.TurnRod turn) {
      for (Feel feel : Feel.values()) {
        String go = turn.felt().get(feel);
        if (go != null) {
          ways.add(new Onward(go, turned(before, feel), Fan.REST));
        }
      }
    } else if (step instanceof Step.Adjust adjust) {
      spread(ways, step, adjust.then(), before);
      Situation now = before.copy();
      change(now, adjust.adjustment().word());
      spread(ways, step, adjust.then(), now);
    } else if (step instanceof Step.Wait wait) {
      ways.add(new Onward(wait.go(), waited(wait, before), Fan.REST));
    }
    return ways;
  }

  private Onward chosen(Step.Choose choose, Step.Option option, Situation before) {
    Situation now = before.copy();
    int subject = frame.index(new Subject.Choice(choose.id()));
    if (subject >= 0) {
      now.mask(subject, frame.domains().get(subject).option(option.id()));
    }
    change(now, option.changes());
    establish(now, option.establishes());
    return new Onward(option.go(), now, Fan.REST);
  }

  /** Confirmed or chosen: only a wait can settle a neck. */
  private static void establish(Situation now, Set<Fact> established) {
    if (established.isEmpty()) {
      return;
    }
    Set<Fact> facts =
        established.stream().filter(f -> f != Fact.SETTLED).collect(Collectors.toSet());
    now.facts(Facts.with(now.facts(), facts));
    if (facts.contains(Fact.NECK_FAST)) {
      for (Quantity quantity : Quantity.values()) {
        now.spoil(quantity);
      }
    }
  }

  private void change(Situation now, @Nullable String id) {
    Results.Change change = id == null ? null : results.changes().get(id);
    if (change == null) {
      return;
    }
    for (Quantity quantity : Quantity.values()) {
      if (results.of(quantity).stream().anyMatch(r -> change.spoils().contains(r.id()))) {
        now.spoil(quantity);
      }
    }
    if (change.spoils().contains("pitch")) {
      now.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
  }

  private Situation turned(Situation before, Feel feel) {
    Situation now = before.copy();
    change(now, Results.ROD);
    now.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    now.held(Quantity.RELIEF, Held.AFTER_TURN);
    now.turned(true);
    now.dayLeft(false);
    open(now, relief, differing, repeating, rod, today, inAll);
    if (neck >= 0) {
      now.mask(neck, answered(Response.UNSEEN));
    }
    if (feeling >= 0) {
      now.mask(
          feeling,
          frame
              .domains()
              .get(feeling)
              .where(cell -> cell instanceof Cell.Felt felt && felt.feel() == feel));
    }
    return now;
  }

  /** The cells in which the neck answered so. */
  private int answered(Response response) {
    return frame
        .domains()
        .get(neck)
        .where(cell -> cell instanceof Cell.Answer answer && answer.response() == response);
  }

  /** Nothing is known of these subjects any more. */
  private void open(Situation now, int... subjects) {
    for (int subject : subjects) {
      if (subject >= 0) {
        now.mask(subject, frame.domains().get(subject).all());
      }
    }
  }

  private Situation waited(Step.Wait wait, Situation before) {
    Situation now = before.copy();
    boolean settles =
        wait.establishes().contains(Fact.SETTLED)
            && wait.minutes() >= limits.settleMinutes()
            && now.has(Fact.AT_PITCH);
    establish(now, wait.establishes());
    if (settles) {
      now.facts(Facts.with(now.facts(), Set.of(Fact.SETTLED)));
    }
    if (wait.minutes() > limits.readingHoldsMinutes()) {
      // Pitch drifts and the neck moves on.
      now.withdraw(Fact.AT_PITCH, Fact.SETTLED);
      now.spoil(Quantity.RELIEF);
      open(now, today);
    }
    if (wait.rest()) {
      for (Quantity quantity : Quantity.values()) {
        now.spoil(quantity);
      }
      now.dayLeft(now.dayLeft() || wait.minutes() >= limits.restHours() * 60);
    }
    return now;
  }

  private void read(List<Onward> ways, Step.Measure step, Situation before) {
    Quantity quantity = step.quantity();
    int subject = frame.index(new Subject.Reading(quantity));
    Situation asked = before.copy();
    asked.mask(subject, plausible(subject, step));
    if (quantity == Quantity.RELIEF) {
      open(asked, differing, repeating, rod);
    }
    int missing = frame.where(Frame.unread(quantity));
    List<Onward> found = new ArrayList<>();
    spread(found, step, step.then(), asked);
    for (Onward way : found) {
      int mask = way.at().mask(subject);
      if ((mask & missing) != 0) {
        ways.add(new Onward(way.step(), missed(step, subject, way.at(), before), way.branch()));
      }
      if ((mask & ~missing) != 0) {
        Situation now = way.at().copy();
        now.mask(subject, mask & ~missing);
        taken(step, subject, now, before);
        ways.add(new Onward(way.step(), now, way.branch()));
      }
    }
  }

  private static final Verdict NOTHING = Verdict.NOT_MEASURED;

  /** A step can be answered with what is plausible there, and with nothing. */
  private int plausible(int subject, Step.Measure step) {
    return frame
        .domains()
        .get(subject)
        .where(
            cell ->
                cell instanceof Cell.Standing s
                    && (s.verdict() == NOTHING
                        || (s.from() <= step.most() && s.below() > step.least())));
  }

  /** Nothing was read: an earlier reading is still there. */
  private Situation missed(Step.Measure step, int subject, Situation after, Situation before) {
    Situation now = after.copy();
    Quantity quantity = step.quantity();
    Held held = before.held(quantity);
    now.held(quantity, held == Held.NEVER ? Held.MISSED : held);
    if (step.which() == Which.EACH) {
      // Some strings may have been read for all that.
      taken(step, subject, now, before);
      now.held(quantity, Held.MISSED);
    } else {
      now.mask(subject, before.mask(subject));
    }
    return now;
  }

  private void taken(Step.Measure step, int subject, Situation now, Situation before) {
    Quantity quantity = step.quantity();
    if (quantity == Quantity.RELIEF && step.which() == Which.HIGHEST) {
      now.mask(subject, before.mask(subject));
      return;
    }
    boolean counts =
        !quantity.onString()
            || (now.has(Fact.AT_PITCH) && (quantity != Quantity.RELIEF || now.has(Fact.SETTLED)));
    now.held(quantity, counts ? Held.FRESH : Held.UNCOUNTED);
    now.dayLeft(now.dayLeft() && quantity != Quantity.RELIEF);
    int each = frame.index(new Subject.Each(quantity));
    open(now, each);
    if (quantity == Quantity.RELIEF && counts && neck >= 0) {
      int never = answered(Response.NOT_TURNED);
      now.mask(neck, now.turned() ? frame.domains().get(neck).all() & ~never : never);
    }
  }

  /** On by each branch that can hold. */
  void spread(List<Onward> ways, Step step, Branch.Fork fork, Situation now) {
    Fan fan = fans.of(step, fork);
    int[] subjects = fan.subjects();
    Fan.Spread spread = fan.spread(now);
    watch.accept(fan, spread);
    for (Fan.Taken taken : spread.taken()) {
      if (taken.branch() == Fan.HOLE) {
        continue;
      }
      Situation then = now.copy();
      for (int i = 0; i < subjects.length; i++) {
        then.mask(subjects[i], taken.masks()[i]);
      }
      if (today >= 0 && (then.mask(today) & dayUsed) == 0) {
        then.dayLeft(true);
      }
      String go =
          taken.branch() == Fan.REST
              ? String.valueOf(fork.otherwise())
              : fork.branches().get(taken.branch()).go();
      ways.add(new Onward(go, then, taken.branch()));
    }
  }

  /** Back from a break: what was read may have moved since, and pitch may have drifted. */
  Situation back(Situation before, boolean drifted) {
    Situation now = before.copy();
    if (drifted) {
      now.withdraw(Fact.AT_PITCH, Fact.SETTLED);
    }
    for (Quantity quantity : Quantity.values()) {
      now.spoil(quantity);
    }
    now.dayLeft(false);
    open(now, today, inAll, rod);
    if (neck >= 0 && now.turned()) {
      // Turned elsewhere meanwhile, nothing more is learned of the last turn here.
      now.mask(neck, now.mask(neck) | answered(Response.UNSEEN));
    }
    return now;
  }
}
