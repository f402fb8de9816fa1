package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Loaded;
import quarterturn.procedure.Mark;

/** The findings on one procedure so far. */
final class Findings {
  /** More of the same at one place only hides the rest. */
  private static final int MOST = 3;

  private final Loaded loaded;
  private final List<Fault> all = new ArrayList<>();
  private final Set<List<Object>> seen = new HashSet<>();
  private final Map<List<Object>, Integer> places = new HashMap<>();

  Findings(Loaded loaded) {
    this.loaded = loaded;
  }

  void add(Rule rule, Mark mark, String wrong, String mend) {
    add(rule, mark, wrong, mend, List.of());
  }

  /** Adds a finding, unless the same is said of the place already. */
  void add(Rule rule, Mark mark, String wrong, String mend, List<String> way) {
    List<Object> place = List.of(rule.id(), mark);
    if (seen.add(List.of(place, wrong)) && places.merge(place, 1, Integer::sum) <= MOST) {
      String said = mend.substring(0, 1).toUpperCase(Locale.ROOT) + mend.substring(1);
      all.add(loaded.fault(rule.id(), mark, wrong, said, way));
    }
  }

  /** All of them, in the order of the file. */
  List<Fault> sorted() {
    return all.stream().sorted(Fault.BY_PLACE).toList();
  }
}
