package quarterturn.craft;

import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

/**
 * Twelve-tone equal temperament over a standard tuning frequency: {@code f = a4 2^((n - 69) / 12)}.
 *
 * <p>ISO 16:1975 sets A4 to 440 Hz.
 *
 * @param a4 the frequency of A4
 */
public record Temperament(Frequency a4) {
  /** The temperament of ISO 16, where A4 is 440 Hz. */
  public static final Temperament ISO_16 = new Temperament(new Frequency(440));

  private static final int A4 = 69;

  public Frequency of(Note note) {
    return new Frequency(a4.hertz() * Math.pow(2, (note.number() - A4) / 12.0));
  }

  /**
   * The note nearest to a frequency, and how far the frequency is from it.
   *
   * @throws NotUnderstoodException where the frequency is beyond every note that has a number
   */
  public Heard hear(Frequency frequency) {
    double semitones = Cents.ofRatio(frequency.hertz() / a4.hertz()).cents() / 100;
    Note note = new Note((int) Math.rint(A4 + semitones));
    return new Heard(note, Cents.ofRatio(frequency.hertz() / of(note).hertz()));
  }

  /**
   * A frequency heard as a note.
   *
   * @param off plus where the frequency is sharp of the note; at most half a semitone
   */
  public record Heard(Note note, Cents off) {}
}
