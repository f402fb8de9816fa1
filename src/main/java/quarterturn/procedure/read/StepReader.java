package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Amounts;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.read.Node.Scalar;

/** Reads one step by its kind, the first key of its entry. */
final class StepReader {
  /** The kinds of step, as an entry begins. */
  static final List<String> KINDS =
      List.of(
          "tell",
          "choose",
          "note",
          "pause",
          "measure",
          "compute",
          "turn",
          "adjust",
          "wait",
          "call",
          "done",
          "hand-over");

  private final Faults faults;
  private final Scalars values;
  private final References references;
  private final WordsReader words;
  private final ForkReader forks;
  private final List<Scalar> calls = new ArrayList<>();
  private final List<Scalar> changed = new ArrayList<>();
  private final List<Scalar> given = new ArrayList<>();

  StepReader(Faults faults, References references, @Nullable List<String> hazards) {
    this.faults = faults;
    this.values = new Scalars(faults);
    this.references = references;
    this.words = new WordsReader(faults, references, hazards);
    this.forks = new ForkReader(faults, references);
  }

  /** The procedures that were called. */
  List<Scalar> calls() {
    return List.copyOf(calls);
  }

  /** The changes that were named. */
  List<Scalar> changed() {
    return List.copyOf(changed);
  }

  /** The results that were named. */
  List<Scalar> given() {
    return List.copyOf(given);
  }

  /**
   * Reads a step; null with a fault where it is none.
   *
   * @param kind one of {@link #KINDS}, which the mapping has as a key
   */
  @Nullable Step read(Node.Mapping mapping, String kind, String part) {
    String what = "a " + kind + " step";
    List<String> keys =
        Stream.of(
                List.of(kind),
                kind.equals("compute") ? List.of("expects") : WordsReader.KEYS,
                own(kind))
            .flatMap(List::stream)
            .toList();
    MappingKeys fields = MappingKeys.of(mapping, what, keys, faults);
    if (fields == null) {
      return null;
    }
    Scalar id = values.id(fields.required(kind), "a step");
    List<String> options = new ArrayList<>();
    if (id != null) {
      references.step(id, kind, options);
    }
    Begun step = new Begun(id == null ? "" : id.text(), what, part, fields, fields.key(kind));
    Step read =
        switch (kind) {
          case "tell" -> tell(step);
          case "choose" -> choose(step, options);
          case "note" -> note(step);
          case "pause" -> new PauseReader(faults, values, words, forks, references).read(step);
          case "adjust" -> adjust(step);
          case "measure" -> new MeasureReader(faults, values, words, forks).read(step);
          case "compute" -> compute(step);
          case "turn" -> new TurnReader(faults, values, words, forks).read(step);
          case "wait" -> await(step);
          case "call" -> call(step);
          default -> end(step, kind);
        };
    fields.end();
    return id == null ? null : read;
  }

  /** A step whose id is read and whose fields are not yet. */
  record Begun(String id, String what, String part, MappingKeys fields, Mark mark) {}

  /** Its keys beside its kind and its words. */
  static List<String> own(String kind) {
    return switch (kind) {
      case "tell" -> List.of("establishes", "changes", "short", "short-when", "go", "branches");
      case "choose" -> List.of("gives", "records", "options");
      case "note" -> List.of("records", "go");
      case "pause" -> List.of("lines", "go");
      case "adjust" -> List.of("what", "go", "branches");
      case "measure" -> List.of("quantity", "string", "gauge", "plausible", "branches");
      case "compute" -> List.of("calculation", "go", "branches");
      case "turn" -> List.of("amount", "limit", "felt");
      case "wait" -> List.of("for", "rest", "establishes", "short", "short-when", "go");
      case "call" -> List.of("procedure", "go", "branches");
      default -> List.of("outcome");
    };
  }

  private Set<Fact> establishes(MappingKeys fields) {
    return values.words(fields.optional("establishes"), "a fact", Fact.values());
  }

  private @Nullable Step tell(Begun step) {
    Words said = words.read(step.fields(), step.part(), true).with(words.shortcut(step.fields()));
    Set<Fact> facts = establishes(step.fields());
    String changes = named(step.fields(), "changes", "a change", changed);
    Fork then = forks.read(step.fields(), step.what());
    return then == null ? null : new Step.Tell(step.id(), said, step.mark(), facts, changes, then);
  }

