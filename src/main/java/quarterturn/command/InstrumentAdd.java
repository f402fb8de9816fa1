package quarterturn.command;

import java.io.IOException;
import java.time.Clock;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Unreadable;
import quarterturn.session.Store;

/** {@code instrument add NAME}: by options, or by answering questions. */
@Command(
    name = "add",
    mixinStandardHelpOptions = true,
    modelTransformer = TraitOptions.class,
    sortOptions = false,
    description = {
      "Adds an instrument: quarterturn instrument add my-bass --kind bass-34",
      "Without an option it asks for each fact in turn."
    })
final class InstrumentAdd implements Callable<Integer>, Cli.Timed {
  @Parameters(paramLabel = "NAME", description = "Letters, digits and hyphens.")
  private String name = "";

  @Mixin private final Where where = new Where();
  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  InstrumentAdd(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable {
    Store store = where.store();
    store.checkFree(name);
    InstrumentEntry entry = new InstrumentEntry(InstrumentCommand.kinds(where, clock));
    return entry.take(
        new InstrumentEntry.Named(name, clock.instant()),
        Map.of(),
        spec.commandLine().getParseResult(),
        (instrument, say) -> {
          store.add(instrument);
          say.line("Added " + instrument.name() + ".");
          say.line("Start with: quarterturn start relief --instrument " + instrument.name());
        },
        spec.commandLine().getOut()::println);
  }
}
