package quarterturn.report.sheet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Intonation;
import quarterturn.craft.NutSlot;
import quarterturn.craft.SaddleHeight;
import quarterturn.craft.Scale;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Event;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/**
 * What a repairer is to change, and by how much, so that each reading comes to the middle of its
 * range. It follows from the readings alone: every quantity out of its range gives its line.
 */
final class Wanted {
  private final List<Sheet.Row> rows;
  private final Kind kind;

  private Wanted(List<Sheet.Row> rows, Kind kind) {
    this.rows = rows;
    this.kind = kind;
  }

  /** A line for each quantity that is out of its range on a string. */
  static List<String> lines(List<Sheet.Row> rows, @Nullable Kind kind) {
    return kind == null ? List.of() : new Wanted(rows, kind).lines();
  }

  private List<String> lines() {
    Map<Quantity, List<String>> strings = new EnumMap<>(Quantity.class);
    for (Sheet.Row row : rows) {
      String wanted = ReadingWords.out(row.left()) ? wanted(row) : rest(row);
      if (wanted != null) {
        strings
            .computeIfAbsent(row.quantity(), quantity -> new ArrayList<>())
            .add((row.string() + " " + wanted).strip());
      }
    }
    List<String> lines = new ArrayList<>();
    strings.forEach(
        (quantity, all) -> lines.add(part(quantity) + ": " + String.join(", ", all) + "."));
    return lines;
  }

  /** A saddle in one piece is worked on at both ends, so both are told where one string is out. */
  private @Nullable String rest(Sheet.Row row) {
    int last = kind.strings().size() - 1;
    int string = kind.strings().indexOf(row.string());
    boolean end = row.quantity() == Quantity.ACTION && (string == 0 || string == last);
    return end && rows.stream().anyMatch(one -> one.quantity() == row.quantity() && out(one))
        ? "as it is"
        : null;
  }

  private static boolean out(Sheet.Row row) {
    return ReadingWords.out(row.left());
  }

  private String wanted(Sheet.Row row) {
    Sheet.Taken left = row.left();
    if (left.window() == null || left.spoiled() != null) {
      return "to be read again";
    }
    double mm = amount(left.read(), left.window().middleMm() - middle(left.read()));
    boolean least = left.read().bracket() != null && !left.read().bracket().bounded();
    boolean fine = row.quantity().bracket();
    return (least ? "at least " : "")
        + Decimals.print(Math.abs(mm), fine ? 2 : 1)
        + " mm "
        + way(row.quantity(), mm > 0);
  }

  private static double middle(Event.Read read) {
    return read.bracket() != null
        ? read.bracket().middleMm()
        : read.value() == null ? 0 : read.value();
  }

  /**
   * How far a part must go for a wanted change of what is read, in millimetres.
   *
   * @param change in the quantity's unit
   */
  private double amount(Event.Read read, double change) {
    return switch (read.quantity()) {
      // The string is pressed down behind the fret that is held, and lies on the one before.
      case NUT_CLEARANCE ->
          NutSlot.change(Length.mm(change), read.readAt(), read.held().get(0) - 1).mm();
      case ACTION -> SaddleHeight.change(Length.mm(change), read.readAt()).mm();
      case INTONATION ->
          Intonation.travel(new Scale(kind.scale()), Quantity.OCTAVE, new Cents(-change)).mm();
      // A lower pickup has the larger gap.
      case PICKUP_GAP -> -change;
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, HUMIDITY, TEMPERATURE ->
          change;
    };
  }

  private static String way(Quantity quantity, boolean plus) {
    return switch (quantity) {
      case INTONATION -> plus ? "away from the nut" : "toward the nut";
      case NUT_CLEARANCE, ACTION, PICKUP_GAP -> plus ? "up" : "down";
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, HUMIDITY, TEMPERATURE ->
          plus ? "more" : "less";
    };
  }

  private static String part(Quantity quantity) {
    return switch (quantity) {
      case NUT_CLEARANCE -> "Nut slot height";
      case ACTION -> "Saddle height (or the fingerboard's plane there, the other way)";
      case INTONATION -> "Saddle along the string";
      case PICKUP_GAP -> "Pickup height";
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, HUMIDITY, TEMPERATURE ->
          ReadingWords.name(quantity);
    };
  }
}
