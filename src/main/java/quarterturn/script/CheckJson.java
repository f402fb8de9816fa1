package quarterturn.script;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quarterturn.procedure.Fault;
import quarterturn.report.CheckReport;

/** The result of checking procedures as one JSON object; lines and columns count from one. */
public final class CheckJson {
  private CheckJson() {}

  public static String of(CheckReport report) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    ArrayNode checked = json.putArray("checked");
    report.checked().forEach(checked::add);
    ArrayNode rules = json.putArray("rules");
    report.rules().forEach(rules::add);
    ArrayNode findings = json.putArray("findings");
    for (Fault fault : report.findings()) {
      ObjectNode finding = findings.addObject();
      finding.put("file", fault.mark().file());
      finding.put("line", fault.mark().line());
      finding.put("column", fault.mark().column());
      finding.put("rule", fault.rule());
      finding.put("wrong", fault.wrong());
      finding.put("mend", fault.mend());
      finding.put("source", fault.line());
      finding.put("caret", fault.caret());
      ArrayNode way = finding.putArray("way");
      fault.path().forEach(way::add);
      ArrayNode follows = finding.putArray("follows");
      for (Fault one : fault.follows()) {
        follows
            .addObject()
            .put("rule", one.rule())
            .put("place", one.mark().toString())
            .put("wrong", one.wrong());
      }
    }
    json.put("readable", report.readable());
    return json.toString();
  }
}
