package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.ExitStatus;
import quarterturn.session.Instrument;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.InstrumentDialogue;
import quarterturn.unit.NotUnderstoodException;

/** Takes an instrument's facts from options, or asks for them where none is given. */
@Command
abstract class InstrumentEntry extends Placed {
  @Option(names = "--lines", description = "Asks in JSON, one object a line each way.")
  private boolean lines;

  /** Keeps the facts that were taken. */
  interface Keeping {
    void keep(Instrument instrument, Consumer<String> say) throws IOException;
  }

  /**
   * Takes the facts and keeps them.
   *
   * @param created when the instrument was added
   * @param known what is known of it
   * @return the exit status
   */
  int take(String name, Instant created, Map<FormField, String> known, Keeping keeping)
      throws IOException, UnreadableException, InterruptedException {
    Library rules = sessions().rules();
    Map<FormField, String> given = FieldOptions.given(spec.commandLine().getParseResult());
    if (!given.isEmpty()) {
      Map<FormField, String> merged = FieldOptions.merged(known, given, rules);
      keeping.keep(FormFields.instrument(name, created, merged), told -> print(List.of(told)));
      return ExitStatus.DONE;
    }
    InstrumentDialogue dialogue = new InstrumentDialogue(known, rules.kinds());
    try (Face face = Faces.asking(lines, clock.getZone())) {
      return switch (face.ask(dialogue)) {
        case ANSWERED -> {
          Instrument answered = FormFields.instrument(name, created, dialogue.fields());
          keeping.keep(answered, told -> face.tell(List.of(told)));
          yield ExitStatus.DONE;
        }
        case LEFT -> ExitStatus.DONE;
        case INTERRUPTED -> ExitStatus.INTERRUPTED;
        case CUT_SHORT ->
            throw new NotUnderstoodException(
                "the input ended before the questions did; nothing was kept");
      };
    }
  }
}
