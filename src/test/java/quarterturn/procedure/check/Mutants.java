package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import quarterturn.procedure.check.Mutant.Operator;

/** Changes to a sheet or a block as it is written, one at a time; here those of its ways. */
final class Mutants {
  /** Where a condition or the like stands that is no case. */
  private static final String CONDITION = "    (only if|unless|agree): .*";

  /** Where a step is named that is gone to: behind a case, and anywhere else. */
  private static final Pattern CASE = Pattern.compile("(?<=: )[a-z0-9<>-][a-z0-9<> -]*$");

  private static final Pattern WAY =
      Pattern.compile(
          "(?<= -> )[a-z-][a-z0-9-]*$"
              + "|(?<=(?:^    |[{ ])(?:go|cannot|differ|dead|smooth|stiff|free): )"
              + "[a-z<][a-z0-9<>-]*(?: on)?(?=$|[,}])");

  private static final Pattern BOUND =
      Pattern.compile("(?<=at least |less than |more than |at most |below |within )\\d[\\d./]*");
  private static final Pattern LIMIT = Pattern.compile("(?<=    limit: )\\d[\\d./]*");
  private static final Pattern HEAD = Pattern.compile("(?<=^(?:retune|reread): ).*");
  private static final String AT_PITCH = "    establishes: [at-pitch]";

  private final Written written;

  private Mutants(Written written) {
    this.written = written;
  }

  /** Every mutant of a file; what takes the place of something is drawn by a seed of its place. */
  static List<Mutant> of(String file, String text) {
    Written written = new Written(file, text);
    new Mutants(written).make();
    new ReadingMutants(written).make();
    new TurnMutants(written).make();
    new WordMutants(written).make();
    return written.mutants();
  }

  private void make() {
    for (Written.Step step : written.all()) {
      for (int line = step.from(); line < step.end(); line++) {
        boolean branch = written.branch(step, line);
        if (branch) {
          written.drop(Operator.DROP_BRANCH, step.name(), line);
        }
        if (branch || written.lines.get(line).matches(CONDITION)) {
          bounds(BOUND, step.name(), line);
        }
        bounds(LIMIT, step.name(), line);
        retarget(branch ? CASE : WAY, step, line);
        if (written.lines.get(line).equals(AT_PITCH)) {
          retune(step, line);
        }
      }
    }
  }

  /** Bounds of conditions either way, and limits of turns upward. */
  private void bounds(Pattern pattern, String name, int line) {
    Matcher bound = pattern.matcher(written.lines.get(line));
    while (bound.find()) {
      if (pattern == LIMIT) {
        written.change(Operator.MOVE_BOUND, name, line, bound, "3/8");
        continue;
      }
      for (boolean up : new boolean[] {true, false}) {
        String moved = moved(bound.group(), up);
        if (!moved.equals(bound.group())) {
          written.change(Operator.MOVE_BOUND, name, line, bound, moved);
        }
      }
    }
  }

  private static String moved(String number, boolean up) {
    if (number.contains("/")) {
      return up ? "3/4" : "1/4";
    } else if (number.contains(".")) {
      double value = Double.parseDouble(number);
      return String.format(Locale.ROOT, "%.2f", up ? value * 1.5 : value / 2);
    }
    int value = Integer.parseInt(number);
    return String.valueOf(up ? value + 1 : Math.max(1, value - 1));
  }

  private void retarget(Pattern pattern, Written.Step step, int line) {
    Matcher way = pattern.matcher(written.lines.get(line));
    while (way.find()) {
      List<String> same =
          way.group().equals("go on")
              ? List.of(way.group(), written.next(step))
              : List.of(way.group());
      String place = step.name() + written.lines.get(line) + way.start();
      String other = written.other(place, same);
      written.change(Operator.RETARGET, step.name(), line, way, other);
    }
  }

  /** A step that brings the strings to pitch no longer does so, or is passed over. */
  private void retune(Written.Step step, int line) {
    written.drop(Operator.REMOVE_RETUNE, step.name(), line);
    String go = written.next(step);
    for (String said : written.lines(step)) {
      go = said.startsWith("    go: ") ? said.substring("    go: ".length()) : go;
    }
    List<String> changed = new ArrayList<>(written.lines);
    changed.subList(step.from(), step.end()).clear();
    String to = go;
    changed.replaceAll(said -> passed(said, step.name(), to));
    written.add(Operator.REMOVE_RETUNE, step.name() + " is passed over, on to " + go, changed);
  }

  private static String passed(String line, String step, String to) {
    return Stream.of(CASE, WAY, HEAD)
        .map(pattern -> pattern.matcher(line))
        .filter(way -> way.find() && way.group().equals(step))
        .map(way -> line.substring(0, way.start()) + to)
        .findFirst()
        .orElse(line);
  }
}
