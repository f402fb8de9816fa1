package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class KeyDecoderTest {
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
}
