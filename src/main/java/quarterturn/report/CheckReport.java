package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.unit.Counted;

/**
 * What checking several procedures came to.
 *
 * @param checked the procedures, each by its id or its file
 * @param findings each once
 * @param readable whether all files could be read
 */
public record CheckReport(List<String> checked, List<Fault> findings, boolean readable) {
  public CheckReport {
    checked = List.copyOf(checked);
    findings = List.copyOf(findings);
  }

  /** Each finding with an empty line behind it, and then how many there are. */
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
