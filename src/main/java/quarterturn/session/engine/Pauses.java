package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;
import quarterturn.session.RefusedException;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/**
 * Pauses, where a technician says the recorded values once more before something that is hard to
 * take back; each value is compared with the record.
 */
record Pauses(Walk walk) {
  /** Options for the direction in which the rod goes. */
  private static final List<Prompt.Option> DIRECTIONS =
      List.of(
          new Prompt.Option("tighten", "The rod is tightened: the gap is too large"),
          new Prompt.Option(
              "loosen", "The rod is loosened: the gap is too small, or there is none"));

  /** Ids of the options for the direction in which the rod goes. */
  static List<String> directions() {
    return DIRECTIONS.stream().map(Prompt.Option::id).toList();
  }

  /** Tolerance for a number that is given in another unit or with fewer digits. */
  private static final double SLACK = 1e-6;

  /**
   * A question of a pause.
   *
   * @param name the name of the value, as it can be typed
   * @param answer the recorded value
   */
  private record Due(String name, Step.Line line, Answer answer, String words) {}

  /** How many questions a pause has; zero where the pause is passed over. */
  int lines(State state, Step.Pause pause) {
    return ShortPath.taken(state) ? due(state, pause).size() : 0;
  }

  private List<Due> due(State state, Step.Pause pause) {
    List<Due> due = new ArrayList<>();
    for (Step.Line line : pause.lines()) {
      Due one = due(state, line);
      if (one != null) {
        due.add(one);
      }
    }
    return due;
  }

  /** The question for a line of a pause, or null where its value is not on record. */
  private @Nullable Due due(State state, Step.Line line) {
    Kind kind = walk.kind(state);
    if (line instanceof Step.Line.OfChoice choice) {
      String option = state.position().chosen(choice.step());
      return option == null ? null : new Due(choice.step(), line, new Answer.Chose(option), option);
    }
    if (line instanceof Step.Line.OfDirection) {
      Window window = walk.window(state);
      Reading last = state.history().last(Which.LOWEST);
      Bracket bracket = last == null ? null : last.read().bracket();
      if (window == null || bracket == null) {
        return null;
      }
      String way = bracket.middleMm() > window.middleMm() ? "tighten" : "loosen";
      return new Due(Step.Line.OfDirection.WORD, line, new Answer.Chose(way), way);
    }
    Step.Line.OfReading of = (Step.Line.OfReading) line;
    if (kind == null) {
      return null;
    }
    String string = kind.string(of.which());
    Event.Read read = Values.last(state, of.quantity(), string);
    if (read == null) {
      return null;
    }
    String name = of.quantity().word() + " " + string;
    if (read.bracket() != null) {
      return new Due(name, line, new Answer.Measured(read.bracket()), read.bracket().toString());
    }
    double value = read.value() == null ? 0 : read.value();
    String words = Decimals.plain(value) + " " + of.quantity().unit();
    return new Due(name, line, new Answer.Value(value), words);
  }

  /** The prompt for the present line of a pause. */
  Prompt prompt(State state, Step.Pause pause, PromptText said) {
    List<Due> due = due(state, pause);
    Due now = due.get(state.position().line());
    PromptText lined =
        said.saying(
            now.line() instanceof Step.Line.OfReading ? pause.id() : now.name(),
            said.text() + list(due, state.position().line()));
    if (now.line() instanceof Step.Line.OfDirection) {
      return new Prompt.Choose(lined, DIRECTIONS);
    }
    if (now.line() instanceof Step.Line.OfChoice choice
        && walk.step(state, choice.step()) instanceof Step.Choose choose) {
      return new Prompt.Choose(
          lined, choose.options().stream().map(o -> new Prompt.Option(o.id(), o.label())).toList());
    }
    Step.Line.OfReading of = (Step.Line.OfReading) now.line();
    Kind kind = walk.kind(state);
    if (kind == null) {
      throw new IllegalStateException("a reading on record has its kind");
    }
    String string = kind.string(of.which());
    Event.Read read = Values.last(state, of.quantity(), string);
    return new Prompt.Measure(
        lined,
        of.quantity(),
        of.quantity().held(kind),
        of.quantity().readAt(kind),
        of.which(),
        string,
        read == null ? 0 : read.gaugeStep());
  }

  private static String list(List<Due> due, int line) {
    StringBuilder text = new StringBuilder();
    for (int i = 0; i < due.size(); i++) {
      text.append('\n').append(i + 1).append(" of ").append(due.size()).append("  ");
      text.append(due.get(i).name()).append(": ");
      text.append(i < line ? due.get(i).words() : i == line ? "?" : "to come");
    }
    return text.toString();
  }

  /** The recorded value that a pause asks for, or null where no pause asks. */
  @Nullable Answer onRecord(State state) {
    Step.Pause pause = now(state);
    return pause == null ? null : due(state, pause).get(state.position().line()).answer();
  }

  /** The pause that asks at present, or null. */
  Step.@Nullable Pause now(State state) {
    return state.atStep() && walk.step(state) instanceof Step.Pause pause ? pause : null;
  }

  /**
   * Compares an answer with the record.
   *
   * @throws RefusedException where they differ, or the answer has no value
   */
  Event examine(State state, Step.Pause pause, Answer answer, Instant now) throws RefusedException {
    List<Due> due = due(state, pause);
    Due line = due.get(state.position().line());
    if (!answer.getClass().equals(line.answer().getClass())) {
      throw new RefusedException(
          "Say the value of " + line.name() + "; the pause goes on with nothing less.");
    }
    if (!agree(line.answer(), answer)) {
      throw new RefusedException(
          "On record stands "
              + line.name()
              + ": "
              + line.words()
              + ". If you misspoke, say it again. If the record is wrong, go back and correct it.");
    }
    return new Event.ReadBack(now, pause.id(), line.name(), line.words());
  }

  private static boolean agree(Answer record, Answer said) {
    if (record instanceof Answer.Measured on && said instanceof Answer.Measured to) {
      Bracket a = on.bracket();
      Bracket b = to.bracket();
      boolean touching = a.noGap() == b.noGap();
      return touching && a.lowMm() <= b.highMm() + SLACK && b.lowMm() <= a.highMm() + SLACK;
    }
    if (record instanceof Answer.Value on && said instanceof Answer.Value to) {
      return Math.abs(on.value() - to.value()) < SLACK;
    }
    return record.equals(said);
  }
}
