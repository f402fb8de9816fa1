package quarterturn.session.engine;

import static java.util.stream.Collectors.joining;

import java.time.Duration;
import java.time.Instant;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.WireList;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.figures.BridgeEnds;
import quarterturn.unit.Bracket;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Checks an answer against its prompt and makes its event, or refuses it. */
final class Examiner {
  private static final int LONGEST_NOTE = 300;

  private final Walk walk;
  private final Pauses pauses;

  Examiner(Walk walk) {
    this.walk = walk;
    this.pauses = new Pauses(walk);
  }

  Event examine(State state, Prompt prompt, Answer answer, Instant now) throws RefusedException {
    if (answer instanceof Answer.Correct) {
      if (!state.correctable() || prompt.ended()) {
        throw new RefusedException("There is no answer here that can be taken back.");
      }
      require(
          !stopTakenBack(state),
          "A sign to stop is not taken back. The rod is not turned again here; let a repairer look"
              + " at it.");
      return new Event.Corrected(now, prompt.said().step());
    }
    if (answer instanceof Answer.Differs differs) {
      return differs(state, differs, now);
    }
    String step = prompt.said().step();
    Event.Adjusted adjusted = prompt instanceof Prompt.Tell ? walk.adjusting(state) : null;
    if (adjusted != null) {
      require(answer instanceof Answer.Confirmed, "Confirm when it is done.");
      return adjusted.at(now);
    }
    if (prompt instanceof Prompt.Tell || prompt instanceof Prompt.Caution) {
      String first =
          prompt instanceof Prompt.Tell
              ? "Confirm when it is done."
              : "Read the hazard and accept it first.";
      require(answer instanceof Answer.Confirmed, first);
    }
    Step.Pause pause = pauses.now(state);
    if (pause != null && (prompt instanceof Prompt.Choose || prompt instanceof Prompt.Measure)) {
      return pauses.examine(state, pause, answer, now);
    }
    return prompt
        .match(
            new Prompt.Cases<Taking>(
                tell -> () -> new Event.Told(now, step, walk.changes(state, step, null)),
                caution -> () -> Event.Accepted.of(now, step, caution.hazards()),
                choose -> () -> chose(state, choose, answer, now),
                write -> () -> wrote(state, step, answer, now),
                measure -> () -> read(state, measure, answer, now),
                turn -> () -> turned(turn, answer, now),
                wait -> () -> waited(wait, answer, now),
                done -> Examiner::ended,
                handOver -> Examiner::ended))
        .event();
  }

  private Event differs(State state, Answer.Differs differs, Instant now) throws RefusedException {
    Recorded what = differs.what();
    Kind kind = walk.kind(state);
    boolean asked = new ShortPath(walk).all(state).stream().noneMatch(one -> one.what() == what);
    require(!asked && state.pending().ended() == null, "That is asked for here, or was already.");
    if (what.gauges() && kind != null) {
      gauges(differs.answer(), kind);
    } else {
      require(
          what.names(differs.answer()) && differs.answer().equals(Printable.of(differs.answer())),
          "\"" + differs.answer() + "\" is no answer to " + what.word() + ".");
    }
    return new Event.Chose(now, EngineQuestions.differing(what), differs.answer(), null);
  }

  /** Whether the answer that would be taken back reported a feel after which nothing is turned. */
  private boolean stopTakenBack(State state) {
    State answered = state.before();
    TurnMade last = state.history().lastTurn();
    return answered != null
        && last != null
        && answered.history().turns().size() < state.history().turns().size()
        && walk.limits().stopFeels().contains(last.feel());
  }

  /** Makes the event of one kind of answer, or refuses it. */
  private interface Taking {
    Event event() throws RefusedException;
  }

  private static Event ended() throws RefusedException {
    throw new RefusedException("The session has ended.");
  }

  private static void require(boolean taken, String message) throws RefusedException {
    if (!taken) {
      throw new RefusedException(message);
    }
  }

