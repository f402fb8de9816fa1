package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.LiveBench;
import quarterturn.unit.Dates;

/** What is said when a session is left, wherever and for however long, and when it ends. */
class BreaksTest {
  private static final Path FOLDER = Path.of("src/test/resources/quarterturn/line/rehearsals");

  /** Lengths of breaks in seconds, one after the other: moments, hours, days. */
  private static final int[] AWAY = {20, 40 * 60, 3 * 3600, 30 * 3600, 9 * 24 * 3600};

  @ParameterizedTest
  @CsvSource({"relief, BACK_BOW, BEGINNER", "setup, NEGLECTED, TECHNICIAN"})
  void whoComesBackIsToldHowItWasLeft(String procedure, NamedNeck neck, Role role)
      throws Exception {
    Library library = new Shelf(null).load(procedure);
    Engine engine = new Engine(library, new BeliefAdvisor());
    List<Event> events = played(procedure, neck, role).events();
    List<String> said = new ArrayList<>();
    for (int i = 2; i < events.size() - 1; i += 1 + events.size() / 25) {
      Event last = events.get(i - 1);
      Duration away = Duration.ofSeconds(AWAY[i % AWAY.length]);
      Bench bench =
          LiveBench.resume(
              engine,
              more -> {},
              "test",
              events.subList(0, i),
              new Event.Resumed(last.at().plus(away), List.of(), null),
              Clock.fixed(last.at().plus(away), ZoneOffset.UTC));
      said.add("Left after event " + i + ".");
      said.addAll(lines(bench));
      bench.answer(new Answer.Confirmed());
      said.addAll(lines(bench));
      said.add("");
    }
    compare("breaks-" + procedure + ".txt", said);
  }

  @Test
  void eachNeckEndsWithTheseWords() throws Exception {
    List<String> said = new ArrayList<>();
    for (NamedNeck neck : NamedNeck.values()) {
      said.add("A neck that is " + neck.words() + ".");
      said.addAll(lines(played("relief", neck, Role.BEGINNER)));
      said.add("");
    }
    compare("endings.txt", said);
  }

  private static PracticeBench played(String procedure, NamedNeck neck, Role role)
      throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, "bass-34", role);
    for (int i = 0; i < 900 && !bench.prompt().ended(); i++) {
      bench.answer(bench.truth());
    }
    return bench;
  }

  private static List<String> lines(Bench bench) {
    return PromptLines.of(
        bench.prompt(), bench.overview(), bench.now(), new Dates(ZoneOffset.UTC), Printed.NOTHING);
  }

  private static void compare(String name, List<String> said) throws Exception {
    Path text = FOLDER.resolve(name);
    List<String> lines = String.join("\n", said).lines().toList();
    if (Boolean.getBoolean("golden.write")) {
      Files.write(text, lines);
    }
    assertThat(lines).containsExactlyElementsIn(Files.readAllLines(text)).inOrder();
  }
}
