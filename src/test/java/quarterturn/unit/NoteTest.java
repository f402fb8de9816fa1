package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class NoteTest {
  /** Scientific pitch notation: the octave changes at C; A4 is note 69 (MIDI 1.0, from memory). */
  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      quoteCharacter = '`',
      value = {
        "A4|69",
        "C4|60",
        "B3|59",
        "C-1|0",
        "G9|127",
        "E1|28",
        "e1|28",
        "`  E1 `|28",
        "F#2|42",
        "f♯2|42",
        "Gb2|42",
        "G♭2|42",
        "Bb0|22",
        "bb0|22",
        "B0|23",
        "b0|23",
        "B#0|24",
        "C1|24",
        "Cb1|23",
        "Bbb0|21",
        "bbb0|21",
        "Ebb1|26",
        "C##1|26",
        "D1|26",
        "C♯♯1|26",
        "D♭♭1|24",
        "F1|29",
        "G1|31",
        "A1|33",
        "D#-1|3",
      })
  void everySpellingIsRead(String typed, int number) {
    assertThat(Note.parse(typed).number()).isEqualTo(number);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "E",
        "1",
        "H1",
        "E10",
        "E-2",
        "E###1",
        "Ebbb1",
        "E#b1",
        "E 1",
        "41.2",
        "EE1",
        "E1x",
        "\u001b[2J"
      })
  void whatIsNoNoteIsRefusedWithExamples(String typed) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> Note.parse(typed));
    assertThat(e)
        .hasMessageThat()
        .endsWith("\" is not a note with its octave; type for example E1, F#2 or Bb0");
    assertThat(e).hasMessageThat().doesNotContainMatch("\\p{Cntrl}");
  }

  @ParameterizedTest
  @ValueSource(strings = {"Cb-1", "G#9", "A9", "B9"})
  void aNoteBeyondTheEndsSaysWhereTheyAre(String typed) {
    NotUnderstoodException e = assertThrows(NotUnderstoodException.class, () -> Note.parse(typed));
    assertThat(e).hasMessageThat().isEqualTo("a note must lie between C-1 and G9");
  }

  @Test
  void theEndsThemselvesAreNotes() {
    assertThat(new Note(0).toString()).isEqualTo("C-1");
    assertThat(new Note(127).toString()).isEqualTo("G9");
    assertThrows(NotUnderstoodException.class, () -> new Note(-1));
    assertThrows(NotUnderstoodException.class, () -> new Note(128));
  }

  @Test
  void everyNoteIsReadBack() {
    for (int number = 0; number <= 127; number++) {
      Note note = new Note(number);
      assertThat(Note.parse(note.toString())).isEqualTo(note);
      assertThat(Note.parse(note.toString().toLowerCase(Locale.ROOT))).isEqualTo(note);
    }
  }

  @Test
  void sharpsAndFlatsUndoEachOther() {
    long seed = 12;
    Random random = new Random(seed);
    for (int i = 0; i < 500; i++) {
      char letter = (char) ('A' + random.nextInt(7));
      int octave = random.nextInt(8);
      Note plain = Note.parse("" + letter + octave);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Note.parse(letter + "#" + octave))
          .isEqualTo(new Note(plain.number() + 1));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Note.parse(letter + "b" + octave))
          .isEqualTo(new Note(plain.number() - 1));
      assertThat(Note.parse("" + letter + (octave + 1)).number()).isEqualTo(plain.number() + 12);
    }
  }

  /** However a note is spelled it comes back so; one known by its number alone has sharps. */
  @ParameterizedTest
  @CsvSource({
    "Bb0, Bb0, A#0",
    "bb0, Bb0, A#0",
    "G♭2, Gb2, F#2",
    "f♯2, F#2, F#2",
    "Cb1, Cb1, B0",
    "E1, E1, E1",
  })
  void aNoteKeepsItsSpelling(String typed, String spelled, String byNumber) {
    Note note = Note.parse(typed);
    assertThat(note.toString()).isEqualTo(spelled);
    assertThat(new Note(note.number()).toString()).isEqualTo(byNumber);
    assertThat(note).isEqualTo(new Note(note.number()));
    assertThat(note.hashCode()).isEqualTo(new Note(note.number()).hashCode());
  }
}
