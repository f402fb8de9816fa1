package quarterturn.quick;

import java.util.List;
import org.jspecify.annotations.Nullable;

/** What stands between two semicolons of a typed line. */
public sealed interface Part {
  /** Answers by the names of what they answer. */
  record Named(List<Given> given) implements Part {}

  /** An answer without a name, to whatever is asked when its turn comes. */
  record Bare(String text) implements Part {}

  /**
   * The wish to forget what was typed under a name.
   *
   * @param string the note of one string only, or null for all
   */
  record Drop(String name, @Nullable String string) implements Part {}

  /** A part that can't be taken. */
  record Wrong(String text, Mistyped why) implements Part {}
}
