package quarterturn.procedure.read;

import java.util.List;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Library;
import quarterturn.procedure.Mark;
import quarterturn.procedure.read.yaml.Source;

/**
 * A library with the text of the files it was read from, so that faults can show their lines.
 *
 * @param sources by the file's name, as marks give it
 * @param own ids of the procedures that were not proven when the program was built: those of the
 *     user's own, and all of them where hazards, limits or results are the user's own
 * @param tightened ids of those among them that came with the program, and were written for laxer
 *     rules than these
 */
public record Loaded(
    Library library, Map<String, Source> sources, Set<String> own, Set<String> tightened) {
  public Loaded {
    sources = Map.copyOf(sources);
    own = Set.copyOf(own);
    tightened = Set.copyOf(tightened);
  }

  /** A fault at {@code mark}, with the line that stands there. */
  public Fault fault(String rule, Mark mark, String wrong, String mend, List<String> path) {
    Source source = sources.get(mark.file());
    return source == null
        ? new Fault(rule, mark, wrong, mend, "", 0, path)
        : source.fault(rule, mark, wrong, mend, path);
  }
}
