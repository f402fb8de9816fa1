package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A sheet or a block as it is written, and the mutants that were made of it. */
final class Written {
  /** What begins a step, and where it or one of its block is given an id. */
  private static final Pattern FIRST = Pattern.compile("  - ([a-z-]+): ?(.*)");

  private static final Pattern NAMED = Pattern.compile("    id: (\\S+)");
  private static final Pattern WITHIN = Pattern.compile("\\bid: ([a-z-]+)");
  private static final String PART = "part";

  /** What begins a key of a step, among them those with a list of cases; what begins a case. */
  private static final String KEY = "(  - |    )[a-z].*";

  private static final String CASES = "(  - |    )(cases|then|branches):";
  private static final String ITEM = "      - ";

  /**
   * A step or a part.
   *
   * @param name how a mutant says which it is
   * @param kind the key that begins it
   * @param from its first line
   * @param end the line behind its last
   */
  record Step(String name, String kind, int from, int end) {}

  final String file;
  final List<String> lines;
  private final List<Step> steps = new ArrayList<>();
  private final TreeSet<String> ids = new TreeSet<>();
  private final List<Mutant> mutants = new ArrayList<>();

  Written(String file, String text) {
    this.file = file;
    this.lines = text.lines().toList();
    String name = "";
    for (int i = 0; i < lines.size(); i++) {
      Matcher first = FIRST.matcher(lines.get(i));
      if (first.matches()) {
        String id = id(i);
        name = id.isEmpty() ? name.replaceFirst("( then)?$", " then") : id;
        name = first.group(1).equals(PART) ? first.group(2) : name;
        steps.add(new Step(name, first.group(1), i, end(i)));
        if (!first.group(1).equals("use")) {
          ids.add(id);
        }
      }
      Matcher within = WITHIN.matcher(lines.get(i));
      while (within.find()) {
        ids.add(within.group(1));
      }
    }
    ids.remove("");
  }

  List<Mutant> mutants() {
    return mutants;
  }

  /** The steps and parts, as they stand. */
  List<Step> all() {
    return steps;
  }

  /** The steps without the parts, as they stand. */
  List<Step> steps() {
    return steps.stream().filter(step -> !step.kind().equals(PART)).toList();
  }

  List<String> lines(Step step) {
    return lines.subList(step.from(), step.end());
  }

  /** Whether a line of a step says where a case leads. */
  boolean branch(Step step, int line) {
    int key = line;
    while (key > step.from() && !lines.get(key).matches(KEY)) {
      key--;
    }
    return lines.get(line).startsWith(ITEM) && lines.get(key).matches(CASES);
  }

  /** The id that a step has or its first key gives it; nothing where it is made. */
  private String id(int from) {
    Matcher first = FIRST.matcher(lines.get(from));
    String id = first.matches() ? first.group(2) : "";
    boolean part = lines.get(from).startsWith("  - part: ");
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

  /** The id of the step that stands below one, or nothing where it has none of its own. */
  String next(Step step) {
    int next = step.end();
    while (next < lines.size() && !lines.get(next).matches("  - (?!part:).*")) {
      next++;
    }
    return next < lines.size() ? id(next) : "";
  }

  /** A step's id other than {@code not}, drawn by a seed of its own place. */
  String other(String place, List<String> not) {
    List<String> others = new ArrayList<>(ids);
    others.removeAll(not);
    return drawn(place, others);
  }

  /** One of several, drawn by a seed of its own place. */
  String drawn(String place, List<String> several) {
    int seed = (file + "/" + place).hashCode();
    return several.get(new Random(seed).nextInt(several.size()));
  }

  void add(Mutant.Operator operator, String what, List<String> changed) {
    mutants.add(new Mutant(file, operator, what, String.join("\n", changed) + "\n"));
  }

  void drop(Mutant.Operator operator, String name, int line) {
    List<String> changed = new ArrayList<>(lines);
    String was = changed.remove(line).strip();
    add(operator, name + ": " + was + " -> nothing", changed);
  }

  void change(Mutant.Operator operator, String name, int line, Matcher place, String to) {
    String was = lines.get(line);
    String now = to + was.substring(place.end());
    List<String> changed = new ArrayList<>(lines);
    changed.set(line, was.substring(0, place.start()) + now);
    add(operator, name + ": " + was.strip() + " -> " + now, changed);
  }

  /** Puts {@code instead} where lines from one to before another stand. */
  void replace(Mutant.Operator operator, String what, int from, int end, List<String> instead) {
    List<String> changed = new ArrayList<>(lines);
    changed.subList(from, end).clear();
    changed.addAll(from, instead);
    add(operator, what, changed);
  }
}
