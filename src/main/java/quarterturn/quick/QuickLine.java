package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Answer;
import quarterturn.unit.BracketParser;
import quarterturn.unit.NotUnderstoodException;

/**
 * Reads a typed line from the left, part by part.
 *
 * <pre>
 * line    = part { ";" part }
 * part    = QUANTITY value { value } | STEP OPTION | STEP words | "drop" NAME [ STRING ] | answer
 * value   = reading [ STRING ]
 * reading = NUMBER [ UNIT ] | NUMBER ".." NUMBER [ UNIT ] | NUMBER [ UNIT ] "to" NUMBER [ UNIT ]
 *         | NUMBER [ UNIT ] "passes" | "lifts" [ NUMBER [ UNIT ] "passes" | "lifts" ]
 *         | "touches" | "cannot"
 * STRING  = "low" | "high" | a string's note | "s1", the lowest, to "s6"
 * </pre>
 *
 * <p>A string's word is for all the readings before it that have none yet. Readings without any are
 * one for each string, the lowest first; two of more strings are the lowest's and the highest's.
 * Where the prompt on view asks for this quantity, they begin with the string it asks for.
 */
public final class QuickLine {
  private static final Set<String> UNITS =
      Set.of("mm", "in", "inch", "inches", "thou", "mil", "%", "cents", "cent", "c", "f");
  private static final Set<String> GAUGED =
      Set.of("passes", "pass", "p", "goes", "lifts", "lift", "l", "stops");
  private static final Set<String> ALONE = Set.of("touches", "cannot", "card");

  private final Terms terms;
  private final Tokens tokens;
  private final List<Given> given = new ArrayList<>();

  private QuickLine(Tokens tokens, Terms terms) {
    this.terms = terms;
    this.tokens = tokens;
  }

  /** Whether the line goes on with the name of a quantity, or of a step and its answer. */
  public static boolean names(Tokens tokens, Terms terms) {
    String first = tokens.peek();
    return Name.of(first) != null
        || (terms.choices().containsKey(first) && !tokens.peek(1).isEmpty());
  }

  /** Every quantity's name with its abbreviation in brackets. */
  public static List<String> shown() {
    return Name.shown();
  }

  /** The parts of a line, in order; none of an empty one. */
  public static List<Part> parts(String line, Terms terms) {
    Tokens tokens = new Tokens(line);
    List<Part> parts = new ArrayList<>();
    while (!tokens.atEnd()) {
      if (!tokens.take(";")) {
        parts.add(part(tokens, terms));
      }
    }
    return List.copyOf(parts);
  }

  private static Part part(Tokens tokens, Terms terms) {
    int at = tokens.at();
    int place = tokens.place();
    try {
      if (names(tokens, terms)) {
        QuickLine quick = new QuickLine(tokens, terms);
        quick.part();
        quick.end();
        return new Part.Named(List.copyOf(quick.given));
      }
      if (tokens.peek().equals("drop")) {
        return drop(tokens, terms);
      }
    } catch (Mistyped e) {
      tokens.back(place);
      tokens.passPart();
      return new Part.Wrong(tokens.since(at), e);
    }
    tokens.passPart();
    return new Part.Bare(tokens.since(at));
  }

  private static Part.Drop drop(Tokens tokens, Terms terms) throws Mistyped {
    tokens.take();
    int at = tokens.at();
    String word = tokens.take();
    Quantity quantity = Name.of(word);
    if (quantity == null && !terms.choices().containsKey(word)) {
      throw new Mistyped(
          at, "What is to be dropped is named here", "Type drop and its name, as in drop relief");
    }
    int string = quantity == null ? -1 : terms.string(tokens.peek());
    if (string >= 0) {
      tokens.take();
    }
    return new Part.Drop(
        quantity == null ? word : quantity.word(), string < 0 ? null : terms.strings().get(string));
  }

  /** Refuses what stands behind a part and belongs to none. */
  private void end() throws Mistyped {
    if (!tokens.atEnd() && !tokens.peek().equals(";")) {
      throw new Mistyped(
          tokens.at(),
          "\"" + tokens.peek() + "\" cannot stand here",
          "Part one quantity from the next with a semicolon");
    }
  }

  private void part() throws Mistyped {
    int at = tokens.at();
    String word = tokens.take();
    Quantity quantity = Name.of(word);
    if (quantity != null) {
      readings(quantity);
    } else {
      choice(word, at);
    }
  }

  private void choice(String step, int at) throws Mistyped {
    List<String> options = terms.choices().getOrDefault(step, List.of());
    int place = tokens.at();
    if (options.isEmpty()) {
      words(step, at, place);
      return;
    }
    String option = tokens.take();
    if (!options.contains(option)) {
      throw new Mistyped(
          place,
          option.isEmpty() || option.equals(";")
              ? "An answer to " + step + " is missing here"
              : "\"" + option + "\" is no answer to " + step,
          "Its answers: " + String.join(", ", options));
    }
    given.add(new Given.Choice(step, option));
  }

