package quarterturn.procedure;

/** What can be wrong with a file as it is read, by the id of the rule that it breaks. */
public enum Slip {
  NOT_YAML("not-yaml"),
  CONTROL_CHARACTER("control-character"),
  UNKNOWN_KEY("unknown-key"),
  MISSING_KEY("missing-key"),
  UNKNOWN_WORD("unknown-word"),
  UNKNOWN_ID("unknown-id"),
  BAD_ID("bad-id"),
  BAD_VALUE("bad-value"),
  BAD_BLANK("bad-blank"),
  BAD_CONDITION("bad-condition"),
  WAY_ON("way-on"),
  OPEN_BRANCHES("open-branches"),
  OVER_LIMIT("over-limit"),
  CALL_CIRCLE("call-circle"),
  NO_BEGINNER_TEXT("no-beginner-text");

  private final String rule;

  Slip(String rule) {
    this.rule = rule;
  }

  /** The id of the rule. */
  public String rule() {
    return rule;
  }
}
