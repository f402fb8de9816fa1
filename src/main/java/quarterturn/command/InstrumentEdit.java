package quarterturn.command;

import java.io.IOException;
import java.time.Clock;
import java.util.Arrays;
import java.util.Map;
import java.util.Objects;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Unreadable;
import quarterturn.session.Instrument;
import quarterturn.session.Store;
import quarterturn.session.Trait;
import quarterturn.session.Traits;

/** {@code instrument edit NAME}: by options, or by answering questions. */
@Command(
    name = "edit",
    mixinStandardHelpOptions = true,
    modelTransformer = TraitOptions.class,
    sortOptions = false,
    description = {
      "Changes what is known of an instrument: quarterturn instrument edit my-bass --scale 34in",
      "The word none clears a fact. Without an option it asks for each fact in turn."
    })
final class InstrumentEdit implements Callable<Integer>, Cli.Timed {
  @Parameters(paramLabel = "NAME", description = "One of yours.")
  private String name = "";

  @Mixin private final Where where = new Where();
  @Spec private CommandSpec spec = CommandSpec.create();
  private final Clock clock;

  InstrumentEdit(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable {
    Store store = where.store();
    Instrument old = store.instrument(name);
    InstrumentEntry entry = new InstrumentEntry(InstrumentCommand.kinds(where, clock));
    return entry.take(
        new InstrumentEntry.Named(old.name(), old.created()),
        Traits.of(old),
        spec.commandLine().getParseResult(),
        (instrument, say) -> {
          if (instrument.equals(old)) {
            say.line("Nothing was changed.");
            return;
          }
          store.replace(instrument);
          say.line("Changed " + old.name() + ": " + changed(old, instrument) + ".");
        },
        spec.commandLine().getOut()::println);
  }

  private static String changed(Instrument old, Instrument now) {
    Map<Trait, String> before = Traits.of(old);
    Map<Trait, String> after = Traits.of(now);
    return Arrays.stream(Trait.values())
        .filter(trait -> !Objects.equals(before.get(trait), after.get(trait)))
        .map(Trait::word)
        .collect(Collectors.joining(", "));
  }
}
