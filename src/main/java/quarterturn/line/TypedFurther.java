package quarterturn.line;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.quick.Given;
import quarterturn.quick.Mistyped;
import quarterturn.quick.QuickLine;
import quarterturn.quick.Terms;
import quarterturn.quick.Tokens;
import quarterturn.quick.TypedAhead;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;
import quarterturn.unit.Printable;

/**
 * Keeps what a line answers beyond the prompt at hand: by name, or in the order it is asked for.
 */
final class TypedFurther {
  private final Bench bench;
  private final Paper paper;
  private final TypedAhead named;

  /** The parts of the last line that are not used yet, in the order they are asked for. */
  private final Deque<String> rest = new ArrayDeque<>();

  /** The quantity that the rest of the line has readings of; null where it began with a choice. */
  private @Nullable Quantity of;

  TypedFurther(Bench bench, Paper paper) {
    this.bench = bench;
    this.paper = paper;
    this.named = new TypedAhead(bench);
  }

  /**
   * Reads a line as a reply: to the prompt at hand, to later ones too, or by name.
   *
   * @param may whether anything but the prompt at hand may be answered
   */
  Reply read(String line, Prompt prompt, boolean may) {
    Tokens tokens = new Tokens(line);
    List<String> parts = tokens.parts();
    Reply own = TypedReplyReader.read(line, parts, prompt, bench.now());
    if (!may) {
      return single(own);
    }
    Terms terms = named.terms();
    // A line of words takes anything, so that what is given by its name is looked for first.
    boolean words = prompt instanceof Prompt.Write && QuickLine.gives(tokens, prompt.said().step());
    if (!(own instanceof Reply.Bad) && !(words && technician())) {
      return own;
    }
    try {
      if (QuickLine.names(tokens, terms)) {
        return new Reply.Named(QuickLine.read(tokens, terms));
      }
      boolean several =
          !parts.get(0).equals(line.strip()) && technician() && takes(parts.get(0), prompt);
      return several ? several(tokens, parts, prompt, own, terms) : own;
    } catch (Mistyped e) {
      return new Reply.Marked(e.lines(line).stream().map(Printable::of).toList());
    }
  }

  private static Reply single(Reply reply) {
    return reply instanceof Reply.Give give && !give.rest().isEmpty()
        ? new Reply.Bad("Give one reading at a time here: each one is predicted first.")
        : reply;
  }

  /**
   * The reply of a line with several parts: the first answers the prompt, and the others are by
   * name or answer what is asked next.
   */
  private Reply several(Tokens tokens, List<String> parts, Prompt prompt, Reply whole, Terms terms)
      throws Mistyped {
    Reply first = reply(parts.get(0), prompt);
    if (!(first instanceof Reply.Give give) || give.answer() instanceof Answer.Correct) {
      return whole;
    }
    tokens.passPart();
    if (QuickLine.names(tokens, terms)) {
      return new Reply.Give(give.answer(), List.of(), QuickLine.read(tokens, terms));
    }
    boolean inOrder = prompt instanceof Prompt.Choose || prompt instanceof Prompt.Measure;
    return inOrder ? new Reply.Give(give.answer(), parts.subList(1, parts.size())) : whole;
  }

  private Reply reply(String part, Prompt prompt) {
    return TypedReplyReader.read(part, List.of(part), prompt, bench.now());
  }

  private boolean technician() {
    return bench.overview().role() == Role.TECHNICIAN;
  }

  /**
   * Whether a prompt can be answered by one part of a line: by a word, since a number can mean
   * another answer to another question, and Enter alone says nothing of what follows.
   */
  private static boolean takes(String part, Prompt prompt) {
    boolean number = part.strip().matches("\\d*");
    return prompt instanceof Prompt.Measure || prompt instanceof Prompt.TurnRod || !number;
  }

  /** Keeps the other parts of a line typed at a prompt until they are asked for. */
  void keep(List<String> parts, Prompt prompt) {
    rest.addAll(parts);
    of = prompt instanceof Prompt.Measure measure ? measure.quantity() : null;
  }

  /** Keeps what was given by name; returns whether it answers the prompt at hand. */
  boolean keep(List<Given> given) {
    return named.add(given);
  }

  /** The answer to a wait whose time has passed, where a reading was typed instead; or null. */
  @Nullable Answer waited(Prompt prompt) {
    return named.waited(prompt);
  }

  List<String> left() {
    return named.left();
  }

  /** Notes that a prompt was printed. */
  void shown(Prompt prompt) {
    named.shown(prompt);
  }

  /** The answer to a prompt that was typed before it came up, or null. */
  @Nullable Answer take(Prompt prompt) {
    forget(named.arrive(prompt));
    Answer byName = named.take(prompt);
    return byName != null ? byName : next(prompt);
  }

  private @Nullable Answer next(Prompt prompt) {
    if (rest.isEmpty()) {
      return null;
    }
    boolean same = prompt instanceof Prompt.Measure measure && measure.quantity() == of;
    boolean may = of == null ? technician() : same;
    String part = rest.remove();
    boolean asks = prompt instanceof Prompt.Measure || prompt instanceof Prompt.Choose;
    if (may && asks && !named.unread() && takes(part, prompt)) {
      Reply reply = reply(part, prompt);
      if (reply instanceof Reply.Give give && !(give.answer() instanceof Answer.Correct)) {
        return give.answer();
      }
    }
    rest.clear();
    paper.say("The other answers on that line are not used: something else comes first.");
    return null;
  }

  /** Notes that an answer was given. */
  void gave(Answer answer, Prompt prompt) {
    forget(named.gave(answer, prompt));
  }

  /** Drops the rest of the line after a refused answer, since it was meant for something else. */
  void refused() {
    rest.clear();
  }

  private void forget(List<String> seen) {
    if (!seen.isEmpty()) {
      paper.say(TypedAhead.forgotten(seen) + " Give it again when it is asked for.");
    }
  }

  /** The names that completion offers to a technician. */
  List<String> words() {
    return technician() ? named.terms().words() : List.of();
  }
}
