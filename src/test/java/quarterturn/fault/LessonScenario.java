package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Plan;
import quarterturn.lesson.Questioning;
import quarterturn.lesson.store.LessonFolder;
import quarterturn.lesson.store.PlanFile;
import quarterturn.lesson.store.Sign;
import quarterturn.lesson.store.Striking;
import quarterturn.lesson.store.WriterFile;
import quarterturn.lesson.store.WriterLog;
import quarterturn.platform.Folders;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;

/**
 * A lesson is planned, two benches and the desk write what happens, one of them in two sittings,
 * the desk ends it, and a name is struck. All of it is invented.
 */
final class LessonScenario implements Scenario {
  private static final String ID = "2027-03-01-first-turn";
  private static final Instant AT = Instant.parse("2027-03-01T09:00:00Z");
  private static final String NAME = "Ana";

  /** She came after Cleo, since the blue bench is read first. */
  private static final String NUMBER = "student 2";

  private static final Map<String, List<LessonEvent>> WRITTEN =
      new TreeMap<>(
          Map.of(
              "red",
              List.of(
                  new LessonEvent.Joined(AT, "red"),
                  new LessonEvent.Came(AT, NAME),
                  new LessonEvent.Came(AT, "Ben"),
                  new LessonEvent.Stopped(AT, "Ana was called away"),
                  new LessonEvent.Went(AT, NAME),
                  new LessonEvent.Left(AT, true)),
              "blue",
              List.of(
                  new LessonEvent.Joined(AT, "blue"),
                  new LessonEvent.Came(AT, "Cleo"),
                  new LessonEvent.Left(AT, true)),
              "desk",
              List.of(
                  new LessonEvent.Ordered(AT, "red", new Order.Hold("ask Ana first")),
                  new LessonEvent.Ordered(AT, "red", new Order.SetLevel(NAME, Level.WORKED, false)),
                  new LessonEvent.Ordered(AT, null, new Order.End()))));

  private static final List<Event> SESSION =
      List.of(
          SessionScenario.PLAYED.events().get(0), new Event.Noted(AT, "note", "Ana: it creaks"));

  /** How far a play has come. */
  private enum Phase {
    PLANNING,
    PLANNED,
    STRIKING,
    STRUCK
  }

  private final Plan plan;
  private final Map<String, Integer> acknowledged = new TreeMap<>();
  private Phase phase = Phase.PLANNING;

  /**
   * @param expected whether the name that is struck stands in the plan too
   */
  LessonScenario(boolean expected) {
    plan =
        new Plan(
            ID,
            "The first turn (invented)",
            List.of("relief"),
            Demo.PLAN.instruments(),
            Level.WORKED,
            true,
            List.of(),
            false,
            expected ? List.of(NAME, "Ben") : List.of(),
            Map.of(),
            Questioning.SOME);
    WRITTEN.keySet().forEach(writer -> acknowledged.put(writer, 0));
  }

  @Override
  public void play(Path top) throws Exception {
    Path folder = top.resolve("lesson");
    Folders.make(folder);
    Folders.replace(
        folder.resolve(LessonFolder.PLAN), PlanFile.text(plan).getBytes(StandardCharsets.UTF_8));
    phase = Phase.PLANNED;
    write(folder, "red", 3);
    write(folder, "blue", 3);
    write(folder, "desk", 2);
    write(folder, "red", 6);
    session(folder.resolve("red"));
    write(folder, "desk", 3);
    Striking striking = Striking.of(folder, NAME, AT);
    phase = Phase.STRIKING;
    striking.write(() -> {});
    phase = Phase.STRUCK;
  }

  private static List<LessonEvent> written(String writer) {
    return WRITTEN.getOrDefault(writer, List.of());
  }

  /** The file of a writer, or a word on why the name can't be used. */
  private static WriterFile opened(Path folder, String writer) throws IOException {
    WriterLog.Part part = writer.equals("desk") ? WriterLog.Part.BOARD : WriterLog.Part.BENCH;
    try {
      return WriterFile.of(folder, ID, writer, part);
    } catch (NotUnderstoodException e) {
      throw new IOException(e);
    }
  }

