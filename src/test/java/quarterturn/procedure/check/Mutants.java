package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Changes to a procedure written out in full, one at a time, each of which changes what it does.
 */
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
   * @param line where
   * @param what what stood and stands there
   */
  record Mutant(String procedure, Operator operator, int line, String what, String text) {}

  private static final Pattern STEP = Pattern.compile("  - ([a-z-]+): ([a-z0-9-]+)");
  private static final Pattern TARGET =
      Pattern.compile("(.*\\b(?:go|smooth|stiff|jammed|free|noise|slipped): )([a-z0-9-]+)");

  /** What begins an item of a list of a step. */
  private static final String ITEM = "      - ";

  private static final Pattern BOUND =
      Pattern.compile("(at least|less than|more than|at most|below|within) (\\d[\\d./]*)");
  private static final Pattern LIMIT = Pattern.compile("(    limit: )(\\d[\\d./]*)( turn)");

  private final String procedure;
  private final List<String> lines;
  private final List<Mutant> all = new ArrayList<>();

  private Mutants(String procedure, String text) {
    this.procedure = procedure;
    this.lines = List.of(text.split("\n", -1));
  }

  /** Every mutant of a file; another target is drawn by a seed of its own place. */
  static List<Mutant> of(String procedure, String text) {
    Mutants mutants = new Mutants(procedure, text);
    mutants.branches();
    mutants.bounds();
    mutants.cautions();
    mutants.targets();
    mutants.retunes();
    return mutants.all;
  }

  private void add(Operator operator, int line, String what, UnaryOperator<List<String>> change) {
    List<String> changed = change.apply(new ArrayList<>(lines));
    String text = String.join("\n", changed);
    all.add(new Mutant(procedure, operator, line + 1, what, text));
  }

  private void change(Operator operator, int line, String to) {
    add(
        operator,
        line,
        lines.get(line).strip() + " -> " + to.strip(),
        changed -> {
          changed.set(line, to);
          return changed;
        });
  }

  private void branches() {
    for (int i = 0; i + 1 < lines.size(); i++) {
      if (lines.get(i).startsWith("      - when: ")) {
        int at = i;
        add(
            Operator.DROP_BRANCH,
            i,
            lines.get(i).strip() + " -> nothing",
            changed -> {
              changed.subList(at, at + 2).clear();
              return changed;
            });
      }
    }
  }

  /** Bounds of conditions either way, and limits of turns upward. */
  private void bounds() {
    for (int i = 0; i < lines.size(); i++) {
      String line = lines.get(i);
      Matcher limit = LIMIT.matcher(line);
      if (limit.matches()) {
        change(Operator.MOVE_BOUND, i, limit.group(1) + "3/8" + limit.group(3));
      }
      if (!line.startsWith("      - when: ")) {
        continue;
      }
      Matcher m = BOUND.matcher(line);
      while (m.find()) {
        for (boolean up : new boolean[] {true, false}) {
          String moved = moved(m.group(2), up);
          if (!moved.equals(m.group(2))) {
            change(
                Operator.MOVE_BOUND,
                i,
                line.substring(0, m.start(2)) + moved + line.substring(m.end(2)));
          }
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

  /** The engine itself adds the cautions of a turn, so to delete those changes nothing. */
  private void cautions() {
    String kind = "";
    String id = "";
    for (int i = 0; i < lines.size(); i++) {
      Matcher step = STEP.matcher(lines.get(i));
      kind = step.matches() ? step.group(1) : kind;
      id = step.matches() ? step.group(2) : id;
      if (!lines.get(i).equals("    hazards:") || kind.equals("turn")) {
        continue;
      }
      int end = i + 1;
      while (lines.get(end).startsWith(ITEM)) {
        end++;
      }
      for (int at = i + 1; at < end; at++) {
        int gone = at;
        int key = end - i > 2 ? -1 : i;
        add(
            Operator.DELETE_CAUTION,
            at,
            id + ": hazard " + lines.get(at).substring(ITEM.length()) + " -> nothing",
            changed -> {
              changed.remove(gone);
              if (key >= 0) {
                changed.remove(key);
              }
              return changed;
            });
      }
    }
  }

  private void targets() {
    List<String> steps = new ArrayList<>();
    for (String line : lines) {
      Matcher m = STEP.matcher(line);
      if (m.matches() && !m.group(1).equals("part")) {
        steps.add(m.group(2));
      }
    }
    String id = "";
    for (int i = 0; i < lines.size(); i++) {
      Matcher step = STEP.matcher(lines.get(i));
      id = step.matches() ? step.group(2) : id;
      Matcher m = TARGET.matcher(lines.get(i));
      if (m.matches()) {
        List<String> others = new ArrayList<>(steps);
        others.remove(m.group(2));
        int seed = (procedure + "/" + id + lines.get(i - 1) + lines.get(i)).hashCode();
        String other = others.get(new Random(seed).nextInt(others.size()));
        retarget(i, id, m, other);
      }
    }
  }

  private void retarget(int line, String step, Matcher m, String other) {
    add(
        Operator.RETARGET,
        line,
        step + ": " + lines.get(line).strip() + " -> " + other,
        changed -> {
          changed.set(line, m.group(1) + other);
          return changed;
        });
  }

  /** Steps that bring the strings to pitch are passed over, or no longer do so. */
  private void retunes() {
    String id = "";
    for (int i = 0; i < lines.size(); i++) {
      Matcher step = STEP.matcher(lines.get(i));
      id = step.matches() ? step.group(2) : id;
      if (!lines.get(i).strip().equals("establishes:")
          || !lines.get(i + 1).equals(ITEM + "at-pitch")
          || lines.get(i + 2).startsWith(ITEM)) {
        continue;
      }
      int at = i;
      add(
          Operator.REMOVE_RETUNE,
          i,
          id + " no longer brings the strings to pitch",
          changed -> {
            changed.subList(at, at + 2).clear();
            return changed;
          });
      String go = "";
      for (int j = i; go.isEmpty() && j < lines.size(); j++) {
        Matcher m = TARGET.matcher(lines.get(j));
        go = m.matches() ? m.group(2) : "";
      }
      String passed = id;
      String next = go;
      add(
          Operator.REMOVE_RETUNE,
          i,
          id + " is passed over, on to " + go,
          changed -> {
            changed.replaceAll(line -> passed(line, passed, next));
            return changed;
          });
    }
  }

  private static String passed(String line, String step, String next) {
    Matcher m = TARGET.matcher(line);
    boolean leads = m.matches() && m.group(2).equals(step);
    boolean head = line.matches("(begin|retune|reread): " + Pattern.quote(step));
    return leads ? m.group(1) + next : head ? line.split(":", -1)[0] + ": " + next : line;
  }
}
