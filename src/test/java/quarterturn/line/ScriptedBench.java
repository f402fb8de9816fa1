package quarterturn.line;

import java.io.IOException;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Turn;

/** A bench that plays a list of invented prompts and keeps what it was answered. */
public final class ScriptedBench implements Bench {
  /** The feels to stop at, which are recorded even where nobody says how far it turned. */
  private static final Set<Feel> STOPS = EnumSet.of(Feel.JAMMED, Feel.NOISE, Feel.SLIPPED);

  private final List<Prompt> prompts;
  private final List<Answer> answers = new ArrayList<>();
  private final List<String> accepted = new ArrayList<>();
  private int at;
  private final List<Entry> trail = new ArrayList<>();
  private Instant now = Invented.BEGAN;
  private boolean left;
  private boolean broken;

  public ScriptedBench(List<Prompt> prompts) {
    this.prompts = List.copyOf(prompts);
  }

  public ScriptedBench(Prompt... prompts) {
    this(List.of(prompts));
  }

  /** What was answered and taken, corrections included. */
  public List<Answer> answers() {
    return answers;
  }

  /** The hazards that were accepted. */
  public List<String> accepted() {
    return accepted;
  }

  public boolean left() {
    return left;
  }

  /** From now on nothing can be written. */
  public void breakDisk() {
    broken = true;
  }

  /** Lets time pass. */
  public void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public Prompt prompt() {
    return prompts.get(at);
  }

  @Override
  public void answer(Answer answer) throws RefusedException, IOException {
    if (broken) {
      throw new IOException("the disk is full");
    }
    if (answer instanceof Answer.Correct) {
      if (at == 0) {
        throw new RefusedException("there is no answer to take back yet");
      }
      at--;
    } else if (!(answer instanceof Answer.Differs)) {
      take(answer);
      at++;
    }
    answers.add(answer);
  }

  private static boolean fits(Prompt prompt, Answer answer) {
    if (prompt instanceof Prompt.Tell || prompt instanceof Prompt.Caution) {
      return answer instanceof Answer.Confirmed;
    }
    if (prompt instanceof Prompt.Choose) {
      return answer instanceof Answer.Chose;
    }
    if (prompt instanceof Prompt.Measure) {
      return answer instanceof Answer.Measured
          || answer instanceof Answer.Value
          || answer instanceof Answer.CannotMeasure;
    }
    if (prompt instanceof Prompt.TurnRod) {
      return answer instanceof Answer.Turned
          || answer instanceof Answer.Felt
          || answer instanceof Answer.Undo;
    }
    return answer instanceof Answer.Waited;
  }

  private void take(Answer answer) throws RefusedException {
    Prompt prompt = prompt();
    boolean fits = fits(prompt, answer);
    if (!fits) {
      throw new AssertionError(answer + " is no answer to " + prompt);
    }
    if (prompt instanceof Prompt.Wait wait
        && answer instanceof Answer.Waited waited
        && waited.reason() == null
        && now.isBefore(wait.until())) {
      throw new RefusedException("the time has not passed yet");
    }
    if (answer instanceof Answer.Measured measured
        && measured.bracket().bounded()
        && measured.bracket().lowMm() > 3) {
      throw new RefusedException("a relief over 3 mm is not plausible; measure again");
    }
    if (answer instanceof Answer.Felt felt && !STOPS.contains(felt.feel())) {
      throw new RefusedException(felt.why());
    }
    if (prompt instanceof Prompt.Caution caution) {
      caution.hazards().forEach(hazard -> accepted.add(hazard.id()));
    }
    record(prompt, answer);
  }

  private void record(Prompt prompt, Answer answer) {
    if (answer instanceof Answer.Measured measured) {
      trail.add(new Entry.Reading(Invented.BEGAN, Which.LOWEST, measured.bracket(), false));
    } else if (answer instanceof Answer.Turned turned) {
      trail.add(new Entry.Turned(Invented.BEGAN, turned.turn(), turned.feel()));
    } else if (prompt instanceof Prompt.TurnRod asked && answer instanceof Answer.Felt felt) {
      trail.add(new Entry.Turned(Invented.BEGAN, asked.turn(), felt.feel()));
    }
  }

  @Override
  public Overview overview() {
    Turn net = Turn.NONE;
    for (Entry entry : trail) {
      if (entry instanceof Entry.Turned turned) {
        net = net.plus(turned.turn());
      }
    }
    return new Overview(
        "2027-03-01-demo",
        "Demo bass",
        Invented.KIND,
        Invented.WINDOW,
        "invented for the tests",
        Role.BEGINNER,
        "Neck relief",
        List.of("Before you start", "The key", "The turn", "The end"),
        Math.min(3, at * 4 / prompts.size()),
        Set.of(),
        List.copyOf(trail),
        net,
        net.size(),
        Duration.ofHours(24),
        null,
        List.of(),
        null,
        List.of());
  }

  @Override
  public Instant now() {
    return now;
  }

  @Override
  public void setClock(Instant at) throws RefusedException {
    if (at.isBefore(now)) {
      throw new RefusedException("the time lies before the last event");
    }
    now = at;
  }

  @Override
  public String leave() throws IOException {
    if (broken) {
      throw new IOException("the disk is full");
    }
    left = true;
    return standing();
  }

  @Override
  public String standing() {
    return prompt() instanceof Prompt.TurnRod
        ? "the rod may be half way through a turn"
        : "the rod stands as found; the strings are at pitch";
  }
}
