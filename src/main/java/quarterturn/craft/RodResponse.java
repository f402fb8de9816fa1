package quarterturn.craft;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/**
 * How far a neck moves: millimetres of relief per quarter turn, lognormal.
 *
 * <p>Starts from {@link Prior} and takes in every move that was read on both sides. A move by
 * {@code q} quarters from a bracket of width {@code w1} to one of width {@code w2} shows {@code r =
 * change / q} with variance {@code ((w1^2 + w2^2) / 12 + 2 s^2) / q^2}: each true gap is taken as
 * uniform within its bracket, and {@code s} is the noise of a reading. Around the present median
 * {@code m} the logarithm of r has standard deviation about {@code sqrt(variance) / m}, and the two
 * normal distributions of the logarithm are multiplied. A move that shows no answer counts as a
 * small one, so that it lowers the estimate without ending it.
 *
 * @param mmPerQuarter median
 * @param sigma standard deviation of the natural logarithm
 * @param observed how many moves were taken in
 */
public record RodResponse(double mmPerQuarter, double sigma, int observed) {
  /** Noise of one gauge reading in millimetres, an estimate. */
  static final double NOISE_MM = 0.012;

  /** The smallest response taken from one move, in millimetres per quarter turn. */
  static final double FLOOR_MM = 0.02;

  private static final double LEAST_QUARTERS = 0.2;

  /** The response after {@code moves}, oldest first. */
  public static RodResponse of(Prior prior, List<Move> moves) {
    RodResponse response = new RodResponse(prior.mmPerQuarter(), Prior.SIGMA, 0);
    for (Move move : moves) {
      response = response.after(move);
    }
    return response;
  }

  private RodResponse after(Move move) {
    @Nullable Bracket before = move.before();
    @Nullable Bracket after = move.after();
    double quarters = move.turn().turns() * 4;
    if (before == null || after == null || !before.bounded() || !after.bounded()) {
      return this;
    }
    if (Math.abs(quarters) < LEAST_QUARTERS) {
      return this;
    }
    double shown = Math.max(FLOOR_MM, (before.middleMm() - after.middleMm()) / quarters);
    double variance =
        ((square(before.widthMm()) + square(after.widthMm())) / 12 + 2 * square(NOISE_MM))
            / square(quarters);
    double spread = Math.sqrt(variance) / mmPerQuarter;
    double mine = 1 / square(sigma);
    double its = 1 / square(spread);
    double log = (mine * Math.log(mmPerQuarter) + its * Math.log(shown)) / (mine + its);
    return new RodResponse(Math.exp(log), Math.sqrt(1 / (mine + its)), observed + 1);
  }

  private static double square(double x) {
    return x * x;
  }
}
