package quarterturn.screen.terminal;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.time.Duration;
import org.jline.terminal.Terminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Isolated;

@Isolated("what takes over a terminal handles what nobody caught")
class SurfaceTest {
  private static final Duration SOON = Duration.ofSeconds(5);

  /** The system tells a program whose window is closed to go on, so that it can end. */
  @Test
  void onlyPaintingTellsThatTheWindowIsClosed() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24);
        Surface surface = Surface.open(terminal, new Settings(true, true))) {
      surface.paint(new Canvas(80, 24));
      terminal.closeWindow();
      terminal.raise(Terminal.Signal.CONT);
      assertThat(surface.next(SOON)).isEqualTo(new Input.Continued());
      surface.repaintWhole();
      assertThrows(IOException.class, () -> surface.paint(new Canvas(80, 24)));
    }
  }
}
