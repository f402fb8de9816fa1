package quarterturn.command;

import java.io.IOException;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Instrument;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Store;

/** {@code instrument edit NAME}: by options, or by answering questions. */
@Command(
    addMethodSubcommands = false,
    name = "edit",
    modelTransformer = FieldOptions.class,
    sortOptions = false,
    description = {
      "Changes what is known of an instrument: ${ROOT-COMMAND-NAME} instrument edit my-bass --scale 34in",
      "The word none clears a fact. Without an option it lists all of them to choose from."
    })
final class InstrumentEdit extends InstrumentEntry {
  @Parameters(paramLabel = "NAME", description = "One of yours.")
  private String name = "";

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Store store = where.store();
    Instrument old = store.instrument(name);
    return take(
        old.name(),
        old.created(),
        FormFields.of(old),
        (instrument, say) -> {
          if (instrument.equals(old)) {
            say.accept("Nothing was changed.");
            return;
          }
          store.replace(instrument);
          say.accept("Changed " + old.name() + ": " + changed(old, instrument) + ".");
        });
  }

  private static String changed(Instrument old, Instrument now) {
    Map<FormField, String> before = FormFields.of(old);
    Map<FormField, String> after = FormFields.of(now);
    return Arrays.stream(FormField.values())
        .filter(field -> !Objects.equals(before.get(field), after.get(field)))
        .map(FormField::word)
        .collect(Collectors.joining(", "));
  }
}
