package quarterturn.procedure.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Quantity;
import quarterturn.procedure.Response;
import quarterturn.procedure.Results;
import quarterturn.procedure.Verdict;

/** What may be known when a procedure begins. */
final class Entry {
  private final Frame frame;
  private final Set<Subject> decided;

  Entry(Frame frame) {
    this.frame = frame;
    this.decided = frame.decided();
  }

  /** Begun for the first time: by every role, by itself and within every job it speaks of. */
  List<Situation> first() {
    int[] masks = frame.allMasks();
    for (int i = 0; i < masks.length; i++) {
      masks[i] = frame.fleeting(i) ? frame.domains().get(i).all() : unknown(frame.domains().get(i));
    }
    List<Situation> all = new ArrayList<>(List.of(new Situation(frame.layout(), masks)));
    for (int i = 0; i < masks.length; i++) {
      Subject subject = frame.domains().get(i).subject();
      if (subject instanceof Subject.Person || subject instanceof Subject.Callers) {
        all = split(all, i);
      }
    }
    all.forEach(this::needed);
    return all;
  }

  private List<Situation> split(List<Situation> all, int subject) {
    List<Situation> split = new ArrayList<>();
    for (Situation one : all) {
      for (int cell = 0; cell < frame.domains().get(subject).cells().size(); cell++) {
        Situation with = one.copy();
        with.mask(subject, 1 << cell);
        split.add(with);
      }
    }
    return split;
  }

  private static int unknown(Domain domain) {
    Subject subject = domain.subject();
    if (subject instanceof Subject.Reading) {
      return domain.where(c -> c instanceof Cell.Standing s && s.verdict() == Verdict.NOT_MEASURED);
    } else if (subject instanceof Subject.Choice) {
      return domain.option("");
    } else if (subject instanceof Subject.Count) {
      return domain.where(c -> c instanceof Cell.Amount a && a.from() == 0);
    } else if (subject instanceof Subject.Neck) {
      return domain.where(c -> c instanceof Cell.Answer a && a.response() == Response.NOT_TURNED);
    } else if (subject instanceof Subject.Feeling) {
      return domain.where(c -> c instanceof Cell.Felt felt && felt.feel() == null);
    } else if (subject instanceof Subject.Rod) {
      return domain.where(c -> c instanceof Cell.Rod rod && rod.doubt() == null);
    }
    return domain.all();
  }

  /** What a procedure needs is fresh, since the engine sees to that before it begins. */
  private void needed(Situation situation) {
    for (String need : frame.procedure().needs()) {
      Results.Result result = frame.library().results().results().get(need);
      Quantity quantity = result == null ? null : result.quantity();
      if (quantity == null) {
        continue;
      }
      situation.held(quantity, Held.FRESH);
      int subject = frame.index(new Subject.Reading(quantity));
      if (subject >= 0) {
        // It may have been read in an earlier session, of which conditions know nothing.
        situation.mask(subject, frame.domains().get(subject).all());
      }
    }
  }

  /** Whether what is known of a subject can still be known when the procedure begins once more. */
  static boolean stays(Subject subject) {
    return subject instanceof Subject.Choice
        || subject instanceof Subject.Count
        || subject instanceof Subject.Person
        || subject instanceof Subject.Callers
        || subject instanceof Subject.Neck;
  }

  /**
   * Begun once more by the larger job it ended in: its own choices and counts are as it left them,
   * what is true of the bench is for others to say.
   */
  Situation again(Situation ended) {
    Situation again = ended.copy();
    again.withdraw(Fact.AT_PITCH, Fact.SETTLED, Fact.DETUNED);
    again.dayLeft(false);
    for (Quantity quantity : Quantity.values()) {
      again.spoil(quantity);
    }
    for (int i = 0; i < frame.domains().size(); i++) {
      Domain domain = frame.domains().get(i);
      boolean moved = domain.subject() instanceof Subject.Neck && again.turned();
      if (moved || !stays(domain.subject())) {
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
