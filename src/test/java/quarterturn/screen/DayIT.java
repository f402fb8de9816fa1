package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.command.FastMain;
import quarterturn.jar.Packaged;

/**
 * A technician's day: ten invented basses in one run of the packaged program at a terminal, typed,
 * three of them turned and left in their waits for one another.
 */
class DayIT {
  private static final Pattern TURN = Pattern.compile("\nTurn: (tighten|loosen) (\\d+)/(\\d+)");

  /** How many millimetres a whole turn takes off the gap of each. */
  private static final double RESPONSE = 1.1;

  @TempDir Path data;

  private final Map<String, Double> gaps = new HashMap<>();

  /** The basses that were left in a wait once. */
  private final Set<String> left = new HashSet<>();

  private int answers;

  private void add(String bass, double gap) throws IOException {
    gaps.put(bass, gap);
    Files.createDirectories(data.resolve("instruments"));
    Files.writeString(
        data.resolve("instruments/" + bass + ".yaml"),
        "name: \"%s\"\nkind: \"bass-34\"\nstyle: \"medium\"\ncreated: \"2027-01-01T00:00:00Z\"\n"
            .formatted(bass));
  }

  private double gap(String bass) {
    return Objects.requireNonNull(gaps.get(bass));
  }

  /** A reading by feeler gauges in steps of 0.05 mm, as a technician types it. */
  private static String gauges(double gap) {
    double low = Math.floor(gap / 0.05) * 0.05;
    return String.format(Locale.ROOT, "%.2f-%.2f", low, low + 0.05);
  }

  /** The prompt at the foot of the screen, once there is one with nothing typed behind it. */
  private static String prompt(PtyScreen screen, String before) throws InterruptedException {
    long end = System.nanoTime() + 40_000_000_000L;
    while (System.nanoTime() < end) {
      String text = screen.text();
      String foot =
          text.lines().map(String::strip).filter(line -> !line.isEmpty()).reduce("", (a, b) -> b);
      if (foot.endsWith(">") && !text.equals(before)) {
        return foot;
      }
      Thread.sleep(10);
    }
    throw new AssertionError("no prompt at the foot of\n" + screen.text());
  }

  private String answer(String prompt, PtyScreen screen, String bass) {
    return switch (prompt) {
      case "understood>" -> "u";
      case "done>" -> "";
      case "inspect>" -> "sound";
      case "relief E1>" -> gauges(gap(bass));
      case "relief G2>" -> gauges(gap(bass) - 0.05);
      case "changed>" -> "nothing; headstock; single; socket";
      case "key-socket>" -> "5 mm; fits";
      case "key-fit>" -> "fits";
      case "direction>" -> "tighten";
      case "turned>" -> turned(screen, bass);
      case "wait>" -> left.add(bass) ? "quit" : "";
      case "play-test>" -> "nowhere; all-back";
      default -> throw new AssertionError(prompt + " is not expected\n" + foot(screen.text()));
    };
  }

  private String turned(PtyScreen screen, String bass) {
    Matcher turn = TURN.matcher(screen.text());
    double way = 0;
    String amount = "";
    while (turn.find()) {
      amount = turn.group(2) + "/" + turn.group(3);
      way = turn.group(1).equals("tighten") ? 1 : -1;
    }
    String[] parts = amount.split("/");
    double turns = Double.parseDouble(parts[0]) / Double.parseDouble(parts[1]);
    gaps.merge(bass, -way * turns * RESPONSE, Double::sum);
    return amount + " smooth";
  }

  /** Answers what is asked of a bass until home is back; the lines that took. */
  private void play(PtyScreen screen, String begin, String bass) throws Exception {
    screen.keys(begin + "\r");
    String before = screen.text();
    String prompt = prompt(screen, before);
    while (!prompt.startsWith("What would you like to do?")) {
      String typed = answer(prompt, screen, bass);
      answers++;
      before = screen.text();
      assertThat(foot(before)).doesNotContain("not taken");
      screen.keys(typed + "\r");
      prompt = prompt(screen, before);
    }
  }

  @Test
  void tenInstrumentsThreeOfThemInterleaved() throws Exception {
    List<String> turned = List.of("bass-1", "bass-2", "bass-3");
    for (int number = 1; number <= 10; number++) {
      add("bass-" + number, number <= 3 ? 0.45 + 0.02 * number : 0.26 + 0.01 * number);
    }
    List<String> words =
        List.of("600", "--plain", "--role", "technician", "--data", data.toString());
    String[] command = Packaged.test(FastMain.class, List.of(), words).toArray(String[]::new);
    try (PtyScreen screen = PtyScreen.start(140, 45, Map.of(), command)) {
      screen.waitFor("What would you like to do?");
      for (String bass : turned) {
        play(screen, "relief " + bass, bass);
      }
      assertThat(screen.text()).contains("To go on with:");
      for (int number = 4; number <= 10; number++) {
        play(screen, "relief-check bass-" + number, "bass-" + number);
      }
      for (int i = 0; i < turned.size(); i++) {
        Matcher first = Pattern.compile("\\n1\\. [^\\n]*(bass-\\d+)").matcher(last(screen.text()));
        assertThat(first.find()).isTrue();
        play(screen, "1", first.group(1));
      }
      Packaged.figure("A day of ten basses: %d lines", answers);
      screen.keys("quit\r");
      assertThat(screen.exitStatus()).isEqualTo(0);
    }
    try (Stream<Path> files = Files.list(data.resolve("sessions"))) {
      List<Path> sessions = files.filter(file -> file.toString().endsWith(".jsonl")).toList();
      assertThat(sessions).hasSize(10);
      for (Path session : sessions) {
        String journal = Files.readString(session);
        assertThat(journal).contains("\"outcome\":\"in-window\"");
        assertThat(journal.split("\"event\":\"turned\"").length - 1)
            .isAtMost(journal.contains("\"procedure\":\"relief\"") ? 2 : 0);
      }
    }
  }

  /** The last lines of the screen. */
  private static String foot(String text) {
    List<String> lines = text.lines().map(String::strip).filter(line -> !line.isEmpty()).toList();
    return String.join("\n", lines.subList(Math.max(0, lines.size() - 3), lines.size()));
  }

  /** What was printed since home was shown last. */
  private static String last(String text) {
    return text.substring(Math.max(0, text.lastIndexOf("one safe turn at a time")));
  }
}
