package quarterturn.command;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterturn.command.place.Where;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.unit.NotUnderstoodException;

/** An option for each fact of an instrument. */
final class FieldOptions implements IModelTransformer {
  /** The word that clears a fact. */
  private static final String NONE = "none";

  @Override
  public CommandSpec transform(CommandSpec command) {
    for (FormField field : FormField.values()) {
      command.addOption(
          OptionSpec.builder("--" + field.word())
              .type(String.class)
              .paramLabel(field.aim() == null ? label(field) : "RANGE")
              .description(field.meaning())
              .order(Where.ORDER + 1)
              .build());
    }
    return command;
  }

  private static String label(FormField field) {
    return field.word().toUpperCase(Locale.ROOT).replace("JOINT-", "");
  }

  /** The facts given as options, each as it was typed. */
  static Map<FormField, String> given(ParseResult parsed) {
    Map<FormField, String> given = new EnumMap<>(FormField.class);
    for (FormField field : FormField.values()) {
      if (parsed.hasMatchedOption("--" + field.word())) {
        given.put(field, parsed.matchedOptionValue("--" + field.word(), ""));
      }
    }
    return given;
  }

  /**
   * The known facts, each replaced by the one that was given for its field.
   *
   * @throws NotUnderstoodException naming the option and what is allowed
   */
  static Map<FormField, String> merged(
      Map<FormField, String> known, Map<FormField, String> given, Library rules) {
    Map<FormField, String> fields = new EnumMap<>(FormField.class);
    fields.putAll(known);
    given.forEach(
        (field, text) -> {
          if (text.equals(NONE)) {
            fields.remove(field);
          } else {
            fields.put(field, text);
          }
        });
    String id = fields.get(FormField.KIND);
    if (id == null) {
      String all = String.join(", ", rules.kinds().keySet());
      throw new NotUnderstoodException("--kind: an instrument needs a kind; choose one of " + all);
    }
    Kind kind = rules.kind(id);
    fields.forEach(
        (field, text) -> {
          try {
            FormFields.check(field, text, kind);
          } catch (NotUnderstoodException e) {
            throw new NotUnderstoodException("--" + field.word() + ": " + e.getMessage());
          }
        });
    return fields;
  }
}
