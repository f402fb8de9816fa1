package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import quarterturn.session.Event;

/**
 * One session whose process is killed again and again, held against the course the same neck takes
 * when nothing happens to it: apart from the way back after each kill the two must be the same.
 */
final class KilledSession {
  /** What may come between a kill and what was next. */
  private static final Set<String> WAY_BACK =
      Set.of(
          "welcome-back",
          "was-turn-made",
          "tune-again",
          "settle-again",
          "nearly",
          "key-socket",
          "confirm",
          "detune",
          "seat");

  private final Bench bench;
  private final Neck neck;
  private final List<Place> course;
  private final Map<Integer, Moment> plan;
  private final Random random;
  private final List<Sent> sent = new ArrayList<>();

  /** What happened, for the message of a failure. */
  private final List<String> trace = new ArrayList<>();

  private final Set<String> answered = new HashSet<>();
  private JarProcess jar;
  private int at;
  private int kills;
  private boolean wayBack;
  private boolean killOnTheWay;
  private int readAgain;

  /** When a process is killed. */
  enum Moment {
    /** While the prompt is shown and nothing was answered. */
    SHOWN,
    /** At a turn, when the rod was turned and nobody has said so yet. */
    TURNED_UNSAID,
    /** Right after an answer was sent. */
    SENT,
    /** A moment after an answer was sent, too short to be sure it was taken. */
    SOON_AFTER,
    /** While the prompt is shown, and again while the program takes the session up. */
    STARTING,
    /** While the prompt is shown, and again before the reading asked for afterwards is given. */
    ON_THE_WAY_BACK
  }

  /** A prompt's place in a session. */
  record Place(String kind, String step) {
    static Place of(JsonNode prompt) {
      return new Place(prompt.path("prompt").textValue(), prompt.path("step").textValue());
    }
  }

  /** An answer that was sent; {@code taken} once the prompt after it was seen. */
  private record Sent(Said said, boolean taken) {}

  /** Whether a hazard is shown that was accepted before the last break. */
  private boolean anew;

  KilledSession(
      Bench bench, Neck neck, List<Place> course, Map<Integer, Moment> plan, Random random)
      throws IOException {
    this.bench = bench;
    this.neck = neck;
    this.course = course;
    this.plan = plan;
    this.random = random;
    this.jar = bench.start();
  }

  /** Plays to the end and returns the last prompt. */
  JsonNode play() throws IOException, InterruptedException {
    JsonNode prompt = jar.prompt();
    try {
      while (!Bench.ended(prompt)) {
        look(prompt);
        prompt = onward(prompt);
      }
    } finally {
      jar.close();
    }
    assertThat(Place.of(prompt)).isEqualTo(course.get(at));
    assertWithMessage("kills that never came").that(plan.values()).isEmpty();
    return prompt;
  }

  int kills() {
    return kills;
  }

  /** Holds a prompt against the course. */
  private void look(JsonNode prompt) {
    Place here = Place.of(prompt);
    trace.add(here.kind() + " " + here.step());
    if (here.equals(course.get(at))) {
      wayBack = false;
    }
    // What protects is accepted anew after a break, wherever its step comes.
    anew = kills > 0 && here.kind().equals("hazard") && !here.equals(course.get(at));
    if (anew) {
      assertWithMessage("asked a second time").that(answered).doesNotContain(identity(prompt));
      return;
    }
    if (wayBack) {
      assertWithMessage("on the way back to %s", course.get(at))
          .that(WAY_BACK)
          .contains(here.step());
      readAgain += here.kind().equals("measure") ? 1 : 0;
      assertWithMessage("readings taken again").that(readAgain).isAtMost(1);
    } else {
      assertWithMessage("after %s", trace).that(here).isEqualTo(course.get(at));
    }
    assertWithMessage("asked a second time").that(answered).doesNotContain(identity(prompt));
  }

  /**
   * Names what need never be asked twice; for other prompts the empty text, which is never kept.
   */
  private static String identity(JsonNode prompt) {
    return switch (prompt.path("prompt").textValue()) {
      case "hazard" -> "hazard " + prompt.path("hazards");
      // The last turn, and a reading at the edge, are asked of each time.
      case "choose" ->
          Bench.is(prompt, "was-turn-made") || Bench.is(prompt, "nearly")
              ? ""
              : "choose " + prompt.path("step");
      default -> "";
    };
  }

