package quarterturn.reckon;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Scale;
import quarterturn.craft.StringGauge;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;
import quarterturn.unit.UnitWeight;

/** The options for an open string: its note, scale length, and unit weight, diameter or core. */
final class StringOptions {
  @Mixin private ScaleOption scale = new ScaleOption();

  @Option(
      names = "--note",
      required = true,
      paramLabel = "NOTE",
      description = "Of the open string, such as E1.")
  private Note note = new Note(0);

  @Mixin private TuningOptions tuning = new TuningOptions();

  @Option(
      names = "--unit-weight",
      paramLabel = "G_PER_M",
      description = "Mass per length in grams a metre, weighed or from its maker.")
  private @Nullable UnitWeight weight;

  @Option(
      names = "--plain",
      paramLabel = "DIAMETER",
      converter = Converters.Wire.class,
      description = "A plain steel string.")
  private @Nullable Length plain;

  @Option(
      names = "--wound",
      paramLabel = "DIAMETER",
      converter = Converters.Wire.class,
      description = "A wound string over everything; with --core.")
  private @Nullable Length wound;

  @Option(
      names = "--core",
      paramLabel = "DIAMETER",
      converter = Converters.Wire.class,
      description = "Its steel core.")
  private @Nullable Length core;

  Scale scale() {
    return scale.scale();
  }

  Note note() {
    return note;
  }

  Frequency pitch() {
    return tuning.temperament().of(note);
  }

  /**
   * Mass per length, as given or from the diameter; a core given beside a unit weight is refused.
   */
  UnitWeight weight() {
    agree();
    if (weight != null) {
      if (core != null) {
        throw new NotUnderstoodException(
            "--core: says nothing beside --unit-weight here; leave one out");
      }
      return weight;
    }
    return gauge().unitWeight();
  }

  /** The string's steel and mass; a unit weight needs a core beside it. */
  Wire wire() {
    agree();
    if (weight == null) {
      StringGauge gauge = gauge();
      return new Wire(gauge.steel(), gauge.unitWeight());
    }
    if (core == null) {
      throw new NotUnderstoodException(
          "--core: is needed with --unit-weight; for a plain string, its own");
    }
    return new Wire(core, weight);
  }

  /**
   * The diameter of steel that carries the tension, and the mass per length of the whole string.
   */
  record Wire(Length steel, UnitWeight weight) {}

  /**
   * Diameter of the steel that carries the tension, or null where only the unit weight was given.
   */
  @Nullable Length steel() {
    return weight == null ? gauge().steel() : null;
  }

  private StringGauge gauge() {
    Length over = wound;
    Length inner = core;
    if (over != null && inner != null) {
      return Checked.by("--core", () -> StringGauge.wound(over, inner));
    }
    if (over != null) {
      throw new NotUnderstoodException("--core: is needed with --wound");
    }
    if (inner != null) {
      throw new NotUnderstoodException("--core: belongs with --wound");
    }
    Length all = plain;
    if (all == null) {
      throw new NotUnderstoodException(
          "give the string: --unit-weight, or --plain, or --wound with --core");
    }
    return Checked.by("--plain", () -> StringGauge.plain(StringGauge.checkPlain(all)));
  }

  private void agree() {
    int ways = (weight == null ? 0 : 1) + (plain == null ? 0 : 1) + (wound == null ? 0 : 1);
    if (ways > 1) {
      throw new NotUnderstoodException(
          "--unit-weight, --plain and --wound contradict; give one of them");
    }
    if (plain != null && core != null) {
      throw new NotUnderstoodException(
          "--core: contradicts --plain, which has none; give one of them");
    }
  }
}
