package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.command.Captured;
import quarterturn.command.OrdinaryAnswers;
import quarterturn.command.Reworded;
import quarterturn.command.SampleFolder;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Sessions of the first version go on with this one, and count as they did. */
@Tag("slow")
@Isolated
class SampleSessionsTest {
  /** What the program words, and may word anew; place and meanwhile are said since. */
  private static final Set<String> WORDS =
      Set.of(
          "text",
          "first",
          "why",
          "labels",
          "word",
          "harm",
          "avoid",
          "page",
          "options",
          "place",
          "meanwhile");

  /** Steps that are asked now, and were not then. */
  private static final Set<String> ASKED_NOW = Set.of("nearly", "as-recorded");

  private static final ObjectMapper JSON = new ObjectMapper();

  @TempDir Path folder;
  private SampleFolder samples = new SampleFolder(Path.of("unset"));

  @BeforeEach
  void copy() throws Exception {
    samples = SampleFolder.copied(folder);
  }

  /** The sheets of the version before, as a user's own. */
  private static final Path SHEETS = Path.of("src/test/resources/quarterturn/samples/v2/own");

  private Sessions sessions(String at, @Nullable String own) {
    Clock clock = Clock.fixed(Instant.parse(at), ZoneOffset.UTC);
    Path folder = own == null ? null : own.equals("sheets") ? SHEETS : samples.in(own);
    return new Sessions(samples.store(), folder, clock);
  }

  /** What is asked after the break is told of, at the same session. */
  private Prompt resumed(String session, String at, @Nullable String own) throws Exception {
    try (Sessions.Opened opened = sessions(at, own).resume(session)) {
      assertThat(opened.name()).isEqualTo(session);
      assertThat(opened.bench().prompt().said().step()).isEqualTo("welcome-back");
      opened.bench().answer(new Answer.Confirmed());
      return opened.bench().prompt();
    }
  }

  @Test
  void unfinishedSessionsComeBackToTheSameQuestion() throws Exception {
    String later = "2027-03-01T15:30:00Z";
    Map<String, String> asked =
        Map.of(
            "2027-03-01-relief-c15s", "was-turn-made",
            "2027-03-01-relief-257j", "was-turn-made",
            "2027-03-01-relief-6fqx", "rest",
            "2027-03-01-relief-1e5x", "tune-again",
            "2027-03-01-relief-r2cw", "tune-again");
    for (Map.Entry<String, String> one : asked.entrySet()) {
      Prompt prompt = resumed(one.getKey(), later, "sheets");
      assertWithMessage(one.getKey()).that(prompt.said().step()).isEqualTo(one.getValue());
      if (prompt instanceof Prompt.Wait wait) {
        assertThat(wait.until()).isEqualTo(Instant.parse("2027-03-02T10:23:00Z"));
      }
    }
    assertThat(resumed("2027-03-01-house-relief-gtp9", later, "own").said().step())
        .isEqualTo("was-turn-made");
  }

  @Test
  void halfATurnMadeAnHourBeforeIsRested() throws Exception {
    Sessions.Wish wish = new Sessions.Wish("relief", "rest-bass", null, null, Role.BEGINNER);
    Sessions sessions = sessions("2027-03-01T11:23:00Z", null);
    try (Sessions.Opened opened = Openings.start(sessions, wish, "clock", "another")) {
      Bench bench = opened.bench();
      assertThat(bench.overview().today()).isEqualTo(new Turn(0.5));
      // As found is where the rod stood before its first session on record.
      assertThat(bench.overview().net()).isEqualTo(new Turn(0.5));
      while (!(bench.prompt() instanceof Prompt.Wait wait && wait.rest())) {
        assertThat(bench.prompt()).isNotInstanceOf(Prompt.TurnRod.class);
        assertThat(bench.prompt().ended()).isFalse();
        bench.answer(OrdinaryAnswers.to(bench, new Bracket(1.2, 1.25)));
      }
    }
  }

  @Test
  void theirOwnLimitsHold() throws Exception {
    Sessions.Wish wish = new Sessions.Wish("house-relief", "house-bass", null, null, Role.BEGINNER);
    try (Sessions.Opened opened = sessions("2027-03-05T11:23:00Z", "own").start(wish)) {
      Bench bench = opened.bench();
      while (!(bench.prompt() instanceof Prompt.TurnRod)) {
        bench.answer(OrdinaryAnswers.to(bench, new Bracket(1.2, 1.25)));
      }
      // The shipped limits let a neck whose answer is known turn a quarter here.
      assertThat(((Prompt.TurnRod) bench.prompt()).limit()).isEqualTo(Turn.EIGHTH);
      assertThat(((Prompt.TurnRod) bench.prompt()).turn().size()).isAtMost(Turn.EIGHTH);
    }
  }

