package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.read.ProcedureReader;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Event;
import quarterturn.session.Place;
import quarterturn.session.journal.RecordedEvents;

/**
 * Sessions that took every way of the shipped procedures, recorded when these were written out step
 * by step, go through the same steps and are asked the same in the same words. Beside each session
 * stand the steps that it went through and a digest of all that it was asked.
 *
 * <p>To accept a change on purpose, run the test with {@code -Dgolden.write=true} and read the
 * diff.
 */
class RecordedSessionsTest {
  private static final String FOLDER = "quarterturn/session/engine/recorded/";

  /** The sheets by which they were recorded, written out, with the kinds of an earlier version. */
  private static final Path SHEETS = Path.of("src/test/resources/quarterturn/samples/v2/own");

  @ParameterizedTest
  @ValueSource(
      strings = {
        "action",
        "buzz",
        "intake",
        "intonation",
        "neck-angle",
        "nut-clearance",
        "pickups",
        "relief",
        "relief-check",
        "season",
        "setup",
        "sign-off",
        "spring-bridge",
        "strings"
      })
  void isAskedTheSame(String procedure) throws Exception {
    Engine engine = new Engine(new Shelf(SHEETS).load(procedure), new BeliefAdvisor());
    List<String> played = new ArrayList<>();
    for (List<Event> session : RecordedEvents.of("/" + FOLDER + procedure + ".jsonl.gz")) {
      played.add(played(engine, session));
    }
    Path expected = Path.of("src/test/resources", FOLDER + procedure + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(expected, String.join("\n", played) + "\n");
    }
    List<String> lines = Files.readAllLines(expected);
    assertThat(played).isNotEmpty();
    for (int i = 0; i < played.size(); i++) {
      assertWithMessage("session %s of %s", i + 1, procedure)
          .that(played.get(i))
          .isEqualTo(lines.get(i));
    }
    assertThat(lines).hasSize(played.size());
  }

  /** The steps that a session goes through, and a digest of what it is asked after each event. */
  private static String played(Engine engine, List<Event> session) {
    StringBuilder asked = new StringBuilder();
    StringBuilder steps = new StringBuilder();
    State state = engine.replay(session.subList(0, 1));
    Place before = null;
    for (int i = 1; i <= session.size(); i++) {
      Place at = state.place();
      if (!at.equals(before)) {
        steps.append(steps.isEmpty() ? "" : " ").append(at.step());
      }
      before = at;
      asked.append(engine.next(state, session.get(i - 1).at())).append("\n");
      state = i < session.size() ? engine.apply(state, session.get(i)) : state;
    }
    String digest = ProcedureReader.digest(asked.toString().getBytes(StandardCharsets.UTF_8));
    return digest.substring(0, 16) + " " + steps;
  }
}
