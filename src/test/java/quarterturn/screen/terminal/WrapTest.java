package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

class WrapTest {
  @Test
  void breaksBetweenWordsAndKeepsParagraphs() {
    assertThat(Wrap.lines("one two three\n\nfour", 7))
        .containsExactly("one two", "three", "", "four")
        .inOrder();
  }

  @Test
  void cutsAWordThatIsTooLong() {
    assertThat(Wrap.lines("abcdefgh ij", 3)).containsExactly("abc", "def", "gh", "ij").inOrder();
  }

  @Test
  void wideCharactersTakeTwoCells() {
    assertThat(Canvas.cells("吉他 a")).isEqualTo(6);
    for (String line : Wrap.lines("吉他吉他吉他", 5)) {
      assertThat(Canvas.cells(line)).isAtMost(5);
    }
    Canvas canvas = new Canvas(5, 1);
    canvas.put(0, 0, "吉他吉");
    assertThat(canvas.text()).isEqualTo("吉他\n");
  }

  @Test
  void saysWhereItCut() {
    assertThat(Wrap.cut("loosen it", 6)).isEqualTo("loose…");
    assertThat(Wrap.cut("loosen", 6)).isEqualTo("loosen");
    assertThat(Wrap.cutFront("0.60 passes", 5)).isEqualTo("…sses");
    assertThat(Wrap.cut("x", 0)).isEmpty();
  }
}
