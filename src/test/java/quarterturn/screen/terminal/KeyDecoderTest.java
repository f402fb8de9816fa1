package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.Draws;
import quarterturn.platform.Pastes;
import quarterturn.unit.Pasted;

class KeyDecoderTest {
  private static final int RANDOM = 100;
  private static final long SEED = 20270616;

  private static List<Key> keys(String sent) {
    KeyDecoder decoder = new KeyDecoder();
    List<Key> out = new ArrayList<>();
    sent.chars().forEach(unit -> out.addAll(decoder.feed(unit)));
    out.addAll(decoder.giveUp());
    return out;
  }

  @Test
  void plainKeys() {
    assertThat(keys("aé\r\t\u007f\u0015"))
        .containsExactly(
            new Key.Typed('a'),
            new Key.Typed('é'),
            Key.Named.ENTER,
            Key.Named.TAB,
            Key.Named.BACKSPACE,
            new Key.Ctrl('u'))
        .inOrder();
    assertThat(keys("\ud83c\udfb8")).containsExactly(new Key.Typed(0x1f3b8));
  }

  @Test
  void sequencesOfSeveralTerminals() {
    assertThat(keys("\u001b[A\u001bOB\u001b[5~\u001b[1;5C"))
        .containsExactly(Key.Named.UP, Key.Named.DOWN, Key.Named.PAGE_UP, Key.Named.RIGHT)
        .inOrder();
    assertThat(keys("\u001bOP\u001b[11~\u001b[[A\u001b[21~"))
        .containsExactly(
            new Key.Function(1), new Key.Function(1), new Key.Function(1), new Key.Function(10))
        .inOrder();
  }

  @Test
  void aLoneEscIsAKeyOnceNothingFollows() {
    KeyDecoder decoder = new KeyDecoder();
    assertThat(decoder.feed(0x1b)).isEmpty();
    assertThat(decoder.pending()).isTrue();
    assertThat(decoder.giveUp()).containsExactly(Key.Named.ESC);
    assertThat(decoder.pending()).isFalse();
  }

  @Test
  void escTwiceAndEscWithAKeyAreTwoKeys() {
    assertThat(keys("\u001b\u001b")).containsExactly(Key.Named.ESC, Key.Named.ESC);
    assertThat(keys("\u001bq")).containsExactly(Key.Named.ESC, new Key.Typed('q')).inOrder();
    assertThat(keys("\u001b[")).containsExactly(Key.Named.ESC, new Key.Typed('[')).inOrder();
  }

  @Test
  void anUnknownSequenceIsNothing() {
    assertThat(keys("\u001b[99~\u001b[?1;2ca")).containsExactly(new Key.Typed('a'));
  }

  private static Key paste(String text) {
    return new Key.Paste(new Pasted(text, true));
  }

  @Test
  void aPasteIsOneInputWhateverIsInIt() {
    assertThat(keys("a" + Pastes.BEGIN + "u\r\u001b[Aq\u0015\n" + Pastes.END + "b"))
        .containsExactly(new Key.Typed('a'), paste("u; q"), new Key.Typed('b'))
        .inOrder();
    assertThat(keys(Pastes.BEGIN + Pastes.END)).containsExactly(paste(""));
    assertThat(keys(Pastes.END + "a")).containsExactly(new Key.Typed('a'));
  }

  @Test
  void aPasteWithoutAnEndIsTakenOnceNothingFollows() {
    assertThat(keys(Pastes.BEGIN + "one\rtwo")).containsExactly(paste("one; two"));
  }

  @Test
  void ofAForgottenPasteTheRestIsNoKey() {
    KeyDecoder decoder = new KeyDecoder();
    (Pastes.BEGIN + "a").chars().forEach(decoder::feed);
    decoder.forget();
    List<Key> keys = new ArrayList<>();
    ("u\r" + Pastes.END + "\r").chars().forEach(unit -> keys.addAll(decoder.feed(unit)));
    assertThat(keys).containsExactly(Key.Named.ENTER);
  }

  @Test
  void ofAPasteThatNobodyBoundedFourKilobytesAreKept() {
    List<Key> keys = keys(Pastes.BEGIN + "x".repeat(1_000_000) + Pastes.END + "y");
    assertThat(keys)
        .containsExactly(
            new Key.Paste(new Pasted("x".repeat(Pasted.MOST), false)), new Key.Typed('y'))
        .inOrder();
  }

  /** Mouse, focus, and answers to questions about terminal, cursor, modes, colours, size. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "\u001b[<35;10;5M",
        "\u001b[<0;500;200m",
        "\u001b[M !\u00ff",
        "\u001b[M\u001bqy",
        "\u001b[I",
        "\u001b[O",
        "\u001b[?62;22c",
        "\u001b[>0;276;0c",
        "\u001b[0n",
        "\u001b[24;80R",
        "\u001b[1;5R",
        "\u001b[?1;1R",
        "\u001b[?2004;1$y",
        "\u001b[8;24;80t",
        "\u001b[97;5u",
        "\u001b]11;rgb:ffff/ffff/ffff\u0007",
        "\u001b]10;rgb:0000/0000/0000\u001b\\",
        "\u001b]52;c;cXV5cXV5cXV5cXV5cXV5cXV5cXV5cXV5cXV5cXV5\u001b\\",
        "\u001bP>|terminal 1.0\u001b\\",
        "\u001bP1$r0m\u001b\\",
        "\u001b_Gi=1;OK\u001b\\",
        "\u001b[1;2;3;4;5;6;7;8;9;10;11;12;13;14;15;16;17;18;19;20A",
        "\u001b[?1P"
      })
  void reportsThatNobodyAskedForAreNothing(String report) {
    assertThat(keys(report + "a" + report + report + "b"))
        .containsExactly(new Key.Typed('a'), new Key.Typed('b'))
        .inOrder();
    // Cut off behind its first two it would be Esc and a key.
    if (report.length() > 3) {
      assertThat(keys(report.substring(0, report.length() - 1))).isEmpty();
    }
  }

  @Test
  void aBrokenSequenceOrCharacterTakesNothingWithIt() {
    assertThat(keys("\u001b[12\u001b[A\u001b[3\rb"))
        .containsExactly(Key.Named.UP, Key.Named.ENTER, new Key.Typed('b'))
        .inOrder();
    assertThat(keys("\ud83ca")).containsExactly(new Key.Typed('a'));
  }

  /** In all a megabyte: nothing breaks, nothing is held back, and a key after it is that key. */
  @Test
  void afterAnyUnitsAKeyIsThatKey() {
    Random random = new Random(SEED);
    String often = "\u001b\u001b\u001b[[O]P?<>;019~MmARc\u0007\\\u009b";
    for (int i = 0; i < Draws.of(RANDOM); i++) {
      KeyDecoder decoder = new KeyDecoder();
      for (int j = 0; j < 5000; j++) {
        decoder.feed(
            random.nextBoolean()
                ? often.charAt(random.nextInt(often.length()))
                : random.nextInt(random.nextInt(8) == 0 ? 0x10000 : 0x100));
      }
      decoder.giveUp();
      assertWithMessage("draw %s", i).that(decoder.pending()).isFalse();
      assertThat(decoder.feed('\r')).containsExactly(Key.Named.ENTER);
    }
  }
}
