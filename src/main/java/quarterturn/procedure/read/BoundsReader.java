package quarterturn.procedure.read;

import java.io.IOException;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;

/**
 * Reads {@code safety/bounds.yaml}, which always is the program's own: nobody's file takes its
 * place.
 */
public final class BoundsReader {
  private static final Map<Quantity, Bounds> ALL = program();

  private BoundsReader() {}

  /** What nobody may go beyond with a quantity. */
  public static Bounds of(Quantity quantity) {
    return Objects.requireNonNull(ALL.get(quantity));
  }

  private static Map<Quantity, Bounds> program() {
    try {
      Shelf shelf = new Shelf(null);
      return read(new Faults(shelf.source(shelf.needed("safety", "bounds"))));
    } catch (IOException | UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }

  /**
   * Reads the bounds of every quantity.
   *
   * @throws UnreadableException with every fault
   */
  static Map<Quantity, Bounds> read(Faults faults) throws UnreadableException {
    MappingKeys file = MappingKeys.ofFile(faults);
    MappingKeys list = MappingKeys.of(file.required("bounds"), "the list of bounds", faults);
    file.endFile();
    Map<Quantity, Bounds> all = new EnumMap<>(Quantity.class);
    for (Quantity quantity : Quantity.values()) {
      // A part of the bow is read with the same gauges as the whole.
      Quantity listed = quantity.ofPart() ? Quantity.RELIEF : quantity;
      MappingKeys one = MappingKeys.of(list.required(listed.word()), "a bound", faults);
      Bounds.Span window = span(faults, quantity, one.value("window", quantity.onString()));
      Bounds.Span width = span(faults, quantity, one.value("width", quantity.onString()));
      Bounds.Span plausible = span(faults, quantity, one.required("plausible"));
      Bounds.Span gauge = span(faults, quantity, one.required("gauge"));
      Bounds.Span repeats = span(faults, quantity, one.value("repeats", quantity.bracket()));
      Bounds.Span differs = span(faults, quantity, one.optional("differs"));
      Bounds.Span held = span(faults, quantity, one.optional("held"));
      one.end();
      if (plausible != null && gauge != null) {
        all.put(
            quantity,
            new Bounds(quantity, window, width, plausible, gauge, repeats, differs, held));
      }
    }
    list.end();
    faults.check();
    return all;
  }

  private static Bounds.@Nullable Span span(Faults faults, Quantity quantity, @Nullable Node node) {
    return new Scalars(faults).parsed(node, text -> span(quantity, text));
  }

  /** A range as a file writes it. */
  static Bounds.Span span(Quantity quantity, String text) {
    Amounts.Range range = Amounts.range(quantity, text);
    return new Bounds.Span(range.least(), range.most());
  }
}
