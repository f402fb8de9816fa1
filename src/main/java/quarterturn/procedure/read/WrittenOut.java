package quarterturn.procedure.read;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.TreeFile;

/**
 * A procedure that comes with the program as it was written out when that was built.
 *
 * @param tree with every form replaced by the steps that it stands for
 * @param digest of its YAML
 */
record WrittenOut(Node tree, String digest) {
  /** The name of the file for a procedure. */
  static String name(String id) {
    return id + ".full";
  }

  /**
   * What was written out.
   *
   * @param file the name of the procedure's YAML
   * @param yaml its bytes
   * @param kept what {@link #bytes} made of it
   * @return null where it was made of another state of the YAML
   */
  static @Nullable WrittenOut read(String file, byte[] yaml, byte[] kept) {
    Node both = TreeFile.read(file, yaml, kept);
    if (both instanceof Node.Sequence list && list.items().get(0) instanceof Node.Scalar digest) {
      return new WrittenOut(list.items().get(1), digest.text());
    }
    return null;
  }

  /** The bytes to keep, for the YAML that it was made of. */
  byte[] bytes(byte[] yaml) throws IOException {
    Mark begin = tree.mark();
    return TreeFile.of(
        new Node.Sequence(List.of(Node.Scalar.at(begin, digest), tree), begin), yaml);
  }
}
