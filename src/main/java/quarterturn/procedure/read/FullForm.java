package quarterturn.procedure.read;

import java.util.List;
import quarterturn.procedure.read.yaml.Node;

/**
 * A procedure written out: every short form replaced by the steps that it stands for, which are all
 * that the engine and the checker know.
 */
final class FullForm {
  /** The key of the first step. */
  static final String BEGIN = "begin";

  private FullForm() {}

  /** The tree of a file with its steps written out; any other tree as it is. */
  static Node of(Node file) {
    if (!(file instanceof Node.Mapping mapping)) {
      return file;
    }
    Node.Entry steps = mapping.entries().get("steps");
    if (steps == null || !(steps.value() instanceof Node.Sequence list)) {
      return file;
    }
    List<Node> written = InOrder.of(Parts.of(Unnamed.of(list.items())));
    Node.Scalar first = InOrder.first(written);
    Node.Mapping head = mapping.without("steps");
    if (first != null && !head.entries().containsKey(BEGIN)) {
      head = head.with(BEGIN, new Node.Entry(steps.key(), first));
    }
    return head.with("steps", new Node.Entry(steps.key(), new Node.Sequence(written, list.mark())));
  }
}
