package quarterturn.procedure;

import quarterturn.unit.Worded;

/** What can be wrong with a file as it is read, each by the id of the rule it breaks. */
public enum Slip implements Worded {
  NOT_YAML,
  CONTROL_CHARACTER,
  UNKNOWN_KEY,
  MISSING_KEY,
  UNKNOWN_WORD,
  UNKNOWN_ID,
  BAD_ID,
  BAD_VALUE,
  BAD_BLANK,
  BAD_CONDITION,
  WAY_ON,
  OPEN_BRANCHES,
  OVER_LIMIT,
  CALL_CIRCLE,
  NO_BEGINNER_TEXT
}