  private Event chose(State state, Prompt.Choose choose, Answer answer, Instant now)
      throws RefusedException {
    String allowed = choose.options().stream().map(Prompt.Option::id).collect(joining(", "));
    if (!(answer instanceof Answer.Chose chose)) {
      throw new RefusedException("Choose one of: " + allowed + ".");
    }
    require(
        choose.options().stream().anyMatch(option -> option.id().equals(chose.option())),
        "Choose one of: " + allowed + ".");
    String step = choose.said().step();
    if (step.equals(EngineQuestions.ENDS) && chose.option().equals(EngineQuestions.TAKE_BACK)) {
      return new Event.Corrected(now, step);
    }
    if (step.equals(EngineQuestions.RECALL) && state.pending().open() != null) {
      return Recall.event(chose.option(), state.pending().open(), now);
    }
    return new Event.Chose(now, step, chose.option(), walk.changes(state, step, chose.option()));
  }

  private Event wrote(State state, String step, Answer answer, Instant now)
      throws RefusedException {
    String text = answer instanceof Answer.Wrote wrote ? wrote.text().strip() : "";
    require(!text.isEmpty(), "Write one line; a hyphen stands for nothing to write.");
    require(
        text.length() <= LONGEST_NOTE && text.equals(Printable.of(text)),
        "One line of at most " + LONGEST_NOTE + " characters, please.");
    Kind kind = walk.kind(state);
    Recorded what = walk.step(state).records();
    if (what != null && what.gauges() && kind != null && !text.equals("-")) {
      gauges(text, kind);
    }
    if (what == Recorded.SADDLE_STANDS && !text.equals("-")) {
      try {
        BridgeEnds.stands(text);
      } catch (NotUnderstoodException e) {
        throw new RefusedException(
            "These are no two heights: " + e.getMessage() + "; or a hyphen if you can't measure.");
      }
    }
    return new Event.Noted(now, step, text);
  }

  private static void gauges(String text, Kind kind) throws RefusedException {
    try {
      WireList.parse(text, kind.strings().size());
    } catch (NotUnderstoodException e) {
      String usual = kind.make().gauges().stream().map(WireList::inch).collect(joining(" "));
      String example = usual.isEmpty() ? ".046 for each" : usual;
      throw new RefusedException(
          "These are no diameters of its strings: "
              + e.getMessage()
              + ". Write them with the lowest string first, for example "
              + example
              + "; or a hyphen if nobody knows them.");
    }
  }

  private Event read(State state, Prompt.Measure measure, Answer answer, Instant now)
      throws RefusedException {
    Step.Measure step = (Step.Measure) walk.step(state);
    Bracket bracket = null;
    Double value = null;
    String doubt = null;
    if (answer instanceof Answer.Measured measured && measure.quantity().bracket()) {
      bracket = measured.bracket();
      doubt = doubt(step, bracket);
    } else if (answer instanceof Answer.Value typed && !measure.quantity().bracket()) {
      value = typed.value();
      doubt = doubt(step, value);
    } else if (!(answer instanceof Answer.CannotMeasure)) {
      throw new RefusedException(
          measure.quantity() == Quantity.RELIEF
              ? "Give the thickest gauge that passes and the thinnest that pushes the string up, or"
                  + " say that it touches or that it can't be measured."
              : "Give one number in "
                  + measure.quantity().unit()
                  + ", or say it can't be measured.");
    }
    if (doubt != null) {
      // For a technician it goes on record, since the stage goes step by step from there.
      require(ShortPath.taken(state), doubt);
      return new Event.Doubted(now, step.id(), doubt);
    }
    String far = bracket == null ? null : far(state, measure, bracket);
    if (far != null) {
      return new Event.Doubted(now, step.id(), far);
    }
    return new Event.Read(
        now,
        step.id(),
        measure.quantity(),
        measure.which(),
        measure.string(),
        measure.held(),
        measure.readAt(),
        measure.step(),
        bracket,
        value);
  }

