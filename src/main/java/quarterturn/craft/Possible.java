package quarterturn.craft;

import java.math.BigDecimal;
import java.math.MathContext;

/**
 * How large a number of the trade can be on an instrument. What lies outside comes from a wrong
 * reading or a unit that was forgotten. The bounds are wide; they are common practice without a
 * source where nothing else is said.
 */
public enum Possible {
  /** Scale length in mm; the smallest lutes to the longest bass guitars, and a margin. */
  SCALE(200, 1200, "No fretted instrument has a scale of %s mm: is the unit right?"),
  /** Frequency in Hz of an open or a fretted string. */
  PITCH(15, 6000, "No string of an instrument sounds at %s Hz: a wrong reading."),
  /** Tension in newtons of one string. */
  PULL(5, 500, "No string of an instrument pulls %s N: a wrong note, gauge or scale."),
  /** Relief in mm; 3 mm is beyond any leaf (as the bounds of readings have it). */
  RELIEF(-3, 3, "No neck bends by %s mm of relief: a wrong reading or the wrong unit."),
  /** Action at fret 12 in mm; 10 mm as the bounds of readings have it. */
  ACTION(0, 10, "Nobody plays with %s mm of action at fret 12: a wrong reading or stroke."),
  /** Height in mm of the bottom of a nut slot above the plane of the frets. */
  NUT(0, 5, "No nut holds its strings %s mm above the frets: a wrong reading."),
  /** Height in mm of the string at the saddle above the body's plane. */
  SADDLE(0, 40, "No saddle stands %s mm above the frets' plane: a wrong reading."),
  /** Change in mm of a saddle's height. */
  SADDLE_CHANGE(-10, 10, "A saddle does not move %s mm up or down: a wrong reading."),
  /** Travel in mm of a saddle along its string. */
  SADDLE_TRAVEL(-15, 15, "A saddle does not travel %s mm: a bad string or a wrong reading."),
  /** Sharpening in cents of a pressed note; a semitone is another note. */
  SHARPENING(0, 100, "No press sharpens a note by %s cents: a wrong reading or gauge."),
  /** Inharmonicity; a bass string's is below a thousandth. */
  STIFFNESS(0, 0.02, "No string is as stiff as B = %s: a wrong gauge, note or scale."),
  /** Drop in mm of the outer strings below the board's centre line. */
  DROP(0, 15, "No fingerboard falls %s mm to its outer strings: a wrong radius or spread."),
  /** Thickness in mm of a shim in a neck pocket. */
  SHIM(0, 2, "No pocket takes a shim of %s mm: a wrong reading, or work for a repairer."),
  /** Travel in mm of a screw. */
  SCREW(-25, 25, "No screw of an instrument moves %s mm: too many turns, or a wrong thread."),
  /** Margin in mm between a string and a fret. */
  MARGIN(-10, 10, "No string and fret are %s mm apart or into each other: a wrong reading."),
  /** Gap in mm under a string that a gauge reads. */
  GAP(0, 10, "No gap on an instrument is %s mm: a wrong reading or the wrong unit.");

  private final double least;
  private final double most;
  private final String doubt;

  Possible(double least, double most, String doubt) {
    this.least = least;
    this.most = most;
    this.doubt = doubt;
  }

  public boolean holds(double value) {
    return value >= least && value <= most;
  }

  /** What to say of a value that no instrument can have, with three digits of it. */
  public String doubt(double value) {
    return doubt.formatted(new BigDecimal(value).round(new MathContext(3)).toPlainString());
  }
}
