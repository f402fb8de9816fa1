package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.unit.Printable;

/** Answers that a person typed by name at a bench before their prompts were shown. */
public final class TypedAhead {
  /** Step of a set of feeler leaves, put around a single number; common practice, no source. */
  private static final double GAUGE_MM = 0.05;

  /** Matches answers about the instrument: all but humidity and temperature. */
  private static final Predicate<Given> OF_INSTRUMENT =
      one -> !(one instanceof Given.Reading reading) || reading.quantity().onString();

  private final Bench bench;

  /** Answers that no prompt has asked for yet, in the order they were typed. */
  private final List<Given> kept = new ArrayList<>();

  private @Nullable Prompt shown;
  private boolean paused;
  private boolean unread;

  public TypedAhead(Bench bench) {
    this.bench = bench;
  }

  /** The names that a typed line may use at present. */
  public Terms terms() {
    Overview now = bench.overview();
    Kind kind = now.kind();
    // Somebody who is led through it sees each question before it is answered.
    Map<String, List<String>> choices = now.role() == Role.TECHNICIAN ? bench.choices() : Map.of();
    return new Terms(kind == null ? List.of() : kind.strings(), choices, GAUGE_MM);
  }

  /** Keeps the answers of a typed line; returns whether one of them answers the prompt on view. */
  public boolean add(List<Given> given) {
    kept.addAll(given);
    return takes(bench.prompt());
  }

  /** Notes that the person has seen a prompt and what is to be done before it. */
  public void shown(Prompt prompt) {
    shown = prompt;
  }

  /** Whether a kept answer fits a prompt. */
  public boolean takes(Prompt prompt) {
    return kept.stream().anyMatch(one -> one.answers(prompt, terms()));
  }

  /** Removes and returns the kept answer that fits a prompt, or null where none fits. */
  public @Nullable Answer take(Prompt prompt) {
    for (Given one : kept) {
      if (one.answers(prompt, terms())) {
        kept.remove(one);
        return one.answer();
      }
    }
    return null;
  }

  /**
   * Drops kept answers that a new prompt makes meaningless: readings typed before the person was
   * told to tune are not readings at pitch, and a pause has to be read before it is answered.
   *
   * @return the dropped answers, as they were typed
   */
  public List<String> arrive(Prompt prompt) {
    boolean pauses = bench.saysAgain();
    boolean begins = pauses && !paused;
    paused = pauses;
    boolean news = prompt.said().first().stream().anyMatch(first -> !first.stands());
    unread = (begins || news) && !prompt.equals(shown);
    if (!unread) {
      return List.of();
    }
    return forget(begins ? one -> true : OF_INSTRUMENT);
  }

  /** Whether the newest prompt must be shown before a kept answer may be given to it. */
  public boolean unread() {
    return unread;
  }

  /**
   * The answer that ends a technician's wait whose time has passed, or null for any other prompt.
   */
  public @Nullable Answer waited(Prompt prompt) {
    boolean over = prompt instanceof Prompt.Wait wait && !bench.now().isBefore(wait.until());
    return over && bench.overview().role() == Role.TECHNICIAN ? new Answer.Waited(null) : null;
  }

  /** A sentence that names the answers that were dropped. */
  public static String forgotten(List<String> words) {
    return "Not used, since something came in between: "
        + Printable.of(String.join("; ", words))
        + ".";
  }

  /**
   * Drops kept answers that the given answer makes out of date: what was seen before work on the
   * instrument, or before a wait, does not hold after it.
   *
   * @return the dropped answers, as they were typed
   */
  public List<String> gave(Answer answer, Prompt prompt) {
    boolean looked = prompt instanceof Prompt.Measure || prompt instanceof Prompt.Choose;
    boolean before = looked || prompt instanceof Prompt.Caution || prompt instanceof Prompt.Write;
    return before && !(answer instanceof Answer.Correct) ? List.of() : forget(OF_INSTRUMENT);
  }

  private List<String> forget(Predicate<Given> which) {
    List<String> words = kept.stream().filter(which).map(Given::typed).toList();
    kept.removeIf(which);
    return words;
  }

  /** The kept answers, as they were typed. */
  public List<String> left() {
    return kept.stream().map(Given::typed).toList();
  }

  /** The name of what a prompt asks for: "relief E1", "rod-place", "turn". */
  public static String wanted(Prompt prompt) {
    return prompt.match(
        new Prompt.Cases<>(
            tell -> "done",
            caution -> "understood",
            choose -> choose.said().step(),
            write -> write.said().step(),
            measure ->
                measure.quantity().word()
                    + (measure.string() == null ? "" : " " + measure.string()),
            turn -> "turned",
            wait -> "wait",
            done -> "done",
            over -> "done"));
  }
}
