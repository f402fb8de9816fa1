package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.report.InstrumentFacts;
import quarterturn.session.store.Trait;
import quarterturn.session.store.Traits;
import quarterturn.unit.NotUnderstood;

/** Asks for an instrument's facts, one after the other, in plain typed lines. */
public final class InstrumentQuestions {
  private static final List<String> WORDS = List.of("none", "done", "quit");

  private final Map<String, Kind> kinds;
  private final Map<Trait, String> traits = new EnumMap<>(Trait.class);
  private final LineSource in;
  private final Paper paper;
  private End end = End.ANSWERED;

  /** How the questions ended. */
  public enum End {
    ANSWERED,
    /** The person left; nothing is to be kept. */
    LEFT,
    /** The input ended before the questions did; nothing is to be kept. */
    CUT_SHORT,
    /** The person pressed the key that stops a program. */
    INTERRUPTED
  }

  /** What was answered, and how it ended. */
  public record Answers(Map<Trait, String> traits, End end) {}

  private InstrumentQuestions(Map<String, Kind> kinds, LineSource in, PrintWriter out) {
    this.kinds = kinds;
    this.in = in;
    this.paper = new Paper(out, in);
  }

  /**
   * Asks until every fact is answered or kept.
   *
   * @param present what is known already; Enter keeps it
   * @param kinds by their id
   */
  public static Answers ask(
      Map<Trait, String> present, Map<String, Kind> kinds, LineSource in, PrintWriter out)
      throws IOException {
    InstrumentQuestions questions = new InstrumentQuestions(kinds, in, out);
    questions.traits.putAll(present);
    questions.all();
    return new Answers(Map.copyOf(questions.traits), questions.end);
  }

  private void all() throws IOException {
    paper.say(
        "Enter keeps what stands in brackets, none clears it, done keeps all that is left, and quit"
            + " leaves without a change.");
    boolean skipping = false;
    for (Trait trait : Trait.values()) {
      if (skipping && complaint(trait) == null) {
        continue;
      }
      paper.say((trait.ordinal() + 1) + " of " + Trait.values().length + ". " + asked(trait));
      boolean settled = false;
      while (!settled) {
        String typed = read(trait.label() + " [" + shown(trait) + "]: ");
        if (typed == null) {
          return;
        }
        skipping |= typed.equals("done");
        settled = settle(trait, typed.equals("done") ? "" : typed);
      }
    }
  }

  private String asked(Trait trait) {
    return trait == Trait.KIND
        ? "The kind of instrument: " + String.join(", ", kinds.keySet()) + "."
        : trait.meaning();
  }

  private String shown(Trait trait) {
    String own = traits.get(trait);
    if (own != null) {
      return own;
    }
    String usual = trait == Trait.KIND ? null : InstrumentFacts.usual(trait, traits, kind());
    if (usual != null) {
      return usual;
    }
    return trait == Trait.STYLE
        ? "asked each time"
        : trait.aim() == null ? "not known" : "none of its own";
  }

  /** The line without blanks around it, or null where the questions end. */
  private @Nullable String read(String prompt) throws IOException {
    try {
      String line = in.readLine(prompt, WORDS);
      String typed = line == null ? "quit" : line.strip();
      if (typed.equals("quit")) {
        end = line == null ? End.CUT_SHORT : End.LEFT;
        return null;
      }
      return typed;
    } catch (LineSource.Interrupted e) {
      end = End.INTERRUPTED;
      return null;
    }
  }

  /** Whether the answer is one; says what is allowed where it is none. */
  private boolean settle(Trait trait, String typed) {
    String before = traits.get(trait);
    if (typed.equals("none")) {
      traits.remove(trait);
    } else if (!typed.isEmpty()) {
      traits.put(trait, trait == Trait.KIND ? typed.toLowerCase(Locale.ROOT) : typed);
    }
    String complaint = complaint(trait);
    if (complaint != null) {
      paper.say("Not taken: " + complaint + ".");
      traits.remove(trait);
      if (before != null) {
        traits.put(trait, before);
      }
      return false;
    }
    if (typed.equals("none")) {
      paper.say("Taken: none.");
    } else if (!typed.isEmpty()) {
      plain(trait);
      paper.say("Taken: " + traits.get(trait) + ".");
    }
    return true;
  }

  /** Keeps the answer in the words it is kept in. */
  private void plain(Trait trait) {
    Map<Trait, String> one = new EnumMap<>(Trait.class);
    one.put(Trait.KIND, kind().id());
    one.put(trait, Objects.requireNonNull(traits.get(trait)));
    traits.putAll(Traits.of(Traits.instrument("any", Instant.EPOCH, one)));
  }

  /** What is wrong with a fact, or null. */
  private @Nullable String complaint(Trait trait) {
    String text = traits.get(trait);
    if (trait == Trait.KIND && (text == null || !kinds.containsKey(text))) {
      return "choose one of " + String.join(", ", kinds.keySet());
    }
    try {
      if (text != null && trait != Trait.KIND) {
        Traits.check(trait, text, kind());
      }
      return null;
    } catch (NotUnderstood e) {
      return String.valueOf(e.getMessage());
    }
  }

  /** The kind, which is asked for first. */
  private Kind kind() {
    return Objects.requireNonNull(kinds.get(traits.get(Trait.KIND)));
  }
}
