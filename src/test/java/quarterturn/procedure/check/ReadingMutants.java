package quarterturn.procedure.check;

import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import quarterturn.procedure.check.Mutant.Operator;

/** Changes to readings: of which string, in what unit, how exact; and of the waits between them. */
final class ReadingMutants {
  private static final String LOWEST = "lowest";
  private static final String HIGHEST = "highest";
  private static final List<String> STRINGS = List.of(LOWEST, HIGHEST, "each");

  private static final Pattern READ = Pattern.compile("(?<=^    string: )[a-z]+");
  private static final Pattern NAMED = Pattern.compile("(?<=\\{)(?:lowest|highest)(?=})");
  private static final Pattern SAID = Pattern.compile("(?<= )(?:lowest|highest)(?=[,\\]])");
  private static final String LINES = "    lines: ";

  /**
   * What a text says of a unit stands nowhere twice; these are the lines that the program reads.
   */
  private static final String AMOUNTS = " +(for|agree|only if|unless|expects|limit): .*";

  private static final String DEFAULTS = "  [a-z-]+: \\{gauge: .*";
  private static final Pattern UNIT = Pattern.compile("(?<=\\d )(?:mm|min|h|%|cents|C)(?![a-z])");
  private static final Map<String, List<String>> OTHERS =
      Map.of(
          "mm", List.of("in", "cm"),
          "cents", List.of("mm"),
          "min", List.of("h"),
          "h", List.of("min"),
          "%", List.of("C"),
          "C", List.of("%"));

  private static final Pattern GAUGE = Pattern.compile("(?<=gauge: )[\\d.]+");
  private static final Pattern RANGE = Pattern.compile("(?<=plausible: )[\\d.-]+?\\.\\.[\\d.]+");
  private static final Pattern NEAR =
      Pattern.compile("(?<=within |differs by more than |differs by at most )[\\d.]+");

  private static final Pattern TIME = Pattern.compile("(?<=^    for: )(\\d+) (min|h)$");
  private static final Pattern SETTLED =
      Pattern.compile("    (establishes: \\[settled]|rest: true)");

  /** A wait that is longer than a reading holds. */
  private static final List<String> LONG =
      List.of(
          "  - wait: long-wait",
          "    text: Let the instrument stand for {minutes}.",
          "    for: 150 min");

  private final Written written;

  ReadingMutants(Written written) {
    this.written = written;
  }

  void make() {
    for (int line = 0; line < written.lines.size(); line++) {
      if (written.lines.get(line).matches(DEFAULTS)) {
        units("defaults", line);
        tenfold("defaults", line);
      }
    }
    for (Written.Step step : written.steps()) {
      for (int line = step.from(); line < step.end(); line++) {
        read(step, line);
        named(step, line);
        said(step, line);
        if (written.branch(step, line) || written.lines.get(line).matches(AMOUNTS)) {
          units(step.name(), line);
          tenfold(step.name(), line);
        }
        shortened(step, line);
        unsettled(step, line);
      }
    }
    held();
  }

  /** Another string is read than the words say. */
  private void read(Written.Step step, int line) {
    Matcher string = READ.matcher(written.lines.get(line));
    if (string.find()) {
      for (String other : STRINGS) {
        if (!other.equals(string.group())) {
          written.change(Operator.STRING, step.name(), line, string, other);
        }
      }
    }
  }

  /** The words name another string than is read. */
  private void named(Written.Step step, int line) {
    swap(NAMED, step, line);
  }

  /** A pause has another string's value said. */
  private void said(Written.Step step, int line) {
    if (written.lines.get(line).startsWith(LINES)) {
      swap(SAID, step, line);
    }
  }

  private void swap(Pattern pattern, Written.Step step, int line) {
    Matcher string = pattern.matcher(written.lines.get(line));
    while (string.find()) {
      String other = string.group().equals(LOWEST) ? HIGHEST : LOWEST;
      written.change(Operator.STRING, step.name(), line, string, other);
    }
  }

  /** An amount is in another unit. */
  private void units(String name, int line) {
    Matcher unit = UNIT.matcher(written.lines.get(line));
    while (unit.find()) {
      for (String other : OTHERS.getOrDefault(unit.group(), List.of())) {
        written.change(Operator.UNIT, name, line, unit, other);
      }
    }
  }

  /** A gauge is ten times coarser, a range ten times wider, and so is what still agrees. */
  private void tenfold(String name, int line) {
    for (Pattern pattern : List.of(GAUGE, RANGE, NEAR)) {
      Matcher amount = pattern.matcher(written.lines.get(line));
      while (amount.find()) {
        String tenfold =
            Pattern.compile("\\.\\.")
                .splitAsStream(amount.group())
                .map(number -> new BigDecimal(number).movePointRight(1).toPlainString())
                .collect(Collectors.joining(".."));
        written.change(Operator.UNIT, name, line, amount, tenfold);
      }
    }
  }

  /** A wait is a tenth as long. */
  private void shortened(Written.Step step, int line) {
    Matcher time = TIME.matcher(written.lines.get(line));
    if (time.find()) {
      int minutes = Integer.parseInt(time.group(1)) * (time.group(2).equals("h") ? 60 : 1);
      written.change(Operator.WAIT, step.name(), line, time, minutes / 10 + " min");
    }
  }

  /** After a wait nothing has settled, or the rod has not rested. */
  private void unsettled(Written.Step step, int line) {
    if (SETTLED.matcher(written.lines.get(line)).matches()) {
      written.drop(Operator.WAIT, step.name(), line);
    }
  }

  /** A long wait stands between the reading and the turn that rests on it. */
  private void held() {
    List<Written.Step> steps = written.steps();
    int turn = -1;
    int read = written.file.startsWith("blocks/") ? 0 : steps.size();
    for (int i = 0; i < steps.size(); i++) {
      String first = written.lines.get(steps.get(i).from());
      turn = first.matches("  - turn: .*|  - use: (one|pocket)-turn") ? i : turn;
      read = first.equals("  - read: relief") ? Math.min(read, i + 1) : read;
    }
    for (int i = read; i <= turn; i++) {
      int line = steps.get(i).from();
      String what = steps.get(i).name() + " waits before it";
      written.replace(Operator.WAIT, what, line, line, LONG);
    }
  }
}