  private void words(String step, int at, int place) throws Mistyped {
    if (tokens.atEnd() || tokens.peek().equals(";")) {
      throw new Mistyped(
          place, "The words for " + step + " are missing here", "A hyphen stands for none");
    }
    while (!tokens.atEnd() && !tokens.peek().equals(";")) {
      tokens.take();
    }
    given.add(new Given.Words(step, tokens.since(place), tokens.since(at)));
  }

  /** A reading for which no string was typed yet. */
  private record Open(Answer answer, String typed, int at) {}

  private void readings(Quantity quantity) throws Mistyped {
    List<Open> open = new ArrayList<>();
    boolean named = false;
    do {
      open.add(reading(quantity));
      int string = quantity.onString() ? terms.string(tokens.peek()) : -1;
      if (string >= 0) {
        tokens.take();
        open.forEach(one -> add(quantity, string, one));
        open.clear();
        named = true;
      }
    } while (!tokens.atEnd() && !tokens.peek().equals(";"));
    if (!open.isEmpty() && named) {
      throw new Mistyped(
          tokens.at(),
          "The string of the last reading is missing here",
          "One of: " + String.join(", ", terms.stringWords()));
    }
    inOrder(quantity, open);
  }

  /** Gives readings without a string's word their strings. */
  private void inOrder(Quantity quantity, List<Open> open) throws Mistyped {
    int most = quantity.onString() ? Math.max(1, terms.strings().size()) : 1;
    if (open.size() > most) {
      throw new Mistyped(
          open.get(most).at(),
          quantity.onString()
              ? "More readings than the instrument has strings, which are " + most
              : "A second reading of " + quantity.word(),
          quantity.onString() ? "Name the strings, as in .42 low .38 high" : "Give one");
    }
    int from = quantity.onString() ? terms.from(quantity, open.size()) : -1;
    if (from + open.size() > most) {
      throw new Mistyped(
          open.get(most - from).at(), "There is no string for this reading", "Name the strings");
    }
    boolean ends = quantity.onString() && terms.ends(quantity, open.size());
    for (int i = 0; i < open.size(); i++) {
      add(quantity, ends && i > 0 ? terms.last() : from + i, open.get(i));
    }
  }

  private void add(Quantity quantity, int string, Open one) {
    boolean known = string >= 0 && string < terms.strings().size();
    String words = quantity.word() + " " + one.typed();
    String typed = known ? words + " on " + terms.strings().get(string) : words;
    given.add(new Given.Reading(quantity, string, one.answer(), typed));
  }

  private Open reading(Quantity quantity) throws Mistyped {
    int at = tokens.at();
    String word = tokens.peek();
    if (!ALONE.contains(word) && !word.matches("[-+]?[.,]?\\d.*")) {
      throw new Mistyped(
          at,
          word.isEmpty() || word.equals(";")
              ? "A reading of " + quantity.word() + " is missing here"
              : "\"" + word + "\" is no reading of " + quantity.word(),
          "Type for example " + quantity.example() + "; or cannot");
    }
    tokens.take();
    if (word.equals("cannot")) {
      return new Open(new Answer.CannotMeasure(), word, at);
    }
    unit();
    if (quantity.bracket()) {
      gauged();
    }
    String typed = tokens.since(at);
    try {
      Answer answer =
          quantity.bracket()
              ? new Answer.Measured(BracketParser.parse(typed, terms.gaugeMm()))
              : new Answer.Value(quantity.value(typed));
      String doubt = terms.doubt(quantity, answer);
      if (doubt != null) {
        throw new Mistyped(at, doubt, "");
      }
      return new Open(answer, typed, at);
    } catch (NotUnderstoodException e) {
      throw new Mistyped(at, e.wrong(), e.mend());
    }
  }

  private void unit() {
    if (UNITS.contains(tokens.peek())) {
      tokens.take();
    }
  }

  /**
   * Takes the words of a range or of one or two leaves, such as ".40 passes .45 lifts" or ".40 to
   * .45".
   */
  private void gauged() {
    if (tokens.take("to") || tokens.take("..")) {
      tokens.take();
      unit();
      return;
    }
    for (int leaf = 0; leaf < 2 && GAUGED.contains(tokens.peek()); leaf++) {
      tokens.take();
      boolean second = Stream.of(1, 2).anyMatch(i -> GAUGED.contains(tokens.peek(i)));
      if (leaf == 0 && second && tokens.peek().matches("card|[.,]?\\d.*")) {
        tokens.take();
        unit();
      }
    }
  }
}
