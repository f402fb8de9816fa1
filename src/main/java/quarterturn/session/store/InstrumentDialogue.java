package quarterturn.session.store;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks for an instrument's facts, one after the other. */
public final class InstrumentDialogue implements Dialogue {
  private static final String HELP =
      "Enter keeps what stands in brackets, none clears it, done keeps all that is left, and quit"
          + " leaves without a change.";

  private final Map<String, Kind> kinds;
  private final Map<FormField, String> fields = new EnumMap<>(FormField.class);
  private int at;

  /** Whether the remaining facts that are known already are kept without a question. */
  private boolean skipping;

  /**
   * A dialogue before its first answer.
   *
   * @param present the facts that are known already and may be kept
   * @param kinds every kind, by its id
   */
  public InstrumentDialogue(Map<FormField, String> present, Map<String, Kind> kinds) {
    this.kinds = kinds;
    this.fields.putAll(present);
  }

  /** The facts so far. */
  public Map<FormField, String> fields() {
    return Map.copyOf(fields);
  }

  @Override
  public @Nullable Question question() {
    if (at == FormField.values().length) {
      return null;
    }
    return new Question.Form(Stream.of(FormField.values()).map(this::field).toList(), at, HELP);
  }

  private Question.Field field(FormField field) {
    Kind kind = kinds.get(fields.getOrDefault(FormField.KIND, ""));
    String meaning = field.meaning();
    if (field == FormField.KIND) {
      meaning = "The kind of instrument: " + String.join(", ", kinds.keySet()) + ".";
    } else if (field == FormField.STYLE && kind != null) {
      String styles = String.join(", ", kind.styles().stream().map(Style::word).toList());
      meaning = "How hard the player plays: " + styles + ".";
    }
    return new Question.Field(field.label(), meaning, shown(field));
  }

  private String shown(FormField field) {
    String own = fields.get(field);
    if (own != null) {
      return own;
    }
    Kind kind = kinds.get(fields.getOrDefault(FormField.KIND, ""));
    String usual =
        field == FormField.KIND || kind == null ? null : FormFields.usual(field, fields, kind);
    if (usual != null) {
      return usual;
    }
    return field == FormField.STYLE
        ? "asked each time"
        : field.aim() == null ? "not known" : "none of its own";
  }

  @Override
  public Taken take(String typed) {
    boolean done = typed.equals("done");
    skipping |= done;
    Taken taken = settle(FormField.values()[at], done ? "" : typed);
    at++;
    while (skipping
        && at < FormField.values().length
        && complaint(FormField.values()[at]) == null) {
      at++;
    }
    return taken;
  }

  private Taken settle(FormField field, String typed) {
    String before = fields.get(field);
    if (typed.equals("none")) {
      fields.remove(field);
    } else if (!typed.isEmpty()) {
      fields.put(field, field == FormField.KIND ? typed.toLowerCase(Locale.ROOT) : typed);
    }
    String complaint = complaint(field);
    if (complaint != null) {
      fields.remove(field);
      if (before != null) {
        fields.put(field, before);
      }
      throw new NotUnderstoodException(complaint);
    }
    if (typed.isEmpty()) {
      return Taken.SILENTLY;
    }
    if (!typed.equals("none")) {
      plain(field);
    }
    return Taken.briefly("Taken: " + fields.getOrDefault(field, "none") + ".");
  }

  /** Replaces an answer by the form in which the fact is kept. */
  private void plain(FormField field) {
    Map<FormField, String> one = new EnumMap<>(FormField.class);
    one.put(FormField.KIND, kind().id());
    one.put(field, Objects.requireNonNull(fields.get(field)));
    fields.putAll(FormFields.of(FormFields.instrument("any", Instant.EPOCH, one)));
  }

  /** A sentence on what is wrong with a fact, or null. */
  private @Nullable String complaint(FormField field) {
    String text = fields.get(field);
    if (field == FormField.KIND && (text == null || !kinds.containsKey(text))) {
      return "choose one of " + String.join(", ", kinds.keySet());
    }
    try {
      if (text != null && field != FormField.KIND) {
        FormFields.check(field, text, kind());
      }
      return null;
    } catch (NotUnderstoodException e) {
      return String.valueOf(e.getMessage());
    }
  }

  /** The kind of the instrument, which is the first fact asked for. */
  private Kind kind() {
    return Objects.requireNonNull(kinds.get(fields.get(FormField.KIND)));
  }

  @Override
  public List<String> whenLeft() {
    return List.of("Left without a change.");
  }

  @Override
  public boolean back() {
    boolean some = at > 0;
    at = Math.max(0, at - 1);
    return some;
  }
}
