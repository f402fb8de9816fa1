package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import quarterturn.Draws;
import quarterturn.jar.KilledSession.Moment;
import quarterturn.jar.KilledSession.Place;
import quarterturn.session.Event;

/** The real process, killed at moments drawn by a seed. Necks are invented. */
@Execution(ExecutionMode.CONCURRENT)
@Order(1)
class KillIT {
  /** Kills of each kind that may fall anywhere. */
  private static final int MORE = Math.min(3, Draws.of(1));

  @TempDir Path folder;

  /** Kills at places drawn from a course, each place once. */
  private static final class Plan {
    private final List<Place> course;
    private final Random random;
    private final Map<Integer, Moment> moments = new HashMap<>();

    Plan(List<Place> course, Random random) {
      this.course = course;
      this.random = random;
    }

    void kill(int times, Moment moment, Predicate<Place> where) {
      List<Integer> places =
          new ArrayList<>(
              IntStream.range(1, course.size() - 1)
                  .filter(i -> !moments.containsKey(i) && where.test(course.get(i)))
                  .boxed()
                  .toList());
      Collections.shuffle(places, random);
      for (int place : places.subList(0, times)) {
        moments.put(place, moment);
      }
    }
  }

  private static Predicate<Place> kind(String kind) {
    return place -> place.kind().equals(kind);
  }

  private static Predicate<Place> step(String step) {
    return place -> place.step().equals(step) && !place.kind().equals("hazard");
  }

  private List<Place> course(Neck neck) throws Exception {
    Bench bench = new Bench(folder.resolve("whole"), Instant.now());
    try (JarProcess jar = bench.start()) {
      return bench.playOut(jar, neck).stream().map(Place::of).toList();
    }
  }

  /** Plays one session through its kills and returns how many there were. */
  private int survive(double gap, long seed, int more) throws Exception {
    Random random = new Random(seed);
    List<Place> course = course(Neck.of(gap, 0.2));
    Plan plan = new Plan(course, random);
    plan.kill(1, Moment.SHOWN, kind("turn"));
    plan.kill(1, Moment.TURNED_UNSAID, kind("turn"));
    plan.kill(1, Moment.SENT, kind("turn"));
    plan.kill(1, Moment.SHOWN, kind("wait"));
    plan.kill(1, Moment.SENT, kind("wait"));
    plan.kill(1, Moment.ON_THE_WAY_BACK, step("seat"));
    plan.kill(1, Moment.SENT, step("seat"));
    plan.kill(1, Moment.STARTING, kind("tell"));
    plan.kill(1, Moment.SHOWN, kind("choose"));
    plan.kill(more, Moment.SHOWN, place -> !place.kind().equals("turn"));
    plan.kill(more, Moment.SENT, place -> true);
    plan.kill(more, Moment.SOON_AFTER, place -> true);

    Bench bench = new Bench(folder.resolve("killed"), Instant.now());
    Neck neck = Neck.of(gap, 0.2);
    KilledSession session = new KilledSession(bench, neck, course, plan.moments, random);
    JsonNode end = session.play();
    assertThat(end.path("prompt").textValue()).isEqualTo("done");
    assertThat(end.path("outcome").textValue()).isEqualTo("in-window");
    assertThat(neck.gap()).isAtLeast(0.25);
    assertThat(neck.gap()).isAtMost(0.40);

    List<Event> events = bench.events();
    session.nothingLost(events);
    Promises.kept(events);
    assertThat(Promises.turns(events)).isEqualTo(neck.turns());
    shown(bench, events);
    return session.kills();
  }

  /** {@code log show} tells every event, and every reading with its value. */
  private static void shown(Bench bench, List<Event> events) throws Exception {
    JarProcess.Ran log = bench.run("log", "show", bench.session());
    assertThat(log.status()).isEqualTo(0);
    List<String> lines = log.out().lines().filter(l -> l.matches("\\d{4}-.*  .*")).toList();
    assertThat(lines).hasSize(events.size());
    for (int i = 0; i < lines.size(); i++) {
      if (events.get(i) instanceof Event.Read read && read.bracket() != null) {
        assertThat(lines.get(i)).contains(read.bracket().toString());
      } else if (events.get(i) instanceof Event.Turned turned) {
        assertThat(lines.get(i)).contains(turned.turn().toString());
      }
    }
  }

  @Test
  void aNeckWithTooMuchReliefSurvivesEveryKill() throws Exception {
    int kills = survive(0.95, 20270301, MORE);
    assertWithMessage("kills").that(kills).isAtLeast(10 + 3 * MORE);
  }

  @Test
  void aBackBowedNeckSurvivesEveryKill() throws Exception {
    int kills = survive(-0.20, 20270309, MORE);
    assertWithMessage("kills").that(kills).isAtLeast(10 + 3 * MORE);
  }

  @Test
  void afterAKillDaysAgoTheStringsAreTunedBeforeTheReading() throws Exception {
    Bench bench = new Bench(folder, Instant.now().minus(Duration.ofDays(9)));
    Neck neck = Neck.of(0.72, 0.2);
    try (JarProcess jar = bench.start()) {
      bench.playTo(jar, neck, "seat");
      jar.kill();
    }
    try (JarProcess jar = bench.resume(bench.session())) {
      List<JsonNode> back = bench.playTo(jar, neck, "turn-rod");
      assertThat(back.get(0).path("text").textValue()).contains("8 days");
      assertThat(back.stream().map(p -> p.path("step").textValue()))
          .containsAtLeast("welcome-back", "tune-again", "settle-again", "confirm", "turn-rod")
          .inOrder();
    }
    Promises.kept(bench.events());
  }

  @Test
  void aTurnNobodyIsSureOfIsCountedAndTheSessionGoesOn() throws Exception {
    Bench bench = new Bench(folder, Instant.now());
    Neck neck = Neck.of(0.72, 0.2);
    try (JarProcess jar = bench.start()) {
      List<JsonNode> prompts = bench.playTo(jar, neck, "turn-rod");
      neck.turn(prompts.get(prompts.size() - 1));
      jar.kill();
    }
    try (JarProcess jar = bench.resume(bench.session())) {
      List<JsonNode> back = bench.playTo(jar, neck, "was-turn-made");
      JsonNode asked = back.get(back.size() - 1);
      assertThat(asked.path("text").textValue()).contains("tighten the rod 1/8 turn");
      ObjectNode unsure = JsonNodeFactory.instance.objectNode().put("answer", "unsure");
      jar.send(bench.timed(unsure, asked));
      List<JsonNode> rest = bench.playOut(jar, neck);
      assertThat(rest.get(rest.size() - 1).path("outcome").textValue()).isEqualTo("in-window");
    }
    Promises.kept(bench.events());
    assertThat(Promises.turns(bench.events())).isEqualTo(neck.turns());
  }

  @Test
  void killedWhileItStartsLeavesNothingThatIsInTheWay() throws Exception {
    Random random = new Random(20270303);
    Bench bench = new Bench(folder, Instant.now());
    for (int i = 0; i < 4; i++) {
      try (JarProcess jar = bench.start()) {
        LockSupport.parkNanos(random.nextLong(TimeUnit.MILLISECONDS.toNanos(900)));
        jar.kill();
      }
    }
    JarProcess.Ran list = bench.run("log", "list");
    assertThat(list.status()).isEqualTo(0);
    assertThat(list.err()).isEmpty();
    try (JarProcess jar = bench.start()) {
      assertThat(Bench.is(jar.prompt(), "prepare")).isTrue();
    }
  }
}
