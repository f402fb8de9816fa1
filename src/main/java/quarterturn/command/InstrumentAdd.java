package quarterturn.command;

import java.io.IOException;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.store.Store;

/** {@code instrument add NAME}: by options, or by answering questions. */
@Command(
    addMethodSubcommands = false,
    name = "add",
    modelTransformer = FieldOptions.class,
    sortOptions = false,
    description = {
      "Adds an instrument: ${ROOT-COMMAND-NAME} instrument add my-bass --kind bass-34",
      "Without an option it asks a few questions; the rest is as its kind has it."
    })
final class InstrumentAdd extends InstrumentEntry {
  @Parameters(paramLabel = "NAME", description = "Letters, digits and hyphens.")
  private String name = "";

  @Override
  public Integer call() throws IOException, UnreadableException, InterruptedException {
    Store store = where.store();
    store.checkFree(name);
    return take(
        name,
        clock.instant(),
        Map.of(),
        (instrument, say) -> {
          store.add(instrument);
          say.accept("Added " + instrument.name() + ".");
          say.accept("What was not said is as its kind has it. To change it:");
          say.accept(where.program().typed("instrument edit " + instrument.name()));
          say.accept("Start with:");
          say.accept(where.program().typed("start relief --instrument " + instrument.name()));
        });
  }
}
