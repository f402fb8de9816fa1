package quarterturn.procedure.read;

import java.util.List;
import quarterturn.procedure.UnreadableException;

/** A file that is one list under one key. */
final class Listed {
  private Listed() {}

  /**
   * The pieces of the list.
   *
   * @param key the one key of the file
   * @throws UnreadableException when the file is no YAML or has no such list
   */
  static List<Node> items(Faults faults, String key) throws UnreadableException {
    MappingKeys fields = MappingKeys.of(TreeReader.read(faults), "this file", List.of(key), faults);
    if (fields == null) {
      throw new UnreadableException(faults.sorted());
    }
    Node list = fields.required(key);
    fields.end();
    if (list instanceof Node.Sequence sequence && sequence.items().isEmpty()) {
      faults.value(list.mark(), "the list of " + key + " is empty", "Put one into it at least");
    }
    return new Scalars(faults).items(list);
  }
}
