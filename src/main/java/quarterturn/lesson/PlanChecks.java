package quarterturn.lesson;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.session.store.Sessions;
import quarterturn.unit.NotUnderstoodException;

/** Holds a plan against the procedures, kinds and necks there are. */
public final class PlanChecks {
  private final Sessions sessions;
  private final Pace pace;
  private final Set<String> procedures;
  private final Set<String> kinds;
  private final String usual;

  /**
   * @param pace at which a lesson takes its time
   */
  public PlanChecks(Sessions sessions, Pace pace) throws IOException, UnreadableException {
    this.sessions = sessions;
    this.pace = pace;
    this.procedures = new TreeSet<>(new Shelf(sessions.own()).procedures());
    Library rules = sessions.rules();
    this.kinds = rules.kinds().keySet();
    this.usual = rules.results().usual();
  }

  /** The plan that the typed parts make, checked so that every id in it is known. */
  public Plan plan(String lesson, Map<PlanPart, String> typed) {
    return Planning.of(lesson, typed, known(typed));
  }

  /** The value of a part for which nothing is typed. */
  String usual(PlanPart part) {
    return part == PlanPart.PROCEDURES ? usual : part.usual();
  }

  /**
   * Checks the parts that were typed so far.
   *
   * @throws NotUnderstoodException saying what is taken
   */
  void check(Map<PlanPart, String> typed) {
    plan("a", typed);
  }

  /** How long a plan takes, in a sentence. */
  public String time(Plan plan) {
    try {
      return LessonTime.of(plan, sessions).words(plan.questions(), pace);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnreadableException e) {
      throw new NotUnderstoodException("It can't be used: " + e.getMessage());
    }
  }

  /** The values that a part can take, in words, or null where the question names them. */
  @Nullable String choices(PlanPart part) {
    return switch (part) {
      case PROCEDURES -> String.join(", ", procedures);
      case KIND -> String.join(", ", kinds);
      case NECKS ->
          Stream.of(NamedNeck.values()).map(NamedNeck::word).collect(Collectors.joining(", "));
      default -> null;
    };
  }

  private Planning.Known known(Map<PlanPart, String> typed) {
    Set<String> steps = new HashSet<>();
    for (Procedure procedure : all(Planning.procedures(typed, usual))) {
      for (String step : procedure.steps().keySet()) {
        steps.add(step);
        steps.add(procedure.id() + "/" + step);
      }
    }
    return new Planning.Known(usual, procedures, kinds, steps::contains);
  }

  private List<Procedure> all(List<String> named) {
    List<Procedure> out = new ArrayList<>();
    for (String id : named) {
      if (procedures.contains(id)) {
        out.addAll(library(id).procedures().values());
      }
    }
    return out;
  }

  private Library library(String id) {
    try {
      return sessions.library(id);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (UnreadableException e) {
      throw new NotUnderstoodException(id + " can't be used: " + e.getMessage());
    }
  }
}
