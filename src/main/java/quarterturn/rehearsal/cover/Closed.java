package quarterturn.rehearsal.cover;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.ConditionWords;
import quarterturn.procedure.condition.Subject;
import quarterturn.session.Place;

/** The ways that no session can take, found from the procedure files alone, with the reason. */
final class Closed {
  private final Library library;
  private final FlowGraph graph;
  private final Map<Way, String> ways = new HashMap<>();

  Closed(Library library, FlowGraph graph) {
    this.library = library;
    this.graph = graph;
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        close(new Place(procedure.id(), step.id()), step.fork().branches());
      }
    }
    Place begin = new Place(library.main().id(), library.main().begin());
    Set<Place> open = graph.beyond(begin, Set.copyOf(ways.keySet()));
    for (Way way : graph.ways()) {
      Place from = new Place(way.procedure(), way.step());
      if (!from.equals(begin) && !open.contains(from)) {
        ways.putIfAbsent(way, BEHIND);
      }
    }
  }

  /** The reason for a way whose step can only be reached by ways that can't be taken. */
  static final String BEHIND = "only ways that can't be taken lead to its step";

  /** Every way that can't be taken, with the reason. */
  Map<Way, String> ways() {
    return ways;
  }

  private void close(Place here, List<Branch> branches) {
    String before = null;
    List<Way> out = graph.out(here);
    for (int i = 0; i < out.size(); i++) {
      Condition when = i < branches.size() ? branches.get(i).when() : null;
      String because = before != null ? before : when == null ? null : never(here, when);
      if (because != null) {
        ways.put(out.get(i), because);
      }
      if (when != null && before == null && always(here, when)) {
        before = "\"" + ConditionWords.of(when) + "\" always holds here";
      }
    }
  }

  /** Why a condition can't hold at a step, or null where it may. */
  private @Nullable String never(Place here, Condition when) {
    return when.match(
        all -> whys(here, all.parts()).findFirst().orElse(null),
        any -> {
          List<String> whys = whys(here, any.parts()).toList();
          return whys.size() < any.parts().size() ? null : String.join("; ", whys);
        },
        not ->
            always(here, not.part())
                ? "\"" + ConditionWords.of(not.part()) + "\" always holds here"
                : null,
        atom -> never(here, atom.about(), atom));
  }

  private Stream<String> whys(Place here, List<Condition> parts) {
    return parts.stream().<@Nullable String>map(part -> never(here, part)).filter(Objects::nonNull);
  }

  private @Nullable String never(Place here, Subject about, Condition.Atom atom) {
    if (atom instanceof Condition.Called called) {
      boolean caller = library.procedures().containsKey(called.procedure());
      return caller ? null : called.procedure() + " does not call it in this job";
    }
    // The first time at a step it was reached once.
    boolean first = about.equals(new Subject.Count(here.step())) && atom.bounds().contains(1.0);
    String step = step(about);
    boolean comes =
        step == null
            || first
            || graph.beyond(new Place(here.procedure(), step), Set.of()).contains(here);
    return comes ? null : "no way leads from " + step + " to " + here.step();
  }

  /** Id of the step that a subject is about, or null. */
  private static @Nullable String step(Subject about) {
    if (about instanceof Subject.Count count) {
      return count.step();
    }
    return about instanceof Subject.Choice choice ? choice.step() : null;
  }

  /** Whether a condition holds at a step whatever happens. */
  private boolean always(Place here, Condition when) {
    return when.match(
        all -> all.parts().stream().allMatch(part -> always(here, part)),
        any -> any.parts().stream().anyMatch(part -> always(here, part)),
        not -> never(here, not.part()) != null,
        // Whatever is not the job itself was called by it.
        atom ->
            atom instanceof Condition.Called called
                && called.procedure().equals(library.main().id())
                && !here.procedure().equals(called.procedure()));
  }
}
