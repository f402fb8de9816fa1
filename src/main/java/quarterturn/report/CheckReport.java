package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.unit.Counted;

/**
 * The result of checking several procedures.
 *
 * @param checked the procedures, each by its id or file name
 * @param findings every finding, without repetition
 * @param readable whether all files could be read
 */
public record CheckReport(List<String> checked, List<Fault> findings, boolean readable) {
  public CheckReport {
    checked = List.copyOf(checked);
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
    String procedures = Counted.of(checked.size(), "procedure") + " checked";
    if (findings.isEmpty()) {
      return procedures + (readable ? ", nothing found." : ".");
    }
    int files = (int) findings.stream().map(finding -> finding.mark().file()).distinct().count();
    return Counted.of(findings.size(), "finding")
        + " in "
        + Counted.of(files, "file")
        + "; "
        + procedures
        + ".";
  }
}
