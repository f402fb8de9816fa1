package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.line.DialogueLines;
import quarterturn.line.Typing;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.script.ScriptFace;
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

  /** What is done with the facts that were taken. */
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
      throws IOException, UnreadableException {
    Library rules = sessions().rules();
    Map<FormField, String> given = FieldOptions.given(spec.commandLine().getParseResult());
    if (!given.isEmpty()) {
      Map<FormField, String> merged = FieldOptions.merged(known, given, rules);
      keeping.keep(FormFields.instrument(name, created, merged), this::say);
      return 0;
    }
    InstrumentDialogue dialogue = new InstrumentDialogue(known, rules.kinds());
    if (lines) {
      if (new ScriptFace(System.in, System.out).ask(dialogue)) {
        keeping.keep(FormFields.instrument(name, created, dialogue.fields()), this::say);
      }
      return 0;
    }
    try (Typing typing = Faces.typing()) {
      return switch (DialogueLines.run(dialogue, typing.source(), typing.out())) {
        case ANSWERED -> {
          Instrument answered = FormFields.instrument(name, created, dialogue.fields());
          keeping.keep(answered, typing.out()::println);
          yield 0;
        }
        case LEFT -> {
          typing.out().println("Left without a change.");
          yield 0;
        }
        case INTERRUPTED -> ExitStatus.INTERRUPTED;
        case CUT_SHORT ->
            throw new NotUnderstoodException(
                "the input ended before the questions did; nothing was kept");
      };
    }
  }

  private void say(String told) {
    if (lines) {
      new ScriptFace(System.in, System.out).tell(List.of(told));
    } else {
      out().println(told);
    }
  }
}
