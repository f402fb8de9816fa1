package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.Draws;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/** The limits hold whatever a procedure file says. The files and readings here are invented. */
@Tag("slow")
class HostileProcedureTest {
  private static final int SEEDS = Draws.of(300);

  @TempDir Path folder;

  private Library library(String text) throws IOException, UnreadableException {
    Path file = folder.resolve("hostile.yaml");
    Files.writeString(file, text);
    return new Shelf(null).load(file.toString());
  }

  private static String text(String settle, String after, String amount, String turned) {
    return HostileSheet.text("hostile", settle, after, amount, turned);
  }

  private Play play(String text, double gap, double response) throws Exception {
    Play play = Play.of(library(text), Role.BEGINNER, "bass-34", Style.MEDIUM);
    BenchNeck neck = new BenchNeck(gap, response);
    for (int i = 0; i < 200 && !play.prompt().ended(); i++) {
      neck.answer(play);
    }
    return play;
  }

  private static void assertFault(Play play, int turns) {
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("procedure-fault");
    assertThat(play.state().history().turns()).hasSize(turns);
  }

  @Test
  void aTurnStraightAfterATurnIsNotShown() throws Exception {
    Play play = play(text("10 min", "slack", "advised", "turn"), 1.5, 0.1);
    int turns = 0;
    for (int i = 0; i < play.events.size(); i++) {
      if (play.events.get(i) instanceof Event.Turned) {
        assertReady(play.events.subList(0, i));
        turns++;
      }
    }
    assertThat(turns).isAtLeast(2);
  }

  @Test
  void tighteningAtFullPitchIsRefused() throws Exception {
    assertFault(play(text("10 min", "turn", "advised", "tune"), 0.8, 0.2), 0);
  }

  @Test
  void aSettleThatIsTooShortDoesNotCount() throws Exception {
    assertFault(play(text("1 min", "slack", "advised", "tune"), 0.8, 0.2), 0);
  }

  @Test
  void aTurnWithoutAnIdentifiedRodIsRefused() throws Exception {
    String text = text("10 min", "slack", "advised", "tune").replace("rod-identified, ", "");
    assertFault(play(text, 0.8, 0.2), 0);
  }

  @Test
  void aTurnWithoutAFittingKeyIsRefused() throws Exception {
    String text = text("10 min", "slack", "advised", "tune").replace("key-fits, ", "");
    assertFault(play(text, 0.8, 0.2), 0);
  }

  @Test
  void aFixedTurnAwayFromTheWindowIsRefused() throws Exception {
    assertFault(play(text("10 min", "slack", "loosen 1/4 turn", "tune"), 0.8, 0.2), 0);
  }

  @Test
  void aFixedTurnOnAnUnknownNeckIsCutToAnEighth() throws Exception {
    Play play =
        Play.of(
            library(text("10 min", "slack", "tighten 1/4 turn", "tune")),
            Role.TECHNICIAN,
            "bass-34",
            Style.MEDIUM);
    play.to("read").read("1.20..1.25").to("turn");
    assertThat(((Prompt.TurnRod) play.prompt()).turn().turns()).isEqualTo(0.125);
  }

  @Test
  void aNeckInItsWindowIsNotTurned() throws Exception {
    assertFault(play(text("10 min", "slack", "advised", "tune"), 0.37, 0.2), 0);
  }

  @Test
  void theDaysLimitPutsARestBeforeATurn() throws Exception {
    String text = text("10 min", "slack", "advised", "tune");
    Play play = Play.of(library(text), Role.BEGINNER, "bass-34", Style.MEDIUM);
    BenchNeck neck = new BenchNeck(2.0, 0.2);
    while (!(play.prompt() instanceof Prompt.Wait wait && wait.rest())) {
      neck.answer(play);
    }
    assertThat(play.state().history().today(play.bench.now()).turns()).isEqualTo(0.5);
    assertThat(play.step()).isEqualTo("turn");
    play.waited();
    assertThat(play.step()).isEqualTo("tune");
  }

  /** However long they are, waits that let every reading grow old put the turn off for ever. */
  @ParameterizedTest
  @CsvSource({"3 h", "41 min", "121 min", "30 h"})
  void waitsThatAlwaysSendBackEnd(String length) throws Exception {
    String waits =
        List.of(1, 2, 3).stream()
            .map(
                n ->
                    "  - wait: w%s\n    text: Wait.\n    for: %s\n    go: %s\n"
                        .formatted(n, length, n == 3 ? "slack" : "w" + (n + 1)))
            .collect(Collectors.joining());
    String text = text("10 min", "w1", "advised", "tune") + waits;
    Play play = play(text, 0.8, 0.2);
    assertFault(play, 0);
    assertThat(play.events.stream().filter(e -> e instanceof Event.Read).count())
        .isEqualTo(1 + play.state().history().limits().putOff());
  }

  @Test
  void noTurnAfterAStopSign() throws Exception {
    Play play =
        Play.of(
            library(text("10 min", "slack", "advised", "tune")),
            Role.BEGINNER,
            "bass-34",
            Style.MEDIUM);
    play.to("read").read("1.20..1.25").to("turn").turned(Feel.NOISE).to("read").read("1.10..1.15");
    play.ok();
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("noise");
  }

