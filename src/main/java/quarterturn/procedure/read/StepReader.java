package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Adjustment;
import quarterturn.procedure.Branch.Fork;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Step;
import quarterturn.procedure.Words;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads one step by its kind, the first key of its entry. */
final class StepReader {
  /** What a compute step may say that it works out. */
  static final List<String> CALCULATIONS = List.of("advice", "response", "comparison");

  private final Faults faults;
  private final Scalars values;
  private final References references;
  private final WordsReader words;
  private final ForkReader forks;

  StepReader(Faults faults, References references, @Nullable List<String> hazards) {
    this.faults = faults;
    this.values = new Scalars(faults);
    this.references = references;
    this.words = new WordsReader(faults, references, hazards);
    this.forks = new ForkReader(faults, references);
  }

  /**
   * Reads a step; null with a fault where it is none.
   *
   * @param kind one of {@link Keys#KINDS}, which the mapping has as a key
   */
  @Nullable Step read(Node.Mapping mapping, String kind, String part) {
    MappingKeys fields = MappingKeys.of(mapping, "a " + kind + " step", faults);
    Step read = read(fields, kind, part);
    fields.end();
    return read;
  }

  /** The keys of a step of a kind, without their values. */
  static MappingKeys keys(String kind) {
    MappingKeys fields = MappingKeys.empty();
    new StepReader(fields.faults(), new References(fields.faults()), null).read(fields, kind, "");
    return fields;
  }

  private @Nullable Step read(MappingKeys fields, String kind, String part) {
    Scalar id = values.id(fields.required(kind), "a step");
    List<String> options = new ArrayList<>();
    if (id != null) {
      references.step(id, kind, options);
    }
    Words said =
        kind.equals("compute")
            ? Words.silent(part, words.expects(fields))
            : words.read(fields, part, !kind.equals("call"));
    Begun step = new Begun(id == null ? "" : id.text(), kind, said, fields);
    Step read =
        switch (kind) {
          case "tell" -> tell(step);
          case "choose" -> choose(step, options);
          case "note" -> note(step);
          case "pause" -> new PauseReader(faults, values, forks).read(step);
          case "adjust" -> adjust(step);
          case "measure" -> new MeasureReader(faults, values, forks, words).read(step);
          case "compute" -> compute(step);
          case "turn" -> new TurnReader(faults, values, forks).read(step);
          case "wait" -> await(step);
          case "call" -> call(step);
          default -> end(step);
        };
    return id == null ? null : read;
  }

  /** A step whose id and words are read and whose other fields are not yet. */
  record Begun(String id, String kind, Words said, MappingKeys fields) {
    /** The kind of step with its article: "a measure step". */
    String what() {
      return "a " + kind + " step";
    }

    Mark mark() {
      return fields.key(kind);
    }
  }

  private Set<Fact> establishes(MappingKeys fields) {
    return values.words(fields.optional("establishes"), "a fact", Fact.values());
  }

  private @Nullable Step tell(Begun step) {
    Set<Fact> facts = establishes(step.fields());
    String changes = change(step.fields());
    Words said = step.said().with(words.shortcut(step.fields()));
    Fork then = forks.read(step.fields(), step.what());
    return then == null ? null : new Step.Tell(step.id(), said, step.mark(), facts, changes, then);
  }

  private Step choose(Begun step, List<String> ids) {
    String gives =
        named(step.fields().optional("gives"), "a result", references.elsewhere().results());
    Recorded records = records(step.fields());
    Node list = step.fields().required("options");
    List<Step.Option> options = values.each(list, item -> option(item, ids));
    if (list instanceof Node.Sequence sequence && sequence.items().size() < 2) {
      faults.value(
          list.mark(),
          "a choice with fewer than two options",
          "Add an option, or make it a tell step");
    }
    return new Step.Choose(
        step.id(), step.said(), step.mark(), List.copyOf(options), gives, records);
  }

  private @Nullable Recorded records(MappingKeys fields) {
    return values.word(fields.optional("records"), "what is on record", Recorded.values());
  }

  private Step.@Nullable Option option(Node item, List<String> ids) {
    MappingKeys fields = MappingKeys.of(item, "an option", faults);
    Scalar id = values.id(fields.required("is"), "an option");
    Node labelled = fields.required("label");
    String label = values.line(labelled) == null ? null : words.text(labelled);
    Set<Fact> facts = establishes(fields);
    String changes = change(fields);
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
    Recorded records = records(step.fields());
    Scalar go = forks.way(step.fields().required("go"));
    return go == null
        ? null
        : new Step.Note(step.id(), step.said(), step.mark(), records, go.text());
  }

  private @Nullable Step adjust(Begun step) {
    Adjustment what =
        values.word(step.fields().required("what"), "an adjustment", Adjustment.values());
    Fork then = forks.read(step.fields(), step.what());
    return what == null || then == null
        ? null
        : new Step.Adjust(step.id(), step.said(), step.mark(), what, then);
  }

  /** Reads an id that another file defines and keeps it for a later check; or null. */
  private @Nullable String named(@Nullable Node node, String what, List<Scalar> kept) {
    Scalar id = values.id(node, what);
    if (id == null) {
      return null;
    }
    kept.add(id);
    return id.text();
  }

  private @Nullable String change(MappingKeys fields) {
    return named(fields.optional("changes"), "a change", references.elsewhere().changes());
  }

  private @Nullable Step compute(Begun step) {
    // What is worked out follows from the conditions; older files name it all the same.
    Scalar named = values.scalar(step.fields().optional("calculation"));
    if (named != null && !CALCULATIONS.contains(named.text())) {
      values.unknown(Slip.UNKNOWN_WORD, named, "a calculation", CALCULATIONS);
    }
    Fork then = forks.read(step.fields(), step.what());
    return then == null ? null : new Step.Compute(step.id(), step.said(), step.mark(), then);
  }

  private @Nullable Step await(Begun step) {
    Integer minutes = values.parsed(step.fields().required("for"), Amounts::minutes);
    boolean rest = values.truth(step.fields().optional("rest"));
    Set<Fact> facts = establishes(step.fields());
    String meanwhile = values.fixed(step.fields().optional("meanwhile"));
    Words said = step.said().with(words.shortcut(step.fields()));
    Scalar go = forks.way(step.fields().required("go"));
    return minutes == null || go == null
        ? null
        : new Step.Wait(step.id(), said, step.mark(), minutes, rest, facts, meanwhile, go.text());
  }

  private @Nullable Step call(Begun step) {
    Scalar procedure = values.id(step.fields().required("procedure"), "a procedure");
    Fork then = forks.read(step.fields(), step.what());
    if (procedure == null || then == null) {
      return null;
    }
    references.elsewhere().calls().add(procedure);
    return new Step.Call(step.id(), step.said(), step.mark(), procedure.text(), then);
  }

  private @Nullable Step end(Begun step) {
    Scalar outcome = values.id(step.fields().required("outcome"), "an outcome");
    if (outcome == null) {
      return null;
    }
    return step.kind().equals("done")
        ? new Step.Done(step.id(), step.said(), step.mark(), outcome.text())
        : new Step.HandOver(step.id(), step.said(), step.mark(), outcome.text());
  }
}
