package quarterturn.screen;

import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.teacher.DeskView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.screen.state.Field;
import quarterturn.session.Question;

/**
 * The state of a desk's screen.
 *
 * @param marked id of the bench that was marked, whose mark moves with its row; empty where keys
 *     act on the first
 * @param asked the question for what an order needs, shown over everything else, or null
 * @param field the text being typed
 * @param pick index of the marked student of the bench
 * @param scroll lines scrolled down in the open view
 * @param message a hint, or what is new; empty for none
 */
record DeskModel(
    Sight sight,
    String marked,
    DeskLayer layer,
    @Nullable Question asked,
    Field field,
    int pick,
    int scroll,
    String message) {

  static DeskModel of(Sight sight) {
    return new DeskModel(sight, "", DeskLayer.NONE, null, Field.EMPTY, 0, 0, "")
        .seeing(sight, null);
  }

  /** The model with newly read benches; no bench is marked if the marked one is gone. */
  DeskModel seeing(Sight now, @Nullable Question asks) {
    String mark = now.row(marked) != null ? marked : "";
    return Objects.equals(asks, asked)
        ? new DeskModel(now, mark, layer, asks, field, pick, scroll, message)
        : new DeskModel(now, mark, DeskLayer.NONE, asks, Field.EMPTY, 0, 0, message);
  }

  DeskModel saying(String words) {
    return new DeskModel(sight, marked, layer, asked, field, pick, scroll, words);
  }

  DeskModel marking(String bench) {
    return new DeskModel(sight, bench, layer, asked, field, pick, scroll, "");
  }

  /** The model with another view open over the benches. */
  DeskModel with(DeskLayer other) {
    DeskView.Row row = row();
    // What is open over the benches stays with its bench.
    String mark = other == DeskLayer.NONE || row == null ? marked : row.bench().bench();
    return new DeskModel(sight, mark, other, null, Field.EMPTY, 0, 0, "");
  }

  DeskModel typing(Field typed) {
    return new DeskModel(sight, marked, layer, asked, typed, pick, scroll, "");
  }

  DeskModel picking(int student) {
    return new DeskModel(sight, marked, layer, asked, field, student, scroll, "");
  }

  /** The model scrolled to a line; a negative line is the first. */
  DeskModel scrolledTo(int line) {
    int from = Math.max(0, line);
    return new DeskModel(sight, marked, layer, asked, field, pick, from, message);
  }

  /** The bench that keys act on, or null where there is none. */
  DeskView.@Nullable Row row() {
    List<DeskView.Row> rows = sight.view().rows();
    return marked.isEmpty() && !rows.isEmpty() ? rows.get(0) : sight.row(marked);
  }

  /** Index of the marked bench among the rows, or -1. */
  int at() {
    DeskView.Row row = row();
    return row == null ? -1 : sight.view().rows().indexOf(row);
  }

  /** The students of the marked bench. */
  List<String> students() {
    DeskView.Row row = row();
    return row == null ? List.of() : List.copyOf(new TreeMap<>(row.bench().levels()).keySet());
  }

  /** Name of the marked student, or empty. */
  String student() {
    List<String> students = students();
    return students.isEmpty()
        ? ""
        : Objects.requireNonNull(students.get(Math.min(pick, students.size() - 1)));
  }
}
