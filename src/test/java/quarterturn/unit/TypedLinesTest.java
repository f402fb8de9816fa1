package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.unit.TypedLines.Line;

class TypedLinesTest {
  private static List<Line> lines(String text, int limit) throws IOException {
    TypedLines in = new TypedLines(new StringReader(text), limit);
    List<Line> lines = new ArrayList<>();
    for (Line line = in.next(); line != null; line = in.next()) {
      lines.add(line);
    }
    return lines;
  }

  @Test
  void linesEndInEitherWayOrNotAtAll() throws IOException {
    assertThat(lines("a\r\n\nb", 10))
        .containsExactly(new Line("a", false), new Line("", false), new Line("b", false))
        .inOrder();
    assertThat(lines("", 10)).isEmpty();
  }

  @Test
  void aByteOrderMarkIsDroppedOnlyAtTheBeginning() throws IOException {
    assertThat(lines("\uFEFFa\n\uFEFFb\n", 10))
        .containsExactly(new Line("a", false), new Line("\uFEFFb", false))
        .inOrder();
  }

  @Test
  void aLongLineIsCutAndTheNextOneIsWhole() throws IOException {
    assertThat(lines("12345678\n12345\r\nab\n", 5))
        .containsExactly(new Line("12345", true), new Line("12345", false), new Line("ab", false))
        .inOrder();
  }

  /** A zero is a character like any other; those who show it have to make it safe. */
  @Test
  void aZeroCharacterEndsNeitherALineNorTheInput() throws IOException {
    assertThat(lines("\0a\0b\nc", 10))
        .containsExactly(new Line("\0a\0b", false), new Line("c", false))
        .inOrder();
  }
}
