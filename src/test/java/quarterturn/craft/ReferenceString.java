package quarterturn.craft;

import quarterturn.unit.Force;
import quarterturn.unit.Length;
import quarterturn.unit.Note;

/** A string as the reference values name it: {@code wound_.046_core.016_E2_647.7}. */
record ReferenceString(StringGauge gauge, Note note, Scale scale) {
  static ReferenceString of(String name) {
    String[] parts = name.split("_", -1);
    boolean wound = parts[0].equals("wound");
    Length diameter = Length.parse(parts[1] + " in");
    StringGauge gauge =
        wound
            ? StringGauge.wound(diameter, Length.parse(parts[2].substring("core".length()) + " in"))
            : StringGauge.plain(diameter);
    int next = wound ? 3 : 2;
    return new ReferenceString(
        gauge, Note.parse(parts[next]), new Scale(Length.parse(parts[next + 1])));
  }

  Force tension() {
    return Tension.of(scale, Temperament.ISO_16.of(note), gauge.unitWeight());
  }
}
