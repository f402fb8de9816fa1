package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.jar.Packaged;

/** The face in a pseudo-terminal, over an invented session. */
@Timeout(180)
class ScreenFaceIT {
  private static final String CTRL_C = "\u0003";
  private static final String CTRL_Z = "\u001a";
  private static final String ESC = "\u001b";

  @TempDir Path folder;

  private String[] command(String... arguments) {
    List<String> options =
        List.of(
            // As the jar says in its manifest, so that no warning stands where the hazards should.
            "--add-opens=java.base/jdk.internal.misc=ALL-UNNAMED",
            "--enable-native-access=ALL-UNNAMED",
            "-Dleft=" + folder.resolve("left"));
    return Packaged.test(ScriptedMain.class, options, List.of(arguments)).toArray(String[]::new);
  }

  /** The command in a shell that prints the terminal's modes before and after it. */
  private String[] betweenModes(String... arguments) {
    String quoted = "'" + String.join("' '", command(arguments)) + "'";
    return new String[] {
      "sh",
      "-c",
      "trap : INT; echo before=$(stty -g); " + quoted + "; echo status=$?; echo after=$(stty -g)"
    };
  }

  private static void assertSameModes(PtyScreen screen) {
    String sent = screen.sent();
    String before = word(sent, "before=");
    assertThat(before).isNotEmpty();
    assertThat(word(sent, "after=")).isEqualTo(before);
    assertThat(screen.onAlternateScreen()).isFalse();
    assertThat(screen.cursorHidden()).isFalse();
    assertThat(screen.bracketsPastes()).isFalse();
  }

  private static String word(String text, String name) {
    int at = text.lastIndexOf(name);
    return at < 0 ? "" : text.substring(at + name.length()).split("\\s", 2)[0];
  }

  private static ProcessHandle inner(PtyScreen screen) {
    return screen.handle().descendants().findFirst().orElse(screen.handle());
  }

  private long timesLeft() throws IOException {
    Path left = folder.resolve("left");
    return Files.exists(left) ? Files.readAllLines(left).size() : 0;
  }

  @Test
  void aWholeSessionByKeys() throws Exception {
    try (PtyScreen screen = PtyScreen.start(betweenModes())) {
      screen.waitFor("WARNING").keys("\r").waitFor("Enter does not accept this");
      screen.keys("u").waitFor("tune them all once more");
      screen.keys("?").waitFor("Keys of every step").keys(" ").waitUntilGone("Keys of every step");
      screen.keys("\r").waitFor("Where is the");
      screen.keys("2").waitFor("► 2").keys("\r").waitFor("NOT SEATED");
      screen.keys("\u001b[B").waitFor("► 1").keys("\r").waitFor("gauge hand");
      screen.keys("9\r").waitFor("not plausible");
      screen.keys("\u007f0.60 passes 0.65 lifts").waitFor("read as: 0.60 to 0.65 mm");
      screen.keys("\r").waitFor("times as deep");
      screen.keys("\r").waitFor("LOOSEN  1/8 turn").keys("\r").waitFor("Tab: the other way");
      screen.keys("\u001b[B").waitFor("►  It turned").keys("1/8").waitFor("45 degrees").keys("\r");
      screen.waitFor("You can close the program").keys("e").waitFor("Why may it end early?");
      screen
          .keys("known neck\r")
          .waitFor("TIGHTEN  1/4 turn")
          .keys("z")
          .waitFor("press z again")
          .keys("z");
      screen.waitFor("humidity in %").keys("c\r").waitFor("As found").keys("\r");
      screen.waitFor("after=");
      assertThat(screen.exitStatus()).isEqualTo(0);
      assertThat(screen.sent()).contains("status=0");
      assertThat(screen.text()).contains("Done: relief in the window");
      assertSameModes(screen);
      assertThat(timesLeft()).isEqualTo(0);
    }
  }

  @Test
  void leavingAsksOnceAndEscNeverLeaves() throws Exception {
    try (PtyScreen screen = PtyScreen.start(command())) {
      screen.waitFor("WARNING").keys(ESC).waitFor("Esc never leaves");
      screen.keys("q").waitFor("The instrument would be left like this");
      screen.keys(ESC).waitUntilGone("would be left");
      screen.keys("q").waitFor("would be left").keys("y");
      assertThat(screen.exitStatus()).isEqualTo(0);
      assertThat(screen.sent()).contains("resume 2026-03-02-practice");
      assertThat(timesLeft()).isEqualTo(1);
    }
  }

  @Test
  void followsTheSizeOfTheWindow() throws Exception {
    try (PtyScreen screen = PtyScreen.start(command())) {
      screen.waitFor("WARNING").keys("u").waitFor("tune them all once more");
      screen.resize(140, 45).waitFor("Relief and turns").waitFor("Finish");
      screen.resize(50, 12).waitFor("a little small: 50").waitFor("--plain");
      screen.resize(80, 24).waitFor("tune them all once more");
      screen.keys(CTRL_C);
      assertThat(screen.exitStatus()).isEqualTo(130);
    }
  }

  @Test
  void ctrlCLeavesInOrder() throws Exception {
    try (PtyScreen screen = PtyScreen.start(betweenModes())) {
      screen.waitFor("WARNING").keys(CTRL_C).waitFor("after=");
      screen.exitStatus();
      assertSameModes(screen);
      assertThat(timesLeft()).isEqualTo(1);
    }
  }

