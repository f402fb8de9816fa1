package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.line.Invented;
import quarterturn.line.ScriptedBench;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class ScriptAnswerTest {
  private static void takes(Prompt prompt, String line, Answer answer) {
    ScriptedBench bench = ScriptPlay.bench(prompt);
    ScriptPlay play = ScriptPlay.of(bench, line);
    assertWithMessage(line).that(bench.answers()).containsExactly(answer);
    assertWithMessage(line).that(play.printed()).hasSize(2);
    assertThat(play.status()).isEqualTo(0);
  }

  private static void refuses(Prompt prompt, String line, String because) {
    ScriptedBench bench = ScriptPlay.bench(prompt);
    List<String> printed = ScriptPlay.of(bench, line).printed();
    assertWithMessage(line).that(bench.answers()).isEmpty();
    assertWithMessage(line).that(printed.get(1)).startsWith("{\"error\":\"");
    assertWithMessage(line).that(printed.get(1)).contains(because);
    assertWithMessage(line).that(printed.get(1)).contains("this prompt takes {");
    assertWithMessage(line).that(printed.get(2)).isEqualTo(printed.get(0));
    assertWithMessage(line).that(printed.get(3)).startsWith("{\"left\":");
  }

  @Test
  void tellAndHazard() {
    takes(Invented.tell(), "{\"answer\":true}", new Answer.Confirmed());
    takes(Invented.caution(), "{\"answer\":true}", new Answer.Confirmed());
    for (String no :
        List.of("{\"answer\":false}", "{\"answer\":1}", "{\"answer\":\"true\"}", "{\"at\":null}")) {
      ScriptedBench bench = ScriptPlay.bench(Invented.caution());
      assertThat(ScriptPlay.of(bench, no).printed().get(1)).startsWith("{\"error\":");
      assertThat(bench.accepted()).isEmpty();
    }
    refuses(Invented.tell(), "{\"answer\":\"yes\"}", "must be true");
  }

  @Test
  void choose() {
    takes(Invented.place(), "{\"answer\":\"sound-hole\"}", new Answer.Chose("sound-hole"));
    takes(Invented.place(), "{\"answer\":\"2\"}", new Answer.Chose("sound-hole"));
    refuses(Invented.place(), "{\"answer\":\"9\"}", "not one of the options");
    refuses(Invented.place(), "{\"answer\":\"sound\"}", "not one of the options");
    refuses(Invented.place(), "{\"answer\":2}", "must be a text");
  }

  @Test
  void relief() {
    Prompt p = Invented.relief();
    takes(p, "{\"passes_mm\":0.30,\"lifts_mm\":0.35}", new Answer.Measured(new Bracket(0.3, 0.35)));
    takes(p, "{\"passes_mm\":1}", new Answer.Measured(Bracket.passes(1)));
    takes(p, "{\"lifts_in\":0.01}", new Answer.Measured(Bracket.lifts(0.01 * 25.4)));
    takes(p, "{\"answer\":\"touches\"}", new Answer.Measured(Bracket.touches()));
    takes(p, "{\"answer\":\"cannot\"}", new Answer.CannotMeasure());
    takes(
        p, "{\"answer\":\"0.30 passes 0.35 lifts\"}", new Answer.Measured(new Bracket(0.3, 0.35)));
    refuses(p, "{\"answer\":\"ok\"}", "is not a reading");
    refuses(p, "{\"answer\":0.3}", "must be a text");
    refuses(p, "{\"passes_mm\":0.35,\"lifts_mm\":0.30}", "thinner");
    refuses(p, "{\"passes_mm\":0.30,\"lifts_mm\":0.30}", "thinner");
    refuses(p, "{\"passes_mm\":-1}", "cannot be negative");
    refuses(p, "{\"passes_mm\":1e999}", "must be a number");
    refuses(p, "{\"passes_mm\":0.3,\"passes_in\":0.01}", "not both");
    refuses(p, "{\"passes_mm\":\"0.3\"}", "must be a number");
    refuses(p, "{\"passes_mm\":4,\"lifts_mm\":5}", "not plausible");
    refuses(p, "{\"at\":\"2027-03-01T11:00:00Z\"}", "a reading is missing");
  }

  @Test
  void oneNumber() {
    Prompt p = Invented.humidity();
    takes(p, "{\"answer\":48}", new Answer.Value(48));
    takes(p, "{\"answer\":\"48 %\"}", new Answer.Value(48));
    takes(p, "{\"answer\":\"cannot\"}", new Answer.CannotMeasure());
    refuses(p, "{\"passes_mm\":0.3}", "\"passes_mm\\\" is not taken here");
    refuses(p, "{\"answer\":true}", "must be a text");
  }

  @Test
  void aPlainTurnGoesTheWayThatWasAskedFor() {
    takes(Invented.loosen(), turned("0.125"), went(-0.125));
    takes(Invented.loosen(), turned("-0.125"), went(-0.125));
    takes(Invented.tighten(), turned("0.25"), went(0.25));
    takes(Invented.tighten(), turned("-0.25"), went(-0.25));
    takes(Invented.loosen(), turned("0"), went(0));
    takes(Invented.tighten(), turned("-0.0"), went(0));
  }

  @Test
  void theWayCanBeSaidOutright() {
    String way = "{\"turned\":0.125,\"feel\":\"smooth\",\"way\":\"tighten\"}";
    takes(Invented.loosen(), way, went(0.125));
    takes(Invented.tighten(), way.replace("tighten", "loosen"), went(-0.125));
    refuses(Invented.loosen(), way.replace("0.125", "-0.125"), "without a sign");
    refuses(Invented.loosen(), way.replace("tighten", "left"), "\\\"tighten\\\" or");
  }

  @Test
  void turnNeedsAmountAndFeel() {
    refuses(Invented.loosen(), "{\"turned\":0.125}", "\\\"feel\\\" must be a text");
    refuses(Invented.loosen(), "{\"feel\":\"smooth\"}", "must say how far");
    takes(
        Invented.loosen(),
        "{\"feel\":\"jammed\"}",
        new Answer.Felt(Feel.JAMMED, "beside this feel, \"turned\" must say how far"));
    refuses(Invented.loosen(), "{\"turned\":0.125,\"feel\":\"fine\"}", "one of smooth, stiff");
    refuses(Invented.loosen(), "{\"answer\":true}", "no such answer");
    takes(Invented.tighten(), "{\"answer\":\"undo\"}", new Answer.Undo());
    takes(
        Invented.loosen(),
        "{\"turned\":0,\"feel\":\"jammed\"}",
        new Answer.Turned(Turn.NONE, Feel.JAMMED));
  }

  @Test
  void waiting() {
    takes(
        Invented.settle(),
        "{\"answer\":\"waited\",\"at\":\"2027-03-01T10:10:00Z\"}",
        new Answer.Waited(null));
    takes(
        Invented.rest(),
        "{\"answer\":\"waited\",\"reason\":\"known neck\\u0007\"}",
        new Answer.Waited("known neck\uFFFD"));
    refuses(Invented.settle(), "{\"answer\":\"waited\"}", "not passed yet");
    refuses(Invented.settle(), "{\"answer\":\"waited\",\"reason\":\" \"}", "must say why");
    refuses(Invented.settle(), "{\"answer\":true}", "must be a text");
    refuses(Invented.tell(), "{\"answer\":true,\"reason\":\"x\"}", "not taken here");
  }

  @Test
  void theClockIsSetBeforeTheAnswer() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    ScriptPlay.of(bench, "{\"answer\":true,\"at\":\"2027-03-02T10:00:00Z\"}");
    assertThat(bench.now()).isEqualTo(Instant.parse("2027-03-02T10:00:00Z"));
    String early = "{\"answer\":true,\"at\":\"2020-01-01T00:00:00Z\"}";
    refuses(Invented.tell(), early, "before the last event");
    refuses(Invented.tell(), "{\"answer\":true,\"at\":\"noon\"}", "must be a time");
    refuses(Invented.tell(), "{\"answer\":true,\"at\":5}", "must be a text");
    String far = "{\"answer\":true,\"at\":\"+1000000000-12-31T23:59:59Z\"}";
    refuses(Invented.tell(), far, "must be a time");
  }

  @Test
  void theLastAnswerCanBeTakenBack() {
    ScriptedBench bench = new ScriptedBench(Invented.tell(), Invented.tell(), Invented.done());
    ScriptPlay.of(bench, "{\"answer\":true}", "{\"answer\":\"correct\"}");
    assertThat(bench.answers())
        .containsExactly(new Answer.Confirmed(), new Answer.Correct())
        .inOrder();
    refuses(Invented.tell(), "{\"answer\":\"correct\"}", "no answer to take back");
  }

  @Test
  void whatIsNotAsRecordedIsSaidAtAnyPrompt() {
    ScriptedBench bench = ScriptPlay.bench(Invented.tell());
    ScriptPlay.of(bench, "{\"differs\":\"rod-place\",\"answer\":\"body-end\"}");
    assertThat(bench.answers()).containsExactly(new Answer.Differs(Recorded.ROD_PLACE, "body-end"));
    refuses(Invented.tell(), "{\"differs\":\"paint\",\"answer\":\"red\"}", "is not on record");
  }

  private static String turned(String amount) {
    return "{\"turned\":" + amount + ",\"feel\":\"smooth\"}";
  }

  private static Answer went(double turns) {
    return new Answer.Turned(new Turn(turns), Feel.SMOOTH);
  }
}
