package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;

/** An answer that is not taken does not set the session's clock. */
class ScriptClockTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");

  @Test
  void aRefusedAnswerDoesNotSetTheClock() throws Exception {
    List<Event> events = new ArrayList<>();
    Event.Started started =
        new Event.Started(
            NOON,
            "intake",
            1,
            "digest",
            Role.BEGINNER,
            null,
            "bass-34",
            Style.MEDIUM,
            null,
            List.of(),
            List.of(),
            null,
            null);
    Engine engine = new Engine(new Shelf(null).load("intake"), new BeliefAdvisor());
    LiveBench bench =
        LiveBench.start(engine, events::addAll, "test", started, Clock.fixed(NOON, ZoneOffset.UTC));
    String script =
        """
        {"answer":true}
        {"answer":true}
        {"answer":"-"}
        {"answer":"ordinary"}
        {"answer":"sound"}
        {"answer":"snug"}
        {"answer":"even"}
        {"answer":"-"}
        {"answer":150,"at":"2027-03-05T12:00:00Z"}
        {"answer":50}
        """;
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    new ScriptFace(
            new ByteArrayInputStream(script.getBytes(StandardCharsets.UTF_8)),
            new PrintStream(out, true, StandardCharsets.UTF_8))
        .run(bench);
    assertThat(out.toString(StandardCharsets.UTF_8)).contains("150 % is not plausible");
    assertThat(bench.now()).isEqualTo(NOON);
    assertThat(events.stream().filter(e -> e instanceof Event.Read).toList()).hasSize(1);
  }
}