  /** A file that would turn for ever; the necks do not answer, answer backwards, or too little. */
  @ParameterizedTest
  @CsvSource({
    "0.80, 0, no-response, 2",
    "0.80, -0.2, wrong-way, 1",
    "-0.90, 0.01, no-response, 4",
    "2.90, 0.2, limit, 5"
  })
  void theEngineStopsWhereNoFileDoes(double gap, double response, String outcome, int turns)
      throws Exception {
    Play play = play(text("10 min", "slack", "advised", "tune"), gap, response);
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo(outcome);
    assertThat(play.state().history().turns()).hasSize(turns);
    assertThat(play.state().history().net().size().turns()).isAtMost(1.0);
  }

  @Test
  void aTurnWhoseFileNamesNoHazardShowsThemAllTheSame() throws Exception {
    Library library = library(text("10 min", "slack", "advised", "tune"));
    Play play = Play.of(library, Role.TECHNICIAN, "bass-34", Style.MEDIUM);
    play.to("read").read("1.20..1.25").ok();
    List<Hazard> shown = ((Prompt.Caution) play.prompt()).hazards();
    assertThat(shown.stream().map(Hazard::id).toList())
        .containsExactlyElementsIn(library.limits().turnHazards());
    assertThat(play.ok().prompt()).isInstanceOf(Prompt.TurnRod.class);
  }

  /** The shipped procedure with its ways on, facts and hazards shuffled. */
  @Test
  void aScrambledProcedureCannotBreakThePromises() throws Exception {
    String relief = shipped();
    int played = 0;
    int turns = 0;
    for (int seed = 0; seed < SEEDS; seed++) {
      Random random = new Random(seed);
      Library library;
      try {
        library = library(scrambled(relief, random));
      } catch (UnreadableException e) {
        continue;
      }
      played++;
      turns += watched(library, random);
    }
    assertThat(played).isAtLeast(SEEDS * 7 / 15);
    assertThat(turns).isAtLeast(SEEDS / 3);
  }

  private static String shipped() throws IOException {
    try (InputStream in =
        HostileProcedureTest.class.getResourceAsStream("/procedures/relief.yaml")) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  private static String scrambled(String relief, Random random) {
    List<String> lines = new ArrayList<>(relief.lines().toList());
    List<String> ids = new ArrayList<>();
    Pattern step = Pattern.compile("  - (?:tell|choose|measure|compute|turn|wait|done): (\\S+)");
    for (String line : lines) {
      Matcher m = step.matcher(line);
      if (m.matches()) {
        ids.add(m.group(1));
      }
    }
    for (int change = 0; change < 1 + random.nextInt(8); change++) {
      int at = random.nextInt(lines.size());
      for (int tries = 0; tries < 400; tries++, at = random.nextInt(lines.size())) {
        String line = lines.get(at);
        if (line.matches("\\s+go: .*")) {
          lines.set(at, line.replaceAll("go: .*", "go: " + ids.get(random.nextInt(ids.size()))));
          break;
        } else if (line.matches("\\s+(establishes|hazards): .*")) {
          lines.remove(at);
          break;
        }
      }
    }
    return String.join("\n", lines) + "\n";
  }

  /** Plays with a simulated neck and looks at each turn through the record alone. */
  private static int watched(Library library, Random random) throws IOException {
    Play play = Play.of(library, Role.values()[random.nextInt(2)], "bass-34", Style.MEDIUM);
    BenchNeck neck = new BenchNeck(-0.3 + 1.5 * random.nextDouble(), 0.25 * random.nextDouble());
    int seen = 0;
    for (int i = 0; i < 150 && !play.prompt().ended(); i++) {
      if (play.prompt() instanceof Prompt.TurnRod turn) {
        seen++;
        assertThat(turn.turn().size().turns()).isAtMost(0.25);
        assertReady(play.events);
      }
      boolean asked = play.prompt() instanceof Prompt.Choose && play.bench.onRecord() == null;
      if (asked && play.prompt() instanceof Prompt.Choose choose && random.nextInt(5) == 0) {
        play.choose(choose.options().get(random.nextInt(choose.options().size())).id());
      } else {
        neck.answer(play);
      }
    }
    return seen;
  }

  /** Since the last turn: brought to pitch, settled and read, in this order; and hazards shown. */
  private static void assertReady(List<Event> events) {
    Set<String> hazards = new HashSet<>();
    boolean turned = false;
    boolean waited = false;
    boolean read = false;
    for (Event event : events) {
      if (event instanceof Event.Accepted accepted) {
        hazards.addAll(accepted.hazards());
      } else if (event instanceof Event.Turned) {
        turned = true;
        waited = false;
        read = false;
      } else if (event instanceof Event.Waited) {
        waited = true;
      } else if (event instanceof Event.Passed passed && !turned) {
        // A technician whose strings are the old ones goes without the first wait.
        waited |= passed.step().equals("settle-first");
      } else if (event instanceof Event.Read taken && taken.bracket() instanceof Bracket) {
        read |= waited;
      }
    }
    assertWithMessage("%s", events).that(read).isTrue();
    assertThat(hazards).containsAtLeast("tool-slip", "rod-force", "wrong-key");
  }
}
