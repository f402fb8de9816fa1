package quarterturn.procedure.read;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Mark;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads the hazards from {@code safety/hazards.yaml}. */
record HazardsReader(Faults faults, Scalars values, Stricter stricter) {
  /**
   * Reads the hazards as far as they can be read; ids are kept even of hazards with a fault.
   *
   * @param shipped the file that comes with the program, where this is a user's own: its hazards
   *     stay, and what is said of one of them here may only be stricter; else null
   */
  static Map<String, Hazard> draft(Faults faults, @Nullable Faults shipped)
      throws UnreadableException {
    HazardsReader reader = new HazardsReader(faults, new Scalars(faults), new Stricter(faults));
    Map<String, Hazard> hazards = new LinkedHashMap<>();
    if (shipped != null) {
      hazards.putAll(draft(shipped, null));
    }
    Set<String> named = new HashSet<>();
    for (Node item : MappingKeys.list(faults, "hazards")) {
      reader.hazard(item, hazards, named);
    }
    return hazards;
  }

  private void hazard(Node item, Map<String, Hazard> hazards, Set<String> named) {
    MappingKeys fields = MappingKeys.of(item, "a hazard", faults);
    Scalar id = values.id(fields.required("hazard"), "a hazard");
    Hazard before = id == null ? null : hazards.get(id.text());
    boolean whole = before == null || named.contains(before.id());
    Hazard.Word word =
        values.word(
            fields.value("word", whole), "a signal word", Hazard.Word.values(), Hazard.Word::name);
    String harm = values.fixed(fields.value("harm", whole));
    String avoid = values.fixed(fields.value("avoid", whole));
    List<String> with = values.fixedLines(fields.optional("with"));
    List<String> words = values.fixedLines(fields.optional("words"));
    fields.end();
    if (id == null) {
      return;
    }
    if (!named.add(id.text())) {
      faults.twice(id, "the hazard ", "Give each its own id");
      return;
    }
    Hazard program =
        before != null
            ? before
            : new Hazard(id.text(), Hazard.Word.WARNING, "", "", List.of(), List.of());
    Hazard own =
        new Hazard(
            id.text(),
            Objects.requireNonNullElse(word, program.word()),
            Objects.requireNonNullElse(harm, program.harm()),
            Objects.requireNonNullElse(avoid, program.avoid()),
            fields.has("with") ? with : program.with(),
            Stream.concat(program.words().stream(), words.stream()).distinct().toList());
    hazards.put(id.text(), own);
    if (before != null) {
      compare(fields, own, before);
    }
  }

  private void compare(MappingKeys fields, Hazard own, Hazard program) {
    String of = " of " + own.id();
    if (own.word().compareTo(program.word()) > 0) {
      stricter.laxer(fields.key("word"), own.word() + of, program.word().name());
    }
    said(fields.key("harm"), "harm" + of, own.harm(), program.harm());
    said(fields.key("avoid"), "avoid" + of, own.avoid(), program.avoid());
    Function<String, String> word = one -> one;
    stricter.all(fields.key("with"), "with" + of, own.with(), program.with(), word);
  }

  /** What is said may be added to, and nothing of it taken away. */
  private void said(Mark at, String what, String own, String program) {
    boolean kept = Hazard.plain(own).contains(Hazard.plain(program));
    List<String> all = List.of(program);
    stricter.all(at, what, kept ? all : List.of(), all, one -> "\"" + one + "\"");
  }
}
