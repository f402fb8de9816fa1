package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Changes to a sheet or a block as it is written, one at a time. */
final class Mutants {
  /** A kind of change. */
  enum Operator {
    DROP_BRANCH,
    MOVE_BOUND,
    DELETE_CAUTION,
    RETARGET,
    REMOVE_RETUNE
  }

  /**
   * A changed file.
   *
   * @param file its name without the ending, below the folder of procedures
   * @param what what stood and stands there
   */
  record Mutant(String file, Operator operator, String what, String text) {}

  /** What begins a step, and where it or one of its block is given an id. */
  private static final Pattern FIRST = Pattern.compile("  - [a-z-]+: ?(.*)");

  private static final Pattern NAMED = Pattern.compile("    id: (\\S+)");
  private static final Pattern WITHIN = Pattern.compile("\\bid: ([a-z-]+)");
  private static final String PART = "  - part: ";

  /** What begins a key of a step, among them those with a list of cases; what begins a case. */
  private static final String KEY = "(  - |    )[a-z].*";

  private static final String CASES = "(  - |    )(cases|then|branches):";
  private static final String ITEM = "      - ";

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
  private static final Pattern HAZARDS = Pattern.compile("    hazards: \\[(.*)]");
  private static final Pattern HEAD = Pattern.compile("(?<=^(?:retune|reread): ).*");
  private static final String AT_PITCH = "    establishes: [at-pitch]";

  private final String file;
  private final List<String> lines;
  private final TreeSet<String> targets = new TreeSet<>();
  private final List<Mutant> all = new ArrayList<>();

  private Mutants(String file, String text) {
    this.file = file;
    this.lines = text.lines().toList();
  }

  /** Every mutant of a file; another target is drawn by a seed of its own place. */
  static List<Mutant> of(String file, String text) {
    Mutants mutants = new Mutants(file, text);
    mutants.collectTargets();
    mutants.walk();
    return mutants.all;
  }

  /** The id that a step has or its first key gives it; nothing where it is made. */
  private String id(int from) {
    Matcher first = FIRST.matcher(lines.get(from));
    String id = first.matches() ? first.group(1) : "";
    boolean part = lines.get(from).startsWith(PART);
    for (int i = from + 1; i < end(from); i++) {
      Matcher named = NAMED.matcher(lines.get(i));
      id = named.matches() ? named.group(1) : id;
    }
    return part || !id.matches("[a-z0-9<>-]+") ? "" : id;
  }

  /** The line behind a step. */
  private int end(int from) {
    int end = from + 1;
    while (end < lines.size() && lines.get(end).matches("|    .*")) {
      end++;
    }
    return end;
  }

  /** Every id that is written. */
  private void collectTargets() {
    for (int i = 0; i < lines.size(); i++) {
      if (FIRST.matcher(lines.get(i)).matches() && !lines.get(i).startsWith("  - use:")) {
        targets.add(id(i));
      }
      Matcher within = WITHIN.matcher(lines.get(i));
      while (within.find()) {
        targets.add(within.group(1));
      }
    }
    targets.remove("");
  }

  private void walk() {
    boolean cases = false;
    int step = -1;
    String name = "";
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      if (FIRST.matcher(line).matches()) {
        step = i;
        name = id(i).isEmpty() ? name.replaceFirst("( then)?$", " then") : id(i);
        name = line.startsWith(PART) ? line.substring(PART.length()) : name;
      }
      cases = line.matches(KEY) ? line.matches(CASES) : cases;
      boolean branch = cases && line.startsWith(ITEM);
      if (branch) {
        drop(Operator.DROP_BRANCH, name, i);
      }
      if (branch || line.matches(CONDITION)) {
        bounds(BOUND, name, i);
      }
      bounds(LIMIT, name, i);
      cautions(name, i);
      retarget(branch ? CASE : WAY, step, name, i);
      if (line.equals(AT_PITCH)) {
        retune(step, name, i);
      }
    }
  }

  private void add(Operator operator, String what, List<String> changed) {
    all.add(new Mutant(file, operator, what, String.join("\n", changed) + "\n"));
  }

  private void drop(Operator operator, String name, int line) {
    List<String> changed = new ArrayList<>(lines);
    String was = changed.remove(line).strip();
    add(operator, name + ": " + was + " -> nothing", changed);
  }

  private void change(Operator operator, String name, int line, Matcher place, String to) {
    String was = lines.get(line);
    String now = to + was.substring(place.end());
    List<String> changed = new ArrayList<>(lines);
    changed.set(line, was.substring(0, place.start()) + now);
    add(operator, name + ": " + was.strip() + " -> " + now, changed);
  }

  /** Bounds of conditions either way, and limits of turns upward. */
  private void bounds(Pattern pattern, String name, int line) {
    Matcher bound = pattern.matcher(lines.get(line));
    while (bound.find()) {
      if (pattern == LIMIT) {
        change(Operator.MOVE_BOUND, name, line, bound, "3/8");
        continue;
      }
      for (boolean up : new boolean[] {true, false}) {
        String moved = moved(bound.group(), up);
        if (!moved.equals(bound.group())) {
          change(Operator.MOVE_BOUND, name, line, bound, moved);
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

  private void cautions(String name, int line) {
    Matcher hazards = HAZARDS.matcher(lines.get(line));
    if (!hazards.matches()) {
      return;
    }
    List<String> written = List.of(hazards.group(1).split(", ", -1));
    for (String hazard : written) {
      List<String> left = new ArrayList<>(written);
      left.remove(hazard);
      List<String> changed = new ArrayList<>(lines);
      changed.set(line, "    hazards: " + left);
      if (left.isEmpty()) {
        changed.remove(line);
      }
      add(Operator.DELETE_CAUTION, name + ": hazard " + hazard + " -> nothing", changed);
    }
  }

  private void retarget(Pattern pattern, int step, String name, int line) {
    Matcher way = pattern.matcher(lines.get(line));
    while (step >= 0 && way.find()) {
      List<String> others = new ArrayList<>(targets);
      others.remove(way.group());
      if (way.group().equals("go on")) {
        others.remove(next(step));
      }
      int seed = (file + "/" + name + lines.get(line) + way.start()).hashCode();
      String other = others.get(new Random(seed).nextInt(others.size()));
      change(Operator.RETARGET, name, line, way, other);
    }
  }

  /** The id of the step that stands below one, or nothing where it has none of its own. */
  private String next(int step) {
    int next = end(step);
    while (next < lines.size() && !lines.get(next).matches("  - (?!part:).*")) {
      next++;
    }
    return next < lines.size() ? id(next) : "";
  }

  /** A step that brings the strings to pitch no longer does so, or is passed over. */
  private void retune(int step, String name, int line) {
    drop(Operator.REMOVE_RETUNE, name, line);
    String go = next(step);
    for (String written : lines.subList(step, end(step))) {
      go = written.startsWith("    go: ") ? written.substring("    go: ".length()) : go;
    }
    List<String> changed = new ArrayList<>(lines);
    changed.subList(step, end(step)).clear();
    String to = go;
    changed.replaceAll(written -> passed(written, name, to));
    add(Operator.REMOVE_RETUNE, name + " is passed over, on to " + go, changed);
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
