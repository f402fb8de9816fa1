package quarterturn.session;

import static java.util.Objects.requireNonNull;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Radius;
import quarterturn.craft.Window;
import quarterturn.procedure.kind.Aim;
import quarterturn.procedure.kind.Bounds;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Handed;
import quarterturn.procedure.kind.NeckJoint;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.unit.Length;
import quarterturn.unit.Note;

/** Instruments drawn from a seed, each fact known or not. */
public final class InventedInstruments {
  private final Random random;

  public InventedInstruments(long seed) {
    random = new Random(seed);
  }

  public Instrument next(String name) {
    int strings = 1 + random.nextInt(12);
    Instrument.Build build =
        new Instrument.Build(
            maybe(() -> Length.mm(between(300, 1000))),
            maybe(() -> many(strings, () -> new Note(random.nextInt(128)))),
            maybe(() -> many(strings, () -> Length.mm(between(0.16, 5)))),
            maybe(() -> random.nextInt(4) == 0 ? Radius.FLAT : new Radius(between(100, 2000))),
            maybe(() -> any(NeckJoint.values())),
            maybe(() -> any(NutKind.values())),
            maybe(() -> any(RodKind.values())),
            maybe(() -> any(BridgeKind.values())),
            maybe(() -> any(PickupKind.values())),
            maybe(() -> any(Handed.values())));
    Map<Aim, Window> windows = new EnumMap<>(Aim.class);
    for (Aim aim : Aim.values()) {
      if (random.nextBoolean()) {
        Bounds bounds = BoundsReader.of(aim.quantity());
        Bounds.Span within = requireNonNull(bounds.window());
        Bounds.Span wide = requireNonNull(bounds.width());
        double low = between(within.least(), within.most() - wide.most());
        windows.put(aim, new Window(low, low + between(wide.least() + 0.001, wide.most())));
      }
    }
    return new Instrument(
        name,
        "demo-" + random.nextInt(9),
        maybe(() -> any(Style.values())),
        maybe(() -> 1 + random.nextInt(36)),
        maybe(() -> "set " + (char) (' ' + random.nextInt(90))),
        Instant.ofEpochSecond(random.nextInt(2_000_000_000)),
        build,
        windows);
  }

  private double between(double low, double high) {
    return low + (high - low) * random.nextDouble();
  }

  private <T> T any(T[] values) {
    return values[random.nextInt(values.length)];
  }

  private <T> @Nullable T maybe(Supplier<T> value) {
    return random.nextBoolean() ? value.get() : null;
  }

  private static <T> List<T> many(int count, Supplier<T> value) {
    List<T> out = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      out.add(value.get());
    }
    return out;
  }
}
