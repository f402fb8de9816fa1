package quarterturn.procedure.check;

import java.util.List;
import quarterturn.procedure.Fault;

/**
 * The faults of a procedure.
 *
 * @param findings in the order of the files
 * @param readable whether the files could be read at all; where not, more may be wrong
 */
public record Report(List<Fault> findings, boolean readable) {
  public Report {
    findings = List.copyOf(findings);
  }
}
