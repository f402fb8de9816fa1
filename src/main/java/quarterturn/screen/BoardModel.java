package quarterturn.screen;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Value;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.screen.state.Field;

/**
 * What a board's screen shows.
 *
 * @param marked id of the bench that keys act on, or empty; it stays marked when rows change places
 * @param field what is being typed
 * @param pick which student of the bench is marked
 * @param scroll lines down in a view over the benches
 * @param message a hint, or what is new; empty for none
 */
record BoardModel(
    Sight sight,
    String marked,
    BoardLayer layer,
    Field field,
    int pick,
    int scroll,
    String message) {

  static BoardModel of(Sight sight) {
    return new BoardModel(sight, "", BoardLayer.NONE, Field.EMPTY, 0, 0, "").seeing(sight);
  }

  /** After another look; the first row is marked where the marked bench is not there. */
  BoardModel seeing(Sight now) {
    boolean there = now.row(marked) != null;
    List<BoardView.Row> rows = now.view().rows();
    String mark = there ? marked : rows.isEmpty() ? "" : rows.get(0).bench().bench();
    BoardModel then = new BoardModel(now, mark, layer, field, pick, scroll, message);
    // What was asked to be let go on is never another thing under the teacher's fingers.
    boolean other = layer == BoardLayer.RELEASE && !then.first().equals(first());
    return other ? then.with(BoardLayer.NONE).saying(message) : then;
  }

  /** What a release of the marked bench is for, or empty. */
  private Optional<Ref> first() {
    BoardView.Row row = row();
    return row == null
        ? Optional.empty()
        : sight.toRelease(row).stream().map(Keep::ref).findFirst();
  }

  BoardModel saying(String words) {
    return new BoardModel(sight, marked, layer, field, pick, scroll, words);
  }

  BoardModel marking(String bench) {
    return new BoardModel(sight, bench, layer, field, pick, scroll, "");
  }

  /** With another view on top, nothing typed in it yet. */
  BoardModel with(BoardLayer other) {
    return new BoardModel(sight, marked, other, Field.EMPTY, 0, 0, "");
  }

  BoardModel typing(Field typed) {
    return new BoardModel(sight, marked, layer, typed, pick, scroll, "");
  }

  BoardModel picking(int student) {
    return new BoardModel(sight, marked, layer, field, student, scroll, "");
  }

  BoardModel scrolled(int lines) {
    return new BoardModel(sight, marked, layer, field, pick, Math.max(0, scroll + lines), message);
  }

  BoardModel scrolledAtMost(int most) {
    return scroll <= most ? this : new BoardModel(sight, marked, layer, field, pick, most, message);
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

  /** Whether something can be typed: a release is where nothing is read back only confirmed. */
  boolean typed() {
    BoardView.Row row = row();
    List<Keep> open = row == null ? List.of() : sight.toRelease(row);
    return layer.typing()
        && (layer != BoardLayer.RELEASE
            || (!open.isEmpty() && !(open.get(0).value() instanceof Value.None)));
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
