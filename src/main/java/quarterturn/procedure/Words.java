package quarterturn.procedure;

import java.util.List;
import java.util.Objects;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Role;

/**
 * The words of a step.
 *
 * @param part the part of the procedure the step belongs to, for place-keeping
 * @param text what the beginner is told: condition before action, one action
 * @param brief the technician's wording
 * @param why the reason, for whoever asks
 * @param ask the teacher's questions
 * @param hazards ids of the hazards shown right before the step
 * @param neverSkip whether no role may pass over it
 * @param picture what is drawn beside it
 * @param expects what must hold whenever the step is reached, because its words say so; or null
 * @param shortcut what becomes of it on a technician's short path, or null
 */
public record Words(
    String part,
    String text,
    @Nullable String brief,
    @Nullable String why,
    List<LessonQuestion> ask,
    List<String> hazards,
    boolean neverSkip,
    @Nullable Picture picture,
    @Nullable Condition expects,
    @Nullable Shortcut shortcut) {
  public Words {
    ask = List.copyOf(ask);
    hazards = List.copyOf(hazards);
  }

  /** These words, with what becomes of the step on a technician's short path. */
  public Words with(@Nullable Shortcut how) {
    return new Words(part, text, brief, why, ask, hazards, neverSkip, picture, expects, how);
  }

  /** These words, with what must hold when the step is reached. */
  public Words expecting(Condition what) {
    return new Words(part, text, brief, why, ask, hazards, neverSkip, picture, what, shortcut);
  }

  /** Words of a step that shows nothing. */
  public static Words silent(String part, @Nullable Condition expects) {
    return new Words(part, "", null, null, List.of(), List.of(), false, null, expects, null);
  }

  /** Their sentences, each on one line. */
  public Stream<String> sentences() {
    return all().flatMap(Words::sentences);
  }

  /** The sentences of a text, each on one line. */
  public static Stream<String> sentences(String text) {
    return SENTENCE.splitAsStream(SPACE.matcher(text).replaceAll(" "));
  }

  private static final Pattern SPACE = Pattern.compile("\\s+");
  private static final Pattern SENTENCE = Pattern.compile("(?<=[.!?;:]) ");

  /** The text, and the technician's wording and the reason where there are such. */
  public Stream<String> all() {
    return Stream.of(text, brief, why).filter(Objects::nonNull);
  }

  /** The wording for {@code role}. */
  public String forRole(Role role) {
    return role == Role.TECHNICIAN && brief != null ? brief : text;
  }
}