  private Step choose(Begun step, List<String> ids) {
    Words said = words.read(step.fields(), step.part(), true);
    List<Step.Option> options = new ArrayList<>();
    Node list = step.fields().required("options");
    for (Node item : values.items(list)) {
      Step.Option option = option(item, ids);
      if (option != null) {
        options.add(option);
      }
    }
    if (list instanceof Node.Sequence sequence && sequence.items().size() < 2) {
      faults.value(
          list.mark(),
          "a choice with fewer than two options",
          "Add an option, or make it a tell step");
    }
    String gives = named(step.fields(), "gives", "a result", given);
    return new Step.Choose(
        step.id(), said, step.mark(), List.copyOf(options), gives, records(step.fields()));
  }

  private @Nullable Recorded records(MappingKeys fields) {
    return values.word(fields.optional("records"), "what is on record", Recorded.values());
  }

  private Step.@Nullable Option option(Node item, List<String> ids) {
    MappingKeys fields =
        MappingKeys.of(
            item, "an option", List.of("is", "label", "establishes", "changes", "go"), faults);
    if (fields == null) {
      return null;
    }
    Scalar id = values.id(fields.required("is"), "an option");
    Node labelled = fields.required("label");
    String label = values.line(labelled) == null ? null : words.text(labelled);
    Set<Fact> facts = establishes(fields);
    String changes = named(fields, "changes", "a change", changed);
    Scalar go = forks.way(fields.required("go"));
    fields.end();
    if (id != null && ids.contains(id.text())) {
      faults.twice(id, "the option ", "Give each option of a step its own id");
    } else if (id != null) {
      ids.add(id.text());
    }
    return id == null || label == null || go == null
        ? null
        : new Step.Option(id.text(), label, facts, changes, go.text());
  }

  private @Nullable Step note(Begun step) {
    Words said = words.read(step.fields(), step.part(), true);
    Scalar go = forks.way(step.fields().required("go"));
    Recorded records = records(step.fields());
    return go == null ? null : new Step.Note(step.id(), said, step.mark(), records, go.text());
  }

  private @Nullable Step adjust(Begun step) {
    Words said = words.read(step.fields(), step.part(), true);
    Adjustment what =
        values.word(step.fields().required("what"), "an adjustment", Adjustment.values());
    Fork then = forks.read(step.fields(), step.what());
    return what == null || then == null
        ? null
        : new Step.Adjust(step.id(), said, step.mark(), what, then);
  }

  /** An id that is known elsewhere, kept to be checked when that was read; or null. */
  private @Nullable String named(MappingKeys fields, String key, String what, List<Scalar> kept) {
    Scalar id = fields.has(key) ? values.id(fields.optional(key), what) : null;
    if (id == null) {
      return null;
    }
    kept.add(id);
    return id.text();
  }

  private @Nullable Step compute(Begun step) {
    Step.Calculation calculation =
        values.word(
            step.fields().required("calculation"),
            "a calculation",
            Step.Calculation.values(),
            Step.Calculation::word);
    Words silent = Words.silent(step.part(), words.expects(step.fields()));
    Fork then = forks.read(step.fields(), step.what());
    return calculation == null || then == null
        ? null
        : new Step.Compute(step.id(), silent, step.mark(), calculation, then);
  }

  private @Nullable Step await(Begun step) {
    Words said = words.read(step.fields(), step.part(), true).with(words.shortcut(step.fields()));
    Integer minutes = values.parsed(step.fields().required("for"), Amounts::minutes);
    boolean rest = values.truth(step.fields().optional("rest"));
    Set<Fact> facts = establishes(step.fields());
    Scalar go = forks.way(step.fields().required("go"));
    return minutes == null || go == null
        ? null
        : new Step.Wait(step.id(), said, step.mark(), minutes, rest, facts, go.text());
  }

  private @Nullable Step call(Begun step) {
    Words said = words.read(step.fields(), step.part(), false);
    Scalar procedure = values.id(step.fields().required("procedure"), "a procedure");
    Fork then = forks.read(step.fields(), step.what());
    if (procedure == null || then == null) {
      return null;
    }
    calls.add(procedure);
    return new Step.Call(step.id(), said, step.mark(), procedure.text(), then);
  }

  private @Nullable Step end(Begun step, String kind) {
    Words said = words.read(step.fields(), step.part(), true);
    Scalar outcome = values.id(step.fields().required("outcome"), "an outcome");
    if (outcome == null) {
      return null;
    }
    return kind.equals("done")
        ? new Step.Done(step.id(), said, step.mark(), outcome.text())
        : new Step.HandOver(step.id(), said, step.mark(), outcome.text());
  }
}
