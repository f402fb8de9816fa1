package quarterturn.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Turn;

/**
 * A person at the bench with a simulated neck: sees what a prompt asks for, and does what was
 * answered. Every answer takes a while, and a wait is waited out.
 */
public final class Hands {
  private static final Duration PACE = Duration.ofMinutes(1);

  /** Percent: the air is never the matter here. */
  private static final double HUMIDITY = 50;

  private final SimulatedNeck neck;
  private final Library library;
  private Instant now;

  /**
   * @param library what the prompts are made from: it tells which steps tune and which detune
   * @param now when the first prompt is shown
   */
  public Hands(SimulatedNeck neck, Library library, Instant now) {
    this.neck = neck;
    this.library = library;
    this.now = now;
  }

  /** What time it is at this bench. */
  public Instant now() {
    return now;
  }

  /**
   * What somebody would answer who looks well and tells the truth.
   *
   * @throws IllegalArgumentException for the end of a session, which asks nothing
   */
  public Answer truth(Prompt prompt) {
    if (prompt instanceof Prompt.Tell || prompt instanceof Prompt.Caution) {
      return new Answer.Confirmed();
    } else if (prompt instanceof Prompt.Choose choose) {
      Prompt.Option seen = seen(choose);
      return new Answer.Chose((seen == null ? choose.options().get(0) : seen).id());
    } else if (prompt instanceof Prompt.Measure measure) {
      return measure.quantity().bracket() && measure.which() != null
          ? new Answer.Measured(neck.read(measure.which()))
          : new Answer.Value(HUMIDITY);
    } else if (prompt instanceof Prompt.TurnRod turn) {
      boolean turns = neck.traits().fault().turns();
      return new Answer.Turned(turns ? turn.turn() : Turn.NONE, neck.feel(turn.turn()));
    } else if (prompt instanceof Prompt.Wait) {
      return new Answer.Waited(null);
    }
    throw new IllegalArgumentException("a session that has ended asks nothing");
  }

  /** The option that says what is wrong with this neck, or null where none does. */
  Prompt.@Nullable Option seen(Prompt.Choose choose) {
    String shows = neck.traits().fault().shows();
    for (Prompt.Option option : choose.options()) {
      if (option.id().equals(shows)) {
        return option;
      }
    }
    return null;
  }

  /** Does to the neck what {@code answer} says was done. */
  public void act(Prompt prompt, Answer answer) {
    pass(PACE);
    if (prompt instanceof Prompt.Tell && answer instanceof Answer.Confirmed) {
      told(prompt);
    } else if (answer instanceof Answer.Turned turned) {
      neck.turn(turned.turn());
    }
  }

  /** Lets time pass until {@code then}, if that is still to come. */
  public void waitUntil(Instant then) {
    pass(Duration.between(now, then));
  }

  private void pass(Duration time) {
    if (!time.isNegative()) {
      now = now.plus(time);
      neck.pass(time);
    }
  }

  private void told(Prompt prompt) {
    if (step(prompt) instanceof Step.Tell tell) {
      Set<Fact> facts = tell.establishes();
      if (facts.contains(Fact.DETUNED)) {
        neck.detune();
      } else if (facts.contains(Fact.AT_PITCH)) {
        neck.tune();
      }
    }
  }

  /** The procedure's step behind a prompt, or null where the engine asks on its own account. */
  private @Nullable Step step(Prompt prompt) {
    return library.procedure(prompt.said().procedure()).steps().get(prompt.said().step());
  }
}
