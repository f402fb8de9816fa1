package quarterturn.rehearsal.cover;

import static com.google.common.truth.Truth.assertWithMessage;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.Draws;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.Way;
import quarterturn.procedure.check.walk.Walked;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Place;
import quarterturn.session.engine.Engine;
import quarterturn.session.engine.Exact;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/**
 * The checker's walk contains the engine's sessions: after each event of a simulated session, one
 * of the situations that were walked at its step contains its state. So what is proven of all
 * situations holds of every session. Sessions go down every path, of both roles, with breaks,
 * answers taken back and answers that do not fit. What is left to the engine alone is somebody so
 * slow that tuning does not hold until the reading: there a session is no longer compared.
 */
@Tag("slow")
class ContainmentTest {
  @ParameterizedTest
  @CsvSource({
    "relief, 250",
    "setup, 100",
    "season, 30",
    "action, 30",
    "intonation, 20",
    "strings, 20",
    "relief-check, 20",
    "nut-clearance, 10",
    "pickups, 10",
    "buzz, 10"
  })
  void everyStateOfASessionIsContained(String procedure, int sessions) throws Exception {
    Library library = new Shelf(null).load(procedure);
    Engine engine = new Engine(library, new BeliefAdvisor());
    FlowGraph graph = new FlowGraph(library);
    Walked walked = new Walked(library);
    SplittableRandom random = new SplittableRandom(1);
    Map<String, Integer> missed = new LinkedHashMap<>();
    int states = 0;
    for (int i = 0; i < Draws.of(sessions); i++) {
      states += play(session(library, engine, graph, random), library, walked, random, missed);
    }
    assertWithMessage(procedure).that(missed).isEmpty();
    assertWithMessage(procedure).that(states).isAtLeast(5 * Draws.of(sessions));
  }

  /** A session that sets out for any way of the procedure. */
  private static AnySession session(
      Library library, Engine engine, FlowGraph graph, SplittableRandom random) throws Exception {
    List<Way> ways = graph.ways();
    Way goal = ways.get(random.nextInt(ways.size()));
    Place begin = new Place(library.main().id(), library.main().begin());
    List<Edge> route =
        Route.to(goal, begin, new PathState(graph, null), new HashSet<>(ways), graph, random);
    CoverageGoal coverageGoal = CoverageGoal.along(goal, route, graph, random);
    return AnySession.start(library, engine, graph, coverageGoal, random.split());
  }

  /** Plays to the end; tells how many states were compared. */
  private static int play(
      AnySession session,
      Library library,
      Walked walked,
      SplittableRandom random,
      Map<String, Integer> missed)
      throws Exception {
    List<Event> events = session.events();
    Exact exact = new Exact(library, new BeliefAdvisor(), (Event.Started) events.get(0));
    Set<Way> goal = new HashSet<>();
    goal.add(session.hands().coverageGoal().goal());
    check(exact, walked, events.get(0), missed);
    int seen = 1;
    while (!exact.late()) {
      for (; seen < events.size() && !exact.late(); seen++) {
        exact.take(events.get(seen));
        check(exact, walked, events.get(seen), missed);
      }
      if (!session.goesOn()) {
        break;
      }
      if (random.nextInt(10) == 0) {
        session.take(any(random));
      } else {
        session.step(goal);
      }
      session.hands().coverageGoal().follow(session.entered());
      session.fresh();
    }
    return seen;
  }

  /** An answer that fits or not. */
  private static Answer any(SplittableRandom random) {
    return switch (random.nextInt(8)) {
      case 0 -> new Answer.Confirmed();
      case 1 -> new Answer.Chose("yes");
      case 2 -> new Answer.Measured(new Bracket(0.30, 0.35));
      case 3 -> new Answer.Value(50);
      case 4 -> new Answer.CannotMeasure();
      case 5 -> new Answer.Turned(Turn.EIGHTH, Feel.STIFF);
      case 6 -> new Answer.Undo();
      default -> new Answer.Correct();
    };
  }

  private static void check(Exact exact, Walked walked, Event event, Map<String, Integer> missed) {
    String why = exact.atStep() && !exact.late() ? walked.misses(exact) : null;
    if (why != null) {
      String what = event.getClass().getSimpleName() + " at " + exact.place() + ": " + why;
      missed.merge(what, 1, Integer::sum);
    }
  }
}
