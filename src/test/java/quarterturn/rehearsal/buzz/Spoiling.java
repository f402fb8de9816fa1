package quarterturn.rehearsal.buzz;

import quarterturn.craft.Scale;
import quarterturn.procedure.kind.Kind;

/**
 * What a cause does to the frets, the nut and the saddle under a string.
 *
 * @param fret the fret it sits at
 * @param string the string it sits at
 * @param size in millimetres; its sign says which of two forms it takes
 */
record Spoiling(Kind kind, NoiseCause cause, int fret, int string, double size) {
  /** A string with this cause, {@code index} of {@code strings}. */
  FretLine of(FretLine line, int index, int strings) {
    double across = strings == 1 ? 0 : (double) index / (strings - 1);
    double much = Math.abs(size);
    double[] top = cause == NoiseCause.MIDDLE_BEND ? kinked(line) : line.top().clone();
    for (int n = 0; n < top.length; n++) {
      top[n] += rise(line.scale(), n, across, index);
    }
    double nut = line.nut();
    double saddle = line.saddle();
    if (cause == NoiseCause.NUT_LOW && index == string) {
      nut -= much;
    }
    if (cause == NoiseCause.ACTION_LOW) {
      saddle -= much;
    }
    if (cause == NoiseCause.ONE_STRING_LOW && index == string) {
      saddle -= much;
    }
    return new FretLine(line.scale(), top, nut, saddle);
  }

  /** How much higher the top of a fret stands, in millimetres. */
  private double rise(Scale scale, int n, double across, int index) {
    double much = Math.abs(size);
    int joint = kind.jointFret();
    double along = scale.fretMm(n) / scale.fretMm(joint);
    return switch (cause) {
      case RELIEF_LOW, LIGHTER -> -even(along, much);
      case TWIST -> -even(along, much * (size > 0 ? 1 - across : across));
      case NUT_END_BACK -> {
        double rest = Math.max(0, 1 - scale.fretMm(n) / scale.fretMm(6));
        yield -much * rest * rest;
      }
      case S_BEND -> along < 1 ? -size * Math.sin(2 * Math.PI * along) : 0;
      case BODY_END_RISE -> n <= joint ? 0 : much * (along - 1) / (end(scale) - 1);
      case JOINT_HUMP -> n == joint ? much : Math.abs(n - joint) == 1 ? 0.6 * much : 0;
      case HIGH_FRET, FRET_LOOSE -> n == fret ? much : 0;
      case WORN_FRET -> n == fret && index >= string ? -much : 0;
      case FRET_END -> n == fret && across == 0 ? much : 0;
      default -> 0;
    };
  }

  private double end(Scale scale) {
    return scale.fretMm(kind.frets()) / scale.fretMm(kind.jointFret());
  }

  /**
   * The height of an even bow, whose relief held at fret 1 and the joint is about {@code relief}.
   */
  private static double even(double along, double relief) {
    double rest = Math.max(0, 1 - along);
    return 4 * relief * rest * rest;
  }

  /** The height of a neck that bends between frets 7 and 9 alone, of unit curvature there. */
  private static double kinked(Scale scale, int n) {
    double from = scale.fretMm(7);
    double to = scale.fretMm(9);
    double x = scale.fretMm(n);
    double bent = Math.max(0, to - Math.max(x, from));
    return bent * bent / 2 + bent * Math.max(0, from - x);
  }

  /** The frets of such a neck, with a little more relief than it would have with an even bow. */
  private double[] kinked(FretLine line) {
    double[] top = new double[line.top().length];
    for (int n = 0; n < top.length; n++) {
      top[n] = kinked(line.scale(), n);
    }
    FretLine unit = new FretLine(line.scale(), top, 0, 0);
    double more = (relief(line) + 0.03) / relief(unit);
    for (int n = 0; n < top.length; n++) {
      top[n] *= more;
    }
    return top;
  }

  private double relief(FretLine line) {
    return line.gapMm(1, kind.jointFret(), kind.readAt());
  }
}
