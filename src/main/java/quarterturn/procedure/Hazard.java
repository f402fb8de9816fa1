package quarterturn.procedure;

/**
 * A hazard statement, shown right before its step.
 *
 * @param word how bad, in the sense of ANSI Z535.6
 * @param harm what can happen
 * @param avoid how to avoid it
 */
public record Hazard(String id, Word word, String harm, String avoid) {
  /** Signal words in the sense of ANSI Z535.6, worst first. */
  public enum Word {
    /** Will cause death or serious injury if not avoided. */
    DANGER,
    /** Could cause death or serious injury. */
    WARNING,
    /** Could cause minor or moderate injury. */
    CAUTION,
    /** Not about injury: harm to the instrument. */
    NOTICE
  }
}
