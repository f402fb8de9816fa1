package quarterturn.reckon;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.unit.Frequency;
import quarterturn.unit.Note;

/** What an open string is tuned to. */
final class TunedOption {
  @Option(
      names = "--note",
      required = true,
      paramLabel = "NOTE",
      description = "Of the open string, such as E1.")
  private Note note = new Note(0);

  @Mixin private TuningOptions tuning = new TuningOptions();

  Note note() {
    return note;
  }

  Frequency pitch() {
    return tuning.temperament().of(note);
  }
}
