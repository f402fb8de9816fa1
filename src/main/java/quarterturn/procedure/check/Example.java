package quarterturn.procedure.check;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A piece of a procedure of our own invention.
 *
 * @param shown what matters of it, as documentation shows it
 * @param file the whole file it stands in
 */
record Example(String shown, String file) {
  private static final Pattern FIRST = Pattern.compile("- [a-z-]+: ([a-z0-9-]+)");

  /** Steps, in a file that begins with the first of them. */
  static Example steps(String steps) {
    Matcher first = FIRST.matcher(steps);
    String head =
        """
        procedure: example
        revision: 1
        title: Example
        purpose: To show a rule.
        tools: []
        begin: %s
        steps:
          - part: Work
        """
            .formatted(first.find() ? first.group(1) : "");
    return new Example(steps, head + steps.indent(2));
  }

  /** Steps that go to an end, with that end. */
  static Example toEnd(String steps) {
    return steps(
        steps
            + """
            - done: end
              text: That is all.
              outcome: seen
            """);
  }

  /** A sound procedure with a turn in it, from which examples about turns differ in one place. */
  private static final String SOUND =
      """
      procedure: example
      revision: 1
      title: Example
      purpose: To show a rule.
      tools: []
      begin: rod
      retune: tune
      reread: read
      steps:
        - part: Work
        - choose: rod
          text: Where is the rod nut?
          options:
            - is: seen
              label: At the headstock
              establishes: [rod-identified]
              go: key
            - is: unseen
              label: I can't find it
              go: repairer
        - choose: key
          text: Does the key fit to full depth?
          options:
            - is: fits
              label: Yes
              establishes: [key-fits]
              go: tune
            - is: rocks
              label: No
              go: repairer
        - tell: tune
          text: Tune every string to its pitch.
          hazards: [string-whip]
          establishes: [at-pitch]
          go: settle
        - wait: settle
          text: Let the neck settle for {minutes}.
          for: 10 min
          establishes: [settled]
          go: read
        - measure: read
          text: Read the {lowest} string.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured or leans nowhere
              go: repairer
            - when: relief in target or leans into target
              go: fine
            - when: relief touches or below target or leans below target
              go: answer
            - when: relief above target or leans above target
              go: answer
        - compute: answer
          calculation: response
          branches:
            - when: neck moved the wrong way or gave no answer
              go: repairer
            - when: neck not turned yet or moved as told or could not be seen to move
              go: day
        - compute: day
          calculation: advice
          branches:
            - when: turned today at least 1/2 turn
              go: rest
            - when: turned today less than 1/2 turn
              go: slacken
        - wait: rest
          text: Let the rod rest for {minutes}.
          for: 24 h
          rest: true
          go: tune
        - tell: slacken
          text: Slacken every string by a whole tone.
          hazards: [string-whip]
          establishes: [detuned]
          go: turn
        - turn: turn
          text: Now {way} the rod nut by {turn}.
          hazards: [tool-slip, rod-force, wrong-key]
          amount: advised
          limit: 1/4 turn
          felt:
            smooth: tune
            stiff: tune
            jammed: repairer
            free: tune
            noise: repairer
            slipped: repairer
        - done: fine
          text: The relief stands in its window.
          outcome: in-window
        - hand-over: repairer
          text: Let a qualified repairer look at it.
          outcome: repairer
      """;

  /** The sound procedure with a turn, showing a piece of it. */
  static Example sound(String shown) {
    if (!SOUND.contains(shown.indent(2))) {
      throw new IllegalArgumentException("the sound procedure has no such piece:\n" + shown);
    }
    return new Example(shown, SOUND);
  }

  /** The same with another piece in the place of one of its own. */
  Example with(String from, String to) {
    if (!shown.contains(from)) {
      throw new IllegalArgumentException("the example has no such piece:\n" + from);
    }
    String changed = shown.replace(from, to);
    return new Example(changed, file.replace(shown.indent(2), changed.indent(2)));
  }

  /** This one as good, and as bad what becomes of it with another piece. */
  Examples broken(String from, String to) {
    return new Examples(this, with(from, to));
  }

  /** This one as bad, and as good what becomes of it with another piece. */
  Examples mended(String from, String to) {
    return new Examples(with(from, to), this);
  }
}
