package quarterturn.rehearsal.simulated;

import java.util.Locale;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Worded;

/** Invented necks to practise on, each of which teaches something. */
public enum NamedNeck implements Worded {
  TOO_MUCH("too much relief", 0.72, 0.21, 0, NeckFault.NONE),
  BACK_BOW("bowed back, a little slack", -0.15, 0.19, 0.05, NeckFault.NONE),
  RIGHT("nothing to do", 0.36, 0.2, 0, NeckFault.NONE),
  SLOW("answers little", 0.66, 0.09, 0, NeckFault.NONE),
  LIVELY("answers much", 0.68, 0.4, 0, NeckFault.NONE),
  SLACK("slack whenever the way changes", 0.1, 0.34, 0.08, NeckFault.NONE),
  STIFF("stiff truss rod nut", 0.52, 0.18, 0, NeckFault.STIFF),
  DEAD("rod without effect", 0.62, 0.2, 0, NeckFault.DEAD),
  REVERSED("rod that works the other way round", 0.58, 0.2, 0, NeckFault.REVERSED),
  JAMMED("truss rod nut that does not move", 0.64, 0.2, 0, NeckFault.JAMMED),
  STRIPPED("rounded socket", 0.6, 0.2, 0, NeckFault.STRIPPED),
  FULLY_TIGHT("rod at the end of its travel", 0.7, 0.2, 0, NeckFault.FULLY_TIGHT),
  FULLY_LOOSE("bowed back with the rod fully loose", -0.2, 0.2, 0, NeckFault.FULLY_LOOSE),
  TWISTED("twisted", 0.45, 0.2, 0, NeckFault.TWIST),
  NEGLECTED("back bow, high action, a sharp string, other strings", -0.15, 0.19, 0, NeckFault.NONE),
  CRACKED("cracked at the joint of neck and body", 0.5, 0.2, 0, NeckFault.CRACKED);

  private final String words;
  private final NeckTraits traits;

  NamedNeck(
      String words, double reliefMm, double mmPerQuarter, double slackTurns, NeckFault fault) {
    this.words = words;
    this.traits = NeckTraits.of(reliefMm, mmPerQuarter, slackTurns, fault);
  }

  /** What can be found on this neck, in a few words. */
  public String words() {
    return words;
  }

  public NeckTraits traits() {
    return traits;
  }

  /** An instrument of a kind with this neck. */
  public InstrumentTraits on(Kind kind, Style style) {
    return this == NEGLECTED
        ? InstrumentTraits.neglected(kind, style, traits)
        : InstrumentTraits.of(kind, style, traits);
  }

  /**
   * The neck of this name.
   *
   * @throws NotUnderstoodException with every name there is
   */
  public static NamedNeck of(String typed) {
    for (NamedNeck neck : values()) {
      if (neck.word().equals(typed.strip().toLowerCase(Locale.ROOT))) {
        return neck;
      }
    }
    throw new NotUnderstoodException(
        "there is no neck of that name"
            + Quote.asking(typed, Worded.words(values()))
            + "; choose one of: "
            + String.join(", ", Worded.words(values())));
  }
}
