package quarterturn.lesson.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static quarterturn.lesson.Demo.BENCH;
import static quarterturn.lesson.Demo.T;
import static quarterturn.lesson.Demo.spot;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import quarterturn.lesson.Demo;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Level;
import quarterturn.lesson.Order;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Refusal;
import quarterturn.lesson.Value;
import quarterturn.session.journal.SummedLines;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class WriterLogTest {
  private static final WriterLog.Header HEADER =
      new WriterLog.Header(Demo.LESSON, BENCH, WriterLog.Part.BENCH);
  private static final Ref REF = new Ref("desk-b", 3);

  private static final List<LessonEvent> EVERY_KIND =
      List.of(
          new LessonEvent.Joined(T, "By the window"),
          Demo.came("Ana"),
          new LessonEvent.Went(T, "Ana"),
          new LessonEvent.Stepped(T, spot("read", 3)),
          new LessonEvent.Ticked(T),
          new LessonEvent.Opened(T, spot("read", 3), false, true, Demo.GAP, 0.05, "Why?"),
          new LessonEvent.Opened(T, spot("turn", 4), true, false, null, 0.0625, null),
          Demo.predicted(6, "Ana"),
          Demo.shown(6),
          Demo.blindRead(6, "Ana"),
          new LessonEvent.BlindRead(T, 6, "Ben", Bracket.touches()),
          new LessonEvent.Unveiled(T, 6),
          Demo.resulted(6),
          new LessonEvent.Resulted(T, 6, Value.NONE),
          new LessonEvent.Resulted(T, 7, new Value.Rod(new Turn(-0.125))),
          new LessonEvent.Resulted(T, 7, new Value.Number(2.1, "mm")),
          new LessonEvent.Reflected(T, 6, "Ana", "It sank.", "And then?", "More.", true),
          new LessonEvent.Reflected(T, 6, "Ben", "It rose.", null, null, false),
          new LessonEvent.Held(T, spot("turn", 4), "the turn", new Value.Rod(Turn.EIGHTH)),
          new LessonEvent.Stopped(T, "It creaked."),
          new LessonEvent.Stopped(T, null),
          new LessonEvent.AskedAgain(T, "Ana", "Why?", "So.", false, true),
          new LessonEvent.Accepted(T, REF, new Order.Release(new Ref(BENCH, 19), Demo.GAP)),
          new LessonEvent.Accepted(T, REF, new Order.Hold("Look here.")),
          new LessonEvent.Accepted(T, REF, new Order.SetLevel("Ana", Level.OWN, true)),
          new LessonEvent.Accepted(T, REF, new Order.SetLevel("Ana", null, false)),
          new LessonEvent.Declined(T, REF, Refusal.VALUE_DIFFERS),
          new LessonEvent.Ordered(T, null, new Order.End()),
          new LessonEvent.Ordered(T, BENCH, new Order.Hold("Wait.")),
          new LessonEvent.Struck(T, "student 3"),
          new LessonEvent.Left(T, true));

  private static byte[] file(List<LessonEvent> events) {
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    SummedLines.Line line = WriterLog.FORMAT.header(HEADER);
    out.writeBytes(line.bytes());
    for (int n = 1; n <= events.size(); n++) {
      line = WriterLog.FORMAT.event(n, events.get(n - 1), line.sum());
      out.writeBytes(line.bytes());
    }
    return out.toByteArray();
  }

  private static WriterLog read(byte[] bytes) {
    return WriterLog.FORMAT.scan(bytes, BENCH + ".jsonl").log();
  }

  private static Stream<Class<?>> kinds(Class<?> of) {
    Class<?>[] permitted = of.getPermittedSubclasses();
    return permitted == null ? Stream.of(of) : Arrays.stream(permitted).flatMap(k -> kinds(k));
  }

  @Test
  void everyKindOfEventComesBackAsItWas() {
    assertThat(EVERY_KIND.stream().map(Object::getClass).collect(Collectors.toSet()))
        .containsExactlyElementsIn(kinds(LessonEvent.class).collect(Collectors.toSet()));
    assertThat(read(file(EVERY_KIND))).isEqualTo(new WriterLog(HEADER, EVERY_KIND, null, 0));
  }

  @Test
  void cutAtAnyByteTheWholeLinesStand() {
    byte[] whole = file(EVERY_KIND.subList(0, 8));
    for (int length = 0; length <= whole.length; length++) {
      byte[] cut = Arrays.copyOf(whole, length);
      int lines = (int) new String(cut, StandardCharsets.UTF_8).lines().count();
      boolean clean = length > 0 && cut[length - 1] == '\n';
      int kept = Math.max(0, (clean ? lines : lines - 1) - 1);
      WriterLog log = read(cut);
      assertWithMessage("cut to %s", length)
          .that(log.events())
          .isEqualTo(EVERY_KIND.subList(0, kept));
      assertThat(log.notice() == null).isEqualTo(clean);
    }
  }

  @Test
  void aChangedByteIsNamedAndWhatStandsBeforeIsKept() {
    byte[] whole = file(EVERY_KIND.subList(0, 4));
    for (int i = 0; i < whole.length; i++) {
      byte[] changed = whole.clone();
      changed[i] ^= 1;
      WriterLog log = read(changed);
      assertWithMessage("byte %s", i).that(log.notice()).isNotNull();
      assertThat(EVERY_KIND.subList(0, log.events().size())).isEqualTo(log.events());
      assertThat(log.events().size()).isLessThan(4);
    }
  }

  @Test
  void aCopyUnderAnotherNameIsLeftOut() {
    WriterLog log = WriterLog.FORMAT.scan(file(EVERY_KIND), BENCH + " (copy).jsonl").log();
    assertThat(log.header()).isNull();
    assertThat(log.notice()).contains("a copy of bench-a's file");
  }
}
