package quarterturn.procedure.read;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.LessonQuestion;
import quarterturn.procedure.Slip;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;

/** Reads the questions of a lesson. */
record AskReader(Faults faults, WordsReader words) {
  /** The keys that say what kind of question it is, the last for one to think about beforehand. */
  static final List<String> KINDS = List.of("predict", "idea", "check", "question");

  /** Each question of a list that can be read. */
  List<LessonQuestion> read(@Nullable Node list) {
    return new Scalars(faults).each(list, this::one);
  }

  /** A question, by itself or under the key of its kind. */
  private @Nullable LessonQuestion one(Node item) {
    if (!(item instanceof Node.Mapping)) {
      String question = words.text(item);
      return question == null ? null : new LessonQuestion(question, null);
    }
    MappingKeys fields = MappingKeys.of(item, "a question", faults);
    KINDS.forEach(fields::optional);
    Node step = fields.optional("about");
    Node good = fields.optional("answer");
    Node wrong = fields.optional("wrong");
    fields.end();
    String kind = kind(fields);
    if (kind == null) {
      return null;
    }
    String question = words.text(fields.optional(kind));
    Scalar about = new Scalars(faults).scalar(step);
    words.references().about(about);
    String answer = words.text(good);
    List<LessonQuestion.Idea> ideas = new Scalars(faults).each(wrong, this::idea);
    return question == null
        ? null
        : new LessonQuestion(
            of(kind), question, about == null ? null : about.text(), answer, ideas);
  }

  /** The one key under which the question stands, or null with a fault. */
  private @Nullable String kind(MappingKeys fields) {
    List<String> kinds = KINDS.stream().filter(fields::has).toList();
    if (kinds.isEmpty()) {
      faults.add(
          Slip.MISSING_KEY,
          fields.mark(),
          "a question lacks its own words",
          "Write them under one of " + String.join(", ", KINDS));
      return null;
    }
    for (String second : kinds.subList(1, kinds.size())) {
      faults.value(
          fields.key(second),
          "a question is of one kind, not " + kinds.get(0) + " and " + second,
          "Give each its own place in the list. Allowed: one of " + String.join(", ", KINDS));
    }
    return kinds.get(0);
  }

  private static LessonQuestion.Kind of(String key) {
    return switch (key) {
      case "idea" -> LessonQuestion.Kind.IDEA;
      case "check" -> LessonQuestion.Kind.CHECK;
      default -> LessonQuestion.Kind.PREDICT;
    };
  }

  private LessonQuestion.@Nullable Idea idea(Node item) {
    MappingKeys fields = MappingKeys.of(item, "a wrong idea", faults);
    String says = words.text(fields.required("says"));
    String but = words.text(fields.required("but"));
    fields.end();
    return says == null || but == null ? null : new LessonQuestion.Idea(says, but);
  }
}