  @Test
  void aConversationRunsAsItRan() throws Exception {
    said(
        "in-window",
        "2027-02-10T10:00:00Z",
        37,
        "relief",
        "--instrument",
        "sample-bass",
        "--own",
        SHEETS.toString());
    said(
        "technician",
        "2027-02-20T14:00:00Z",
        32,
        "relief",
        "--instrument",
        "brief-bass",
        "--role",
        "technician",
        "--own",
        SHEETS.toString());
    said(
        "own",
        "2027-02-25T09:00:00Z",
        13,
        "house-relief",
        "--instrument",
        "house-bass",
        "--own",
        samples.in("own").toString());
  }

  /**
   * Starts on instruments that no session has been on, and holds what came out to the sample.
   *
   * @param alike so many lines are as they were
   */
  private void said(String name, String at, int alike, String... start) throws Exception {
    SampleFolder fresh = SampleFolder.copied(folder.resolve(name));
    List<String> args = new ArrayList<>(List.of("start", "--lines", "--data"));
    Path data = folder.resolve(name + "-data");
    Files.createDirectories(data);
    Files.move(fresh.in("data/instruments"), data.resolve("instruments"));
    args.add(data.toString());
    args.addAll(List.of(start));
    Clock clock = Clock.fixed(Instant.parse(at), ZoneOffset.UTC);
    String printed = Reworded.now(samples.text("lines/" + name + ".out.jsonl"));
    // A beginner reads of a string by its letter; a technician reads two notes less.
    String said =
        name.equals("technician")
            ? printed
                .replaceAll(",\"notes\":\\[\"The list is complete[^\"]*\"\\]", "")
                .replaceAll("\"After the turn every reading is stale[^\"]*\", ?", "")
            : printed.replace(" on E1: ", " on E: ");
    List<JsonNode> then = all(said);
    String in = onOnePage(samples.text("lines/" + name + ".in.jsonl"), then);
    in = name.equals("in-window") ? wentOn(in) : in;
    Captured ran = Captured.of(clock, in, args.toArray(String[]::new));
    assertThat(ran.status()).isEqualTo(0);
    List<JsonNode> out = lines(then);
    List<JsonNode> now = lines(all(ran.out()));
    // A nut with no turn on record is freed first, which counts: the day is spent a turn sooner.
    assertThat(now.subList(0, alike)).isEqualTo(out.subList(0, alike));
  }

  /**
   * Answers with one more after a reading just outside its window: that one wants to go on; and one
   * before the kind of rod, which is another than on record. The samples are older than these
   * questions.
   */
  private static String wentOn(String in) {
    return in.replaceAll(
            "(?m)^(.*\"lifts_mm\": 0.45, (\"at\".*))$", "$1\n{\"answer\": \"go-on\", $2")
        .replaceAll(
            "(?m)^(\\{\"answer\": \"single\", (\"at\".*))$", "{\"answer\": \"differs\", $2\n$1");
  }

  private static List<JsonNode> all(String text) throws Exception {
    List<JsonNode> all = new ArrayList<>();
    for (String line : text.split("\n")) {
      all.add(JSON.readTree(line));
    }
    return all;
  }

  /** Whether a prompt is of a hazard of the step whose hazards the one before began. */
  private static boolean onPage(List<JsonNode> prompts, int at) {
    return at > 0
        && prompts.get(at).path("prompt").asText().equals("hazard")
        && prompts.get(at - 1).path("prompt").asText().equals("hazard")
        && prompts.get(at - 1).path("step").equals(prompts.get(at).path("step"));
  }

  /** Answers with one for all hazards of a step. The samples are older than such pages. */
  private static String onOnePage(String in, List<JsonNode> prompts) {
    String[] answers = in.split("\n");
    List<String> kept = new ArrayList<>();
    for (int i = 0; i < answers.length; i++) {
      if (i >= prompts.size() || !onPage(prompts, i)) {
        kept.add(answers[i]);
      }
    }
    return String.join("\n", kept) + "\n";
  }

  /**
   * The prompts without those questions, their notes at the prompt after it, and hazards as pages.
   */
  private static List<JsonNode> lines(List<JsonNode> all) {
    List<JsonNode> lines = new ArrayList<>();
    JsonNode notes = null;
    for (int i = 0; i < all.size(); i++) {
      ObjectNode json = all.get(i).deepCopy();
      if (ASKED_NOW.contains(json.path("step").asText())) {
        notes = json.get("notes");
        continue;
      }
      if (onPage(all, i)) {
        ((ArrayNode) lines.get(lines.size() - 1).get("hazards"))
            .addAll((ArrayNode) json.get("hazards"));
        continue;
      }
      if (notes != null) {
        json.set("notes", notes);
        notes = null;
      }
      lines.add(json.without(WORDS));
    }
    return lines;
  }
}
