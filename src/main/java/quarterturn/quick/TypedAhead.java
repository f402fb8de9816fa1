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

/** What was typed by its name at a bench before it was asked for; the same in every face. */
public final class TypedAhead {
  /** Common practice, no source: the step of a set of leaves, put around a single number. */
  private static final double GAUGE_MM = 0.05;

  /** What tells of the instrument as it was; all but the air of the room. */
  private static final Predicate<Given> OF_INSTRUMENT =
      one -> !(one instanceof Given.Reading reading) || reading.quantity().onString();

  private final Bench bench;

  /** What was not asked for yet, in the order it was typed. */
  private final List<Given> kept = new ArrayList<>();

  private @Nullable Prompt shown;
  private boolean paused;
  private boolean unread;

  public TypedAhead(Bench bench) {
    this.bench = bench;
  }

  /** What a line can speak about now. */
  public Terms terms() {
    Overview now = bench.overview();
    Kind kind = now.kind();
    // Somebody who is led through it sees each question before it is answered.
    Map<String, List<String>> choices = now.role() == Role.TECHNICIAN ? bench.choices() : Map.of();
    return new Terms(kind == null ? List.of() : kind.strings(), choices, GAUGE_MM);
  }

  /** Keeps what a line gives; returns whether it answers the prompt at hand. */
  public boolean add(List<Given> given) {
    kept.addAll(given);
    return takes(bench.prompt());
  }

  /** A prompt is read by the person, with what is to be done before it. */
  public void shown(Prompt prompt) {
    shown = prompt;
  }

  /** Whether something typed answers a prompt. */
  public boolean takes(Prompt prompt) {
    return kept.stream().anyMatch(one -> one.answers(prompt, terms()));
  }

  /** What answers a prompt, taken out; null where nothing does. */
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
   * Forgets what can't be meant any more when a prompt comes up: what was typed before the person
   * was told to tune is no reading at pitch, and a pause is to be read before it is answered.
   *
   * @return what is forgotten, in words
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

  /** Whether the prompt that came up last is to be read before anything answers it. */
  public boolean unread() {
    return unread;
  }

  /** What a reading says of a wait whose time has passed: that it is over; null elsewhere. */
  public @Nullable Answer waited(Prompt prompt) {
    boolean over = prompt instanceof Prompt.Wait wait && !bench.now().isBefore(wait.until());
    return over && bench.overview().role() == Role.TECHNICIAN ? new Answer.Waited(null) : null;
  }

  /** What to say of what was forgotten. */
  public static String forgotten(List<String> words) {
    return "Not used, since something came in between: "
        + Printable.of(String.join("; ", words))
        + ".";
  }

  /**
   * Forgets what an answer spoils: what was seen of the instrument before something was done to it,
   * or before a wait, tells nothing of it afterwards.
   *
   * @return what is forgotten, in words
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

  /** What is kept until it is asked for, in words. */
  public List<String> left() {
    return kept.stream().map(Given::typed).toList();
  }

  /** What a prompt wants, in a word or two: "relief E1", "rod-place", "turn". */
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
