package quarterturn.quick;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** Answers that a person typed at a bench before their prompts were shown. */
public final class TypedAhead {
  /** Step of a set of feeler leaves, put around a single number; common practice, no source. */
  private static final double GAUGE_MM = 0.05;

  /** Matches answers about the instrument: all but humidity and temperature. */
  private static final Predicate<Given> OF_INSTRUMENT =
      one -> !(one instanceof Given.Reading reading) || reading.quantity().onString();

  private final Bench bench;

  /** Answers that no prompt has asked for yet, in the order they were typed. */
  private final List<Given> kept = new ArrayList<>();

  /** Answers without a name, for the prompts that come up one after the other. */
  private final Deque<String> following = new ArrayDeque<>();

  /** The quantity that they are readings of; null where the line did not begin with one. */
  private @Nullable Quantity of;

  /** What was kept when that was told last. */
  private List<String> told = List.of();

  /** Whether a line was added since what is kept was told. */
  private boolean added;

  /** Whether something typed was refused since this was last asked. */
  private boolean refused;

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
    Map<String, List<String>> choices = technician() ? bench.choices() : Map.of();
    Prompt.Measure asked = bench.prompt() instanceof Prompt.Measure measure ? measure : null;
    return new Terms(
        kind == null ? List.of() : kind.strings(), choices, GAUGE_MM, asked, bench.plausible());
  }

  private boolean technician() {
    return bench.overview().role() == Role.TECHNICIAN;
  }

  /**
   * Keeps what a typed line answers, until it is asked for: of several answers to the same the
   * last. What stands behind a part that can't be taken is kept where it has a name.
   *
   * @return the parts that can't be taken
   */
  public List<Mistyped> add(List<Part> parts) {
    List<Mistyped> wrong = new ArrayList<>();
    for (Part part : parts) {
      if (part instanceof Part.Named named) {
        kept.removeIf(old -> named.given().stream().anyMatch(old::same));
        kept.addAll(named.given());
      } else if (part instanceof Part.Drop name) {
        kept.removeIf(old -> old.named(name, terms()));
      } else if (part instanceof Part.Wrong one) {
        wrong.add(one.why());
      } else if (part instanceof Part.Bare bare && wrong.isEmpty()) {
        following.add(bare.text());
      }
    }
    of = bench.prompt() instanceof Prompt.Measure measure ? measure.quantity() : null;
    refused |= !wrong.isEmpty();
    added = true;
    return wrong;
  }

  /** Notes that the person has seen a prompt and what is to be done before it. */
  public void shown(Prompt prompt) {
    shown = prompt;
  }

  /** Whether an answer without a name fits the prompt on view. */
  public boolean fits(Part.Bare bare) {
    try {
      Unnamed.following(bare.text(), bench.prompt());
      return true;
    } catch (NotUnderstoodException e) {
      return false;
    }
  }

  /** Whether a kept answer fits a prompt. */
  public boolean takes(Prompt prompt) {
    return !following.isEmpty()
        || kept.stream().anyMatch(one -> one.answers(prompt, terms()) || onRecord(one));
  }

  /**
   * Removes and returns the answer to a prompt that was typed before it came up, or null.
   *
   * @param say takes what is to be told of answers that are not used
   */
  public @Nullable Answer take(Prompt prompt, Consumer<String> say) {
    forgotten(arrive(prompt), say);
    for (Bench.OnRecord on : kept.isEmpty() ? List.<Bench.OnRecord>of() : bench.recorded()) {
      Answer differs = differs(on);
      if (differs != null) {
        return differs;
      }
    }
    for (Given one : kept) {
      if (one.answers(prompt, terms())) {
        kept.remove(one);
        return one.answer();
      }
    }
    return following.isEmpty() ? null : following(prompt, say);
  }

  private boolean onRecord(Given one) {
    return bench.recorded().stream()
        .anyMatch(on -> one.named(new Part.Drop(on.step(), null), terms()));
  }

  /** Removes what was typed of something on record; what holds instead, or null where it agrees. */
  private @Nullable Answer differs(Bench.OnRecord on) {
    for (Given one : List.copyOf(kept)) {
      String said =
          one instanceof Given.Choice choice && choice.step().equals(on.step())
              ? choice.option()
              : one instanceof Given.Words words && words.step().equals(on.step())
                  ? words.words()
                  : null;
      if (said != null) {
        kept.remove(one);
        return said.equals(on.answer()) ? null : new Answer.Differs(on.what(), said);
      }
    }
    return null;
  }

  private @Nullable Answer following(Prompt prompt, Consumer<String> say) {
    String text = following.element();
    boolean same = prompt instanceof Prompt.Measure measure && measure.quantity() == of;
    String why = "that is to be seen first";
    if (!unread && (technician() || same)) {
      try {
        Answer answer = Unnamed.following(text, prompt);
        following.remove();
        return answer;
      } catch (NotUnderstoodException e) {
        why = String.valueOf(e.getMessage()).replaceFirst("[.]$", "");
      }
    }
    say.accept("Stopped before " + name(prompt) + ": " + why + ". " + dropped());
    return null;
  }

  /** Drops the answers without a name, and names them. */
  private String dropped() {
    String words = String.join("; ", following);
    following.clear();
    refused = true;
    return "Not used: " + Printable.of(words) + ".";
  }

  /**
   * Notes that the bench refused an answer: those behind it on the line were meant to follow it.
   */
  public void refused(Consumer<String> say) {
    refused = true;
    if (!following.isEmpty()) {
      say.accept(dropped());
    }
  }

  /** Whether something typed was refused since this was last asked. */
  public boolean wasRefused() {
    boolean was = refused;
    refused = false;
    return was;
  }

  /**
   * Drops kept answers that a new prompt makes meaningless: readings typed before the person was
   * told to tune are not readings at pitch, and a pause has to be read before it is answered.
   */
  private List<String> arrive(Prompt prompt) {
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

  /**
   * The answer that ends a technician's wait whose time has passed, or null for any other prompt.
   */
  public @Nullable Answer waited(Prompt prompt) {
    boolean over = prompt instanceof Prompt.Wait wait && !bench.now().isBefore(wait.until());
    return over && technician() ? new Answer.Waited(null) : null;
  }

  private static void forgotten(List<String> words, Consumer<String> say) {
    if (!words.isEmpty()) {
      say.accept(
          "Not used, since something came in between: "
              + Printable.of(String.join("; ", words))
              + ". Give it again when it is asked for.");
    }
  }

  /**
   * Drops kept answers that the given answer makes out of date: what was seen before work on the
   * instrument, or before a wait, does not hold after it.
   */
  public void gave(Answer answer, Prompt prompt, Consumer<String> say) {
    boolean looked = prompt instanceof Prompt.Measure || prompt instanceof Prompt.Choose;
    boolean before = looked || prompt instanceof Prompt.Caution || prompt instanceof Prompt.Write;
    if ((!before && !(answer instanceof Answer.Differs)) || answer instanceof Answer.Correct) {
      List<String> words = new ArrayList<>(forget(OF_INSTRUMENT));
      words.addAll(following);
      following.clear();
      forgotten(words, say);
    }
  }

  private List<String> forget(Predicate<Given> which) {
    List<String> words = kept.stream().filter(which).map(Given::typed).toList();
    kept.removeIf(which);
    return words;
  }

  /** What is kept of the last line, and what is asked meanwhile; empty once it was told. */
  public List<String> reminder(Prompt prompt) {
    boolean silent = !added || kept.isEmpty() || left().equals(told);
    added = false;
    told = left();
    return silent
        ? List.of()
        : List.of(
            "Kept until it is asked for, or something is done to the instrument: "
                + Printable.of(String.join("; ", left()))
                + ".",
            "Asked now: " + (asks(prompt) ? wanted(prompt) + "." : name(prompt)));
  }

  private static boolean asks(Prompt prompt) {
    return prompt instanceof Prompt.Choose
        || prompt instanceof Prompt.Write
        || prompt instanceof Prompt.Measure;
  }

  /** What a prompt asks for, or the first of what it says. */
  private static String name(Prompt prompt) {
    return asks(prompt)
        ? wanted(prompt)
        : "\"" + prompt.said().text().split("(?<=[.?!:])\\s", 2)[0] + "\"";
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
