package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** Words out of a fixed list are in it. */
final class UnknownWord {
  static final Rule RULE =
      Rule.read(
          Slip.UNKNOWN_WORD,
          "Kinds of step, facts, hazards, pictures, quantities and the like are words that"
              + " the program knows.",
          Example.toEnd(Pieces.tune("end")).broken("at-pitch", "in-tune"));

  private UnknownWord() {}
}
