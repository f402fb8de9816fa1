package quarterturn.line;

import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.DemoCourse;
import quarterturn.lesson.Direction;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Played;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Round;
import quarterturn.lesson.Value;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonSession;
import quarterturn.session.Prompt;

/**
 * In the middle of every kind of prompt, on every face: a hold, a level and the end, which the desk
 * orders, and a stop, which a student gives, take effect within a second, and what was typed so far
 * is kept. The necks are invented.
 */
@Isolated
class OrdersAtEveryPromptTest {
  private static final int AT_A_TIME = 24;
  private static final long SECOND = TimeUnit.SECONDS.toNanos(1);
  private static final long PATIENCE = 20 * SECOND;
  private static final String HOLD = "look at me";
  private static final String STOP = "it creaks";

  @TempDir Path folder;

  /**
   * A kind of prompt.
   *
   * @param there whether a bench stands at it
   * @param asks part of what is on view there
   * @param begun what is typed before something happens
   * @param rest what ends the line
   * @param json the answer as a JSON line
   * @param done whether the bench took the answer, where its session has none more for it
   */
  private record Kind(
      String name,
      String procedure,
      boolean blind,
      List<String> students,
      Predicate<LessonSession> there,
      String asks,
      String begun,
      String rest,
      String json,
      Predicate<LessonSession> done) {
    /** The same, where other keys answer on the screen. */
    Kind onScreen(String first, String then) {
      return new Kind(name, procedure, blind, students, there, asks, first, then, json, done);
    }
  }

  private static boolean at(LessonSession session, Class<? extends Prompt> prompt) {
    return gate(session) instanceof Gate.Open && prompt.isInstance(session.prompt());
  }

  private static Gate gate(LessonSession session) {
    try {
      return session.gate();
    } catch (Exception e) {
      throw new AssertionError(e);
    }
  }

  private static Round last(LessonSession session) {
    return session.lesson().rounds().get(session.lesson().rounds().size() - 1);
  }

  private static Kind prompt(
      Class<? extends Prompt> kind, String asks, String begun, String rest, String json) {
    return new Kind(
        kind.getSimpleName(),
        "relief-check",
        false,
        List.of("Ana"),
        session -> at(session, kind),
        asks,
        begun,
        rest,
        json,
        session -> false);
  }

  private static List<Kind> kinds() {
    List<String> both = List.of("Ana", "Ben");
    return List.of(
        new Kind(
            "names",
            "relief-check",
            false,
            List.of(),
            session -> true,
            "Who is at this bench",
            "Al",
            "ex\r",
            "{\"answer\":\"Alex\"}",
            session -> session.lesson().students().contains("Alex")),
        new Kind(
            "prediction",
            "relief-check",
            false,
            both,
            session ->
                gate(session) instanceof Gate.Predict predict
                    && predict.round().opened().turn()
                    && predict.missing().size() == 1,
            "no turn",
            "loo",
            "sen it looks so\r",
            "{\"answer\":\"loosen it looks so\"}",
            session ->
                last(session).predictions().values().stream()
                    .anyMatch(p -> p.direction() == Direction.LESS)),
        new Kind(
            "reading alone",
            "relief-check",
            true,
            both,
            session -> gate(session) instanceof Gate.ReadBlind read && read.missing().size() == 1,
            "your reading",
            "0.30 pas",
            "ses 0.35 lifts\r",
            "{\"answer\":\"0.30 passes 0.35 lifts\"}",
            session -> last(session).blind().values().stream().anyMatch(b -> b.lowMm() == 0.3)),
        new Kind(
            "reason",
            "relief-check",
            false,
            List.of("Ana"),
            session -> gate(session) instanceof Gate.Reflect,
            "another case",
            "",
            "a\r",
            "{\"answer\":\"a\"}",
            session -> !(gate(session) instanceof Gate.Reflect)),
        prompt(Prompt.Tell.class, "Hold the instrument", "", "\r", "{\"answer\":true}"),
        prompt(Prompt.Caution.class, "Read this before", "", "u\r", "{\"answer\":true}"),
        prompt(Prompt.Choose.class, "leave it as it is", "la", "ter\r", "{\"answer\":\"later\"}"),
        prompt(
            Prompt.Measure.class,
            "auge",
            "0.60 pas",
            "ses 0.65 lifts\r",
            "{\"passes_mm\":0.6,\"lifts_mm\":0.65}"),
        prompt(Prompt.Wait.class, "settle", "", "done\r", "{\"answer\":\"waited\"}"),
        prompt(
            Prompt.TurnRod.class,
            "turn",
            "1/8 sm",
            "ooth\r",
            "{\"turned\":0.125,\"feel\":\"smooth\"}"));
  }

