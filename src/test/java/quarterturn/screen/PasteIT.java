package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.OwnSequences;
import quarterturn.Pty;
import quarterturn.jar.Packaged;
import quarterturn.line.TypedAtTerminal;
import quarterturn.unit.Pasted;

/** Pastes at a real pseudo-terminal, and Ctrl-C in the middle of a megabyte. */
@Isolated("it times how soon a key is answered")
@Timeout(90)
class PasteIT {
  private static final String BEGIN = "\u001b[200~";
  private static final String END = "\u001b[201~";
  private static final String CTRL_C = "\u0003";
  private static final Duration AT_ONCE = Duration.ofMillis(100);

  /** A megabyte, in the middle of which Ctrl-C is pressed. */
  private static final String MEGABYTE = "0.30 passes 0.35 lifts\r".repeat(1_000_000 / 23);

  private static Pty start(Class<?> main) throws Exception {
    return Pty.start(80, 24, Map.of(), Packaged.test(main, List.of(), List.of()));
  }

  /** Lets a key be pressed in the view that the last one led to. */
  private static void press(Pty pty, String keys, String shows) throws Exception {
    int before = pty.length();
    pty.send(keys);
    pty.await(shows, before);
    Thread.sleep(60);
  }

  private static void interrupted(Pty pty, String paste, String answer) throws Exception {
    pty.send(paste);
    Duration answered = pty.answered(CTRL_C, answer);
    assertThat(pty.exitStatus()).isEqualTo(130);
    assertThat(answered).isAtMost(AT_ONCE);
    OwnSequences.only(pty.sent());
    OwnSequences.restored(pty.sent());
  }

  @Test
  void onTheFullScreenItIsOneInputPaintedOnce() throws Exception {
    try (Pty pty = start(ScriptedMain.class)) {
      pty.await("Press u", 0);
      press(pty, BEGIN + "u\ru\r" + END, "refused");
      press(pty, "u", "Press Enter when");
      press(pty, "\r", "Where");
      press(pty, "2\r", "NOT");
      press(pty, "1\r", "gauge");
      int before = pty.length();
      pty.send(BEGIN + "0.30 passes\r0.35 lifts\r".repeat(40) + END);
      pty.await("lifts", before);
      Thread.sleep(100);
      assertThat(pty.length() - before).isLessThan(1024);
      interrupted(pty, BEGIN + MEGABYTE, "\u001b[?1049l");
    }
  }

  @Test
  void aFullScreenWithoutBracketsIsInterruptedTooAtOnce() throws Exception {
    try (Pty pty = start(ScriptedMain.class)) {
      pty.await("Press u", 0);
      interrupted(pty, MEGABYTE, "\u001b[?1049l");
    }
  }

  @Test
  void typedLinesAreInterruptedAtOnce() throws Exception {
    try (Pty pty = start(TypedAtTerminal.class)) {
      pty.await("> ", 0);
      pty.send(BEGIN + "x".repeat(5000) + "\r" + END);
      pty.await(Pasted.REFUSED, 0);
      assertThat(pty.sent()).doesNotContain("is not taken here");
      interrupted(pty, BEGIN + MEGABYTE, "Left: ");
      assertThat(pty.sent()).contains("answers: 0, left: true");
    }
  }

  @Test
  void typedLinesWithoutBracketsAreInterruptedAtOnce() throws Exception {
    try (Pty pty = start(TypedAtTerminal.class)) {
      pty.await("> ", 0);
      interrupted(pty, MEGABYTE, "Left: ");
      assertThat(pty.sent()).contains("answers: 0, left: true");
    }
  }
}
