package quarterturn.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * Everything read and turned on one instrument over all its sessions.
 *
 * @param visits its sessions, oldest first
 * @param points its readings, oldest first
 * @param moves rod turns, oldest first
 */
public record ReadingHistory(
    String instrument, List<Visit> visits, List<Point> points, List<Move> moves) {
  /** Fret at which action is compared between sessions. */
  private static final int ACTION_AT = 12;

  public ReadingHistory {
    visits = List.copyOf(visits);
    points = List.copyOf(points);
    moves = List.copyOf(moves);
  }

  /**
   * One session of the instrument's history.
   *
   * @param asFound relief on the lowest string before any turn, or null where it was not read
   * @param asLeft relief on the lowest string after the last turn, or null where it was not read
   * @param moves how often the rod was turned
   * @param sure whether it is known how far
   */
  public record Visit(
      String session,
      Instant began,
      @Nullable Bracket asFound,
      @Nullable Bracket asLeft,
      Turn net,
      int moves,
      boolean sure) {}

  /**
   * A reading. Low and high are equal for a single number, and infinite where a bracket is open.
   *
   * @param quantity the quantity's word, such as "relief"
   * @param lowest whether it was read on the lowest string or on none
   * @param string the string's note, or null
   * @param readAt fret read at, 0 where none
   */
  public record Point(
      Instant at,
      String session,
      String quantity,
      String unit,
      boolean lowest,
      @Nullable String string,
      int readAt,
      double low,
      double high) {
    /**
     * Whether the reading can be compared: action only at fret 12, since it rises along the neck.
     */
    boolean compared() {
      return readAt == 0 || readAt == ACTION_AT || !quantity.equals("action");
    }

    static Optional<Point> of(String session, Event.Read read) {
      Bracket bracket = read.bracket();
      Double value = read.value();
      if (bracket != null) {
        return Optional.of(of(session, read, bracket.lowMm(), bracket.highMm()));
      }
      return value == null ? Optional.empty() : Optional.of(of(session, read, value, value));
    }

    private static Point of(String session, Event.Read read, double low, double high) {
      Quantity quantity = read.quantity();
      return new Point(
          read.at(),
          session,
          quantity.word(),
          quantity.unit(),
          read.string() == null || read.which() == Which.LOWEST,
          read.string(),
          read.readAt(),
          low,
          high);
    }
  }

  /** A rod turn; plus tightened. */
  public record Move(Instant at, Turn turn) {}

  /**
   * The history from the events of an instrument's sessions.
   *
   * @param sessions events by the session's name
   * @param turns every turn of its rod
   */
  public static ReadingHistory of(
      String instrument, Map<String, List<Event>> sessions, List<Event.Past> turns) {
    List<Visit> visits = new ArrayList<>();
    List<Point> points = new ArrayList<>();
    sessions.forEach(
        (session, events) -> {
          if (!events.isEmpty()) {
            visits.add(visit(session, events));
          }
          for (Event event : Corrections.standing(events)) {
            if (event instanceof Event.Read read) {
              Point.of(session, read).ifPresent(points::add);
            }
          }
        });
    visits.sort(Comparator.comparing(Visit::began).thenComparing(Visit::session));
    points.sort(Comparator.comparing(Point::at));
    return new ReadingHistory(
        instrument,
        visits,
        points,
        turns.stream().map(turn -> new Move(turn.at(), turn.turn())).toList());
  }

  private static Visit visit(String session, List<Event> events) {
    Summary summary = Summary.of(events);
    Event.Read found = summary.asFound().get(Which.LOWEST);
    Event.Read left = summary.asLeft().get(Which.LOWEST);
    return new Visit(
        session,
        events.get(0).at(),
        found == null ? null : found.bracket(),
        left == null ? null : left.bracket(),
        summary.net(),
        summary.moves(),
        summary.sure());
  }

  /** A session's last comparable reading of a quantity, on the lowest string or on none. */
  Optional<Point> last(String session, String quantity) {
    return points.stream()
        .filter(p -> p.session().equals(session) && p.quantity().equals(quantity) && p.lowest())
        .filter(Point::compared)
        .reduce((before, after) -> after);
  }

  /** The words of the quantities read, relief first, then in the order they were first read. */
  List<String> quantities() {
    return points.stream()
        .map(Point::quantity)
        .distinct()
        .sorted(Comparator.comparing(q -> !q.equals(Quantity.RELIEF.word())))
        .toList();
  }
}
