package quarterturn.craft.rod;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Decides from a {@link Belief}.
 *
 * <p>The turn is the cheapest of {@link TurnChoice}, always towards the window by the reading.
 *
 * <p>A fault is called when the belief is sure of it: a rod that does nothing after two moves at
 * least, one that works the other way as soon as that is plain.
 */
public final class BeliefAdvisor implements Advisor {
  /**
   * What crossing the window costs, in cycles of turning, settling and reading; chosen by {@code
   * rehearse --fleet 2000 --weights --seed 7}. Moves against an advisor that knows the neck, and
   * overshoots a neck: 0: 1.019, 0.0348; 3: 1.038, 0.0241; 8: 1.042, 0.0225; 12: 1.046, 0.0225; 20:
   * 1.101, 0.0174; 40: 1.112, 0.0169. The rest is the first eighth of a turn on an unknown neck.
   */
  public static final double CROSSING = 12;

  /**
   * The least response of a neck that is ever turned a sixteenth, in millimetres a quarter turn.
   */
  public static final double LIVELY_MM = 0.20;

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

  /** The chance of the window below which a turn is not made for it. */
  private static final double HARDLY = 0.05;

  /** How often a rod is loosened at most without a gap to show for it. */
  private static final int BLIND = 5;

  private static final int LATE = 3;
  private static final int EARLY = 2;

  /** How many of a neck's last moves are looked back on. */
  public static final int MOST_MOVES = 20;

  private final LatestBelief latest = new LatestBelief();
  private final double crossing;

  public BeliefAdvisor() {
    this(CROSSING);
  }

  /** An advisor to which crossing the window costs this many cycles. */
  public BeliefAdvisor(double crossing) {
    this.crossing = crossing;
  }

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
          "The gap may be in range or out of it. Read it once more, with finer gauges if there"
              + " are any.",
          kept);
    }
    Decision.Reason fault = fault(belief, course, reading, window, allowed.most());
    if (fault != null) {
      return new Decision(new Decision.HandOver(fault), in, fault.sentence(), kept);
    }
    int way = way(reading, window);
    Turn turn = choice(belief, window, way).cheapest(allowed.most(course.net(), way));
    if (turn.turns() == 0) {
      Decision.Reason end = noMoreRoom(belief, reading, way);
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
    if (inside(q.reading(), q.window()) || !q.most().atLeast(Turn.SIXTEENTH)) {
      return new Advice(Turn.NONE, "The reading is in range.");
    }
    List<Seen> story = recent(q.story());
    Belief belief = latest.of(q.known(), story);
    Turn turn = choice(belief, q.window(), way(q.reading(), q.window())).cheapest(q.most());
    String why = AdviceWords.of(q.reading(), belief, RodHistory.of(story), turn);
    return new Advice(turn, why, AdviceWords.numbers(belief, q.window(), turn));
  }

  @Override
  public Decision.@Nullable Reason fault(Question q) {
    List<Seen> story = recent(q.story());
    Belief belief = latest.of(q.known(), story);
    return fault(belief, RodHistory.of(story), q.reading(), q.window(), q.most());
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

  private TurnChoice choice(Belief belief, Window window, int way) {
    return new TurnChoice(belief, window, way, crossing);
  }

  /** The way to the window by the reading: 1 tightens, -1 loosens. */
  private static int way(Bracket reading, Window window) {
    return reading.middleMm() > window.middleMm() ? 1 : -1;
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

  private Decision.@Nullable Reason fault(
      Belief belief, RodHistory course, Bracket reading, Window window, Turn most) {
    if (course.moves() > 0 && belief.chance(RodState.REVERSED) > sure(course.moves(), reading)) {
      return Decision.Reason.WRONG_WAY;
    }
    if (course.onward() >= EARLY
        && belief.chanceOfNoAnswer(course.way()) > sure(course.onward(), reading)) {
      return reading.noGap() && course.way() < 0
          ? Decision.Reason.END_OF_TRAVEL
          : Decision.Reason.NO_RESPONSE;
    }
    if (course.onward() >= BLIND && course.way() < 0 && reading.noGap()) {
      return Decision.Reason.END_OF_TRAVEL;
    }
    boolean outside = !inside(reading, window);
    return course.moves() >= LATE && outside && tooLively(belief, reading, window, most)
        ? Decision.Reason.TOO_LIVELY
        : null;
  }

  /** The chance of a fault from which on it is called after so many moves. */
  private static double sure(int moves, Bracket reading) {
    return moves >= LATE && !reading.noGap() ? FAULT_LATE : FAULT;
  }

  /** Whether the best turn takes the neck across the window, and hardly ever into it. */
  private boolean tooLively(Belief belief, Bracket reading, Window window, Turn most) {
    TurnChoice choice = choice(belief, window, way(reading, window));
    Turn best = choice.cheapest(most);
    return belief.chanceIn(window, best) < HARDLY && choice.chanceOfCrossing(best) > AGREES;
  }

  /**
   * The reason to stop where no turn is allowed any more: the limit, or the end of the rod's travel
   * where loosening did nothing that a string could show.
   */
  private static Decision.Reason noMoreRoom(Belief belief, Bracket reading, int way) {
    boolean nothing = belief.chanceOfNoAnswer(way) > MAY_BE;
    return reading.noGap() && way < 0 && nothing
        ? Decision.Reason.END_OF_TRAVEL
        : Decision.Reason.LIMIT;
  }
}
