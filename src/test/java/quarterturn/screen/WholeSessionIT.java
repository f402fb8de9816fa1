package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.FastMain;
import quarterturn.jar.Packaged;

/** Whole sessions by keys, in the real jar, on a clock that runs fast. Necks are invented. */
class WholeSessionIT {
  /** The heading of the dial. */
  private static final Pattern TURN = Pattern.compile("(TIGHTEN|LOOSEN) +(\\d+)/(\\d+) turn");

  @TempDir Path data;

  private double gap;

  /** How far the last turn was, as it is typed. */
  private String amount = "";

  private PtyScreen start(int columns, int rows, Map<String, String> environment, String... args)
      throws IOException {
    List<String> words = new ArrayList<>(List.of("3000"));
    words.addAll(List.of(args));
    words.addAll(List.of("--data", data.toString()));
    List<String> command = Packaged.test(FastMain.class, List.of(), words);
    return PtyScreen.start(columns, rows, environment, command.toArray(String[]::new));
  }

  @Test
  void aBackBowedBassByKeysFromTheHomeView() throws Exception {
    gap = -0.12;
    try (PtyScreen screen = start(80, 24, Map.of())) {
      screen.waitFor("1  Neck relief").keys("\r");
      play(screen, 0.24);
      assertThat(screen.sent()).contains("WARNING");
      screen.keys("q");
      assertThat(screen.exitStatus()).isEqualTo(0);
      assertThat(screen.onAlternateScreen()).isFalse();
    }
    assertThat(gap).isAtLeast(0.30);
    assertThat(gap).isAtMost(0.45);
    assertThat(journal()).contains("\"outcome\":\"in-window\"");
  }

  @Test
  void tooMuchReliefInALargeWindowWithoutColour() throws Exception {
    gap = 0.62;
    try (PtyScreen screen =
        start(140, 45, Map.of("NO_COLOR", "1"), "start", "relief", "--kind", "bass-34")) {
      screen.waitFor("How does the player play?");
      play(screen, 0.2);
      assertThat(screen.exitStatus()).isEqualTo(0);
      assertThat(screen.sent()).doesNotContainMatch("\u001b\\[(3|4|9|10)[0-7](;\\d+)*m");
    }
    assertThat(gap).isAtMost(0.45);
    assertThat(journal()).contains("\"outcome\":\"in-window\"");
  }

  @Test
  void aRehearsalPlaysByItself() throws Exception {
    try (PtyScreen screen =
        start(80, 24, Map.of(), "rehearse", "--neck", "stripped", "--auto", "--speed", "300")) {
      screen.waitFor("HAND OVER").waitFor("rounded").keys("\r");
      assertThat(screen.exitStatus()).isEqualTo(1);
      assertThat(screen.onAlternateScreen()).isFalse();
    }
    assertThat(data.toFile().list()).isEmpty();
  }

  @Test
  void oneWhoWatchesCanLeave() throws Exception {
    try (PtyScreen screen = start(80, 24, Map.of())) {
      screen.waitFor("Watch a session").keys("7\r").waitFor("A rehearsal on a simulated neck");
      screen.keys("q").waitFor("nothing of it is saved").keys("y");
      screen.waitFor("Watch a session").keys("q");
      assertThat(screen.exitStatus()).isEqualTo(0);
      assertThat(screen.sent()).contains("Of a rehearsal nothing is kept.");
    }
  }

  @Test
  void aResizeATooSmallWindowAndSigtermLeaveInOrder() throws Exception {
    try (PtyScreen screen = start(80, 24, Map.of(), "start", "relief", "--kind", "bass-34")) {
      screen.waitFor("How does the player play?").resize(140, 45);
      screen.waitFor("Hard attack").resize(40, 10).waitUntilGone("Hard attack");
      screen.waitFor("60").resize(80, 24).waitFor("How does the player play?");
      screen.keys("1\r").waitFor("Press u:").keys("u").waitFor("local rules come");
      screen.signal("TERM", screen.handle());
      screen.exitStatus();
      assertThat(screen.onAlternateScreen()).isFalse();
      assertThat(screen.cursorHidden()).isFalse();
    }
    assertThat(journal()).contains("\"event\":\"chose\"");
  }

  @Test
  void ctrlCLeavesInOrderAndResumeGoesOn() throws Exception {
    try (PtyScreen screen = start(80, 24, Map.of(), "start", "relief", "--kind", "bass-34")) {
      screen
          .waitFor("How does the player play?")
          .keys("1\r")
          .waitFor("Press u:")
          .keys("u")
          .waitFor("local rules come");
      screen.keys("\u0003");
      assertThat(screen.exitStatus()).isEqualTo(130);
    }
    assertThat(journal()).contains("\"event\":\"left\"");
    try (PtyScreen screen = start(80, 24, Map.of(), "resume")) {
      screen.waitFor("Welcome back").keys("\r").waitFor("Press u:").keys("u");
      screen.waitFor("local rules come").keys("q");
      screen.waitFor("Leave now?").keys("y");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
  }

  private String journal() throws IOException {
    try (var files = Files.list(data.resolve("sessions"))) {
      Path file = files.filter(f -> f.toString().endsWith(".jsonl")).findFirst().orElseThrow();
      return Files.readString(file);
    }
  }

  private static final String HOME = "setting up a fretted instrument";

  /**
   * Answers whatever is on the screen until the session has ended, and with it the program, or the
   * home view is back.
   */
  private void play(PtyScreen screen, double response) throws Exception {
    String before = "";
    long end = System.nanoTime() + java.time.Duration.ofSeconds(100).toNanos();
    while (System.nanoTime() < end) {
      String text = changed(screen, before);
      boolean home = !before.isEmpty() && text.contains(HOME);
      if (home || !screen.onAlternateScreen()) {
        return;
      }
      before = text;
      String keys = keys(text, response);
      if (!keys.isEmpty()) {
        screen.keys(keys);
      }
    }
    throw new AssertionError("it never ended\n" + screen.text());
  }

  private static String changed(PtyScreen screen, String before) throws InterruptedException {
    for (int i = 0; i < 500 && screen.text().equals(before); i++) {
      Thread.sleep(10);
    }
    String text = screen.text();
    Thread.sleep(60);
    return screen.text().equals(text) ? text : changed(screen, text);
  }

  private String keys(String text, double response) {
    if (text.contains("u understood")) {
      return "u";
    } else if (text.contains("Enter turned")) {
      if (!text.contains("more below")) {
        turn(text, response);
      }
      return "\r";
    } else if (text.contains("Tab: the other way")) {
      return "\u001b[B" + amount + "\r";
    } else if (text.contains("gap in mm")) {
      return reading() + "\r";
    } else if (text.matches("(?s).*mark +Enter accept.*")) {
      return "1\r";
    } else if (text.contains("nothing to write")) {
      return "-\r";
    } else if (text.contains("left, until")) {
      return "";
    }
    return "\r";
  }

  private void turn(String text, double response) {
    Matcher m = TURN.matcher(text);
    if (!m.find()) {
      throw new AssertionError("no turn on the screen\n" + text);
    }
    amount = m.group(2) + "/" + m.group(3);
    double turn = Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3));
    gap -= (m.group(1).equals("TIGHTEN") ? turn : -turn) * 4 * response;
  }

  private String reading() {
    if (gap <= 0) {
      return "touches";
    }
    double low = Math.floor(gap / 0.05 + 1e-9) * 0.05;
    return String.format("%.2f passes %.2f lifts", low, low + 0.05);
  }
}
