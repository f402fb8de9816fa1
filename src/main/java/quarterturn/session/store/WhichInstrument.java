package quarterturn.session.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Dialogue;
import quarterturn.session.Instrument;
import quarterturn.session.Names;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/**
 * Asks which instrument a session is about: one on record, or a new one, which gets the name of its
 * kind, or one that is typed behind it.
 */
public final class WhichInstrument implements Dialogue {
  private static final String NEW = "new-";

  private final List<Instrument> instruments;
  private final Map<String, Kind> kinds;
  private final Set<String> taken;
  private @Nullable String kind;
  private @Nullable String name;

  /**
   * A dialogue before its first answer.
   *
   * @param instruments those on record
   * @param kinds every kind, by its id
   * @param taken names that no new instrument may have
   */
  public WhichInstrument(
      Collection<Instrument> instruments, Map<String, Kind> kinds, Set<String> taken) {
    this.instruments = List.copyOf(instruments);
    this.kinds = kinds;
    this.taken = Set.copyOf(taken);
  }

  /** The instrument's name, or null before it is known. */
  public @Nullable String name() {
    return name;
  }

  /** The kind of a new instrument, or null for one on record. */
  public @Nullable String kind() {
    return kind;
  }

  @Override
  public Question.@Nullable Asked question() {
    return name != null ? null : which();
  }

  private Question.Choose which() {
    return new Question.Choose(
        "The instrument",
        List.of(),
        "Which instrument is it?",
        "Type a number from the list, or a name in it; a new one may be named, as in 1 blue-bass.",
        options());
  }

  private List<Question.Option> options() {
    List<Question.Option> options = new ArrayList<>();
    for (Instrument one : instruments) {
      Kind of = kinds.get(one.kind());
      String detail = of == null ? one.kind() : of.name();
      options.add(new Question.Option(one.name(), one.name(), detail, "On record"));
    }
    kinds.forEach(
        (id, one) -> options.add(new Question.Option(NEW + id, one.name(), "", "A new one")));
    return options;
  }

  /** The kind's id as a name, with a number where it is taken. */
  private String offered() {
    String name = String.valueOf(kind);
    for (int n = 2; taken.contains(name); n++) {
      name = kind + "-" + n;
    }
    return name;
  }

  @Override
  public Taken take(String typed) {
    String[] words = typed.strip().toLowerCase(Locale.ROOT).split("\\s+", 2);
    String chosen = which().chosen(words[0]);
    if (words.length == 1 && instruments.stream().anyMatch(one -> one.name().equals(chosen))) {
      name = chosen;
      return Taken.SILENTLY;
    }
    if (!chosen.startsWith(NEW)) {
      throw new NotUnderstoodException(chosen + " has its name already; type it alone");
    }
    kind = chosen.substring(NEW.length());
    String free = words.length == 1 ? offered() : Names.check("an instrument", words[1]);
    if (taken.contains(free)) {
      throw new NotUnderstoodException(
          "there is an instrument " + free + " already; choose another name");
    }
    name = free;
    return Taken.briefly("It is kept as " + free + ".");
  }
}
