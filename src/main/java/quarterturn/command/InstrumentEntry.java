package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Placed;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Instrument;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.InstrumentDialogue;
import quarterturn.unit.NotUnderstoodException;

/** Takes an instrument's facts from options, or asks for them where none is given. */
@Command(addMethodSubcommands = false)
abstract class InstrumentEntry extends Placed {
  @Mixin private final Looks looks = new Looks();

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
    InstrumentDialogue dialogue = new InstrumentDialogue(name, known, rules.kinds());
    Faces faces = looks.faces(clock.getZone());
    boolean screen = faces.kind() == Faces.Kind.SCREEN;
    List<String> after = new ArrayList<>();
    Dialogue.End end;
    try (Face face = faces.open()) {
      end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED) {
        Instrument answered = FormFields.instrument(name, created, dialogue.fields());
        keeping.keep(answered, after::add);
      } else if (end == Dialogue.End.LEFT && screen) {
        after.addAll(dialogue.whenLeft());
      }
      if (!screen) {
        face.tell(after);
      }
    }
    if (screen) {
      // What was told on the full screen went with it.
      print(after);
    }
    if (end == Dialogue.End.CUT_SHORT) {
      throw new NotUnderstoodException(
          "the input ended before the questions did; nothing was kept");
    }
    return end.status();
  }
}
