package quarterturn.procedure;

import java.util.List;
import java.util.Map;
import java.util.Set;

/** A library with the text of the files it was read from, so that more can be said of them. */
public final class Loaded {
  private final Library library;
  private final Map<String, Source> sources;
  private final Set<String> own;

  /**
   * @param sources by the file's name, as marks give it
   * @param own ids of the procedures that did not come with the program as they stand
   */
  Loaded(Library library, Map<String, Source> sources, Set<String> own) {
    this.library = library;
    this.sources = Map.copyOf(sources);
    this.own = Set.copyOf(own);
  }

  public Library library() {
    return library;
  }

  /**
   * Ids of the procedures that were not proven when the program was built: those of the user's own,
   * and all of them where hazards, limits or results are the user's own.
   */
  public Set<String> own() {
    return own;
  }

  /** A fault at {@code mark}, with the line that stands there. */
  public Fault fault(String rule, Mark mark, String wrong, String mend, List<String> path) {
    Source source = sources.get(mark.file());
    return source == null
        ? new Fault(rule, mark, wrong, mend, "", 0, path)
        : source.fault(rule, mark, wrong, mend, path);
  }
}
