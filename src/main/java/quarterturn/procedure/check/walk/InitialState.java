package quarterturn.procedure.check.walk;

import java.util.Set;
import quarterturn.procedure.Results;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.condition.Subject;
import quarterturn.procedure.kind.Quantity;

/**
 * The states in which a procedure may begin.
 *
 * @param decided the subjects that branches ask for
 */
record InitialState(Frame frame, Set<Subject> decided) {
  /** The state of a first beginning: by any role, by itself or within any job. */
  AbstractState first() {
    int[] masks = frame.allMasks();
    for (int i = 0; i < masks.length; i++) {
      masks[i] = frame.fleeting(i) ? frame.domains().get(i).all() : unknown(frame.domains().get(i));
    }
    AbstractState first = new AbstractState(frame.layout(), masks);
    needed(first);
    return first;
  }

  private static int unknown(Domain domain) {
    return domain.where(Knowledge.of(domain.subject()).initial());
  }

  /**
   * Sets the results that a procedure needs to fresh, since the engine sees to that before it
   * begins.
   */
  private void needed(AbstractState situation) {
    for (String need : frame.procedure().needs()) {
      Results.Result result = frame.library().results().results().get(need);
      Quantity quantity = result == null ? null : result.quantity();
      if (quantity == null) {
        continue;
      }
      situation.bench(situation.bench().with(quantity, Freshness.FRESH));
      // It may have been read in an earlier session, of which conditions know nothing.
      frame.open(situation, new Subject.Reading(quantity));
    }
  }

  /**
   * The state of a procedure begun once more by the job that called it: its own choices and counts
   * are as it left them, and nothing is known of the bench.
   */
  AbstractState again(AbstractState ended) {
    AbstractState again = ended.copy();
    again.bench(again.bench().unknownPitch().spoiled().keeping(Set.of()));
    again.dayLeft(false);
    for (int i = 0; i < frame.domains().size(); i++) {
      Domain domain = frame.domains().get(i);
      boolean moved = domain.subject() instanceof Subject.Neck && again.turned();
      if (moved || !Knowledge.of(domain.subject()).stays()) {
        again.mask(i, domain.all());
      } else if (domain.subject() instanceof Subject.Choice
          && !decided.contains(domain.subject())) {
        // What is only expected is about the answers of this time.
        again.mask(i, unknown(domain));
      }
    }
    needed(again);
    return again;
  }
}
