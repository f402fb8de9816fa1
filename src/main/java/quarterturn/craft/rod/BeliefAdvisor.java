package quarterturn.craft.rod;

import java.util.List;
import java.util.function.DoublePredicate;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Decides from a {@link Belief}.
 *
 * <p>Every turn of whole sixteenths is weighed by what it may be expected to cost, in cycles of
 * turning, settling and reading: the cycle itself; for each case that does not read in the window
 * afterwards as many more cycles as its way to the window takes in quarter turns; and {@link
 * #CROSSING} more where it was taken across the window to the other side. The cheapest is chosen.
 * One step ahead is enough, since the next reading changes the belief more than any plan.
 *
 * <p>A fault is called when the belief is sure of it: a rod that does nothing after two moves at
 * least, one that works the other way as soon as that is plain.
 */
public final class BeliefAdvisor implements Advisor {
  /**
   * What crossing the window costs, in cycles of turning, settling and reading; chosen by
   * simulation.
   */
  static final double CROSSING = 3;

  /** The chance of the window from which on a reading inside it counts as there. */
  private static final double AGREES = 0.5;

  /**
   * The chance of the window from which on a reading that straddles one of its ends counts as in
   * it.
   */
  private static final double SURE = 0.9;

  /**
   * The chance from which on a fault is called. After {@link #LATE} moves under a gap that can be
   * read a small chance is enough: a dead rod read on the edge of two leaves looks like a very slow
   * neck, of which there are few.
   */
  private static final double FAULT = 0.9;

  private static final double FAULT_LATE = 0.1;

  /** The chance of no answer above which it is spoken of, though no fault is called. */
  static final double MAY_BE = 0.3;

  private static final int LATE = 3;
  private static final int EARLY = 2;

  /** How far inside the window a neck should come to lie, in millimetres. */
  private static final double MARGIN_MM = 0.02;

  /** The least response reckoned with, in millimetres, or a dead rod would cost without end. */
  private static final double LEAST_MM = 0.04;

  /** How many of a neck's last moves are looked back on. */
  private static final int MOST_MOVES = 20;

  private static final double SIXTEENTHS = 16;

  private final LatestBelief latest = new LatestBelief();

  /**
   * Decides what to do.
   *
   * @param window where the relief should stand
   * @param known of the neck before the story
   * @param story since then, oldest first
   * @param allowed how far the rod may be turned
   */
  public Decision decide(Window window, Known known, List<Seen> story, Allowed allowed) {
    Belief belief = latest.of(known, story);
    RodHistory course = RodHistory.of(story);
    Known kept = belief.known();
    Bracket reading = course.reading();
    if (reading == null) {
      return new Decision(
          new Decision.ReadAgain(), 0, "There is no reading since the rod was turned.", kept);
    }
    double in = belief.chanceIn(window, Turn.NONE);
    if (stands(reading, window, in)) {
      return new Decision(
          new Decision.Leave(),
          in,
          "The gap is " + reading + ", and it should be " + window + ".",
          kept);
    }
    if (course.readings() == 1 && unclear(reading, window, in)) {
      return new Decision(
          new Decision.ReadAgain(),
          in,
          "The gap may be in the window or out of it. Read it once more, with finer leaves if there"
              + " are any.",
          kept);
    }
    Decision.Reason fault = fault(belief, course, reading);
    if (fault != null) {
      return new Decision(new Decision.HandOver(fault), in, fault.sentence(), kept);
    }
    Turn wanted = cheapest(belief, window, allowed.most(), t -> true);
    Turn turn = cheapest(belief, window, allowed.most(), t -> allowed.after(course.net(), t));
    if (turn.turns() * wanted.turns() <= 0) {
      Decision.Reason end = noMoreRoom(belief, reading, wanted);
      return new Decision(new Decision.HandOver(end), in, end.sentence(), kept);
    }
    return new Decision(
        new Decision.TurnRod(turn, belief.expect(turn)),
        belief.chanceIn(window, turn),
        AdviceWords.of(reading, belief, course, turn),
        kept);
  }

  @Override
  public Advice advise(Question q) {
    if (inside(q.reading(), q.window()) || q.most().turns() < 1 / SIXTEENTHS - 1e-9) {
      return new Advice(Turn.NONE, "The reading stands in the window.");
    }
    List<Seen> story = recent(q.story());
    Belief belief = latest.of(q.known(), story);
    double way = q.reading().middleMm() > q.window().middleMm() ? 1 : -1;
    Turn turn = cheapest(belief, q.window(), q.most(), t -> t * way > 0);
    String why = AdviceWords.of(q.reading(), belief, RodHistory.of(story), turn);
    return new Advice(turn, why, AdviceWords.numbers(belief, q.window(), turn));
  }

  @Override
  public Decision.@Nullable Reason fault(Question q) {
    List<Seen> story = recent(q.story());
    return fault(latest.of(q.known(), story), RodHistory.of(story), q.reading());
  }

  @Override
  public double chance(Question q, Turn turn) {
    return latest.of(q.known(), recent(q.story())).chanceIn(q.window(), turn);
  }

  @Override
  public Range expect(Question q, Turn turn) {
    return latest.of(q.known(), recent(q.story())).expect(turn);
  }

  /** The story of the last {@link #MOST_MOVES} moves; what lies further back adds nothing. */
  private static List<Seen> recent(List<Seen> story) {
    int turns = 0;
    for (int i = story.size() - 1; i >= 0; i--) {
      turns += story.get(i) instanceof Seen.Turned ? 1 : 0;
      if (turns > MOST_MOVES) {
        return story.subList(i + 1, story.size());
      }
    }
    return story;
  }

  /** Whether a reading means that the neck is where it should be. */
  private static boolean stands(Bracket reading, Window window, double in) {
    return in >= (inside(reading, window) ? AGREES : SURE);
  }

  private static boolean inside(Bracket reading, Window window) {
    return reading.lowMm() >= window.lowMm() - 1e-9 && reading.highMm() <= window.highMm() + 1e-9;
  }

  /** Whether it is open on which side of the window's end the neck is. */
  private static boolean unclear(Bracket reading, Window window, double in) {
    boolean apart =
        reading.highMm() <= window.lowMm() + 1e-9 || reading.lowMm() >= window.highMm() - 1e-9;
    return !apart && reading.bounded() && in > 1 - SURE;
  }

  private static Decision.@Nullable Reason fault(
      Belief belief, RodHistory course, Bracket reading) {
    boolean late = course.moves() >= LATE && !reading.noGap();
    double sure = late ? FAULT_LATE : FAULT;
    if (course.moves() > 0 && belief.chance(RodState.REVERSED) > sure) {
      return Decision.Reason.WRONG_WAY;
    }
    if (course.moves() >= EARLY && belief.chanceOfNoAnswer(course.way()) > sure) {
      return reading.noGap() && course.way() < 0
          ? Decision.Reason.END_OF_TRAVEL
          : Decision.Reason.NO_RESPONSE;
    }
    return null;
  }

  /**
   * The reason to stop where no turn is allowed any more: the limit, or the end of the rod's travel
   * where loosening did nothing that a string could show.
   */
  private static Decision.Reason noMoreRoom(Belief belief, Bracket reading, Turn wanted) {
    boolean nothing = belief.chanceOfNoAnswer(wanted.turns()) > MAY_BE;
    return reading.noGap() && wanted.turns() < 0 && nothing
        ? Decision.Reason.END_OF_TRAVEL
        : Decision.Reason.LIMIT;
  }

  /** The cheapest of the turns that are open; {@link Turn#NONE} where none is. */
  private static Turn cheapest(Belief belief, Window window, Turn most, DoublePredicate open) {
    int reach = (int) Math.floor(most.turns() * SIXTEENTHS + 1e-9);
    double best = Double.POSITIVE_INFINITY;
    double turns = 0;
    for (int i = 1; i <= reach; i++) {
      for (int way = -1; way <= 1; way += 2) {
        double turn = way * i / SIXTEENTHS;
        double cost = open.test(turn) ? cost(belief, window, turn) : Double.POSITIVE_INFINITY;
        if (cost < best - 1e-9) {
          best = cost;
          turns = turn;
        }
      }
    }
    return new Turn(turns);
  }

  /** What a turn may be expected to cost, in cycles. */
  static double cost(Belief belief, Window window, double turns) {
    double[] sum = {1};
    belief.weigh(
        turns,
        (chance, before, after, response) -> {
          double misses =
              1
                  - Normal.below((window.highMm() - after) / Belief.NOISE_MM)
                  + Normal.below((window.lowMm() - after) / Belief.NOISE_MM);
          if (misses > 1e-6) {
            sum[0] += chance * misses * more(window, before, after, response);
          }
        });
    return sum[0];
  }

  /** Expected cycles after a turn, for a case that does not read in the window then. */
  private static double more(Window window, double before, double after, double response) {
    double above = after - window.highMm();
    double below = window.lowMm() - after;
    double off = Math.max(above, below);
    if (off <= 0) {
      return 1;
    }
    double cycles = Math.max(1, Math.ceil((off + MARGIN_MM) / Math.max(response, LEAST_MM)));
    boolean crossed = above > 0 ? before < window.lowMm() : before > window.highMm();
    return crossed ? cycles + CROSSING : cycles;
  }
}
