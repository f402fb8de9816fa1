package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/**
 * Asks for an instrument's facts. Of a new one, those that a set-up rests on, one after the other;
 * of one that is known, only those that are chosen from all of them.
 */
public final class InstrumentDialogue implements Dialogue {
  /** What is asked of a new instrument; all else is as its kind has it until it is edited. */
  public static final List<FormField> ASKED =
      List.of(
          FormField.KIND,
          FormField.STYLE,
          FormField.TUNING,
          FormField.GAUGES,
          FormField.NECK,
          FormField.NUT,
          FormField.ROD,
          FormField.BRIDGE,
          FormField.PICKUP);

  private static final String DONE = "done";

  private final String name;
  private final Map<String, Kind> kinds;
  private final boolean known;
  private final Map<FormField, String> fields = new EnumMap<>(FormField.class);

  /** The facts that are asked for, in order; those that were chosen, where it is known. */
  private final List<FormField> asked = new ArrayList<>();

  private int at;

  /** Whether all that is left is kept, so that only what does not fit its kind is asked. */
  private boolean keeping;

  /**
   * A dialogue before its first answer.
   *
   * @param name the instrument's
   * @param present the facts that are known already; empty for a new instrument
   * @param kinds every kind, by its id
   */
  public InstrumentDialogue(String name, Map<FormField, String> present, Map<String, Kind> kinds) {
    this.name = name;
    this.kinds = kinds;
    this.known = !present.isEmpty();
    this.fields.putAll(present);
    if (!known) {
      asked.addAll(ASKED);
    }
  }

  /** The facts so far. */
  public Map<FormField, String> fields() {
    return Map.copyOf(fields);
  }

  @Override
  public Question.@Nullable Asked question() {
    if (at < asked.size()) {
      String place = known ? "" : (at + 1) + " of " + asked.size();
      return fact(asked.get(at)).asked(known ? name : "A new instrument: " + name, place);
    }
    return known && !keeping ? menu() : null;
  }

  private FactQuestion fact(FormField field) {
    return new FactQuestion(field, fields, kinds);
  }

  /** Every fact with what holds, to choose what is to be changed. */
  private Question.Choose menu() {
    List<Question.Option> options = new ArrayList<>();
    options.add(new Question.Option(DONE, "Keep it so", "", ""));
    for (FormField field : FormField.values()) {
      String label = field.label() + ": " + fact(field).shown();
      options.add(new Question.Option(field.word(), label, "", ""));
    }
    return new Question.Choose(
        name,
        List.of("What is known of it:"),
        "What is to be changed?",
        "Type a number from the list; Enter keeps it so, quit leaves without a change.",
        options);
  }

  @Override
  public Taken take(String typed) {
    if (at == asked.size()) {
      String chosen = typed.isEmpty() ? DONE : menu().chosen(typed.toLowerCase(Locale.ROOT));
      keeping = chosen.equals(DONE);
      Arrays.stream(FormField.values())
          .filter(field -> field.word().equals(chosen))
          .forEach(asked::add);
      misfits();
      return Taken.SILENTLY;
    }
    boolean done = typed.equals(DONE);
    Taken taken = settle(asked.get(at), done ? "" : typed);
    at++;
    keeping |= done;
    if (keeping) {
      at = asked.size();
      misfits();
    }
    return taken;
  }

  /** Once nothing else is asked, what no longer fits the kind has to be. */
  private void misfits() {
    if (keeping) {
      Arrays.stream(FormField.values())
          .filter(field -> complaint(field) != null)
          .forEach(asked::add);
    }
  }

  private Taken settle(FormField field, String typed) {
    String before = fields.get(field);
    String given = fact(field).given(typed);
    boolean kept = given.equals(FactQuestion.KEEP);
    if (given.equals(FactQuestion.NONE)) {
      fields.remove(field);
    } else if (!kept) {
      fields.put(field, given);
    }
    String complaint = complaint(field);
    if (complaint != null) {
      fields.remove(field);
      if (before != null) {
        fields.put(field, before);
      }
      throw new NotUnderstoodException(complaint);
    }
    if (kept) {
      return Taken.SILENTLY;
    }
    if (fields.containsKey(field)) {
      plain(field);
    }
    return Taken.briefly("Taken: " + fact(field).shown() + ".");
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
    if (known && at < asked.size()) {
      // Back to the list, from which another fact can be chosen.
      asked.subList(at, asked.size()).clear();
      return true;
    }
    boolean some = at > 0 && !known;
    at = some ? at - 1 : at;
    return some;
  }
}
