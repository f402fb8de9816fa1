package quarterturn.rehearsal.life;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.unit.Turn;

/**
 * What was truly done to one rod, whatever any record says of it, held to the limits that come with
 * the program. Times are those that the machine's clock told.
 */
final class TrueHistory {
  private static final double SLACK = 1e-9;

  private final Limits limits;
  private final List<Made> made = new ArrayList<>();
  private final List<String> breaches = new ArrayList<>();
  private boolean readSinceTurn;
  private double net;
  private double mostNet;
  private double mostToday;
  private @Nullable Feel sign;

  /**
   * A turn of the rod.
   *
   * @param free whether a technician had lifted the daily rest since
   */
  private record Made(Instant at, double turns, boolean free) {}

  TrueHistory(Limits limits) {
    this.limits = limits;
  }

  /** The relief was read. */
  void read() {
    readSinceTurn = true;
  }

  /** A technician ended the daily rest early, with a reason. */
  void lifted() {
    made.replaceAll(turn -> new Made(turn.at(), turn.turns(), true));
  }

  /** The rod was turned, or tried. */
  void turned(Instant at, Turn turn, Feel feel, Role role, boolean warned) {
    double size = turn.size().turns();
    if (size > 0) {
      breachIf(sign != null, at, "turned after a sign to stop");
      breachIf(!warned, at, "turned without its hazards shown in this session");
      breachIf(!readSinceTurn, at, "turned without a reading since the turn before");
      breachIf(size > limits.perReading().turns() + SLACK, at, "turned " + turn + " at once");
      made.add(new Made(at, turn.turns(), false));
      net += turn.turns();
      readSinceTurn = false;
      double today = today(at);
      breachIf(
          today > limits.beginnerDay().turns() + SLACK,
          at,
          "a " + role.word() + " turned " + new Turn(today) + " within a day");
      breachIf(
          Math.abs(net) > limits.fromAsFound().turns() + SLACK,
          at,
          "stands " + new Turn(net) + " from as found");
      mostToday = Math.max(mostToday, today);
      mostNet = Math.max(mostNet, Math.abs(net));
    }
    sign = limits.stopFeels().contains(feel) ? feel : sign;
  }

  private double today(Instant now) {
    Instant since = now.minus(limits.day());
    return made.stream()
        .filter(turn -> !turn.free() && turn.at().isAfter(since))
        .mapToDouble(turn -> Math.abs(turn.turns()))
        .sum();
  }

  private void breachIf(boolean broken, Instant at, String what) {
    if (broken) {
      breaches.add(at + ": " + what);
    }
  }

  /** A repairer's finding or a new start was put on record. */
  void anew() {
    net = 0;
    sign = null;
  }

  boolean stopped() {
    return sign != null;
  }

  /** The limits that were broken, a line each. */
  List<String> breaches() {
    return List.copyOf(breaches);
  }

  int turns() {
    return made.size();
  }

  /** The most it ever stood from as found, in turns. */
  double mostNet() {
    return mostNet;
  }

  /** The most it was turned within a day that nobody had lifted, in turns. */
  double mostToday() {
    return mostToday;
  }
}
