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
 * What a board's screen shows.
 *
 * @param marked id of the bench that keys act on, or empty; it stays marked when rows change places
 * @param asked what an order still needs, over everything else, or null
 * @param field what is being typed
 * @param pick which student of the bench is marked
 * @param scroll lines down in a view over the benches
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

  /** After another look; the first row is marked where the marked bench is not there. */
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

  /** With another view on top. */
  BoardModel with(BoardLayer other) {
    return new BoardModel(sight, marked, other, null, Field.EMPTY, 0, 0, "");
  }

  BoardModel typing(Field typed) {
    return new BoardModel(sight, marked, layer, asked, typed, pick, scroll, "");
  }

  BoardModel picking(int student) {
    return new BoardModel(sight, marked, layer, asked, field, student, scroll, "");
  }

  /** Scrolled down so far; a longer way up ends at the top. */
  BoardModel scrolledTo(int line) {
    int from = Math.max(0, line);
    return new BoardModel(sight, marked, layer, asked, field, pick, from, message);
  }

  /** The marked bench, or null where there is none. */
  BoardView.@Nullable Row row() {
    return sight.row(marked);
  }

  /** Where the marked bench stands among the rows, or -1. */
  int at() {
    BoardView.Row row = row();
    return row == null ? -1 : sight.view().rows().indexOf(row);
  }

  /** The students of the marked bench. */
  List<String> students() {
    BoardView.Row row = row();
    return row == null ? List.of() : List.copyOf(new TreeMap<>(row.bench().levels()).keySet());
  }

  /** The marked student, or empty. */
  String student() {
    List<String> students = students();
    return students.isEmpty()
        ? ""
        : Objects.requireNonNull(students.get(Math.min(pick, students.size() - 1)));
  }
}