  @Test
  void terminationGivesTheTerminalBack() throws Exception {
    try (PtyScreen screen = PtyScreen.start(betweenModes())) {
      screen.waitFor("WARNING");
      screen.signal("TERM", inner(screen)).waitFor("after=");
      screen.exitStatus();
      assertThat(screen.sent()).contains("status=143");
      assertSameModes(screen);
      assertThat(timesLeft()).isEqualTo(1);
    }
  }

  @Test
  void aFailureInAnotherThreadGivesTheTerminalBack() throws Exception {
    try (PtyScreen screen = PtyScreen.start(betweenModes("break"))) {
      screen.waitFor("WARNING");
      Files.createFile(folder.resolve("break"));
      screen.waitFor("after=").exitStatus();
      assertThat(screen.sent()).contains("status=1");
      assertThat(screen.sent()).contains("invented failure");
      assertSameModes(screen);
      assertThat(timesLeft()).isEqualTo(1);
    }
  }

  @Test
  void leavesInOrderWhenTheTerminalGoesAway() throws Exception {
    try (PtyScreen screen = PtyScreen.start(command())) {
      screen.waitFor("WARNING");
      screen.hangUp();
      screen.exitStatus();
      // Without its terminal the process may be told of as ended while it still writes.
      for (int i = 0; i < 100 && timesLeft() == 0; i++) {
        Thread.sleep(50);
      }
      assertThat(timesLeft()).isEqualTo(1);
    }
  }

  @Test
  void stopsAndComesBack() throws Exception {
    Path script = folder.resolve("run");
    Files.writeString(script, "exec '" + String.join("' '", command()) + "'\n");
    try (PtyScreen screen = PtyScreen.start("bash", "--norc", "-i")) {
      screen.keys("sh " + script + "\r").waitFor("WARNING");
      screen.keys(CTRL_Z).waitFor("Stopped");
      assertThat(screen.onAlternateScreen()).isFalse();
      assertThat(screen.cursorHidden()).isFalse();
      assertThat(screen.sent()).containsMatch("\\[\\?2004l[^$]*Stopped");
      screen.keys("echo shell is $((40+2))\r").waitFor("shell is 42");
      screen.keys("fg\r").waitFor("Press u:");
      assertThat(screen.onAlternateScreen()).isTrue();
      screen.keys("u").waitFor("tune them all once more").keys(CTRL_C);
      screen.waitFor("left in order 1, status 130");
    }
  }

  @Test
  void takesTheTerminalAgainWhenItWasStoppedFromOutside() throws Exception {
    Path script = folder.resolve("run");
    Files.writeString(script, "exec '" + String.join("' '", command()) + "'\n");
    try (PtyScreen screen = PtyScreen.start("bash", "--norc", "-i")) {
      screen.keys("sh " + script + "\r").waitFor("WARNING");
      screen.signal("STOP", inner(screen)).waitFor("Stopped");
      screen.keys("clear\r").waitUntilGone("WARNING").keys("fg\r").waitFor("Press u:");
      screen.keys("u").waitFor("tune them all once more").keys(CTRL_C);
      screen.waitFor("left in order 1, status 130");
    }
  }

  /** Every tool that could be asked about a terminal notes here that it was. */
  @Test
  void startsNoOtherProcess() throws Exception {
    Path tools = Files.createDirectory(folder.resolve("tools"));
    Path started = folder.resolve("started");
    for (String tool : List.of("infocmp", "stty", "tput", "tty", "sh", "kill", "resize")) {
      Path script = tools.resolve(tool);
      Files.writeString(script, "#!/bin/sh\necho " + tool + " >> '" + started + "'\n");
      assertThat(script.toFile().setExecutable(true)).isTrue();
    }
    Map<String, String> environment =
        Map.of("TERM", "a-terminal-nobody-knows", "PATH", tools.toString());
    try (PtyScreen screen = PtyScreen.start(80, 24, environment, command())) {
      screen.waitFor("WARNING");
      assertThat(screen.handle().descendants().toList()).isEmpty();
      screen.keys(CTRL_C);
      assertThat(screen.exitStatus()).isEqualTo(130);
    }
    assertThat(Files.exists(started)).isFalse();
  }

  @Test
  void drawsInAsciiWhereTheTerminalIsNotUtf8() throws Exception {
    try (PtyScreen screen = PtyScreen.start(80, 24, Map.of("LC_ALL", "C"), command())) {
      screen.waitFor("WARNING").keys("u").waitFor("> Find the rod").keys(CTRL_C);
      assertThat(screen.exitStatus()).isEqualTo(130);
      assertThat(screen.sent().chars().allMatch(c -> c < 0x80)).isTrue();
    }
  }

  @Test
  void usesNoColourWhenTold() throws Exception {
    try (PtyScreen screen = PtyScreen.start(command("plain"))) {
      screen.waitFor("WARNING").keys(CTRL_C);
      assertThat(screen.exitStatus()).isEqualTo(130);
      assertThat(screen.sent()).doesNotContainMatch("\u001b\\[(3[0-7]|4[0-7])m");
    }
    try (PtyScreen screen = PtyScreen.start(command())) {
      screen.waitFor("WARNING").keys(CTRL_C);
      assertThat(screen.exitStatus()).isEqualTo(130);
      assertThat(screen.sent()).containsMatch("\u001b\\[4[0-7]m");
    }
  }

  @Test
  void aHandOverIsTheExitStatus() throws Exception {
    try (PtyScreen screen = PtyScreen.start(command("hand-over", "short"))) {
      screen.waitFor("HAND OVER").keys("\r");
      assertThat(screen.exitStatus()).isEqualTo(1);
      assertThat(screen.text()).contains("For a repairer: the rod gives no answer");
    }
  }
}
