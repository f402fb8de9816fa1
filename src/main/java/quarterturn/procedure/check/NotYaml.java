package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** A file can be taken apart at all. */
final class NotYaml implements Rule {
  @Override
  public String id() {
    return Slip.NOT_YAML.rule();
  }

  @Override
  public String means() {
    return "A file is UTF-8 text in plain YAML: one document, each key once, no tags,"
        + " anchors or aliases.";
  }

  @Override
  public Example bad() {
    return Example.steps(
        """
        - tell: look
          text: Next: look along the neck.
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }

  @Override
  public Example good() {
    return Example.steps(
        """
        - tell: look
          text: "Next: look along the neck."
          go: end
        - done: end
          text: That is all.
          outcome: seen
        """);
  }
}