  /** A bench at one face and one kind of prompt; whether the lesson ends there. */
  private record Case(Kind kind, AnyFace.Kind face, boolean ends) {}

  @Test
  void whatIsTypedIsBrokenOffAndKept() throws Exception {
    List<Case> cases = new ArrayList<>();
    for (Kind kind : kinds()) {
      for (AnyFace.Kind face : AnyFace.Kind.values()) {
        cases.add(new Case(kind, face, false));
        cases.add(new Case(kind, face, true));
      }
    }
    Map<Case, String> wrong = wrong(cases, AT_A_TIME);
    // On a busy machine a second may pass for nothing.
    for (int again = 0; again < 2 && !wrong.isEmpty(); again++) {
      wrong = wrong(wrong.keySet(), 2);
    }
    assertWithMessage(wrong.size() + " of " + cases.size()).that(wrong.values()).isEmpty();
  }

  private Map<Case, String> wrong(Collection<Case> cases, int atATime) throws Exception {
    ExecutorService pool = Executors.newFixedThreadPool(atATime);
    Map<Case, Future<String>> told = new LinkedHashMap<>();
    cases.forEach(one -> told.put(one, pool.submit(() -> wrong(one))));
    Map<Case, String> wrong = new LinkedHashMap<>();
    for (Map.Entry<Case, Future<String>> one : told.entrySet()) {
      if (!one.getValue().get().isEmpty()) {
        wrong.put(one.getKey(), one.getValue().get());
      }
    }
    pool.shutdown();
    return wrong;
  }

  /** What is wrong in one case; empty where nothing is. */
  private String wrong(Case one) {
    try (Cell cell = new Cell(one.kind(), one.face())) {
      return cell.wrong(one.ends());
    } catch (Exception | AssertionError e) {
      return one.kind().name() + " on " + one.face() + ": " + e;
    }
  }

  /** One bench at one face, and its desk. */
  private final class Cell implements AutoCloseable {
    private final Kind kind;
    private final AnyFace.Kind on;
    private final AnyFace face;
    private final LessonSession session;
    private final WriterFile desk;
    private final Thread thread;

    Cell(Kind kind, AnyFace.Kind on) throws Exception {
      this.kind = on == AnyFace.Kind.SCREEN ? keyed(kind) : kind;
      this.on = on;
      Path lesson = Files.createTempDirectory(folder, "lesson");
      session =
          DemoCourse.of(
              kind.procedure(), lesson, kind.blind(), kind.students().toArray(String[]::new));
      Played.until(session, lesson, kind.there()::test);
      desk =
          WriterFile.create(
              lesson, new WriterLog.Header(session.plan().lesson(), "annex", WriterLog.Part.BOARD));
      face = on.make();
      thread = face.begin(session);
    }

    private Kind keyed(Kind typed) {
      return switch (typed.name()) {
        case "Choose" -> typed.onScreen("2", "\r");
        case "Caution" -> typed.onScreen("", "u");
        case "TurnRod" -> typed.onScreen("\r\r\r\r1/8 sm", "ooth\r");
        case "Wait" -> typed.onScreen("", "\r");
        default -> typed;
      };
    }

