package quarterturn.session.store;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Carried;

/**
 * A session about to be started or resumed, with what other records mean for it.
 *
 * @param library the library with its procedure, which was proven
 * @param wish the properties that it starts with
 * @param session its name where it goes on, or null for a new one
 * @param opening what is on record, and what the person said of it
 */
public record Beginning(
    Library library, Sessions.Wish wish, @Nullable String session, Opening opening) {

  /** Whether its procedure, or one that it calls, can turn the rod. */
  boolean turns() {
    return library.procedures().values().stream()
        .flatMap(procedure -> procedure.steps().values().stream())
        .anyMatch(Step.TurnRod.class::isInstance);
  }

  /** Whether it can set back what an earlier lesson or session turned. */
  boolean setsBack() {
    return library.any(library.main(), Step::setsBack);
  }

  /** This with something said; a session without a name gets that of the same instrument's. */
  Beginning saying(List<Carried.Said> more) {
    Opening now = opening;
    for (Carried.Said one : more) {
      now = now.with(one);
    }
    String named = session == null ? now.named() : wish.instrument();
    Sessions.Wish whole =
        new Sessions.Wish(
            wish.procedure(), named, wish.kind(), wish.style(), wish.role(), wish.lesson());
    return new Beginning(library, whole, session, now.named(named));
  }

  /** The beginning of the session that takes this one's place. */
  Beginning instead(@Nullable String kind, @Nullable Style style, String session, Instant at) {
    Sessions.Wish anew =
        new Sessions.Wish(
            wish.procedure(), wish.instrument(), kind, style, wish.role(), wish.lesson());
    Carried.Said same = new Carried.Said(at, session, Carried.Answer.SAME, null, null);
    return new Beginning(library, anew, null, opening.ofKind(kind).with(same));
  }
}
