package quarterturn.session.store;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.BridgeKind;
import quarterturn.procedure.kind.Handed;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.NeckJoint;
import quarterturn.procedure.kind.NutKind;
import quarterturn.procedure.kind.PickupKind;
import quarterturn.procedure.kind.RodKind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Question;

/**
 * The question for one fact of an instrument: a choice by number where it is one of a few, else a
 * line of words. Enter keeps what is offered first; not to know it is an ordinary answer.
 *
 * @param fields the facts so far
 * @param kinds every kind, by its id
 */
record FactQuestion(FormField field, Map<FormField, String> fields, Map<String, Kind> kinds) {
  /** The option that keeps a fact as it is, or leaves it to the kind. */
  static final String KEEP = "keep";

  /** The word that clears a fact. */
  static final String NONE = "none";

  /** Ways to say that a fact is not known. */
  private static final Set<String> UNKNOWN =
      Set.of("unknown", "not known", "not sure", "don't know", "i don't know", "-");

  private static final String KEYS = "none clears it, done keeps all that is left, quit leaves";

  /**
   * @param title what stands over the question
   * @param place where among the questions it stands, such as "2 of 9"; or empty
   */
  Question.Asked asked(String title, String place) {
    List<Question.Option> options = options();
    String before = place.isEmpty() ? "" : place + ". ";
    if (options.isEmpty()) {
      return new Question.Words(
          title,
          List.of(before + field.meaning() + ordinary()),
          field.label() + " [" + shown() + "]",
          "Enter keeps what stands in brackets; " + KEYS + ".");
    }
    String asks = field.label() + (mayKeep() ? " [" + shown() + "]" : "");
    return new Question.Choose(
        title,
        List.of(before + asking()),
        asks,
        mayKeep()
            ? "Type a number from the list; Enter keeps the first, " + KEYS + "."
            : "Type a number from the list, or a name in it; quit leaves.",
        options);
  }

  private String asking() {
    return switch (field) {
      case KIND -> "What kind of instrument is it?";
      case STYLE -> "How hard does the player play? It sets the range of the relief.";
      case NECK -> "How is the neck joined to the body?";
      case NUT -> "What guides the strings at the headstock end?";
      case ROD -> "What truss rod does the neck have?";
      case BRIDGE -> "What can be moved at the bridge?";
      case PICKUP -> "Which magnetic pickup is set?";
      default -> field.meaning();
    };
  }

  /** That not to know one's strings is an ordinary answer. */
  private String ordinary() {
    return field == FormField.GAUGES ? " Press Enter where you don't know them." : "";
  }

  /** Whether a fact can be left as it is; only an instrument's kind must be known. */
  private boolean mayKeep() {
    return field != FormField.KIND || fields.containsKey(field);
  }

  /**
   * What a typed line gives: the fact's new value, {@link #KEEP} or {@link #NONE}.
   *
   * @throws quarterturn.unit.NotUnderstoodException where it is none of the options
   */
  String given(String typed) {
    String word = typed.toLowerCase(Locale.ROOT);
    if (typed.isEmpty() && mayKeep()) {
      return KEEP;
    }
    if (word.equals(NONE)) {
      return NONE;
    }
    if (field != FormField.KIND && !options().stream().anyMatch(o -> o.name().equals(word))) {
      if (UNKNOWN.contains(word)) {
        return NONE;
      }
    }
    return asked("", "") instanceof Question.Choose choose ? choose.chosen(word) : typed;
  }

  /** What holds where nothing is typed. */
  String shown() {
    String own = fields.get(field);
    if (own != null) {
      return own;
    }
    Kind kind = kinds.get(fields.getOrDefault(FormField.KIND, ""));
    String usual =
        field == FormField.KIND || kind == null ? null : FormFields.usual(field, fields, kind);
    return usual == null ? FormFields.unsaid(field) : usual;
  }

  private List<Question.Option> options() {
    List<Question.Option> choices = choices();
    List<Question.Option> options = new ArrayList<>();
    if (!choices.isEmpty() && mayKeep()) {
      String own = fields.get(field);
      String label =
          choices.stream()
              .filter(one -> one.name().equals(own))
              .map(Question.Option::label)
              .findFirst()
              .orElse(FormFields.unsaid(field));
      options.add(
          new Question.Option(KEEP, own == null ? sentence(label) : "As it is: " + label, "", ""));
    }
    options.addAll(choices);
    return options;
  }

  private static String sentence(String words) {
    return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
  }

  private List<Question.Option> choices() {
    Kind kind = kinds.get(fields.getOrDefault(FormField.KIND, ""));
    return switch (field) {
      case KIND -> kinds.values().stream().map(one -> option(one.id(), one.name())).toList();
      case STYLE -> styles(kind);
      case NECK ->
          List.of(
              option(NeckJoint.BOLT_ON.word(), "Screwed on"),
              option(NeckJoint.SET.word(), "Glued in"));
      case NUT ->
          List.of(
              option(NutKind.SLOTTED.word(), "A nut with a slot for each string"),
              option(NutKind.LOCKING.word(), "A nut that clamps the strings"),
              option(NutKind.ZERO_FRET.word(), "A fret before fret 1; the nut only spaces them"));
      case ROD ->
          List.of(
              option(RodKind.SINGLE.word(), "One that bends the neck back only"),
              option(RodKind.TWO_WAY.word(), "One that bends it either way"),
              option(RodKind.TWO_RODS.word(), "Two rods side by side"),
              option(RodKind.NONE_FITTED.word(), "None"));
      case BRIDGE ->
          List.of(
              option(BridgeKind.ADJUSTABLE.word(), "Each saddle, by screws of its own"),
              option(BridgeKind.TWO_POSTS.word(), "The whole bridge, on two posts"),
              option(BridgeKind.PAIRED.word(), "Saddles that carry two strings each"),
              option(BridgeKind.LOCKED.word(), "Saddles that are held by locks"),
              option(BridgeKind.FIXED.word(), "Nothing"),
              option(BridgeKind.FLOATING.word(), "It floats, balanced by springs"));
      case PICKUP ->
          List.of(
              option(PickupKind.COVERED_NECK.word(), "By the neck, under a cover"),
              option(PickupKind.COVERED_BRIDGE.word(), "By the bridge, under a cover"),
              option(PickupKind.BARE_NECK.word(), "By the neck, with bare rod magnets"),
              option(PickupKind.BARE_BRIDGE.word(), "By the bridge, with bare rod magnets"));
      case HANDED ->
          List.of(
              option(Handed.RIGHT.word(), "The right hand plucks"),
              option(Handed.LEFT.word(), "The left hand plucks"));
      default -> List.of();
    };
  }

  private static List<Question.Option> styles(@Nullable Kind kind) {
    return kind == null
        ? List.of()
        : kind.styles().stream().map(style -> option(style.word(), words(style))).toList();
  }

  private static String words(Style style) {
    return switch (style) {
      case LIGHT -> "With a light hand";
      case MEDIUM -> "With a medium hand";
      case HARD -> "With a hard hand";
      case SLIDE -> "With a slide";
    };
  }

  private static Question.Option option(String word, String label) {
    return new Question.Option(word, label, "", "");
  }
}
