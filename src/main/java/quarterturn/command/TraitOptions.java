package quarterturn.command;

import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import picocli.CommandLine.IModelTransformer;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;
import quarterturn.procedure.Library;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.store.Trait;
import quarterturn.session.store.Traits;
import quarterturn.unit.NotUnderstoodException;

/** An option for each fact of an instrument. */
final class TraitOptions implements IModelTransformer {
  /** Clears a fact. */
  private static final String NONE = "none";

  @Override
  public CommandSpec transform(CommandSpec command) {
    for (Trait trait : Trait.values()) {
      command.addOption(
          OptionSpec.builder("--" + trait.word())
              .type(String.class)
              .paramLabel(trait.aim() == null ? label(trait) : "WINDOW")
              .description(trait.meaning())
              .order(Where.ORDER + 1)
              .build());
    }
    return command;
  }

  private static String label(Trait trait) {
    return trait.word().toUpperCase(Locale.ROOT).replace("JOINT-", "");
  }

  /** The facts that were given, as typed. */
  static Map<Trait, String> given(ParseResult parsed) {
    Map<Trait, String> given = new EnumMap<>(Trait.class);
    for (Trait trait : Trait.values()) {
      if (parsed.hasMatchedOption("--" + trait.word())) {
        given.put(trait, parsed.matchedOptionValue("--" + trait.word(), ""));
      }
    }
    return given;
  }

  /**
   * The facts that were known, with those that were given in their place.
   *
   * @throws NotUnderstoodException naming the option and what is allowed
   */
  static Map<Trait, String> merged(
      Map<Trait, String> known, Map<Trait, String> given, Library rules) {
    Map<Trait, String> traits = new EnumMap<>(Trait.class);
    traits.putAll(known);
    given.forEach(
        (trait, text) -> {
          if (text.equals(NONE)) {
            traits.remove(trait);
          } else {
            traits.put(trait, text);
          }
        });
    String id = traits.get(Trait.KIND);
    if (id == null) {
      String all = String.join(", ", rules.kinds().keySet());
      throw new NotUnderstoodException("--kind: an instrument needs a kind; choose one of " + all);
    }
    Kind kind = rules.kind(id);
    traits.forEach(
        (trait, text) -> {
          try {
            Traits.check(trait, text, kind);
          } catch (NotUnderstoodException e) {
            throw new NotUnderstoodException("--" + trait.word() + ": " + e.getMessage());
          }
        });
    return traits;
  }
}
