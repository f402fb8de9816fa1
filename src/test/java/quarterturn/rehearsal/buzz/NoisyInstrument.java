package quarterturn.rehearsal.buzz;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.IntUnaryOperator;
import java.util.function.ToDoubleFunction;
import quarterturn.craft.Held;
import quarterturn.craft.Neck;
import quarterturn.craft.Pluck;
import quarterturn.craft.Scale;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.Length;

/**
 * An instrument in order but for one cause of noise, and a player for whom its windows are made:
 * the strings just clear this stroke with every reading at the low end. How far the cause goes is
 * drawn between what is just heard and three times that, in millimetres; where no stroke tells, up
 * to what it can be.
 *
 * @param lines its strings, the lowest first
 * @param strokes the player's stroke on each
 * @param at the fret that the cause sits at, where it sits at one
 * @param size how far it goes, in millimetres
 */
record NoisyInstrument(
    Kind kind,
    NoiseCause cause,
    List<FretLine> lines,
    List<Pluck> strokes,
    int at,
    int string,
    double size) {
  /** Depth in millimetres from which a strike is heard; an estimate. */
  static final double AUDIBLE_MM = 0.02;

  /** The least difference between the sides that counts as a twist. */
  private static final double LEAST_TWIST_MM = 0.2;

  static NoisyInstrument draw(Kind kind, Style style, NoiseCause cause, SplittableRandom random) {
    List<FretLine> sound = lines(kind, style, window -> near(window, random));
    // Windows are made for the player: with every reading at its low end it is just clean.
    List<Pluck> strokes =
        lines(kind, style, Window::lowMm).stream().map(FretLine::clearing).toList();
    int fret = fret(kind, cause, random);
    int string = random.nextInt(sound.size());
    int sign = random.nextBoolean() ? 1 : -1;
    double least = least(kind, style, cause, sound, strokes, fret, string, sign);
    double size = Math.min(cause.mostMm(), least * (1.02 + 2 * random.nextDouble()));
    return of(kind, cause, sound, strokes, fret, string, sign * size);
  }

  private static NoisyInstrument of(
      Kind kind,
      NoiseCause cause,
      List<FretLine> sound,
      List<Pluck> strokes,
      int fret,
      int string,
      double size) {
    List<FretLine> lines = new ArrayList<>();
    for (int i = 0; i < sound.size(); i++) {
      lines.add(new Spoiling(kind, cause, fret, string, size).of(sound.get(i), i, sound.size()));
    }
    List<Pluck> played = new ArrayList<>(strokes);
    if (cause == NoiseCause.TOUCH) {
      played.replaceAll(stroke -> lines.get(0).harder(stroke, 1 + Math.abs(size)));
    }
    return new NoisyInstrument(kind, cause, lines, played, fret, string, size);
  }

  /** The least size that is heard; half of the most where no stroke tells. */
  private static double least(
      Kind kind,
      Style style,
      NoiseCause cause,
      List<FretLine> sound,
      List<Pluck> strokes,
      int fret,
      int string,
      int sign) {
    double silent = 0;
    double heard = cause.mostMm();
    if (!of(kind, cause, sound, strokes, fret, string, sign * heard).faulty(style)) {
      return heard / 2;
    }
    for (int i = 0; i < 20; i++) {
      double size = (silent + heard) / 2;
      if (of(kind, cause, sound, strokes, fret, string, sign * size).faulty(style)) {
        heard = size;
      } else {
        silent = size;
      }
    }
    return heard;
  }

  private static int fret(Kind kind, NoiseCause cause, SplittableRandom random) {
    IntUnaryOperator upTo = most -> 2 + random.nextInt(most - 2);
    return cause == NoiseCause.WORN_FRET
        ? 1 + random.nextInt(4)
        : upTo.applyAsInt(kind.jointFret() - 3);
  }

  /** Strings whose relief, action and nut clearance are somewhere in their windows. */
  private static List<FretLine> lines(Kind kind, Style style, ToDoubleFunction<Window> somewhere) {
    Scale scale = new Scale(kind.scale());
    Held held = Held.at(kind.jointFret(), kind.readAt());
    double relief = somewhere.applyAsDouble(kind.target(style).window());
    Neck neck = Neck.uniform(scale, kind.jointFret(), Length.mm(relief), held);
    double[] top = new double[kind.frets() + 1];
    for (int n = 0; n < top.length; n++) {
      top[n] = neck.fretTopMm(n);
    }
    List<FretLine> lines = new ArrayList<>();
    for (int i = 0; i < kind.strings().size(); i++) {
      double clearance =
          somewhere.applyAsDouble(kind.target(Quantity.NUT_CLEARANCE, style, i).window());
      double action = somewhere.applyAsDouble(kind.target(Quantity.ACTION, style, i).window());
      // Over fret 1 arrives about half of what the slot's floor stands above the fret tops.
      double nut = clearance * 2;
      for (int k = 0; k < 20; k++) {
        nut += clearance - new FretLine(scale, top, nut, 0).clearanceMm();
      }
      double share = Scale.share(12);
      double saddle = (action + top[12] - (top[0] + nut) * (1 - share)) / share;
      lines.add(new FretLine(scale, top, nut, saddle));
    }
    return lines;
  }

  /** A value within the middle half of a window. */
  private static double near(Window window, SplittableRandom random) {
    return window.middleMm() + (window.highMm() - window.lowMm()) * (random.nextDouble() - 0.5) / 2;
  }

  /** The fret struck by a string stopped at a fret; 0 where nothing is heard. */
  int struck(int line, int stopped) {
    return lines.get(line).struck(stopped, strokes.get(line), AUDIBLE_MM);
  }

  /** Whether it is heard, and what causes it is out of its window where it has one. */
  private boolean faulty(Style style) {
    FretLine line = lines.get(cause == NoiseCause.ACTION_LOW ? 0 : string);
    int index = cause == NoiseCause.ACTION_LOW ? 0 : string;
    boolean out =
        switch (cause) {
          case RELIEF_LOW, LIGHTER -> reliefMm(0) < kind.target(style).window().lowMm();
          case ACTION_LOW, ONE_STRING_LOW ->
              line.actionMm() < kind.target(Quantity.ACTION, style, index).window().lowMm();
          case NUT_LOW ->
              line.clearanceMm()
                  < kind.target(Quantity.NUT_CLEARANCE, style, index).window().lowMm();
          case TWIST -> Math.abs(reliefMm(0) - reliefMm(lines.size() - 1)) > LEAST_TWIST_MM;
          default -> true;
        };
    return out && buzzes();
  }

  /** The relief under one string. */
  double reliefMm(int line) {
    return lines.get(line).gapMm(1, kind.jointFret(), kind.readAt());
  }

  boolean buzzes() {
    for (int i = 0; i < lines.size(); i++) {
      for (int at = 0; at < lines.get(i).last(); at++) {
        if (struck(i, at) > 0) {
          return true;
        }
      }
    }
    return false;
  }
}
