package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Round;
import quarterturn.lesson.StepSpread;
import quarterturn.unit.Printable;

/** What was predicted and read, by what was read on which string, each in the order of time. */
final class ByString {
  private ByString() {}

  /** Where a reading or turn stands in a lesson, and its string. */
  private record Place(int nth, @Nullable String string) {}

  /** A heading for each string and what was read there, and under it a line for each time. */
  static List<String> lines(Sight sight) {
    Map<String, Place> places = places(sight);
    List<StepSpread> inTime = new ArrayList<>(sight.view().spreads());
    inTime.sort(Comparator.comparingInt(spread -> nth(places.get(spread.step()))));
    Map<String, List<String>> groups = new LinkedHashMap<>();
    for (StepSpread spread : inTime) {
      List<String> words = DeskWords.spread(spread);
      List<String> times =
          groups.computeIfAbsent(
              heading(sight, spread.step(), places.get(spread.step())), h -> new ArrayList<>());
      times.add(
          (times.size() + 1) + ". " + (words.isEmpty() ? "Not yet." : String.join(" ", words)));
    }
    List<String> out = new ArrayList<>();
    groups.forEach(
        (heading, times) -> {
          out.add(heading + ":");
          out.addAll(times);
        });
    return out;
  }

  private static int nth(@Nullable Place place) {
    return place == null ? Integer.MAX_VALUE : place.nth();
  }

  /** The place of each step by its name in a spread; of several benches, the earliest. */
  private static Map<String, Place> places(Sight sight) {
    Map<String, Place> out = new HashMap<>();
    for (DeskView.Row row : sight.view().rows()) {
      Map<String, Integer> times = new HashMap<>();
      int nth = 0;
      for (Round round : row.bench().rounds()) {
        String key = row.bench().about(round).key();
        String step =
            StepSpread.name(key, times.merge(key + round.opened().turn(), 1, Integer::sum));
        Place place = new Place(nth++, round.opened().string());
        out.merge(step, place, (a, b) -> a.nth() <= b.nth() ? a : b);
      }
    }
    return out;
  }

  private static String heading(Sight sight, String step, @Nullable Place place) {
    String key = step.replaceFirst(", time \\d+$", "");
    String what = sight.what(key).replaceFirst(" \\(\\d+\\)$", "");
    String string = place == null ? null : place.string();
    String on =
        string == null
            ? what
            : what.replaceFirst(" on the \\w+ string$", "") + " on the string " + string;
    return Printable.of(on.substring(0, 1).toUpperCase(Locale.ROOT) + on.substring(1));
  }
}
