package quarterturn.report;

import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Instrument;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;

/** Words for an instrument's facts: its own, or its kind's where it has none. */
public final class InstrumentFacts {
  private InstrumentFacts() {}

  /**
   * Labels and values for an instrument's page.
   *
   * @param kind null where the files no longer know it
   */
  public static Map<String, String> of(Instrument instrument, @Nullable Kind kind) {
    Map<FormField, String> fields = FormFields.of(instrument);
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Name", instrument.name());
    for (FormField field : FormField.values()) {
      String own = fields.get(field);
      String usual = kind == null ? null : FormFields.usual(field, fields, kind);
      if (field == FormField.KIND) {
        facts.put(field.label(), kind == null ? instrument.kind() : kind.name());
      } else if (own != null) {
        facts.put(field.label(), value(field, own));
      } else if (usual != null) {
        facts.put(field.label(), field == FormField.JOINT_FRET ? "fret " + usual : usual);
      } else if (field == FormField.STYLE) {
        facts.put(field.label(), "asked each time");
      }
    }
    return facts;
  }

  /** A fact's value in words, with a fret called one and a window printed with its unit. */
  private static String value(FormField field, String text) {
    return field == FormField.JOINT_FRET
        ? "fret " + text
        : field.aim() == null ? text : text.replace("..", " to ") + " (its own)";
  }
}
