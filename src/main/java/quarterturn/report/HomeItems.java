package quarterturn.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Due;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Store;
import quarterturn.unit.Dates;

/** The options of the home view: what is due and the unfinished sessions. */
public final class HomeItems {
  private static final String DUE = "To go on with, or due";
  private static final String SOON = "Due soon";
  private static final String WAITS = "Waiting";
  private static final String UNFINISHED = "Unfinished sessions";

  private HomeItems() {}

  /**
   * The items that are due, those that wait, and the unfinished sessions that are not among them.
   *
   * @param sessions every session, as the store lists them
   * @param pressing the items that are due or due soon
   * @param titles the titles of procedures, by their ids
   */
  public static List<HomeDialogue.Item> of(
      List<Store.Glance> sessions,
      List<Due> pressing,
      UnaryOperator<String> titles,
      Instant now,
      Dates dates) {
    Map<String, Store.Glance> unfinished = new LinkedHashMap<>();
    sessions.stream().filter(Store.Glance::unfinished).forEach(g -> unfinished.put(g.name(), g));
    List<Store.Glance> waiting =
        unfinished.values().stream()
            .filter(g -> g.waitingUntil() != null && g.waitingUntil().isAfter(now))
            .sorted(Comparator.comparing(Store.Glance::waitingUntil))
            .toList();
    waiting.forEach(g -> unfinished.remove(g.name()));
    List<HomeDialogue.Item> out = new ArrayList<>();
    List<HomeDialogue.Item> soon = new ArrayList<>();
    for (Due due : pressing) {
      Store.Glance glance = due.resumes() == null ? null : unfinished.remove(due.session());
      if (glance != null) {
        out.add(resumed(glance, DUE, titles, now, dates));
      } else if (due.resumes() == null) {
        boolean come = due.come(now);
        (come ? out : soon).add(begun(due, come ? DUE : SOON, now, dates));
      }
    }
    waiting.forEach(g -> out.add(resumed(g, WAITS, titles, now, dates)));
    out.addAll(soon);
    unfinished.values().forEach(g -> out.add(resumed(g, UNFINISHED, titles, now, dates)));
    return out;
  }

  private static HomeDialogue.Item begun(Due due, String group, Instant now, Dates dates) {
    String detail = due.what() + " Due " + dates.toOrFrom(now, due.at());
    return new HomeDialogue.Item(
        new Question.Option(due.instrument(), due.instrument(), detail, group),
        new HomeDialogue.Choice.Begin(due.procedure(), due.instrument(), Role.BEGINNER));
  }

  private static HomeDialogue.Item resumed(
      Store.Glance glance, String group, UnaryOperator<String> titles, Instant now, Dates dates) {
    Instant started = glance.started() == null ? now : glance.started();
    String detail = "Begun " + dates.seenFrom(now, started) + ". " + standing(glance, now, dates);
    String label =
        titles.apply(String.valueOf(glance.procedure())) + " on " + glance.on() + left(glance, now);
    return new HomeDialogue.Item(
        new Question.Option(glance.name(), label, detail, group),
        new HomeDialogue.Choice.Resume(glance.name()));
  }

  /** How long a session still waits, behind its name; empty where it does not. */
  private static String left(Store.Glance glance, Instant now) {
    Instant until = glance.waitingUntil();
    return until == null || !until.isAfter(now)
        ? ""
        : ", " + Dates.lasting(Duration.between(now, until)) + " left";
  }

  /** The state of a session in words. */
  private static String standing(Store.Glance glance, Instant now, Dates dates) {
    Instant until = glance.waitingUntil();
    if (until != null && until.isAfter(now)) {
      return "It waits until " + dates.overSeenFrom(now, until);
    }
    if (until != null) {
      return "The wait is over: read again";
    }
    String standing = glance.standing();
    return standing == null
        ? "Go on"
        : (standing.startsWith("in the middle") ? "Left " : "Left with ") + standing;
  }
}
