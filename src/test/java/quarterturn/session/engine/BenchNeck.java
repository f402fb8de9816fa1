package quarterturn.session.engine;

import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/** A neck that answers prompts, of invented numbers: a gap, a response, and a fault or none. */
public final class BenchNeck {
  /** Millimetres of relief; below zero is back bow. */
  double gap;

  /** Millimetres less relief for a quarter turn of tightening; negative for a reversed rod. */
  final double response;

  Feel feel = Feel.SMOOTH;

  public BenchNeck(double gap, double response) {
    this.gap = gap;
    this.response = response;
  }

  /** Answers everything by itself, from wherever the play stands, to the end. */
  Play playOut(Play play) {
    for (int i = 0; i < 400 && !play.prompt().ended(); i++) {
      answer(play);
    }
    return play;
  }

  public void answer(Play play) {
    Prompt prompt = play.prompt();
    if (prompt instanceof Prompt.Measure measure && measure.which() != null) {
      play.read(leaves(measure.which() == Which.LOWEST ? gap : gap - 0.02));
    } else if (prompt instanceof Prompt.TurnRod turn) {
      if (feel != Feel.JAMMED) {
        gap -= turn.turn().turns() * 4 * response;
      }
      play.turned(feel == Feel.JAMMED ? 0 : turn.turn().turns(), feel);
    } else {
      play.ordinary();
    }
  }

  /** The bracket a set of leaves in steps of 0.05 mm gives. */
  static Bracket leaves(double gap) {
    if (gap <= 0) {
      return Bracket.touches();
    }
    double low = Math.floor(gap / 0.05 + 1e-9) * 0.05;
    return low < 0.05 ? Bracket.lifts(0.05) : new Bracket(round(low), round(low + 0.05));
  }

  private static double round(double mm) {
    return Math.rint(mm * 100) / 100;
  }
}
