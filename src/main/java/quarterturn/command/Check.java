package quarterturn.command;

import java.io.IOException;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Slip;
import quarterturn.procedure.check.CheckTarget;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.check.Report;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.report.CheckReport;

/** Checks several files and keeps each finding once, by whatever way it was reached. */
final class Check {
  private final Map<List<Object>, Fault> findings = new LinkedHashMap<>();
  private final Map<String, String> checked = new LinkedHashMap<>();
  private final Set<String> rules = new LinkedHashSet<>();
  private final Set<String> missing = new LinkedHashSet<>();
  private final Walks walks = new Walks();
  private boolean readable;

  private Check() {}

  /**
   * Checks each of {@code targets}.
   *
   * @param complain takes one line for each that cannot be read at all
   */
  static CheckReport of(List<CheckTarget> targets, Consumer<String> complain) {
    Check check = new Check();
    targets.forEach(check::add);
    check.missing.forEach(complain);
    return new CheckReport(
        List.copyOf(check.checked.values()),
        List.copyOf(check.rules),
        List.copyOf(check.findings.values()),
        check.missing.size(),
        check.readable || targets.isEmpty());
  }

  private void add(CheckTarget target) {
    try {
      Report report =
          target.rules()
              ? rules(target.shelf().faults(target.name()))
              : Checker.check(target.shelf(), target.name(), walks);
      String place = target.file() == null ? target.name() : place(target.file().toString());
      if (target.rules()) {
        rules.add(place);
      } else {
        checked.putIfAbsent(place, target.name());
      }
      readable |= report.readable();
      for (Fault fault : report.findings()) {
        findings.putIfAbsent(identity(fault), fault);
      }
    } catch (IOException e) {
      missing.add(Complaint.of(e));
    }
  }

  private static Report rules(List<Fault> faults) {
    return new Report(
        faults, faults.stream().noneMatch(fault -> fault.rule().equals(Slip.NOT_YAML.word())));
  }

  /** What two reports of one finding have in common, whatever name their file was given. */
  private static List<Object> identity(Fault fault) {
    return List.of(
        place(fault.mark().file()),
        fault.mark().line(),
        fault.mark().column(),
        fault.rule(),
        fault.wrong());
  }

  private static String place(String file) {
    try {
      return Path.of(file).toRealPath().toString();
    } catch (IOException | InvalidPathException e) {
      return file;
    }
  }
}
