package quarterturn.procedure;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * What every step can say.
 *
 * @param part the part of the procedure the step belongs to, for place-keeping
 * @param text what the beginner is told: condition before action, one action
 * @param brief the technician's wording
 * @param why the reason, for whoever asks
 * @param ask the teacher's questions
 * @param hazards ids of the hazards shown right before the step
 * @param neverSkip whether no role may pass over it
 * @param picture what is drawn beside it
 */
public record Words(
    String part,
    String text,
    @Nullable String brief,
    @Nullable String why,
    List<String> ask,
    List<String> hazards,
    boolean neverSkip,
    @Nullable Picture picture) {
  public Words {
    ask = List.copyOf(ask);
    hazards = List.copyOf(hazards);
  }

  /** The wording for {@code role}. */
  public String forRole(Role role) {
    return role == Role.TECHNICIAN && brief != null ? brief : text;
  }
}
