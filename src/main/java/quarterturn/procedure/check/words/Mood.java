package quarterturn.procedure.check.words;

/** What a clause does with its verb. */
enum Mood {
  /** It tells the reader to do it. */
  ORDER,
  /** It tells the reader not to. */
  REFUSED,
  /** It explains, reports, asks, or tells it of somebody else. */
  SAID
}
