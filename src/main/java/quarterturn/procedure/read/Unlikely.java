package quarterturn.procedure.read;

import java.util.Collection;
import java.util.Map;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.StringGauge;
import quarterturn.craft.Temperament;
import quarterturn.craft.Tension;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Protection;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.Words;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.unit.Force;
import quarterturn.unit.Frequency;
import quarterturn.unit.Length;
import quarterturn.unit.Note;

/**
 * Finds what can hardly be meant in a file of kinds or hazards that can be read. A check tells it;
 * a user's folder that has it is opened all the same.
 */
record Unlikely(Faults faults) {
  /**
   * Compares kinds with those that come with the program.
   *
   * @param kinds what was read of the file
   */
  void kinds(Map<String, Kind> kinds, Collection<Kind> program) throws UnreadableException {
    for (Node item : MappingKeys.list(faults, "kinds")) {
      MappingKeys fields = MappingKeys.of(item, "a kind", faults);
      Kind kind = fields.optional("kind") instanceof Scalar id ? kinds.get(id.text()) : null;
      if (kind != null) {
        relief(fields, kind, program);
        frets(fields, kind);
        pull(fields, kind);
      }
    }
  }

  /** A window that begins where every window of the program's own kinds with such a rod ends. */
  private void relief(MappingKeys fields, Kind kind, Collection<Kind> program) {
    double most =
        program.stream()
            .filter(one -> one.prior() == kind.prior())
            .flatMap(one -> one.styles().stream().map(one::target))
            .mapToDouble(target -> target.window().highMm())
            .max()
            .orElse(Double.POSITIVE_INFINITY);
    for (Style style : kind.styles()) {
      if (kind.target(style).window().lowMm() >= most) {
        faults.value(
            fields.key(Quantity.RELIEF.word()),
            "relief of %s for %s is more than a sound neck with such a rod has"
                .formatted(kind.target(style).window(), style.word()),
            "Write a range that begins below " + Length.mm(most));
      }
    }
  }

  private void frets(MappingKeys fields, Kind kind) {
    if (2 * kind.jointFret() < kind.frets()) {
      faults.value(
          fields.key("joint-fret"),
          "no neck of %d frets meets its body at fret %d".formatted(kind.frets(), kind.jointFret()),
          "Write the fret nearest the joint of neck and body");
    }
    Scale scale = new Scale(kind.scale());
    double held = scale.fretMm(kind.jointFret()) - scale.fretMm(1);
    double share = (scale.fretMm(kind.readAt()) - scale.fretMm(1)) / held;
    // In the middle half a round bow shows three quarters of its relief or more.
    if (share < 0.25 || share > 0.75) {
      faults.value(
          fields.key("read-at"),
          "fret %d is not near the middle between fret 1 and fret %d"
              .formatted(kind.readAt(), kind.jointFret()),
          "Write a fret about half way, where the gap is largest");
    }
  }

  /** As if every string were plain steel: a wound one pulls a little less, and breaks sooner. */
  private void pull(MappingKeys fields, Kind kind) {
    for (int i = 0; i < kind.notes().size(); i++) {
      String note = kind.notes().get(i);
      Length gauge = kind.make().gauges().isEmpty() ? Length.mm(1) : kind.make().gauges().get(i);
      Frequency pitch = Temperament.ISO_16.of(Note.parse(note));
      Force pull =
          Tension.of(new Scale(kind.scale(i)), pitch, StringGauge.plain(gauge).unitWeight());
      if (Tension.stressMpa(pull, gauge) > Tension.BREAKS_AT_MPA) {
        faults.value(
            fields.key("strings"),
            "a steel string breaks before it reaches " + note + " at this scale",
            "See whether the octave is right");
      } else if (!kind.make().gauges().isEmpty() && !Possible.PULL.holds(pull.newtons())) {
        faults.value(
            fields.key("strings"),
            note + ": " + Possible.PULL.doubt(pull.newtons()),
            "See whether the octave and the gauge are right");
      }
    }
  }

  /**
   * Reads what a user's own file adds to hazards of the program.
   *
   * @param hazards what was read of the file
   */
  void hazards(Map<String, Hazard> hazards, Map<String, Hazard> program)
      throws UnreadableException {
    for (Node item : MappingKeys.list(faults, "hazards")) {
      MappingKeys fields = MappingKeys.of(item, "a hazard", faults);
      Hazard own = fields.optional("hazard") instanceof Scalar id ? hazards.get(id.text()) : null;
      Hazard before = own == null ? null : program.get(own.id());
      if (own != null) {
        said(fields, "harm", own.harm(), before == null ? "" : before.harm());
        said(fields, "avoid", own.avoid(), before == null ? "" : before.avoid());
      }
    }
  }

  private void said(MappingKeys fields, String key, String own, String program) {
    String whole = Hazard.plain(own);
    String added = program.isEmpty() ? whole : whole.replace(Hazard.plain(program), " ").strip();
    Words.sentences(added)
        .filter(Protection::undone)
        .forEach(
            sentence ->
                faults.add(
                    Slip.OVER_LIMIT,
                    fields.key(key),
                    key + " talks away what it warns of: \"" + sentence + "\"",
                    "Take it out: a warning may only be added to"));
  }
}
