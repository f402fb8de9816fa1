package quarterturn.screen;

import java.util.List;
import java.util.Objects;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.screen.state.Field;
import quarterturn.session.Question;

/**
 * The state of a board's screen.
 *
 * @param marked id of the bench that keys act on, or empty; the mark moves with its row
 * @param asked the question for what an order needs, shown over everything else, or null
 * @param field the text being typed
 * @param pick index of the marked student of the bench
 * @param scroll lines scrolled down in the open view
 * @param message a hint, or what is new; empty for none
 */
record BoardModel(
    Sight sight,
    String marked,
    BoardLayer layer,
    @Nullable Question asked,
    Field field,
    int pick,
    int scroll,
    String message) {

  static BoardModel of(Sight sight) {
    return new BoardModel(sight, "", BoardLayer.NONE, null, Field.EMPTY, 0, 0, "")
        .seeing(sight, null);
  }

  /** The model with newly read benches; the first row is marked if the marked bench is gone. */
  BoardModel seeing(Sight now, @Nullable Question asks) {
    boolean there = now.row(marked) != null;
    List<BoardView.Row> rows = now.view().rows();
    String mark = there ? marked : rows.isEmpty() ? "" : rows.get(0).bench().bench();
    return Objects.equals(asks, asked)
        ? new BoardModel(now, mark, layer, asks, field, pick, scroll, message)
        : new BoardModel(now, mark, BoardLayer.NONE, asks, Field.EMPTY, 0, 0, message);
  }

  BoardModel saying(String words) {
    return new BoardModel(sight, marked, layer, asked, field, pick, scroll, words);
  }

  BoardModel marking(String bench) {
    return new BoardModel(sight, bench, layer, asked, field, pick, scroll, "");
  }

  /** The model with another view open over the benches. */
  BoardModel with(BoardLayer other) {
    return new BoardModel(sight, marked, other, null, Field.EMPTY, 0, 0, "");
  }

  BoardModel typing(Field typed) {
    return new BoardModel(sight, marked, layer, asked, typed, pick, scroll, "");
  }

  BoardModel picking(int student) {
    return new BoardModel(sight, marked, layer, asked, field, student, scroll, "");
  }

  /** The model scrolled to a line; a negative line is the first. */
  BoardModel scrolledTo(int line) {
    int from = Math.max(0, line);
    return new BoardModel(sight, marked, layer, asked, field, pick, from, message);
  }

  /** The marked bench, or null where there is none. */
  BoardView.@Nullable Row row() {
    return sight.row(marked);
  }

  /** Index of the marked bench among the rows, or -1. */
  int at() {
    BoardView.Row row = row();
    return row == null ? -1 : sight.view().rows().indexOf(row);
  }

  /** The students of the marked bench. */
  List<String> students() {
    BoardView.Row row = row();
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
