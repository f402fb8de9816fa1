package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Waiting;

/** Sentences on what has changed from one look to the next, the most pressing first. */
public final class DeskNews {
  private DeskNews() {}

  public static List<String> between(Sight before, Sight after) {
    List<String> out = new ArrayList<>();
    List<String> calm = new ArrayList<>();
    for (DeskView.Row row : after.view().rows()) {
      boolean stopped = row.waiting().kind() == Waiting.Kind.STOPPED;
      DeskView.Row was = before.row(row.bench().bench());
      (stopped ? out : calm).addAll(row(was, after, row));
      if (was != null && before.silent(was) != after.silent(row)) {
        out.add(
            Called.name(row)
                + (after.silent(row) ? " is not heard of: look there." : " is heard of again."));
      }
    }
    if (!after.sheets().equals(before.sheets())) {
      out.add(after.sheets());
    }
    List<String> answered = new ArrayList<>();
    orders(before, after, out, answered);
    out.addAll(calm);
    out.addAll(answered);
    after.notices().stream()
        .filter(n -> !before.notices().contains(n))
        .forEach(n -> out.add("Notice: " + n));
    return out;
  }

  private static List<String> row(DeskView.@Nullable Row before, Sight sight, DeskView.Row now) {
    if (before == null) {
      return List.of("New: " + DeskWords.sentence(sight, now));
    }
    Waiting was = before.waiting();
    Waiting is = now.waiting();
    boolean same =
        was.kind() == is.kind() && was.what().equals(is.what()) && was.who().equals(is.who());
    boolean moved = !part(before.bench()).equals(part(now.bench()));
    boolean others = !before.bench().students().equals(now.bench().students());
    if (same && !moved && !others && keeps(before).equals(keeps(now))) {
      return List.of();
    }
    boolean on = pressing(was) && !pressing(is) && is.kind() != Waiting.Kind.OVER;
    return List.of((on ? Called.name(now) + " goes on. " : "") + DeskWords.sentence(sight, now));
  }

  private static boolean pressing(Waiting waiting) {
    return waiting.kind() == Waiting.Kind.STOPPED || waiting.kind() == Waiting.Kind.HELD;
  }

  private static List<Ref> keeps(DeskView.Row row) {
    return row.releases().stream().map(keep -> keep.ref()).toList();
  }

  private static String part(BenchLesson bench) {
    return bench.spot() == null ? "" : bench.spot().procedure() + " " + bench.spot().part();
  }

  /**
   * Adds other desks' orders and the benches' answers; this desk's own orders were told when given.
   */
  private static void orders(Sight before, Sight after, List<String> pressing, List<String> calm) {
    Map<Ref, DeskView.Given> known =
        before.view().given().stream().collect(Collectors.toMap(g -> g.ref(), g -> g));
    for (DeskView.Given given : after.view().given()) {
      DeskView.Given was = known.get(given.ref());
      boolean own = given.ref().writer().equals(after.desk());
      boolean answered =
          was == null
              ? given.answers().values().stream().anyMatch(a -> !a.equals(DeskView.NOT_SEEN))
              : !was.answers().equals(given.answers());
      if (answered || (was == null && !own)) {
        boolean one = given.answers().size() == 1;
        boolean late =
            own && one && given.answers().containsValue(Refusal.ALREADY_RELEASED.words());
        if (late) {
          pressing.add(DeskWords.late(after, given));
        } else {
          calm.add(DeskWords.order(after, given) + " (" + DeskWords.answers(after, given) + ")");
        }
      }
    }
  }
}