  private void write(Path folder, String writer, int upTo) throws IOException {
    try (WriterFile file = opened(folder, writer)) {
      new Sign(1, AT).write(folder, writer);
      for (int n = acknowledged.getOrDefault(writer, 0); n < upTo; n++) {
        file.append(List.of(written(writer).get(n)));
        acknowledged.put(writer, n + 1);
      }
      Sign.remove(folder, writer);
    }
  }

  private static void session(Path data) throws IOException {
    Store.Created made =
        Store.at(data)
            .create("relief", 1, "0".repeat(16), LocalDate.parse("2027-03-01"), new Random(1));
    try (Journal journal = made.journal()) {
      journal.append(SESSION);
    }
  }

  @Override
  public void check(Path top) throws Exception {
    Path folder = top.resolve("lesson");
    if (phase == Phase.PLANNING) {
      if (Files.exists(folder.resolve(LessonFolder.PLAN))) {
        assertThat(PlanFile.in(folder)).isEqualTo(plan);
      }
      return;
    }
    Plan found = PlanFile.in(folder);
    if (phase == Phase.PLANNED) {
      assertThat(found).isEqualTo(plan);
      unstruck(folder);
      return;
    }
    assertThat(found).isAnyOf(plan, plan.without(NAME));
    if (phase == Phase.STRIKING) {
      again(folder);
    }
    assertThat(PlanFile.in(folder)).isEqualTo(plan.without(NAME));
    struck(folder);
  }

  private void unstruck(Path folder) throws IOException {
    for (Map.Entry<String, List<LessonEvent>> of : WRITTEN.entrySet()) {
      String writer = of.getKey();
      int sure = acknowledged.getOrDefault(writer, 0);
      int there = 0;
      for (WriterLog log : LessonFolder.read(folder).logs()) {
        if (log.header() != null && log.header().writer().equals(writer)) {
          there = log.events().size();
          assertThat(log.events()).isEqualTo(of.getValue().subList(0, there));
          assertWithMessage("damage of %s", writer).that(log.damagedAtLine()).isEqualTo(0);
        }
      }
      assertWithMessage("events of %s", writer).that(there).isAtLeast(sure);
      assertWithMessage("events of %s", writer).that(there).isAtMost(sure + 1);
      opens(folder, writer, there);
    }
  }

  /** Holds a writer's file to being gone on with, by the same command as before. */
  private static void opens(Path folder, String writer, int there) throws IOException {
    LessonEvent more = new LessonEvent.Joined(AT, writer);
    int size;
    try (WriterFile file = opened(folder, writer)) {
      size = file.found().events().size();
      file.append(List.of(more));
    } catch (IOException e) {
      // Where nothing was ever written, the file may be empty, or one without a first line.
      assertThat(e)
          .hasMessageThat()
          .containsMatch("has no whole first line|it is empty; choose another name");
      assertThat(there).isEqualTo(0);
      return;
    }
    assertThat(size).isEqualTo(there);
  }

  /** Strikes the name once more, where any file still has it. */
  private static void again(Path folder) throws Exception {
    try {
      Striking.of(folder, NAME, AT).write(() -> {});
    } catch (NotUnderstoodException e) {
      // All of it was done; struck looks whether that is so.
      assertThat(e).hasMessageThat().contains("nobody has that name");
    }
  }

  private static void struck(Path folder) throws IOException {
    List<String> with = new ArrayList<>();
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path file : all.filter(Files::isRegularFile).toList()) {
        if (new String(Files.readAllBytes(file), StandardCharsets.UTF_8).contains(NAME)) {
          with.add(file.toString());
        }
      }
    }
    assertWithMessage("files with the name").that(with).isEmpty();
    LessonFolder.Contents contents = LessonFolder.read(folder);
    assertThat(contents.notices()).isEmpty();
    for (WriterLog log : contents.logs()) {
      String writer = log.header() == null ? "" : log.header().writer();
      List<String> expected = new ArrayList<>();
      written(writer).forEach(e -> expected.add(e.toString().replace(NAME, NUMBER)));
      boolean changed = written(writer).stream().anyMatch(e -> e.toString().contains(NAME));
      if (changed) {
        expected.add(new LessonEvent.Struck(AT, NUMBER).toString());
      }
      assertThat(log.events().stream().map(LessonEvent::toString).toList()).isEqualTo(expected);
    }
    assertThat(contents.logs()).hasSize(WRITTEN.size());
  }
}