  /** Answers, or kills the process as planned and takes the session up again; the next prompt. */
  private JsonNode onward(JsonNode prompt) throws IOException, InterruptedException {
    Moment moment = wayBack || anew ? null : plan.remove(at);
    if (wayBack && killOnTheWay && Bench.kind(prompt).equals("measure")) {
      killOnTheWay = false;
      moment = Moment.SHOWN;
    }
    if (moment == null) {
      send(prompt);
      JsonNode next = jar.prompt();
      taken(prompt);
      return next;
    }
    if (moment == Moment.TURNED_UNSAID) {
      neck.turn(prompt);
    } else if (moment == Moment.SENT || moment == Moment.SOON_AFTER) {
      send(prompt);
      if (moment == Moment.SOON_AFTER) {
        LockSupport.parkNanos(random.nextLong(TimeUnit.MILLISECONDS.toNanos(8)));
      }
    }
    trace.add("killed: " + moment);
    kill();
    if (moment == Moment.STARTING) {
      jar = bench.resume(bench.session());
      LockSupport.parkNanos(random.nextLong(TimeUnit.MILLISECONDS.toNanos(700)));
      kill();
    }
    killOnTheWay = moment == Moment.ON_THE_WAY_BACK;
    return resume(prompt);
  }

  private void send(JsonNode prompt) throws IOException {
    ObjectNode answer;
    if (Bench.is(prompt, "was-turn-made")) {
      boolean made = neck.turns() > Promises.turns(bench.events());
      answer = JsonNodeFactory.instance.objectNode().put("answer", made ? "made" : "not-made");
    } else {
      answer = neck.answer(prompt);
    }
    bench.timed(answer, prompt);
    sent.add(new Sent(Said.of(prompt, answer), false));
    jar.send(answer.toString());
  }

  /** The answer to {@code prompt} that was sent last is on record. */
  private void taken(JsonNode prompt) {
    Sent last = sent.remove(sent.size() - 1);
    sent.add(new Sent(last.said(), true));
    if (!identity(prompt).isEmpty()) {
      answered.add(identity(prompt));
    }
    if (anew) {
      return;
    }
    if (!wayBack || last.said().what().equals("chose was-turn-made made")) {
      at++;
    }
  }

  private void kill() throws InterruptedException {
    jar.kill();
    kills++;
  }

  private JsonNode resume(JsonNode prompt) throws IOException, InterruptedException {
    List<Event> events = bench.events();
    boolean pending = !sent.isEmpty() && !sent.get(sent.size() - 1).taken();
    if (pending && onRecord(events, sent.get(sent.size() - 1).said())) {
      taken(prompt);
    }
    nothingLost(events);
    jar = bench.resume(bench.session());
    JsonNode back = jar.prompt();
    assertThat(Place.of(back)).isEqualTo(new Place("tell", "welcome-back"));
    answered.removeIf(asked -> asked.startsWith("hazard"));
    wayBack = true;
    readAgain = 0;
    send(back);
    JsonNode next = jar.prompt();
    sent.add(new Sent(sent.remove(sent.size() - 1).said(), true));
    assertWithMessage("whether the turn was made is asked")
        .that(Bench.is(next, "was-turn-made"))
        .isEqualTo(Promises.insideATurn(events));
    return next;
  }

  /** The record is what was answered, in that order, but for answers whose fate is unknown. */
  void nothingLost(List<Event> events) {
    List<Said> record = Said.all(events);
    int i = 0;
    for (Sent one : sent) {
      if (i < record.size() && same(record.get(i), one.said())) {
        i++;
      } else if (one.taken()) {
        throw new AssertionError("lost: " + one.said() + "; on record: " + record);
      }
    }
    assertWithMessage("on record and never answered").that(i).isEqualTo(record.size());
  }

  private static boolean onRecord(List<Event> events, Said said) {
    return Said.all(events).stream().anyMatch(r -> same(r, said));
  }

  /** Whether an answer is the one on record; the clock may have gone on a little in between. */
  private static boolean same(Said record, Said said) {
    return record.what().equals(said.what())
        && !record.at().isBefore(said.at())
        && record.at().isBefore(said.at().plus(Bench.PACE));
  }
}
