package quarterturn.lesson.teacher;

import java.time.Instant;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Acceptance;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;

/**
 * What a desk shows at one moment.
 *
 * @param desk its name
 * @param now by the desk's clock
 * @param heard when this desk last heard of each bench; no two clocks are compared
 * @param titles of the steps in words, by procedure and step
 * @param notices what is wrong with files right now
 * @param sheets where the sheets are, or why they could not be written; empty before
 */
public record Sight(
    Plan plan,
    String desk,
    Instant now,
    DeskView view,
    Map<String, Heard> heard,
    Map<String, String> titles,
    List<String> notices,
    String sheets) {
  /** The row of a bench, or null. */
  public DeskView.@Nullable Row row(String bench) {
    return view.rows().stream()
        .filter(r -> r.bench().bench().equals(bench))
        .findFirst()
        .orElse(null);
  }

  /** What is done at a step, in words: "relief on the lowest string". */
  String what(String key) {
    String title = titles.getOrDefault(key, key.replace("/", ": ").replace('-', ' '));
    return title.substring(title.indexOf(": ") + 2);
  }

  /** Whether nothing was heard of a bench for long, though it was not left in order. */
  public boolean silent(DeskView.Row row) {
    Heard last = heard.get(row.bench().bench());
    return last != null && last.silent() && !row.bench().gone();
  }

  /** Whether a desk has ended the lesson. */
  public boolean ended() {
    return view.given().stream().anyMatch(g -> g.order() instanceof Order.End);
  }

  /** Whether every bench has left the lesson in order. */
  public boolean over() {
    return !view.rows().isEmpty() && view.rows().stream().allMatch(r -> r.bench().gone());
  }

  /** What keeps a bench and no desk has released yet, stops first. */
  public List<Keep> toRelease(DeskView.Row row) {
    return row.releases().stream().filter(keep -> pending(row, keep) == null).toList();
  }

  /**
   * The order that will release a bench once the bench looks, or null; an order the bench will
   * refuse does not count.
   */
  public DeskView.@Nullable Given pending(DeskView.Row row, Keep keep) {
    for (DeskView.Given given : view.given()) {
      if (given.order() instanceof Order.Release release
          && release.keeps().equals(keep.ref())
          && given.answers().containsKey(row.bench().bench())
          && !row.bench().taken().contains(given.ref())
          && Acceptance.refusal(row.bench(), release) == null) {
        return given;
      }
    }
    return null;
  }

  /** The orders that some bench has not answered. */
  public List<DeskView.Given> unanswered() {
    return view.given().stream().filter(g -> g.answers().containsValue(DeskView.NOT_SEEN)).toList();
  }
}
