package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.Readings;
import quarterturn.procedure.read.yaml.Source;

class FaultTest {
  private static final Mark MARK = new Mark("a.yaml", 1, 3);

  @Test
  void showsTheLineAndACaret() {
    assertThat(
            new Fault("bad-id", MARK, "wrong", "mend it", "ab\tc", 2, List.of("a", "b")).toString())
        .isEqualTo("a.yaml:1:3: bad-id: wrong\nab\uFFFDc\n  ^\n  mend it\n  way: a > b");
  }

  @Test
  void withoutALineItIsOneLine() {
    assertThat(Fault.of(Slip.BAD_ID, MARK, "wrong", "").toString())
        .isEqualTo("a.yaml:1:3: bad-id: wrong");
  }

  @Test
  void nothingInItReachesATerminalAsACode() {
    Fault fault =
        new Fault(
            "\u0007",
            new Mark("\u001b[2J", 1, 1),
            "\u0007",
            "\u0007",
            "\u001b]0;x",
            0,
            List.of("\u0007"));
    assertThat(fault.toString())
        .isEqualTo("\uFFFD[2J:1:1: \uFFFD: \uFFFD\n\uFFFD]0;x\n^\n  \uFFFD\n  way: \uFFFD");
  }

  @Test
  void unreadableShowsAll() {
    Fault other = Fault.of(Slip.BAD_ID, new Mark("a.yaml", 2, 1), "worse", "");
    UnreadableException unreadable =
        new UnreadableException(List.of(Fault.of(Slip.BAD_ID, MARK, "wrong", ""), other));
    assertThat(unreadable)
        .hasMessageThat()
        .isEqualTo("a.yaml:1:3: bad-id: wrong\na.yaml:2:1: bad-id: worse");
    assertThat(unreadable.faults()).hasSize(2);
  }

  /** The caret stands under the very character however the line is cut. */
  @ParameterizedTest
  @ValueSource(ints = {1, 2, 50, 56, 57, 58, 75, 76, 77, 150, 240, 270, 299, 300})
  void aWideLineIsCutAroundThePlace(int column) throws UnreadableException {
    String line = "-".repeat(column - 1) + "X" + "-".repeat(300 - column);
    Source source = Source.of("a", Readings.utf8("first\n" + line + "\nlast"));
    Fault fault = source.fault("bad-id", new Mark("a", 2, column), "wrong", "", List.of());
    assertThat(fault.line().length()).isAtMost(76);
    assertThat(fault.line().charAt(fault.caret())).isEqualTo('X');
  }

  @ParameterizedTest
  @CsvSource({"lawn,flaw,2", "same,same,0", "tehn,then,1", "'',abc,3", "turn,tune,2"})
  void lettersApart(String a, String b, int apart) {
    assertThat(Quote.distance(a, b)).isEqualTo(apart);
  }

  @Test
  void onlyANearWordIsSuggested() {
    assertThat(Quote.meant("rereed", List.of("retune", "reread"))).contains("\"reread\"");
    assertThat(Quote.meant("banjo", List.of("retune", "reread"))).isEmpty();
  }

  @Test
  void placesCountCharactersNotBytes() throws UnreadableException {
    Source source = Source.of("a", Readings.utf8("\uFEFFü🎸x\r\ny\rz"));
    assertThat(source.mark(2)).isEqualTo(new Mark("a", 1, 3));
    assertThat(source.mark(4)).isEqualTo(new Mark("a", 2, 1));
    assertThat(source.mark(6)).isEqualTo(new Mark("a", 3, 1));
    assertThat(source.text()).isEqualTo("ü🎸x\ny\nz");
  }

  @Test
  void aCutCharacterAtTheEndIsNoUtf8() {
    byte[] cut = {'a', ':', ' ', (byte) 0xC3};
    UnreadableException no = assertThrows(UnreadableException.class, () -> Source.of("a", cut));
    assertThat(no).hasMessageThat().startsWith("a:1:4: not-yaml: the byte 0xC3 does not belong");
  }
}
