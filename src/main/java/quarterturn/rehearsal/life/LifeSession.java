package quarterturn.rehearsal.life;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.rehearsal.Hands;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.store.Beginning;
import quarterturn.session.store.OpeningDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/** One session of a life, from the questions about other records until it ends or is left. */
final class LifeSession {
  private static final int FEWEST_PROMPTS = 20;
  private static final int MOST_PROMPTS = 250;

  /** A pace at which nobody could read along. */
  private static final double FAST = 1e9;

  private final Sessions sessions;
  private final MachineClock clock;
  private final Subject subject;
  private final SplittableRandom random;
  private final Dates dates;
  private final Path files;
  private final Channel channel;
  private final Set<String> warned = new HashSet<>();
  private int prompts;
  private boolean corrected;
  private @Nullable Prompt answered;

  LifeSession(
      Sessions sessions,
      MachineClock clock,
      Subject subject,
      SplittableRandom random,
      Dates dates,
      Path files,
      Channel channel) {
    this.channel = channel;
    this.prompts = FEWEST_PROMPTS + random.nextInt(MOST_PROMPTS - FEWEST_PROMPTS);
    this.sessions = sessions;
    this.clock = clock;
    this.subject = subject;
    this.random = random;
    this.dates = dates;
    this.files = files;
  }

  /**
   * Opens the session and plays it.
   *
   * @param say takes what happens, in words
   */
  void play(Beginning beginning, Library library, Consumer<String> say) throws IOException {
    OpeningDialogue opening = new OpeningDialogue(beginning, dates);
    Owner owner = new Owner(subject, files, library.limits(), random);
    boolean anew = false;
    for (Question.Asked asked = opening.question(); asked != null; asked = opening.question()) {
      String answer = owner.answer(asked);
      say.accept("asked: " + asked.asks() + " " + answer);
      opening.take(answer);
      anew |= answer.equals("finding") || answer.equals("new-start");
    }
    try (Sessions.Opened opened = sessions.open(opening.answered())) {
      if (anew) {
        subject.history().anew();
        subject.repaired(false);
      }
      Role role = opened.bench().overview().role();
      String named = beginning.session() == null ? "starts" : "goes on";
      subject.made(opened.name());
      if (beginning.session() != null && !beginning.session().equals(opened.name())) {
        subject.over(beginning.session());
      }
      say.accept(
          "%s: session %s %s, %s, on %s"
              .formatted(
                  subject.name(),
                  opened.name(),
                  named,
                  role.word(),
                  opened.bench().overview().instrument()));
      for (Event event : opened.bench().events()) {
        if (event instanceof Event.Accepted accepted) {
          warned.addAll(accepted.hazards());
        }
      }
      played(opened, library, role, say);
      Path file = files.resolve(opened.name() + ".jsonl");
      Files.setLastModifiedTime(file, FileTime.from(opened.bench().now()));
    } catch (RefusedException e) {
      throw new IllegalStateException("a truthful answer was refused: " + e.getMessage(), e);
    }
  }

  private void played(Sessions.Opened opened, Library library, Role role, Consumer<String> say)
      throws IOException, RefusedException {
    LiveBench bench = opened.bench();
    Hands hands = new Hands(subject.instrument(), library, clock.truth());
    try {
      channel.play(new Player(bench, () -> mind(opened, hands, library, role, say), FAST));
    } catch (GoneException gone) {
      say.accept(gone.getMessage());
      if (gone.leaves) {
        say.accept("left: " + bench.leave());
      }
    }
    if (bench.prompt().ended()) {
      subject.over(opened.name());
      say.accept("it ends: " + bench.prompt().said().step());
    }
  }

  /** The person closes the window. */
  private static final class GoneException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final boolean leaves;

