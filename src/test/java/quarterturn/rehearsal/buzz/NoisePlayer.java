package quarterturn.rehearsal.buzz;

import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.rehearsal.simulated.Feelers;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/**
 * A player who listens to a noisy instrument and answers what is asked of it: where it buzzes from
 * what the strings strike, the readings from its heights with a careful hand's error, the rest from
 * its cause. One answer in a hundred by ear is mistaken (an estimate).
 */
final class NoisePlayer {
  private static final double MISTAKEN = 0.01;
  private static final double NOISE_MM = 0.012;

  /** How far a fret stands over the line of its neighbours where a straightedge is felt to rock. */
  private static final double ROCKS_MM = 0.02;

  /** A twist in millimetres that shows over two sticks. */
  private static final double TILTED_MM = 0.1;

  /** The noises that the second question tells apart. */
  private static final List<String> OTHERS =
      List.of("in-neck", "wavers", "ticks", "drifts", "swells", "dies");

  private final NoisyInstrument on;
  private final SplittableRandom random;
  private final TreeSet<Integer> stopped = new TreeSet<>();
  private final TreeSet<Integer> struck = new TreeSet<>();
  private final TreeSet<Integer> strings = new TreeSet<>();

  NoisePlayer(NoisyInstrument on, SplittableRandom random) {
    this.on = on;
    this.random = random;
    for (int i = 0; i < on.lines().size(); i++) {
      for (int at = 0; at < on.lines().get(i).last(); at++) {
        int fret = on.struck(i, at);
        if (fret > 0) {
          stopped.add(at);
          struck.add(fret);
          strings.add(i);
        }
      }
    }
  }

