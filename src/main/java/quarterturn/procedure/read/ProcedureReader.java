package quarterturn.procedure.read;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.InWindow;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Step;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.form.FullForm;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.form.SharedFiles;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads a procedure from its file. */
public final class ProcedureReader {
  /** The first keys of files that procedures take something from, and what each such file is. */
  private static final Map<String, String> SHARED =
      Map.of("block", "a block", "lesson", "questions of a lesson", "endings", "shared ends");

  private final Faults faults;
  private final Scalars values;
  private final References references;
  private final StepReader stepReader;
  private final Map<String, Step> steps = new LinkedHashMap<>();

  private ProcedureReader(Faults faults, @Nullable List<String> hazards) {
    this.faults = faults;
    this.values = new Scalars(faults);
    this.references = new References(faults);
    this.stepReader = new StepReader(faults, references, hazards);
  }

  /**
   * A procedure that is to be used only if its file has no faults.
   *
   * @param id its id where it stands, or null where it has none
   * @param names what it names of other files
   */
  public record Draft(Procedure procedure, @Nullable Scalar id, References.Elsewhere names) {}

  /**
   * Reads a procedure as far as it can be read.
   *
   * @param hazards ids of the known hazards, or null where they are not known
   * @throws UnreadableException when the file is no YAML
   */
  public static Draft draft(
      Faults faults, byte[] bytes, @Nullable List<String> hazards, SharedFiles shared)
      throws UnreadableException {
    return draft(faults, new WrittenOut(full(faults, shared), digest(bytes)), hazards);
  }

  /** As above, of a procedure that was written out. */
  static Draft draft(Faults faults, WrittenOut full, @Nullable List<String> hazards)
      throws UnreadableException {
    MappingKeys fields = MappingKeys.of(full.tree(), "a procedure", faults);
    Draft draft = new ProcedureReader(faults, hazards).draft(fields, full.digest());
    if (!fields.found()) {
      throw new UnreadableException(faults.sorted());
    }
    return draft;
  }

  /**
   * The tree of a procedure with every form written out, and the questions of its lesson.
   *
   * @throws UnreadableException also when the file is one that procedures only take from
   */
  static Node full(Faults faults, SharedFiles shared) throws UnreadableException {
    Node file = faults.tree();
    String is = file instanceof Node.Mapping mapping ? SHARED.get(mapping.first()) : null;
    if (is != null) {
      faults.add(
          Slip.UNKNOWN_KEY,
          file.mark(),
          "this file is " + is + ", not a procedure",
          "It is checked with the procedures that use it; check one of those");
      throw new UnreadableException(faults.sorted());
    }
    Node full = FullForm.of(file, shared, faults);
    String id = file instanceof Node.Mapping mapping ? mapping.text("procedure") : "";
    Node.Mapping questions = Scalars.isId(id) ? shared.questions(id) : null;
    Faults held = questions == null || shared.questionsOfAnother(id) ? null : faults;
    return questions == null ? full : FullForm.asking(full, questions, held);
  }

  /** The keys of a procedure, without their values. */
  static MappingKeys keys() {
    MappingKeys fields = MappingKeys.empty();
    new ProcedureReader(fields.faults(), null).draft(fields, "");
    return fields;
  }

  private Draft draft(MappingKeys fields, String digest) {
    Scalar id = values.id(fields.required("procedure"), "a procedure");
    Procedure procedure = procedure(fields, id == null ? "" : id.text(), digest);
    return new Draft(procedure, id, references.elsewhere());
  }

  private Procedure procedure(MappingKeys fields, String id, String digest) {
    Integer revision = values.count(fields.required("revision"), 1, 999_999);
    String title = values.fixed(fields.required("title"));
    String purpose = values.fixed(fields.required("purpose"));
    List<String> tools = values.fixedLines(fields.required("tools"));
    String begin = way(fields.required("begin"), "");
    List<Scalar> needs = values.each(fields.optional("needs"), need -> values.id(need, "a result"));
    references.elsewhere().results().addAll(needs);
    String retune = way(fields.optional("retune"), begin);
    String reread = way(fields.optional("reread"), begin);
    steps(fields.required("steps"));
    fields.end();
    if (!steps.isEmpty()) {
      references.check();
    }
    return new Procedure(
        id,
        revision == null ? 0 : revision,
        Objects.requireNonNullElse(title, ""),
        Objects.requireNonNullElse(purpose, ""),
        tools,
        begin,
        retune,
        reread,
        InWindow.expected(steps),
        digest,
        needs.stream().map(Scalar::text).toList());
  }

  private String way(@Nullable Node node, String otherwise) {
    Scalar step = values.scalar(node);
    references.way(step);
    return node == null ? otherwise : step == null ? "" : step.text();
  }

  private void steps(@Nullable Node node) {
    List<Node> entries = values.items(node);
    String part = null;
    for (Node entry : entries) {
      if (!(entry instanceof Node.Mapping mapping) || mapping.entries().isEmpty()) {
        if (!(entry instanceof Node.Refused)) {
          faults.value(entry.mark(), "expected a step here, found " + entry.name(), begins());
        }
        continue;
      }
      String kind = mapping.entries().keySet().iterator().next();
      if (kind.equals("part")) {
        part = part(mapping);
        continue;
      }
      if (part == null) {
        faults.add(
            Slip.MISSING_KEY,
            entry.mark(),
            "this step belongs to no part of the work",
            "Begin the list with the name of a part: - part: Get ready");
        part = "";
      }
      step(mapping, kind, part);
    }
    if (entries.isEmpty() && node instanceof Node.Sequence) {
      faults.value(
          node.mark(), "the list of steps is empty", "A procedure needs one step at least");
    }
  }

  private String part(Node.Mapping mapping) {
    MappingKeys fields = MappingKeys.of(mapping, "a part", faults);
    String name = values.fixed(fields.required(Keys.PART));
    fields.end();
    return Objects.requireNonNullElse(name, "");
  }

  private void step(Node.Mapping mapping, String kind, String part) {
    if (Keys.KINDS.contains(kind)) {
      Step step = stepReader.read(mapping, kind, part);
      if (step != null) {
        steps.putIfAbsent(step.id(), step);
      }
      return;
    }
    for (String other : Keys.KINDS) {
      if (mapping.entries().containsKey(other)) {
        faults.add(
            Slip.UNKNOWN_WORD,
            mapping.mark(),
            "this step begins with " + Quote.of(kind) + ", not with its kind",
            "Put " + other + " before it");
        stepReader.read(mapping, other, part);
        return;
      }
    }
    // Its id counts all the same, so that the ways to it are not called faults too.
    Node.Entry named = mapping.entries().get(kind);
    if (named != null && named.value() instanceof Scalar id) {
      references.step(id, kind, List.of());
    }
    faults.add(
        Slip.UNKNOWN_WORD,
        mapping.mark(),
        Quote.of(kind) + " is no kind of step",
        Quote.hint(kind, Keys.KINDS, begins()));
  }

  private static String begins() {
    return "A step begins with its kind. Allowed: "
        + String.join(", ", Keys.KINDS)
        + ", read, cases, use, part";
  }

  /** The SHA-256 digest of {@code bytes} in hexadecimal. */
  public static String digest(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
