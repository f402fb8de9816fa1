package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Cents;
import quarterturn.unit.Frequency;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

class TemperamentTest {
  @Test
  @HoldsTo("notes.a440")
  void notesSoundAsTheReferenceSays() {
    try (Reference notes = Reference.of("notes.a440")) {
      assertThat(Temperament.ISO_16.a4().hertz()).isEqualTo(notes.inputs().number("a4_hz"));
      Value hertz = notes.expected().at("hz");
      for (String name : hertz.keys()) {
        assertWithMessage(notes.because())
            .that(Temperament.ISO_16.of(Note.parse(name)).hertz())
            .isWithin(notes.tolerance("abs_hz"))
            .of(hertz.number(name));
      }
    }
  }

  @Test
  @HoldsTo({"tuning.bass4", "tuning.bass5", "tuning.guitar6"})
  void usualTuningsSoundAsTheReferencesSay() {
    for (String id : List.of("tuning.bass4", "tuning.bass5", "tuning.guitar6")) {
      try (Reference tuning = Reference.of(id)) {
        List<Value> names = tuning.inputs().at("notes_low_to_high").items();
        double[] hertz = tuning.expected().numbers("hz");
        double[] numbers = tuning.expected().numbers("midi");
        assertThat(hertz.length).isEqualTo(names.size());
        for (int i = 0; i < hertz.length; i++) {
          Note note = Note.parse(names.get(i).text());
          assertWithMessage(tuning.because()).that((double) note.number()).isEqualTo(numbers[i]);
          assertWithMessage(tuning.because())
              .that(Temperament.ISO_16.of(note).hertz())
              .isWithin(tuning.tolerance("abs_hz"))
              .of(hertz[i]);
        }
      }
    }
  }

  /** The second way: semitones by repeated multiplication, octaves by doubling and halving. */
  @Test
  void repeatedMultiplicationFindsTheSamePitches() {
    double semitone = Math.cbrt(Math.sqrt(Math.sqrt(2)));
    double hertz = 440;
    for (int n = 69; n <= 127; n++) {
      assertThat(Temperament.ISO_16.of(new Note(n)).hertz()).isWithin(1e-8).of(hertz);
      hertz *= semitone;
    }
    hertz = 440;
    for (int n = 69; n >= 0; n--) {
      assertThat(Temperament.ISO_16.of(new Note(n)).hertz()).isWithin(1e-9).of(hertz);
      hertz /= semitone;
    }
    assertThat(Temperament.ISO_16.of(Note.parse("A0")).hertz()).isWithin(1e-12).of(440 / 16.0);
  }

  @Test
  void whatIsPlayedIsHeard() {
    long seed = 16;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      Temperament tuned = new Temperament(new Frequency(400 + 80 * random.nextDouble()));
      Note note = new Note(random.nextInt(128));
      double off = (random.nextDouble() - 0.5) * 99.9;
      Temperament.Heard heard =
          tuned.hear(new Frequency(tuned.of(note).hertz() * new Cents(off).ratio()));
      assertWithMessage("seed %s, round %s", seed, i).that(heard.note()).isEqualTo(note);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(heard.off().cents())
          .isWithin(1e-8)
          .of(off);
    }
  }

  @Test
  void allPitchesFollowTheTuningFrequency() {
    Temperament low = new Temperament(new Frequency(432));
    for (int n = 0; n <= 127; n++) {
      assertThat(low.of(new Note(n)).hertz() / Temperament.ISO_16.of(new Note(n)).hertz())
          .isWithin(1e-12)
          .of(432 / 440.0);
    }
  }

  @Test
  void aFrequencyBeyondEveryNoteIsRefused() {
    for (double hertz : new double[] {1, 7.9, 13000, 999999}) {
      NotUnderstoodException e =
          assertThrows(
              NotUnderstoodException.class, () -> Temperament.ISO_16.hear(new Frequency(hertz)));
      assertThat(e).hasMessageThat().isEqualTo("a note must lie between C-1 and G9");
    }
    assertThat(Temperament.ISO_16.hear(new Frequency(8.2)).note()).isEqualTo(new Note(0));
  }
}
