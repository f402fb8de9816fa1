package quarterturn.procedure.check;

import quarterturn.procedure.Slip;

/** A file can be taken apart at all. */
final class NotYaml {
  static final Rule RULE =
      Rule.read(
          Slip.NOT_YAML,
          "A file is UTF-8 text in plain YAML: one document, each key once, no tags,"
              + " anchors or aliases.",
          Example.toEnd(
                  """
                  - tell: look
                    text: "Next: look along the neck."
                    go: end
                  """)
              .broken("\"", ""));

  private NotYaml() {}
}