    GoneException(String how, boolean leaves) {
      super(how);
      this.leaves = leaves;
    }
  }

  private Answer mind(
      Sessions.Opened opened, Hands hands, Library library, Role role, Consumer<String> say) {
    if (prompts-- == 0) {
      asked(opened.bench().prompt(), opened.name());
      throw new GoneException("the window is closed", random.nextInt(3) > 0);
    }
    if (random.nextInt(40) == 0 && !corrected) {
      corrected = true;
      answered = null;
      return new Answer.Correct();
    }
    corrected = false;
    LiveBench bench = opened.bench();
    Prompt prompt = bench.prompt();
    if (prompt == answered) {
      throw new IllegalStateException("a truthful answer was refused at " + prompt);
    }
    answered = prompt;
    asked(prompt, opened.name());
    hands.begin(prompt);
    Answer answer = answer(bench, hands, prompt, role, opened.name());
    hands.act(prompt, answer);
    clock.go(hands.now());
    done(bench, prompt, answer, library, role, opened.name(), say);
    if (prompt instanceof Prompt.TurnRod && random.nextInt(10) == 0) {
      throw new GoneException("the window is closed in the middle of a turn", false);
    }
    return answer;
  }

  private void asked(Prompt prompt, String session) {
    if (prompt instanceof Prompt.TurnRod) {
      subject.asked(session);
    }
  }

  private Answer answer(LiveBench bench, Hands hands, Prompt prompt, Role role, String session) {
    Answer record = bench.onRecord();
    if (record != null) {
      return record;
    }
    if (prompt instanceof Prompt.Wait wait) {
      if (role == Role.TECHNICIAN
          && channel == Channel.BENCH
          && wait.mayLift()
          && random.nextInt(4) == 0) {
        return new Answer.Waited("a known neck (invented)");
      }
      hands.waitUntil(clock.truthAt(wait.until()));
      clock.go(hands.now());
      return new Answer.Waited(null);
    }
    String recalled = prompt instanceof Prompt.Choose choose ? recalled(choose, session) : null;
    if (recalled != null) {
      return new Answer.Chose(recalled);
    }
    if (prompt instanceof Prompt.TurnRod turn && turn.canUndo() && random.nextInt(15) == 0) {
      return new Answer.Undo();
    }
    return hands.truth(prompt);
  }

  /** What the person remembers of the turn that was asked for, where that is the question. */
  private @Nullable String recalled(Prompt.Choose choose, String session) {
    List<String> ids = choose.options().stream().map(Prompt.Option::id).toList();
    if (!ids.contains("not-made")) {
      return null;
    }
    Subject.Made last = subject.asFarAsMade(session);
    if (last == null) {
      return "not-made";
    }
    if (random.nextInt(5) == 0) {
      return "unsure";
    }
    return last.feel() == Feel.SMOOTH
        ? "made"
        : last.feel() == Feel.STIFF || last.feel() == Feel.FREE
            ? "made-" + last.feel().word()
            : last.feel().word();
  }

  /** Notes what was truly done, before the answer is given. */
  private void done(
      Bench bench,
      Prompt prompt,
      Answer answer,
      Library library,
      Role role,
      String session,
      Consumer<String> say) {
    Instant at = bench.now();
    if (prompt instanceof Prompt.Caution caution) {
      caution.hazards().forEach(hazard -> warned.add(hazard.id()));
    } else if (prompt instanceof Prompt.Measure measure
        && measure.quantity() == Quantity.RELIEF
        && answer instanceof Answer.Measured) {
      subject.history().read();
    } else if (prompt instanceof Prompt.Wait wait
        && wait.rest()
        && answer instanceof Answer.Waited waited
        && waited.reason() != null) {
      subject.history().lifted();
    } else if (answer instanceof Answer.Turned turned) {
      boolean shown = warned.containsAll(library.limits().turnHazards());
      Turn turn = turned.turn();
      subject.history().turned(at, turn, turned.feel(), role, shown);
      subject.did(session, new Subject.Made(turn, turned.feel()));
      String way = turn.turns() > 0 ? "tightened " : turn.turns() < 0 ? "loosened " : "";
      say.accept(way + turn + ", felt " + turned.feel().word());
    }
  }
}
