package quarterturn.screen;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.condition.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;

/** Plays a list of prompts, whatever is answered, and remembers what was answered. */
public final class ScriptedBench implements Bench {
  /** The feels to stop at, which are recorded even where nobody says how far it turned. */
  private static final Set<Feel> STOPS = EnumSet.of(Feel.JAMMED, Feel.NOISE, Feel.SLIPPED);

  private final List<Prompt> prompts;
  private final List<Answer> answers = new ArrayList<>();
  private Clock clock;
  private int at;
  private final Runnable onLeave;
  private int left;

  public ScriptedBench(Clock clock, List<Prompt> prompts) {
    this(clock, prompts, () -> {});
  }

  public ScriptedBench(Clock clock, List<Prompt> prompts, Runnable onLeave) {
    this.onLeave = onLeave;
    this.clock = clock;
    this.prompts = List.copyOf(prompts);
  }

  List<Answer> answers() {
    return List.copyOf(answers);
  }

  public int timesLeft() {
    return left;
  }

  @Override
  public Prompt prompt() {
    return prompts.get(at);
  }

  @Override
  public void answer(Answer answer) throws RefusedException {
    if (answer instanceof Answer.Correct) {
      if (at == 0) {
        throw new RefusedException("There is no answer to take back yet.");
      }
      at--;
      return;
    }
    if (answer instanceof Answer.Measured measured && measured.bracket().middleMm() > 3) {
      throw new RefusedException("A gap of more than 3 mm is not plausible; read it again.");
    }
    if (answer instanceof Answer.Felt felt && !STOPS.contains(felt.feel())) {
      throw new RefusedException(felt.why());
    }
    answers.add(answer);
    at++;
  }

  @Override
  public Overview overview() {
    int part = Math.min(at, Invented.PARTS.size() - 1);
    return Invented.overview(part, Invented.trail(Math.min(at, 7)), at < 6 ? 0 : -0.125);
  }

  @Override
  public Instant now() {
    return clock.instant();
  }

  @Override
  public void setClock(Instant to) {
    clock = Clock.offset(clock, Duration.between(clock.instant(), to));
  }

  @Override
  public String leave() {
    left++;
    onLeave.run();
    return standing();
  }

  @Override
  public String standing() {
    return "Rod as found, strings at pitch.";
  }
}
