package quarterturn.rehearsal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Condition;
import quarterturn.procedure.ConditionWords;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.Way;
import quarterturn.procedure.Ways;
import quarterturn.session.Place;

/** The ways that no session can take, by what stands in the files alone, and why. */
final class Closed {
  private final Library library;
  private final Roads roads;
  private final Map<Way, String> ways = new HashMap<>();

  Closed(Library library, Roads roads) {
    this.library = library;
    this.roads = roads;
    for (Procedure procedure : library.procedures().values()) {
      for (Step step : procedure.steps().values()) {
        Branch.Fork fork = Ways.fork(step);
        if (fork != null) {
          close(new Place(procedure.id(), step.id()), fork);
        }
      }
    }
    Place begin = new Place(library.main().id(), library.main().begin());
    Set<Place> open = roads.beyond(begin, Set.copyOf(ways.keySet()));
    for (Way way : roads.ways()) {
      Place from = new Place(way.procedure(), way.step());
      if (!from.equals(begin) && !open.contains(from)) {
        ways.putIfAbsent(way, BEHIND);
      }
    }
  }

  /** Why a way is closed whose step only other closed ways lead to. */
  static final String BEHIND = "only ways that can't be taken lead to its step";

  /** Each way with why it can't be taken. */
  Map<Way, String> ways() {
    return ways;
  }

  private void close(Place here, Branch.Fork fork) {
    String before = null;
    List<Way> out = roads.out(here);
    for (int i = 0; i < out.size(); i++) {
      Condition when = i < fork.branches().size() ? fork.branches().get(i).when() : null;
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
    if (when instanceof Condition.All all) {
      for (Condition part : all.parts()) {
        String because = never(here, part);
        if (because != null) {
          return because;
        }
      }
      return null;
    } else if (when instanceof Condition.Any any) {
      List<String> all = new ArrayList<>();
      for (Condition part : any.parts()) {
        String because = never(here, part);
        if (because == null) {
          return null;
        }
        all.add(because);
      }
      return String.join("; ", all);
    } else if (when instanceof Condition.Not not) {
      String words = ConditionWords.of(not.part());
      return always(here, not.part()) ? "\"" + words + "\" always holds here" : null;
    } else if (when instanceof Condition.Called called) {
      boolean caller = library.procedures().containsKey(called.procedure());
      return caller ? null : called.procedure() + " does not call it in this job";
    } else if (when instanceof Condition.Reached reached) {
      Place first = new Place(here.procedure(), reached.step());
      boolean itself = first.equals(here) && reached.times() == 1;
      boolean comes = itself || roads.beyond(first, Set.of()).contains(here);
      return comes ? null : "no way leads from " + reached.step() + " to " + here.step();
    } else if (when instanceof Condition.Chosen chosen) {
      Place first = new Place(here.procedure(), chosen.step());
      boolean comes = roads.beyond(first, Set.of()).contains(here);
      return comes ? null : "no way leads from " + chosen.step() + " to " + here.step();
    }
    return null;
  }

  /** Whether a condition holds at a step whatever happens. */
  private boolean always(Place here, Condition when) {
    if (when instanceof Condition.All all) {
      return all.parts().stream().allMatch(part -> always(here, part));
    } else if (when instanceof Condition.Any any) {
      return any.parts().stream().anyMatch(part -> always(here, part));
    } else if (when instanceof Condition.Not not) {
      return never(here, not.part()) != null;
    }
    // Whatever is not the job itself was called by it.
    return when instanceof Condition.Called called
        && called.procedure().equals(library.main().id())
        && !here.procedure().equals(called.procedure());
  }
}
