package quarterturn.line;

import java.time.Instant;
import java.util.List;
import quarterturn.procedure.condition.Role;
import quarterturn.quick.Part;
import quarterturn.quick.QuickLine;
import quarterturn.quick.Terms;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** Reads a line that may answer more than the prompt at hand. */
final class TypedFurther {
  private TypedFurther() {}

  /**
   * Reads a line as a reply: to the prompt at hand, to later ones too, or by name. Somebody who is
   * led through a job answers what is on view, and gives readings of one quantity at a time.
   */
  static Reply read(String line, Prompt prompt, Terms terms, Role role, Instant now) {
    List<Part> parts = QuickLine.parts(line, terms);
    Reply own = likely(TypedReplyReader.read(line, prompt, now), prompt, terms);
    boolean technician = role == Role.TECHNICIAN;
    if (prompt instanceof Prompt.Write) {
      return technician ? words(parts, own) : own;
    }
    if (!(own instanceof Reply.Bad) || parts.isEmpty()) {
      return own;
    }
    if (!(parts.get(0) instanceof Part.Bare first)) {
      return new Reply.Parts(parts);
    }
    boolean readings = prompt instanceof Prompt.Measure;
    List<Part> rest = parts.subList(1, parts.size());
    if (!technician && !readings) {
      return own;
    }
    Reply reply =
        rest.isEmpty()
            ? own
            : likely(TypedReplyReader.read(first.text(), prompt, now), prompt, terms);
    if (reply instanceof Reply.Bad) {
      return prompt instanceof Prompt.Measure measure
          ? several(line, measure, terms, reply)
          : reply;
    }
    boolean follows =
        reply instanceof Reply.Give give
            && !(give.answer() instanceof Answer.Correct)
            && !(prompt instanceof Prompt.Choose && first.text().matches("\\d*"));
    return follows ? new Reply.Give(((Reply.Give) reply).answer(), rest) : own;
  }

  /** A reply whose reading can hardly be true is asked for again. */
  private static Reply likely(Reply reply, Prompt prompt, Terms terms) {
    String doubt =
        reply instanceof Reply.Give give && prompt instanceof Prompt.Measure measure
            ? terms.doubt(measure.quantity(), give.answer())
            : null;
    return doubt == null ? reply : new Reply.Bad(doubt);
  }

  /** Words of one's own are anything, up to a semicolon, that is not given by its name. */
  private static Reply words(List<Part> parts, Reply whole) {
    if (parts.isEmpty() || !(whole instanceof Reply.Give)) {
      return whole;
    }
    Part first = parts.get(0);
    String words =
        first instanceof Part.Bare bare
            ? bare.text()
            : first instanceof Part.Wrong wrong ? wrong.text() : null;
    return words == null
        ? new Reply.Parts(parts)
        : new Reply.Give(new Answer.Wrote(words), parts.subList(1, parts.size()));
  }

  /** Readings of what is asked for, one behind the other, on as many strings. */
  private static Reply several(String line, Prompt.Measure measure, Terms terms, Reply own) {
    List<Part> parts = QuickLine.parts(measure.quantity().word() + " " + line, terms);
    return parts.get(0) instanceof Part.Named ? new Reply.Parts(parts) : own;
  }
}
