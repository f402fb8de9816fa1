package quarterturn.procedure.check;

/** Pieces of procedures that several examples show. */
final class Pieces {
  private static final String ENDS =
      """
      - done: one
        text: The first end.
        outcome: one
      - done: other
        text: The other end.
        outcome: other
      """;

  /** A fork that two questions lead to, with the ends it goes to. */
  static final String FORK =
      """
      - choose: rod
        text: Is the rod nut open?
        options:
          - is: open
            label: Yes
            go: ask
          - is: covered
            label: No
            go: ask
      - choose: ask
        text: Is it a wheel?
        options:
          - is: wheel
            label: Yes
            go: fork
          - is: socket
            label: No
            go: fork
      - compute: fork
        calculation: response
        branches:
          - when: ask is wheel
            go: one
          - when: ask is socket
            go: other

      """
          + ENDS;

  /** An end that says nothing of what was seen. */
  static final String LOOKED =
      """
      - done: fine
        text: It was looked at.
        outcome: looked
      """;

  /** An end at pitch. */
  static final String TUNED =
      """
      - done: fine
        text: The strings are at pitch.
        outcome: tuned
      """;

  /** What comes after all the rest. */
  static final String PLAY =
      """
      - tell: play
        text: Play every string.
        go: fine
      - done: fine
        text: Every string was played.
        outcome: played
      """;

  /** The wait for the neck, before a reading. */
  static final String SETTLE =
      """
      - wait: settle
        text: Let the neck settle for {minutes}.
        for: 10 min
        establishes: [settled]
        go: read
      """;

  private Pieces() {}

  /** Tuning, with the step it goes to. */
  static String tune(String next) {
    return """
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: %s
        """
        .formatted(next);
  }

  /** Tuning, and a fork by role, with the steps each goes to. */
  static String roles(String beginner, String technician) {
    return tune("who")
        + """
        - compute: who
          calculation: response
          branches:
            - when: role is beginner
              go: %s
            - when: role is technician
              go: %s
        """
            .formatted(beginner, technician);
  }

  /** Relief as it has to be read, with the step it goes to. */
  static String relief(String next) {
    return tune("settle")
        + SETTLE
        + """
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: fine
            - when: relief was read
              go: %s
        """
            .formatted(next);
  }

  /** Humidity, parted at a value, with the ends it goes to. */
  static String humidity(int percent) {
    return """
        - measure: humidity
          text: Read the humidity of the room.
          quantity: humidity
          gauge: 1 %%
          plausible: 0..100 %%
          branches:
            - when: humidity cannot be measured
              go: one
            - when: humidity below %1$d %%
              go: one
            - when: humidity at least %1$d %%
              go: other
        """
            .formatted(percent)
        + ENDS;
  }
}