  /**
   * Why a reading is taken once more before anything is decided on it, or null: it is far from what
   * the last turn should do, and none was doubted since that turn.
   */
  private static @Nullable String far(State state, Prompt.Measure measure, Bracket bracket) {
    Prompt.Expected expected =
        measure.quantity() == Quantity.RELIEF && measure.which() == Which.LOWEST
            ? state.history().farFrom(bracket)
            : null;
    if (expected == null) {
      return null;
    }
    Event last =
        Lists.last(
            state.log(), event -> event instanceof Event.Doubted || event instanceof Event.OnRod);
    return last instanceof Event.Doubted
        ? null
        : bracket
            + " is far from what this turn should do ("
            + Notes.range(expected)
            + "). Take the gauges out and read it once more.";
  }

  private static @Nullable String doubt(Step.Measure step, Bracket bracket) {
    double low = bracket.noGap() ? Math.max(bracket.highMm(), step.least()) : bracket.lowMm();
    String doubt = doubt(step, low);
    return doubt != null
        ? doubt
        : doubt(step, bracket.beyondGauge() ? bracket.lowMm() : bracket.highMm());
  }

  /** Why a value is outside what the step calls plausible, or null. */
  private static @Nullable String doubt(Step.Measure step, double value) {
    Bench.Plausible plausible = new Bench.Plausible(step.least(), step.most());
    return plausible.holds(value) ? null : plausible.doubt(step.quantity(), value);
  }

  private static final String HOW_FAR =
      "Say how far it really turned, and how it felt, for example 1/8 smooth; 0 jammed where it did"
          + " not move.";

  private Event turned(Prompt.TurnRod prompt, Answer answer, Instant now) throws RefusedException {
    String step = prompt.said().step();
    if (answer instanceof Answer.Undo) {
      require(prompt.canUndo(), "There is no turn to take back here.");
      return new Event.UndoAsked(now, step);
    }
    Turn most = walk.limits().mostReported();
    Feel stop = stop(answer, most);
    if (stop != null) {
      return new Event.Recalled(now, step, prompt.turn(), false, stop);
    }
    if (!(answer instanceof Answer.Turned turned)) {
      throw new RefusedException(answer instanceof Answer.Felt felt ? felt.why() : HOW_FAR);
    }
    if (turned.turn().size().compareTo(most) > 0) {
      throw new RefusedException(
          "More than "
              + (most.turns() == 1 ? "a whole turn" : most)
              + " at once can't be right here. Say what was really turned; if it"
              + " was that much, leave the session and see a repairer.");
    }
    boolean still = turned.turn().turns() == 0;
    boolean moves = turned.feel() == Feel.SMOOTH || turned.feel() == Feel.FREE;
    require(
        !(still && moves),
        "A truss rod nut that turned "
            + turned.feel().word()
            + " has moved. Say how far, or that it is"
            + " jammed.");
    return new Event.Turned(now, step, turned.turn(), turned.feel());
  }

  /** A feel to stop at that comes without an amount that can be right; else null. */
  private @Nullable Feel stop(Answer answer, Turn most) {
    Feel feel =
        answer instanceof Answer.Felt felt
            ? felt.feel()
            : answer instanceof Answer.Turned turned && turned.turn().size().compareTo(most) > 0
                ? turned.feel()
                : null;
    return feel != null && walk.limits().stopFeels().contains(feel) ? feel : null;
  }

  private static Event waited(Prompt.Wait wait, Answer answer, Instant now)
      throws RefusedException {
    if (!(answer instanceof Answer.Waited waited)) {
      throw new RefusedException("Wait until the time has passed.");
    }
    if (!now.isBefore(wait.until())) {
      return new Event.Waited(now, wait.said().step(), null);
    }
    String left = EngineQuestions.span(Duration.between(now, wait.until()).plusSeconds(59));
    if (!wait.mayLift()) {
      throw new RefusedException("It is not time yet: " + left + " to go. The wood needs it.");
    }
    String reason = waited.reason();
    if (reason == null || reason.isBlank()) {
      throw new RefusedException(
          "It is not time yet: "
              + left
              + " to go. A technician may end it early by giving a"
              + " reason.");
    }
    return new Event.Waited(now, wait.said().step(), reason.strip());
  }
}
