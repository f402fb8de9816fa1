package quarterturn.session.store;

import java.time.Instant;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks for an instrument's facts, one after the other. */
public final class InstrumentDialogue implements Dialogue {
  private static final String HELP =
      "Enter keeps what stands in brackets, none clears it, done keeps all that is left, and quit"
          + " leaves without a change.";

  private final Map<String, Kind> kinds;
  private final Map<Trait, String> traits = new EnumMap<>(Trait.class);
  private int at;

  /** Whether what is known already is kept unasked from here. */
  private boolean skipping;

  /**
   * Nothing answered yet.
   *
   * @param present what is known already; it may be kept
   * @param kinds by their id
   */
  public InstrumentDialogue(Map<Trait, String> present, Map<String, Kind> kinds) {
    this.kinds = kinds;
    this.traits.putAll(present);
  }

  /** The facts so far. */
  public Map<Trait, String> traits() {
    return Map.copyOf(traits);
  }

  @Override
  public @Nullable Question question() {
    if (at == Trait.values().length) {
      return null;
    }
    Trait trait = Trait.values()[at];
    String asked =
        trait == Trait.KIND
            ? "The kind of instrument: " + String.join(", ", kinds.keySet()) + "."
            : trait.meaning();
    String item = (at + 1) + " of " + Trait.values().length + ". " + asked;
    return new Question.Words(
        "",
        at == 0 ? List.of(HELP, item) : List.of(item),
        trait.label() + " [" + shown(trait) + "]",
        HELP);
  }

  private String shown(Trait trait) {
    String own = traits.get(trait);
    if (own != null) {
      return own;
    }
    String usual = trait == Trait.KIND ? null : Traits.usual(trait, traits, kind());
    if (usual != null) {
      return usual;
    }
    return trait == Trait.STYLE
        ? "asked each time"
        : trait.aim() == null ? "not known" : "none of its own";
  }

  @Override
  public Taken take(String typed) {
    boolean done = typed.equals("done");
    skipping |= done;
    Taken taken = settle(Trait.values()[at], done ? "" : typed);
    at++;
    while (skipping && at < Trait.values().length && complaint(Trait.values()[at]) == null) {
      at++;
    }
    return taken;
  }

  private Taken settle(Trait trait, String typed) {
    String before = traits.get(trait);
    if (typed.equals("none")) {
      traits.remove(trait);
    } else if (!typed.isEmpty()) {
      traits.put(trait, trait == Trait.KIND ? typed.toLowerCase(Locale.ROOT) : typed);
    }
    String complaint = complaint(trait);
    if (complaint != null) {
      traits.remove(trait);
      if (before != null) {
        traits.put(trait, before);
      }
      throw new NotUnderstoodException(complaint);
    }
    if (typed.isEmpty()) {
      return Taken.SILENTLY;
    }
    if (!typed.equals("none")) {
      plain(trait);
    }
    return Taken.briefly("Taken: " + traits.getOrDefault(trait, "none") + ".");
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
    } catch (NotUnderstoodException e) {
      return String.valueOf(e.getMessage());
    }
  }

  /** The kind, which is asked for first. */
  private Kind kind() {
    return Objects.requireNonNull(kinds.get(traits.get(Trait.KIND)));
  }

  @Override
  public boolean back() {
    boolean some = at > 0;
    at = Math.max(0, at - 1);
    return some;
  }
}