    private void order(Order order) throws Exception {
      desk.append(List.of(new LessonEvent.Ordered(Instant.EPOCH, "left", order)));
    }

    private void waitFor(String what, BooleanSupplier until, long atMost)
        throws InterruptedException {
      long from = System.nanoTime();
      while (!until.getAsBoolean()) {
        if (System.nanoTime() - from > atMost) {
          throw new AssertionError(what + " did not come; there was\n" + face.shown());
        }
        Thread.sleep(5);
      }
    }

    private void shows(String text, long atMost) throws InterruptedException {
      waitFor(text, () -> face.shown().contains(text), atMost);
    }

    String wrong(boolean ends) throws Exception {
      int asked = session.asked();
      String json = kind.json();
      boolean lines = on == AnyFace.Kind.JSON;
      String begun = lines ? json.substring(0, 9) : kind.begun();
      String rest = lines ? json.substring(9) + "\r" : kind.rest();
      shows(kind.asks(), PATIENCE);
      boolean keyed = on == AnyFace.Kind.SCREEN;
      if (!ends && !keyed) {
        // A line of its own, since lines can't be put aside by hand.
        face.type(lines ? "{\"answer\":\"stop " + STOP + "\"}\r" : "stop " + STOP + "\r");
        stopped("");
      }
      boolean lastWord = !ends && on == AnyFace.Kind.TYPED && !begun.isEmpty();
      if (lastWord && !kind.name().equals("names")) {
        face.type(begun + " Stop!\r");
        shows("STOPPED.", SECOND);
        release(begun);
      } else {
        face.type(begun);
        asksAgain(begun);
      }
      if (ends) {
        order(new Order.End());
        shows("has ended the lesson", SECOND);
        return "";
      }
      order(new Order.Hold(HOLD));
      shows(HOLD, SECOND);
      release(begun);
      if (!kind.students().isEmpty()) {
        order(new Order.SetLevel("Ana", Level.OWN, true));
        waitFor("the level", () -> session.lesson().standing("Ana").level() == Level.OWN, SECOND);
        asksAgain(begun);
      }
      if (keyed) {
        face.type("\u001b[19~" + STOP + "\r");
        stopped(begun);
      }
      if (keyed && kind.name().equals("reason")) {
        // What is to be thought about is not answered at once.
        Thread.sleep(Gate.QUESTION_PAUSE.toMillis() + 500);
      }
      face.type(rest);
      waitFor("the answer", () -> session.asked() > asked || kind.done().test(session), PATIENCE);
      return "";
    }

    private void stopped(String begun) throws Exception {
      shows("STOPPED: " + STOP, SECOND);
      release(begun);
    }

    private void release(String begun) throws Exception {
      Ref keeps = session.lesson().keptBy().get(0).ref();
      order(new Order.Release(keeps, Value.NONE));
      waitFor("the release", () -> session.lesson().keptBy().isEmpty(), SECOND);
      asksAgain(begun);
    }

    /** Waits until what was begun can be gone on with. */
    private void asksAgain(String begun) throws InterruptedException {
      if (on == AnyFace.Kind.SCREEN) {
        shows(kind.asks(), PATIENCE);
        boolean field = !begun.isEmpty() && !kind.name().equals("Choose");
        shows(field ? "[ " + shownAs(begun) : shownAs(begun), PATIENCE);
      } else if (on == AnyFace.Kind.TYPED) {
        String end = ("> " + shownAs(begun)).strip();
        waitFor(
            "what was typed", () -> !last().contains("waiting") && last().endsWith(end), PATIENCE);
      }
    }

    /** The line at which is typed. */
    private String last() {
      String shown = face.shown().stripTrailing();
      return shown.substring(shown.lastIndexOf('\n') + 1).stripTrailing();
    }

    private String shownAs(String begun) {
      return kind.name().equals("reading alone") ? "*".repeat(begun.length()) : begun.strip();
    }

    @Override
    public void close() throws Exception {
      thread.interrupt();
      desk.close();
      session.close();
    }
  }
}
