package quarterturn.reckon;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.PitchBound;
import quarterturn.craft.Possible;
import quarterturn.craft.Temperament;
import quarterturn.unit.Cents;
import quarterturn.unit.Decimals;
import quarterturn.unit.Frequency;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

/** {@code reckon pitch}. */
@Command(
    addMethodSubcommands = false,
    name = "pitch",
    description = "The frequency of a note, or the note of a frequency.",
    footer = {"", "JSON: hz, note, cents (plus where hz is sharp of the note)."})
final class PitchTopic extends Topic {
  private static final double METER_RATE = 48_000;
  private static final double METER_DECIBELS = 20;

  @Option(names = "--note", paramLabel = "NOTE", description = "Such as E1, F#2 or Bb0.")
  private @Nullable Note note;

  @Option(names = "--hz", paramLabel = "HZ", description = "A frequency, such as 41.2.")
  private @Nullable Frequency hertz;

  @Mixin private TuningOptions tuning = new TuningOptions();

  @Override
  Reckoned reckon() {
    if ((note == null) == (hertz == null)) {
      throw new NotUnderstoodException(
          "give one of --note and --hz" + (note == null ? "" : ", not both"));
    }
    Temperament temperament = tuning.temperament();
    Frequency frequency = note != null ? temperament.of(note) : hertz;
    if (frequency == null) {
      throw new IllegalStateException("neither a note nor a frequency");
    }
    Temperament.Heard heard =
        note != null
            ? new Temperament.Heard(note, new Cents(0))
            : Checked.by("--hz", () -> temperament.hear(frequency));
    double cents = heard.off().cents();
    return new Reckoned.Draft()
        .key("hz", frequency.hertz())
        .key("note", heard.note().toString())
        .key("cents", cents)
        .within(Possible.PITCH, frequency.hertz())
        .say(
            note != null
                ? note + " is " + Decimals.print(frequency.hertz(), 3) + " Hz."
                : Decimals.print(frequency.hertz(), 3) + " Hz is " + near(heard) + ".")
        .say(
            "One cent there is "
                + Decimals.print(frequency.hertz() * (new Cents(1).ratio() - 1), 4)
                + " Hz. Let the note ring: over a quarter of a second even a perfect tuner is"
                + " unsure by "
                + Decimals.print(
                    PitchBound.cents(frequency, METER_RATE, 0.25, METER_DECIBELS).cents(), 2)
                + " cents, over one second by "
                + Decimals.print(
                    PitchBound.cents(frequency, METER_RATE, 1, METER_DECIBELS).cents(), 3)
                + ".")
        .by(
            "twelve-tone equal temperament, f = A4 2^((n - 69)/12), A4 = "
                + tuning.temperament().a4()
                + " (ISO 16: 440 Hz); the tuner by the Cramer-Rao bound",
            "a steady first partial; a stiff string's other partials lie sharp of it. For the tuner"
                + " a tone ten times as strong as its noise, read 48000 times a second.");
  }

  private static String near(Temperament.Heard heard) {
    double off = heard.off().cents();
    String size = Decimals.print(Math.abs(off), 1);
    if (Double.parseDouble(size) == 0) {
      return heard.note().toString();
    }
    return heard.note() + ", " + size + " cents " + (off > 0 ? "sharp" : "flat");
  }
}
