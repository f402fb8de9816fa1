package quarterturn.reckon;

import java.util.Optional;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.HexKey;
import quarterturn.craft.HexSocket;
import quarterturn.craft.KeyFit;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** {@code reckon key}. */
@Command(
    name = "key",
    description = "Whether a hexagon key fits a socket, and which fits best.",
    footer = {
      "",
      "JSON: fits, clearance_mm [min,max], play_degrees [min,max] (either way, null",
      "where the key can't enter), better (a key that fits better, or null; with",
      "--across-flats alone, the key that suits best)."
    })
final class KeyTopic extends Topic {
  @Option(
      names = "--across-flats",
      paramLabel = "LENGTH",
      description = "A socket's width across flats, as measured.")
  private @Nullable Length measured;

  @Option(names = "--key", paramLabel = "SIZE", description = "A key, such as 3/16in or 5mm.")
  private @Nullable HexKey key;

  @Option(names = "--socket", paramLabel = "SIZE", description = "A standard socket, such as 5mm.")
  private @Nullable HexSocket socket;

  @Override
  Reckoned reckon() {
    HexSocket found = socket();
    Length width = measured;
    Optional<KeyFit> best = width == null ? KeyFit.best(found) : nearest(width, found);
    if (key == null) {
      if (width == null) {
        throw new NotUnderstoodException(
            "--key: is missing; --across-flats finds a key for a socket");
      }
      return forMeasured(width, found, best);
    }
    KeyFit fit = new KeyFit(key, found);
    String better =
        best.filter(b -> !b.key().equals(fit.key()) && betters(b, fit))
            .map(b -> b.key().name())
            .orElse(null);
    return answer(
        fit, better, better == null ? "No other key fits better." : better + " fits better.");
  }

  /** The key of the nearest standard socket, if it enters and holds. */
  private static Optional<KeyFit> nearest(Length width, HexSocket measured) {
    KeyFit fit = new KeyFit(HexKey.parse(HexSocket.nearest(width).name()), measured);
    return Optional.of(fit).filter(f -> f.mayEnter() && f.leastPlay() <= KeyFit.MOST_PLAY);
  }

  private static Reckoned forMeasured(Length width, HexSocket found, Optional<KeyFit> best) {
    String nearest = HexSocket.nearest(width).name();
    KeyFit fit = best.orElseGet(() -> new KeyFit(HexKey.parse(nearest), found));
    return answer(
        fit,
        best.isPresent() ? nearest : null,
        "Of the standard sockets %s is nearest to what was measured%s"
            .formatted(
                nearest,
                best.isPresent()
                    ? "."
                    : ", and its key does not suit: measure again, or it is worn or no hexagon."));
  }

  private HexSocket socket() {
    if (measured != null && socket != null) {
      throw new NotUnderstoodException("--across-flats and --socket contradict; give one of them");
    }
    if (measured != null) {
      return HexSocket.measured(Checked.above0("--across-flats", measured));
    }
    if (socket == null) {
      throw new NotUnderstoodException("give --across-flats as measured, or --key with --socket");
    }
    return socket;
  }

  /** Whether a key fits better than another: it has less play, or the other one may not enter. */
  private static boolean betters(KeyFit other, KeyFit fit) {
    return !fit.alwaysEnters() || other.leastPlay() < fit.leastPlay();
  }

  private static Reckoned answer(KeyFit fit, @Nullable String better, String advice) {
    double[] clearance = {fit.leastClearanceMm(), fit.mostClearanceMm()};
    double[] play =
        fit.mayEnter()
            ? new double[] {fit.leastPlay(), fit.mostPlay()}
            : new double[] {Double.NaN, Double.NaN};
    return new Reckoned.Draft()
        .key("fits", fit.fits())
        .key("clearance_mm", clearance)
        .key("play_degrees", play)
        .key("better", better)
        .say(verdict(fit) + " " + advice)
        .by(
            "clearance = socket less key across flats; play = 30 - acos((sqrt(3)/2) s / k) degrees"
                + " either way",
            "keys within ISO 2936 and ASME B18.3, sockets within ISO 4762 and ASME B18.3, unworn; a"
                + " key that rocks more than 5 degrees in the tightest socket does not fit (common"
                + " practice, no source). Full depth first; no fit, no turn.");
  }

  private static String verdict(KeyFit fit) {
    String pair = fit.key().name() + " in a socket of " + fit.socket().name();
    if (!fit.mayEnter()) {
      return pair + " does not enter.";
    }
    String rocks =
        " rocks %s to %s degrees either way."
            .formatted(Decimals.print(fit.leastPlay(), 1), Decimals.print(fit.mostPlay(), 1));
    if (fit.fits()) {
      return pair + " fits and" + rocks;
    }
    return fit.alwaysEnters()
        ? pair + " enters but does not fit: it" + rocks
        : pair + " may be too tight to enter; try it, and do not force it.";
  }
}
