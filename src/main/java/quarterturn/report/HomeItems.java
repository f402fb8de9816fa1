package quarterturn.report;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Due;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Store;
import quarterturn.unit.Dates;

/** The options of the home view: what is due and the unfinished sessions. */
public final class HomeItems {
  private static final String DUE = "Due";
  private static final String UNFINISHED = "Unfinished sessions";

  private HomeItems() {}

  /**
   * The items that are due, then the unfinished sessions that are not among them.
   *
   * @param sessions every session, as the store lists them
   * @param pressing the items that are due or due soon
   */
  public static List<HomeDialogue.Item> of(
      List<Store.Glance> sessions, List<Due> pressing, Instant now, Dates dates) {
    Map<String, Store.Glance> unfinished = new LinkedHashMap<>();
    sessions.stream().filter(Store.Glance::unfinished).forEach(g -> unfinished.put(g.name(), g));
    List<HomeDialogue.Item> out = new ArrayList<>();
    for (Due due : pressing) {
      Store.Glance glance = due.resumes() == null ? null : unfinished.remove(due.session());
      out.add(glance == null ? begun(due, now, dates) : resumed(glance, DUE, now, dates));
    }
    unfinished.values().forEach(g -> out.add(resumed(g, UNFINISHED, now, dates)));
    return out;
  }

  private static HomeDialogue.Item begun(Due due, Instant now, Dates dates) {
    String detail = due.what() + " Due " + dates.toOrFrom(now, due.at());
    return new HomeDialogue.Item(
        new Question.Option(due.instrument(), due.instrument(), detail, DUE),
        new HomeDialogue.Choice.Begin(due.procedure(), due.instrument(), Role.BEGINNER));
  }

  private static HomeDialogue.Item resumed(
      Store.Glance glance, String group, Instant now, Dates dates) {
    Instant started = glance.started() == null ? now : glance.started();
    String detail = "Begun " + dates.seenFrom(now, started) + ". " + standing(glance, now);
    String label = glance.procedure() + " on " + glance.on();
    return new HomeDialogue.Item(
        new Question.Option(glance.name(), label, detail, group),
        new HomeDialogue.Choice.Resume(glance.name()));
  }

  /** The state of a session in words. */
  private static String standing(Store.Glance glance, Instant now) {
    Instant until = glance.waitingUntil();
    if (until != null && until.isAfter(now)) {
      return "Waiting, " + Dates.lasting(Duration.between(now, until)) + " to go";
    }
    if (until != null) {
      return "The wait is over: read again";
    }
    return glance.standing() == null ? "Go on" : "Left with " + glance.standing();
  }
}
