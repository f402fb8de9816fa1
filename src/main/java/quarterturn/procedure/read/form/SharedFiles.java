package quarterturn.procedure.read.form;

import java.util.Collection;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.read.yaml.Node;

/** What stands in other files for all sheets to use. */
public interface SharedFiles {
  /** The block with this name, or null where there is none. */
  Node.@Nullable Mapping block(String name);

  /** The ends that sheets share, as steps. */
  List<Node> endings();

  /** The questions of a procedure's lesson by the ids of their steps, or null where it has none. */
  Node.@Nullable Mapping questions(String procedure);

  /** Whether those questions are the program's, and the procedure is a user's own. */
  boolean questionsOfAnother(String procedure);

  /** The hazards that are shown with the steps they go with. */
  Collection<Hazard> hazards();

  /** The value of a limit, or null where there is none with this name. */
  @Nullable Node limit(String name);
}
