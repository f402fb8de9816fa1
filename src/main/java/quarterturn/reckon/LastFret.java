package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Scale;

/** The last fret of the board. */
final class LastFret {
  @Option(
      names = "--last-fret",
      paramLabel = "FRET",
      description = "The last fret of the fingerboard; 24 unless given.")
  private int last = 24;

  /** The last fret of the board, checked to be no lower than the joint and the frets held. */
  int last(BowOptions bow) {
    Checked.within("--last-fret", last, 2, Scale.MOST_FRETS);
    Checked.within("--joint-fret", bow.joint(), 2, last);
    Checked.within("--held", bow.held().high(), 2, last);
    return last;
  }
}
