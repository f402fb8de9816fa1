package quarterturn.session.engine;

/** An invented procedure that asks for what it must not get. */
final class HostileSheet {
  private static final String TEXT =
      """
      procedure: NAME
      revision: 1
      title: Hostile
      purpose: To ask for what it must not get.
      tools: [key]
      begin: first
      retune: tune
      reread: read
      steps:
        - part: All
        - tell: tune
          text: Tune.
          establishes: [at-pitch]
          go: settle
        - wait: settle
          text: Settle.
          for: SETTLE
          establishes: [settled]
          go: read
        - measure: read
          text: Read.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: end
            - otherwise: AFTER
        - turn: turn
          text: Turn.
          amount: AMOUNT
          limit: 1/4 turn
          felt: {smooth: FELT, stiff: FELT, jammed: FELT, free: FELT, noise: FELT, slipped: FELT}
        - done: end
          text: End.
          outcome: ended
        - tell: first
          text: Ready.
          establishes: [rod-identified, key-fits, settled]
          go: tune
        - tell: slack
          text: Slacken.
          establishes: [detuned]
          go: turn
      """;

  private HostileSheet() {}

  /**
   * The procedure's text.
   *
   * @param name its id
   * @param settle how long the strings settle
   * @param after the step after a reading: "slack" slackens first, "turn" does not
   * @param amount the turn that it asks for
   * @param felt the step after a turn, whatever was felt
   */
  static String text(String name, String settle, String after, String amount, String felt) {
    return TEXT.replace("NAME", name)
        .replace("SETTLE", settle)
        .replace("AFTER", after)
        .replace("AMOUNT", amount)
        .replace("FELT", felt);
  }
}
