package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.unit.Counted;

/**
 * The result of checking several procedures.
 *
 * @param checked the procedures, each by its id or file name
 * @param rules the rule files, each by its name
 * @param findings every finding, without repetition
 * @param missing how many of those that were asked for are not there
 * @param readable whether any file could be read
 */
public record CheckReport(
    List<String> checked, List<String> rules, List<Fault> findings, int missing, boolean readable) {
  public CheckReport {
    checked = List.copyOf(checked);
    rules = List.copyOf(rules);
    findings = List.copyOf(findings);
  }

  /** The findings, each followed by an empty line, then their number. */
  public List<String> lines() {
    List<String> lines = new ArrayList<>();
    for (Fault finding : findings) {
      finding.toString().lines().forEach(lines::add);
      lines.add("");
    }
    lines.add(sum());
    return lines;
  }

  private String sum() {
    String files = rules.isEmpty() ? "" : Counted.of(rules.size(), "rule file");
    String both = files.isEmpty() || checked.isEmpty() ? files : " and " + files;
    String all =
        checked.isEmpty() && !files.isEmpty() ? "" : Counted.of(checked.size(), "procedure");
    String procedures = all + both + " checked";
    if (findings.isEmpty()) {
      return procedures + (readable && missing == 0 ? ", nothing found." : ".");
    }
    int places = (int) findings.stream().map(finding -> finding.mark().file()).distinct().count();
    return Counted.of(findings.size(), "finding")
        + " in "
        + Counted.of(places, "file")
        + "; "
        + procedures
        + ".";
  }
}
