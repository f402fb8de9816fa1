package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.check.Mutant.Operator;

/** Changes to turns of the rod: where a feel leads, which way and how far it is said to go. */
final class TurnMutants {
  private static final List<String> STOPS = List.of("jammed", "noise", "slipped");

  /** Where these feels lead if nothing is written. */
  private static final List<String> ENDS = List.of("jammed", "noise", "stripped");

  private static final Pattern FELT = Pattern.compile("    felt: \\{(.*)}");
  private static final Pattern SMOOTH = Pattern.compile("smooth: ([a-z-]+)");
  private static final Pattern ONE = Pattern.compile("[a-z]+: ([a-z-]+)(, )?");
  private static final Pattern SHORT = Pattern.compile("  - turn: rod, (as advised|taken back)");
  private static final Pattern NAME = Pattern.compile("    id: (\\S+)");
  private static final Pattern BLANK = Pattern.compile("\\{(way|turn)}");

  private final Written written;

  TurnMutants(Written written) {
    this.written = written;
  }

  void make() {
    for (Written.Step step : written.steps()) {
      if (!step.kind().equals("turn")) {
        continue;
      }
      for (int line = step.from(); line < step.end(); line++) {
        Matcher felt = FELT.matcher(written.lines.get(line));
        if (felt.matches()) {
          led(step, line, felt.group(1));
          removed(step, line);
          writtenOut(step, felt.group(1));
          notEnded(step, felt.group(1));
        }
        fixed(step, line);
      }
    }
  }

  private static String smooth(String felt) {
    Matcher smooth = SMOOTH.matcher(felt);
    return smooth.find() ? smooth.group(1) : "";
  }

  /** A feel that has to end the work leads to where a smooth turn goes, or to another step. */
  private void led(Written.Step step, int line, String felt) {
    for (String stop : STOPS) {
      String smooth = smooth(felt);
      String other = written.other(step.name() + stop, List.of(smooth));
      for (String to : List.of(smooth, other)) {
        String now = "felt: {" + felt + ", " + stop + ": " + to + "}";
        written.replace(
            Operator.STOP_FEEL,
            step.name() + ": " + stop + ": " + to,
            line,
            line + 1,
            List.of("    " + now));
      }
    }
  }

  /** A feel leads nowhere of its own, so to the step below, where it did not lead there before. */
  private void removed(Written.Step step, int line) {
    Matcher one = ONE.matcher(written.lines.get(line));
    while (one.find()) {
      if (one.group(1).equals(written.next(step))) {
        continue;
      }
      written.change(Operator.STOP_FEEL, step.name(), line, one, "");
    }
  }

  /** The turn is written in full, and in it such a feel leads on, or nowhere. */
  private void writtenOut(Written.Step step, String felt) {
    List<String> rest = new ArrayList<>(written.lines(step));
    Matcher first = SHORT.matcher(rest.remove(0));
    if (!first.matches()) {
      return;
    }
    boolean advised = first.group(1).equals("as advised");
    String id = "";
    for (String said : written.lines(step)) {
      Matcher name = NAME.matcher(said);
      id = name.matches() ? name.group(1) : id;
    }
    rest.removeIf(said -> said.matches("    (id|felt|limit): .*"));
    List<String> full = new ArrayList<>(List.of("  - turn: " + id));
    full.addAll(rest);
    full.add("    amount: " + (advised ? "advised" : "undo"));
    full.add("    limit: 1/8 turn");
    full.add("    never-skip: true");
    for (String stop : STOPS) {
      for (String to : List.of(smooth(felt), "")) {
        List<String> changed = new ArrayList<>(full);
        changed.add("    felt: {" + felt + stops(stop, to) + "}");
        String what = step.name() + " in full: " + stop + " -> " + (to.isEmpty() ? "nothing" : to);
        written.replace(Operator.STOP_FEEL, what, step.from(), step.end(), changed);
      }
    }
  }

  /** Where all of these feels lead, one of them elsewhere or nowhere. */
  private static String stops(String changed, String to) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < STOPS.size(); i++) {
      String way = STOPS.get(i).equals(changed) ? to : ENDS.get(i);
      if (!way.isEmpty()) {
        all.append(", ").append(STOPS.get(i)).append(": ").append(way);
      }
    }
    return all.toString();
  }

  /** A step of the file has the name of the end that such a feel leads to, and goes on. */
  private void notEnded(Written.Step step, String felt) {
    for (String end : ENDS) {
      int last = written.lines.size();
      written.replace(
          Operator.STOP_FEEL,
          step.name() + ": " + end + " is a step, on to " + smooth(felt),
          last,
          last,
          List.of(
              "  - tell: " + end, "    text: Wait until it is quiet.", "    go: " + smooth(felt)));
    }
  }

  /** A turn's words say a way or an amount of their own. */
  private void fixed(Written.Step step, int line) {
    Matcher blank = BLANK.matcher(written.lines.get(line));
    while (blank.find()) {
      List<String> fixed =
          blank.group(1).equals("way")
              ? List.of("tighten", "loosen")
              : List.of("a quarter turn", "half a turn");
      String place = step.name() + line + blank.start();
      written.change(Operator.TEXT, step.name(), line, blank, written.drawn(place, fixed));
    }
  }
}
