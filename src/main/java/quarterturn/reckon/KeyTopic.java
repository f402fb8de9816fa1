package quarterturn.reckon;

import java.util.List;
import java.util.stream.Collectors;
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
    addMethodSubcommands = false,
    name = "key",
    description = "Whether a hexagon key fits a socket, and which fits best.",
    footer = {
      "",
      "JSON: fits, clearance_mm [min,max], play_degrees [min,max] (either way, 180",
      "where it spins, null where the key can't enter), better (a key that fits",
      "better, or null; with --across-flats alone, the key that suits best), suiting",
      "(every key that suits the socket, the tightest first)."
    })
final class KeyTopic extends Topic {
  private static final String FORMULA =
      "clearance = socket less key across flats; play = 30 - acos((sqrt(3)/2) s / k) degrees either"
          + " way";
  private static final String ASSUMES =
      "keys within ISO 2936 and ASME B18.3, sockets within ISO 4762 and ASME B18.3, unworn; where"
          + " tables differ the wider socket (1.5 mm: to 1.56 or 1.58, 2 mm: to 2.06 or 2.08). A key"
          + " that rocks more than 5 degrees in the tightest socket does not fit (common practice,"
          + " no source). Full depth first; no fit, no turn.";

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
    List<KeyFit> suiting =
        KeyFit.suiting(found).stream().filter(f -> measured != null || f.fits()).toList();
    if (key == null) {
      if (measured == null) {
        throw new NotUnderstoodException(
            "--key: is missing; --across-flats finds a key for a socket");
      }
      return forMeasured(found, HexSocket.nearest(measured).name(), suiting);
    }
    KeyFit fit = new KeyFit(key, found);
    String better =
        suiting.stream()
            .limit(1)
            .filter(other -> betters(other, fit))
            .findFirst()
            .map(other -> other.key().name())
            .orElse(null);
    List<KeyFit> told = suiting.contains(fit) ? suiting : List.of(fit);
    String named = String.join(" and ", suiting.stream().map(f -> f.key().name()).toList());
    return answer(fit, better, suiting, told)
        .say(
            better == null
                ? "No other key fits better."
                : told.size() > 1 || suiting.size() == 1
                    ? better + " fits better."
                    : named + " fit better, the tightest first.")
        .by(FORMULA, ASSUMES);
  }

  /**
   * What suits a measured socket, the tightest key first; else the nearest size, which does not.
   */
  private static Reckoned forMeasured(HexSocket found, String nearest, List<KeyFit> suiting) {
    boolean none = suiting.isEmpty();
    KeyFit fit = none ? new KeyFit(HexKey.parse(nearest), found) : suiting.get(0);
    return answer(fit, none ? null : fit.key().name(), suiting, none ? List.of(fit) : suiting)
        .say(
            "Of the standard sockets %s is nearest to what was measured%s"
                .formatted(
                    nearest,
                    none
                        ? ", and its key does not suit: measure again, or it is worn or no hexagon."
                        : "."))
        .by(FORMULA, ASSUMES);
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
    return !other.key().equals(fit.key())
        && (!fit.alwaysEnters() || other.leastPlay() < fit.leastPlay());
  }

  /**
   * The figures of one key, and in words what is to be told.
   *
   * @param suiting every key that suits, the tightest first
   */
  private static Reckoned.Draft answer(
      KeyFit fit, @Nullable String better, List<KeyFit> suiting, List<KeyFit> told) {
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
        .key("suiting", suiting.stream().map(f -> f.key().name()).toList())
        .say(told.stream().map(KeyTopic::verdict).collect(Collectors.joining(" ")));
  }

  private static String verdict(KeyFit fit) {
    String pair = fit.key().name() + " in a socket of " + fit.socket().name();
    if (!fit.mayEnter()) {
      return pair + " does not enter.";
    }
    if (fit.spins()) {
      return pair + " spins: it turns freely and moves nothing. Take a larger key.";
    }
    String rocks =
        " rocks %s %s"
            .formatted(
                Decimals.print(fit.leastPlay(), 1),
                fit.maySpin()
                    ? "degrees either way or more, and may spin: turn freely."
                    : "to " + Decimals.print(fit.mostPlay(), 1) + " degrees either way.");
    if (fit.fits()) {
      return pair + " fits and" + rocks;
    }
    return fit.alwaysEnters()
        ? pair + " enters but does not fit: it" + rocks
        : pair + " may be too tight to enter; try it, and do not force it.";
  }
}
