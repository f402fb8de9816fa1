package quarterturn.lesson;

import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.store.WriterLog;
import quarterturn.lesson.student.Gate;
import quarterturn.lesson.student.LessonBench;
import quarterturn.lesson.student.Moment;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** A bench whose students do this and that. */
public final class RandomBench extends RandomWriter {
  private @Nullable LessonBench bench;
  private int asked = 1;
  private Map<Integer, Value> came = Map.of();
  private Value before = Demo.gap(0.5);

  public RandomBench(Path folder, String writer, Random random) {
    super(folder, writer, random);
  }

  private LessonBench open() {
    return requireNonNull(bench);
  }

  public BenchLesson lesson() {
    return open().lesson();
  }

  public void close() throws Exception {
    open().close();
  }

  public void move(List<WriterLog> seen) throws Exception {
    if (bench == null) {
      bench = LessonBench.at(create(WriterLog.Part.BENCH), Level.WORKED);
      bench.record(new LessonEvent.Joined(now(), writer));
      bench.record(Demo.came("Ana"));
      bench.record(Demo.came("Ben"));
    } else if (now(25)) {
      bench.close();
      bench = LessonBench.at(killedMidLine(), Level.WORKED);
    } else if (now(30)) {
      bench.record(new LessonEvent.Stopped(now(), "enough"));
    } else if (now(15)) {
      boolean here = lesson().students().contains("Ben");
      bench.record(here ? new LessonEvent.Went(now(), "Ben") : Demo.came("Ben"));
    } else {
      bench.take(seen, now());
      answer();
    }
  }

  private Moment moment() {
    boolean turn = asked % 2 == 0;
    Prompt prompt = turn ? Demo.turn() : Demo.measure();
    return Demo.moment(Demo.spot(prompt.said().step(), asked), prompt, before, came, false);
  }

  private void answer() throws Exception {
    Gate gate = open().gate(moment(), Demo.PLAN, now());
    if (gate instanceof Gate.Predict predict) {
      String student = predict.missing().get(random.nextInt(predict.missing().size()));
      Direction way = Direction.values()[random.nextInt(3)];
      Prediction guess = Demo.guess(way, random.nextDouble());
      open().record(new LessonEvent.Predicted(now(), predict.round().n(), student, guess));
    } else if (gate instanceof Gate.ReadBlind read) {
      String student = read.missing().get(random.nextInt(read.missing().size()));
      open().record(new LessonEvent.BlindRead(now(), read.round(), student, leaves()));
    } else if (gate instanceof Gate.Reflect reflect) {
      String question = reflect.question();
      String answer = question == null ? null : "Less.";
      open()
          .record(
              new LessonEvent.Reflected(
                  now(),
                  reflect.round().n(),
                  reflect.missing().get(random.nextInt(reflect.missing().size())),
                  now(2) ? "so" : null,
                  question,
                  answer,
                  now(2)));
    } else if (gate instanceof Gate.Open) {
      Value result = asked % 2 == 0 ? new Value.Rod(Turn.EIGHTH) : gap();
      Round round = lesson().pending(result instanceof Value.Rod);
      came = round == null ? Map.of() : Map.of(round.n(), result);
      if (round != null && !now(8)) {
        open().record(new LessonEvent.Resulted(now(), round.n(), result));
      }
      // Else it was killed between the session's journal and this file.
      before = result instanceof Value.Gap ? result : before;
      asked++;
    } else {
      open().record(new LessonEvent.Ticked(now()));
    }
  }

  private Value gap() {
    return new Value.Gap(leaves());
  }

  private Bracket leaves() {
    return Demo.gap(0.05 * random.nextInt(15)).bracket();
  }
}
