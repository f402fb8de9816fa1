package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.EvenBow;
import quarterturn.craft.Window;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.kind.Which;
import quarterturn.report.SessionSteps;
import quarterturn.session.Event;
import quarterturn.unit.Bracket;

/**
 * The as-found and as-left values, from the readings that were not withdrawn.
 *
 * <p>As found is the last reading of a quantity on a string before the first change that affects
 * it; as left is the last reading, which is spoiled where such a change came later.
 */
final class SheetRows {
  /** A reading and its index among the events. */
  private record At(int index, Event.Read read) {}

  /** The readings that can be compared: one quantity and string by one convention. */
  private record Key(Quantity quantity, String string, String convention) {}

  private static final String EVEN = "what an even bow shows at this relief, a gauge more or less";

  private final @Nullable Kind kind;
  private final @Nullable Style style;
  private final SheetChanges changes;
  private final Map<Key, List<At>> groups = new LinkedHashMap<>();
  private final List<At> all = new ArrayList<>();
  private final Map<Event.Read, Sheet.Stop> stops = new IdentityHashMap<>();

  /**
   * @param kind the kind with this instrument's own joint fret, or null
   */
  SheetRows(
      List<Event> events,
      @Nullable Kind kind,
      @Nullable Style style,
      SheetChanges changes,
      SessionSteps steps) {
    this.kind = kind;
    this.style = style;
    this.changes = changes;
    for (int i = 0; i < events.size(); i++) {
      if (events.get(i) instanceof Event.Read read) {
        stops.put(read, SheetFold.stop(steps, read, read.step()));
        all.add(new At(i, read));
        if (!read.missing() && read.quantity().onString()) {
          groups.computeIfAbsent(key(read), k -> new ArrayList<>()).add(new At(i, read));
        }
      }
    }
  }

  private static Key key(Event.Read read) {
    return new Key(read.quantity(), string(read), ReadingWords.convention(read));
  }

  /** The note of a reading's string, or a word for it, or empty. */
  static String string(Event.Read read) {
    if (read.string() != null) {
      return read.string();
    }
    return read.which() == null ? "" : read.which().word();
  }

  /** A row for every quantity and string, in the order of a set-up, the lowest string first. */
  List<Sheet.Row> rows() {
    List<Sheet.Row> rows = new ArrayList<>();
    groups.forEach((key, readings) -> rows.add(row(key, readings)));
    rows.sort(
        Comparator.comparing(Sheet.Row::quantity)
            .thenComparing(Sheet.Row::convention)
            .thenComparing(row -> index(row.string())));
    return rows;
  }

  private Sheet.Row row(Key key, List<At> readings) {
    At left = readings.get(readings.size() - 1);
    At found = found(key, readings);
    Kind.Target target = target(left);
    return new Sheet.Row(
        key.quantity(),
        key.string(),
        key.convention(),
        target == null ? null : target.window(),
        target == null ? null : target.source(),
        found == null ? null : taken(found, part(found, readings)),
        taken(left, part(left, readings)));
  }

  private @Nullable At found(Key key, List<At> readings) {
    int first = changes.firstTouching(key.quantity());
    At found = null;
    for (At at : readings) {
      found = at.index() < first ? at : found;
    }
    return found;
  }

  /** Every reading with its place, oldest first, those of humidity and failed ones included. */
  List<Sheet.Taken> readings() {
    return all.stream()
        .map(at -> taken(at, part(at, groups.getOrDefault(key(at.read()), List.of()))))
        .toList();
  }

  private Sheet.Part part(At at, List<At> readings) {
    if (readings.isEmpty() || at.read().missing()) {
      return Sheet.Part.BETWEEN;
    }
    boolean found = at.equals(found(key(at.read()), readings));
    boolean left = at.equals(readings.get(readings.size() - 1));
    if (found && left && spoiled(at) == null) {
      return Sheet.Part.FOUND_AND_LEFT;
    }
    if (found) {
      return Sheet.Part.AS_FOUND;
    }
    return left && spoiled(at) == null ? Sheet.Part.AS_LEFT : Sheet.Part.BETWEEN;
  }

  private Sheet.Taken taken(At at, Sheet.Part part) {
    Kind.Target target = target(at);
    Window window = target == null ? null : target.window();
    Verdict verdict = window == null ? null : ReadingWords.verdict(at.read(), window);
    return new Sheet.Taken(
        at.read(),
        part,
        Objects.requireNonNull(stops.get(at.read())),
        window,
        verdict,
        spoiled(at));
  }

  private @Nullable String spoiled(At at) {
    return changes.spoiled(at.read().quantity(), at.index());
  }

  private int index(String string) {
    if (kind == null) {
      return 0;
    }
    int index = kind.strings().indexOf(string);
    return index < 0 ? kind.strings().size() : index;
  }

  /** The window for a reading; null where the window is for another convention. */
  private Kind.@Nullable Target target(At at) {
    Event.Read read = at.read();
    Quantity quantity = read.quantity();
    if (quantity.ofPart()) {
      return even(at);
    }
    if (kind == null || style == null || kind.windows().get(quantity) == null) {
      return null;
    }
    boolean same =
        read.held().equals(quantity.held(kind)) && read.readAt() == quantity.readAt(kind);
    int index = kind.strings().indexOf(string(read));
    boolean known = index >= 0 && kind.windows().get(quantity).containsKey(style);
    return same && known ? kind.target(quantity, style, index) : null;
  }

  /** What an even bow shows for the relief that was read last before, or null. */
  private Kind.@Nullable Target even(At part) {
    Bracket relief = null;
    for (At at : all) {
      boolean before = at.index() < part.index() && at.read().quantity() == Quantity.RELIEF;
      if (before && at.read().which() != Which.HIGHEST && at.read().bracket() != null) {
        relief = at.read().bracket();
      }
    }
    if (kind == null || relief == null) {
      return null;
    }
    Event.Read read = part.read();
    return new Kind.Target(
        EvenBow.window(read.quantity().share(kind), relief, read.gaugeStep()), EVEN);
  }
}