  Answer answer(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> new Answer.Confirmed(),
            caution -> new Answer.Confirmed(),
            this::chose,
            write -> new Answer.Wrote("-"),
            this::read,
            turn -> unexpected(prompt),
            wait -> new Answer.Waited(null),
            done -> unexpected(prompt),
            handOver -> unexpected(prompt)));
  }

  private static Answer unexpected(Prompt prompt) {
    throw new IllegalArgumentException("not asked of a noise: " + prompt);
  }

  private Answer chose(Prompt.Choose choose) {
    List<String> options = choose.options().stream().map(Prompt.Option::id).toList();
    // What stops each time it is touched has been heard twice.
    boolean twice = choose.said().step().equals("parts");
    if (random.nextDouble() < (twice ? MISTAKEN * MISTAKEN : MISTAKEN)) {
      return new Answer.Chose(options.get(random.nextInt(options.size())));
    }
    String answer = truth(choose.said().step());
    return new Answer.Chose(options.contains(answer) ? answer : options.get(0));
  }

  /** The true answer to a question of the sheet, or one that it does not offer for the ordinary. */
  private String truth(String step) {
    NoiseCause cause = on.cause();
    return switch (step) {
      case "heard" -> OTHERS.contains(cause.heard()) ? "other" : cause.heard();
      case "noise" -> cause.heard();
      case "parts" -> cause == NoiseCause.LOOSE_PART ? "stops" : "stays";
      case "where" -> cause.where().isEmpty() ? where() : cause.where();
      case "capo-test" -> stopped.contains(1) ? "not-gone" : "gone";
      case "sticks" ->
          Math.abs(on.reliefMm(0) - on.reliefMm(on.lines().size() - 1)) > TILTED_MM
              ? "crossed"
              : "in-line";
      case "other-string" -> cause == NoiseCause.STRING_DEAD ? "gone" : "stays";
      case "hump" -> rocks(on.kind().jointFret()) ? "rocks" : "still";
      case "bent" -> "range";
      case "rocker" -> rocker();
      case "pressed" -> cause == NoiseCause.FRET_LOOSE ? "stops" : "stays";
      case "whine" -> cause.where();
      case "behind-nut" -> cause == NoiseCause.NUT_SHAPE ? "differs" : "same";
      case "behind-saddle" -> cause == NoiseCause.SADDLE_EDGE ? "differs" : "same";
      case "rap" -> cause == NoiseCause.ROD_SLACK ? "rattles" : "silent";
      case "muted" -> cause == NoiseCause.AFTER_LENGTH ? "stops" : "rings";
      case "magnet-test" -> cause == NoiseCause.MAGNET ? "gone" : "stays";
      case "tick" -> cause == NoiseCause.BINDING ? "ticks" : "neither";
      case "shifted" -> cause == NoiseCause.JOINT_LOOSE ? "enters" : "closed";
      case "bridge-edge" -> cause == NoiseCause.TOP ? "enters" : "closed";
      case "weight" -> cause == NoiseCause.DEAD_SPOT ? "moves" : "stays";
      default -> "";
    };
  }

  /** Where it buzzes, from which stopped notes strike which frets. */
  private String where() {
    int joint = on.kind().jointFret();
    int all = on.lines().size();
    if (stopped.isEmpty()) {
      return "low";
    }
    int lowest = stopped.first();
    int highest = stopped.last();
    if (highest == 0) {
      return "open";
    }
    if (struck.size() == 1 && highest - lowest < 6) {
      return Math.abs(struck.first() - joint) < 2 ? "joint" : "one-fret";
    }
    if (strings.size() == 1 && stopped.size() > 3) {
      return "one-string";
    }
    boolean low = strings.last() < (all + 1) / 2;
    boolean high = strings.first() >= all / 2;
    if (low || high) {
      return "one-side";
    }
    if (struck.first() >= joint - 1 && struck.last() <= joint + 1 && highest <= joint) {
      return "joint";
    }
    if (lowest > 9 && highest > on.kind().frets() - 4) {
      return "high";
    }
    boolean clean = IntStream.range(lowest, highest - 2).anyMatch(this::clean);
    return clean
        ? "two-zones"
        : highest < 7 ? "low" : lowest > 4 && highest < 13 ? "middle" : most();
  }

  /** Whether three notes that follow each other are clean. */
  private boolean clean(int from) {
    return stopped.subSet(from, from + 3).isEmpty();
  }

  private String most() {
    double mean = stopped.stream().mapToInt(Integer::intValue).average().orElse(0);
    return mean < 6 ? "low" : mean < 12 ? "middle" : "high";
  }

  /** A straightedge over the fret that is struck, the one before it and the next. */
  private String rocker() {
    if (on.cause() == NoiseCause.WORN_FRET) {
      return "worn";
    }
    if (on.cause() == NoiseCause.FRET_END) {
      return "end";
    }
    for (int fret : struck) {
      if (fret < on.kind().frets() && rocks(fret)) {
        return Math.abs(fret - on.kind().jointFret()) < 2 ? "at-joint" : "rocks";
      }
    }
    return "still";
  }

  private boolean rocks(int fret) {
    FretLine line = on.lines().get(strings.isEmpty() ? 0 : strings.first());
    double before = line.top()[fret - 1];
    double after = line.top()[fret + 1];
    double along =
        (line.scale().fretMm(fret) - line.scale().fretMm(fret - 1))
            / (line.scale().fretMm(fret + 1) - line.scale().fretMm(fret - 1));
    return line.top()[fret] - before - (after - before) * along > ROCKS_MM;
  }

  private Answer read(Prompt.Measure measure) {
    int last = on.lines().size() - 1;
    int string =
        measure.which() == Which.HIGHEST
            ? last
            : Math.max(0, on.kind().strings().indexOf(String.valueOf(measure.string())));
    FretLine line = on.lines().get(string);
    Quantity quantity = measure.quantity();
    if (quantity == Quantity.ACTION) {
      double read = line.actionMm() + 0.03 * random.nextGaussian();
      return new Answer.Value(Math.max(0.5, Math.rint(read * 10) / 10));
    }
    double gap =
        quantity == Quantity.NUT_CLEARANCE
            ? line.clearanceMm()
            : line.gapMm(measure.held().get(0), measure.held().get(1), measure.readAt());
    Bracket read = Feelers.USUAL.read(gap < 1e-9 ? 0 : gap + NOISE_MM * random.nextGaussian());
    return new Answer.Measured(read);
  }
}
