package quarterturn.report;

import java.time.Duration;
import java.util.List;
import quarterturn.session.Due;

/** Invented things that are due. */
final class Coming {
  static final Due DAY =
      new Due(
          Told.BEGAN.plus(Duration.ofDays(1)),
          Due.Why.DAY,
          "practice-bass",
          "relief",
          "2027-03-01-relief-k3f9",
          "A day after the rod was turned, read the relief again.",
          Told.BEGAN);

  static final Due WAIT =
      new Due(
          Told.BEGAN.plus(Duration.ofMinutes(15)),
          Due.Why.WAIT,
          "blue-guitar",
          "relief",
          "2027-03-01-relief-x2m7",
          "Settled, ready; go on with relief.",
          Told.BEGAN);

  static final List<Due> BOTH = List.of(WAIT, DAY);

  private Coming() {}

  /** A re-check on an instrument of that name, with that sentence. */
  static Due on(String instrument, String what) {
    return new Due(
        DAY.at(), Due.Why.DAY, instrument, DAY.procedure(), DAY.session(), what, DAY.since());
  }
}
