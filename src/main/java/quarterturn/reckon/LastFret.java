package quarterturn.reckon;

import picocli.CommandLine.Option;
import quarterturn.craft.Scale;

/** The last fret of the board. */
final class LastFret {
  @Option(
      names = "--last-fret",
      paramLabel = "FRET",
      description = "The last fret of the board; 24 unless given.")
  private int last = 24;

  int last() {
    return Given.within("--last-fret", last, 2, Scale.MOST_FRETS);
  }
}
