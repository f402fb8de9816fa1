package quarterturn.craft;

import java.util.Comparator;
import java.util.List;

/**
 * How a hexagon key sits in a hexagon socket.
 *
 * <p>Clearance is the socket's width across flats less the key's, from the tightest pair within
 * limits to the loosest. Play is how far the key turns either way before its corners bear on the
 * flats: a corner stands {@code k / sqrt(3)} from the middle, 30 degrees off a flat's normal, and
 * meets the flat at {@code s / 2}, so {@code play = 30 - acos((sqrt(3)/2) s / k)} degrees, until at
 * {@code s / k = 2 / sqrt(3)} the key spins round.
 *
 * <p>A key that rocks by more than {@link #MOST_PLAY} even in the tightest socket of its size bears
 * on its corners and rounds the socket; the limit is common practice, no source.
 */
public record KeyFit(HexKey key, HexSocket socket) {
  /** The most play of a key that fits, in degrees; common practice, no source. */
  public static final double MOST_PLAY = 5;

  /** Slack in millimetres for limits that were rounded where they were printed. */
  private static final double ROUNDED_MM = 0.002;

  private static final double SPINS = 2 / Math.sqrt(3);

  /** Degrees either way of a key that turns freely. */
  private static final double FREE = 180;

  /**
   * Every key that may enter a socket without too much play, the tightest first. A standard
   * socket's own key stands before those that are the same but for rounding.
   */
  public static List<KeyFit> suiting(HexSocket socket) {
    return HexKey.ALL.stream()
        .map(key -> new KeyFit(key, socket))
        .filter(fit -> fit.mayEnter() && fit.leastPlay() <= MOST_PLAY)
        .sorted(
            Comparator.comparing((KeyFit fit) -> fit.key().name().equals(socket.name()) ? 0 : 1)
                .thenComparingDouble(KeyFit::leastPlay)
                .thenComparingDouble(KeyFit::mostPlay))
        .toList();
  }

  /** Clearance of the tightest pair in millimetres; below zero the key may not enter. */
  public double leastClearanceMm() {
    return socket.least().mm() - key.most().mm();
  }

  /** Clearance of the loosest pair in millimetres; below zero the key never enters. */
  public double mostClearanceMm() {
    return socket.most().mm() - key.least().mm();
  }

  /** Whether some key of this size enters some socket of this size. */
  public boolean mayEnter() {
    return mostClearanceMm() >= 0;
  }

  /** Whether every key of this size enters every socket of this size. */
  public boolean alwaysEnters() {
    return mayEnter() && leastClearanceMm() >= -ROUNDED_MM;
  }

  /** Whether every key of this size enters every socket of this size, and bears on its flats. */
  public boolean fits() {
    return alwaysEnters() && leastPlay() <= MOST_PLAY;
  }

  /** Whether a key turns freely in every socket of this size. */
  public boolean spins() {
    return leastPlay() >= FREE;
  }

  /** Whether some key of this size turns freely in some socket of this size. */
  public boolean maySpin() {
    return mostPlay() >= FREE;
  }

  /** Play of the tightest pair, in degrees either way; zero where it may not enter. */
  public double leastPlay() {
    return play(socket.least().mm() / key.most().mm());
  }

  /** Play of the loosest pair, in degrees either way. */
  public double mostPlay() {
    return play(socket.most().mm() / key.least().mm());
  }

  /** Play for a ratio of widths; 180 where the key spins round. */
  static double play(double ratio) {
    if (ratio <= 1) {
      return 0;
    }
    return ratio >= SPINS ? FREE : 30 - Math.toDegrees(Math.acos(ratio / SPINS));
  }
}
