package quarterturn.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.listing.SessionReadings;
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
  public record Move(Instant at, Turn turn) {
    static Move of(Event.Past past) {
      return new Move(past.at(), past.turn());
    }
  }

  /**
   * The history from an instrument's sessions.
   *
   * @param sessions what was read and turned, by the session's name, the newest first
   * @param known turns of its rod that are known from elsewhere, too
   */
  public static ReadingHistory of(
      String instrument, Map<String, SessionReadings> sessions, List<Event.Past> known) {
    List<Visit> visits = new ArrayList<>();
    List<Point> points = new ArrayList<>();
    List<Move> moves = new ArrayList<>();
    Set<Instant> reported = new HashSet<>();
    List<Map.Entry<String, SessionReadings>> oldestFirst = new ArrayList<>(sessions.entrySet());
    Collections.reverse(oldestFirst);
    for (Map.Entry<String, SessionReadings> entry : oldestFirst) {
      String session = entry.getKey();
      SessionReadings readings = entry.getValue();
      visits.add(visit(session, readings));
      for (Event event : readings.events()) {
        if (event instanceof Event.Read read) {
          Point.of(session, read).ifPresent(points::add);
        } else {
          reported.add(event.at());
        }
      }
      PastTurns.of(readings.events()).forEach(turn -> moves.add(Move.of(turn)));
    }
    known.stream()
        .filter(turn -> !reported.contains(turn.at()))
        .forEach(turn -> moves.add(Move.of(turn)));
    visits.sort(Comparator.comparing(Visit::began).thenComparing(Visit::session));
    points.sort(Comparator.comparing(Point::at));
    moves.sort(Comparator.comparing(Move::at));
    return new ReadingHistory(instrument, visits, points, moves);
  }

  private static Visit visit(String session, SessionReadings readings) {
    Summary summary = Summary.of(readings.events());
    Event.Read found = summary.asFound().get(Which.LOWEST);
    Event.Read left = summary.asLeft().get(Which.LOWEST);
    return new Visit(
        session,
        readings.began(),
        found == null ? null : found.bracket(),
        left == null ? null : left.bracket(),
        summary.net(),
        summary.moves(),
        summary.sure());
  }

  /**
   * The comparable readings by their quantities' words, oldest first: relief first, then in the
   * order they were first read. Relief is compared on the lowest string.
   */
  Map<String, List<Point>> compared() {
    Map<String, List<Point>> compared = new LinkedHashMap<>();
    String relief = Quantity.RELIEF.word();
    compared.put(relief, new ArrayList<>());
    for (Point point : points) {
      if (point.compared() && (point.lowest() || !point.quantity().equals(relief))) {
        compared.computeIfAbsent(point.quantity(), q -> new ArrayList<>()).add(point);
      }
    }
    compared.values().removeIf(List::isEmpty);
    return compared;
  }
}
