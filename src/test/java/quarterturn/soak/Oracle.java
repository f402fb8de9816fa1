package quarterturn.soak;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.OwnSequences;
import quarterturn.command.Captured;

/** What must hold after every round. */
final class Oracle {
  private static final Pattern TRACE =
      Pattern.compile(
          "(?s).{0,80}(Exception|StackOverflow|OutOfMemory|\\tat [a-z]+\\.|fatal error has been).{0,400}");

  private static final Pattern CONTROL = Pattern.compile("(?s).{0,60}[\\p{Cc}&&[^\\n]].{0,60}");

  private final List<String> findings = new ArrayList<>();
  private final World world;

  Oracle(World world) {
    this.world = world;
  }

  List<String> findings() {
    return List.copyOf(findings);
  }

  void found(String what) {
    findings.add(what);
  }

  /** What a program printed. */
  void printed(String out, boolean terminal) {
    Matcher trace = TRACE.matcher(out);
    if (trace.find()) {
      found("a trace: " + trace.group());
    }
    if (out.contains(PtyChild.CHANGED)) {
      found("modes of the terminal: " + out.substring(out.indexOf(PtyChild.CHANGED)).strip());
    }
    if (terminal) {
      // A bell says that a key does nothing here.
      holds(() -> OwnSequences.only(out.replace("\u0007", "")));
    } else {
      Matcher control = CONTROL.matcher(out);
      if (control.find()) {
        found("a control character in: " + escaped(control.group()));
      }
    }
  }

  /** What was drawn must be taken off the terminal again. */
  void restored(String out) {
    holds(() -> OwnSequences.restored(out));
  }

  private void holds(Runnable assertion) {
    try {
      assertion.run();
    } catch (AssertionError e) {
      found(escaped(String.valueOf(e.getMessage())));
    }
  }

  static String escaped(String text) {
    StringBuilder out = new StringBuilder();
    text.chars()
        .forEach(c -> out.append(c < ' ' || c >= 0x7f ? "\\u%04x".formatted(c) : "" + (char) c));
    return out.toString();
  }

  /** What the folder holds, by what it held before. */
  void folder(Records before, Records now) throws IOException {
    before.lost(now).forEach(line -> found("lost or rewritten: " + line));
    LimitsKept.broken(world.sessions()).forEach(this::found);
    Captured check = world.run("data", "check");
    printed(check.out() + check.err(), false);
    (check.out() + check.err())
        .lines()
        .filter(Predicate.not(line -> line.isBlank() || line.startsWith("Read ")))
        .filter(line -> !line.contains("cut short") && !line.startsWith("quarterturn: "))
        .forEach(line -> found("data check: " + line));
    runs(List.of("--plain"));
    runs(List.of("log", "list"));
    runs(List.of("due"));
    for (String instrument : world.instruments()) {
      runs(List.of("instrument", "history", instrument));
    }
  }

  private void runs(List<String> words) {
    Captured ran = world.run(words.toArray(String[]::new));
    printed(ran.out() + ran.err(), false);
    if (ran.status() != 0) {
      found(words + " ends with status " + ran.status() + ": " + ran.err() + ran.out());
    }
  }
}
