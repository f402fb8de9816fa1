package quarterturn.command;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import quarterturn.line.LineHome;
import quarterturn.report.Dates;
import quarterturn.screen.HomeItem;
import quarterturn.session.Due;
import quarterturn.session.store.Store;

/** A line of the home view as both faces show it, and what choosing it leads to. */
record HomeLine(HomeItem drawn, LineHome.Item typed) {
  /**
   * The lines of the home view.
   *
   * @param due the most pressing things
   * @param unfinished the unfinished sessions that are not among them
   */
  record Lines(List<HomeLine> due, List<HomeLine> unfinished) {
    Lines {
      due = List.copyOf(due);
      unfinished = List.copyOf(unfinished);
    }

    /** The choice a line of the full screen stands for. */
    static LineHome.Choice choice(List<HomeLine> lines, int index) {
      return lines.get(index).typed().choice();
    }

    static List<HomeItem> drawn(List<HomeLine> lines) {
      return lines.stream().map(HomeLine::drawn).toList();
    }

    static List<LineHome.Item> typed(List<HomeLine> lines) {
      return lines.stream().map(HomeLine::typed).toList();
    }
  }

  /**
   * @param sessions as the store lists them
   * @param pressing what it opens on
   */
  static Lines lines(List<Store.Glance> sessions, List<Due> pressing, Instant now, Dates dates) {
    Map<String, Store.Glance> unfinished = new LinkedHashMap<>();
    sessions.stream().filter(Store.Glance::unfinished).forEach(g -> unfinished.put(g.name(), g));
    List<HomeLine> due = new ArrayList<>();
    for (Due one : pressing) {
      Store.Glance glance = one.resumes() == null ? null : unfinished.remove(one.session());
      due.add(glance == null ? begun(one, now, dates) : resumed(glance, now, dates));
    }
    List<HomeLine> rest = unfinished.values().stream().map(g -> resumed(g, now, dates)).toList();
    return new Lines(due, rest);
  }

  private static HomeLine begun(Due due, Instant now, Dates dates) {
    String when = "Due " + dates.toOrFrom(now, due.at());
    String what = due.what().replaceAll("\\.$", "");
    return new HomeLine(
        new HomeItem(due.instrument(), due.what(), when),
        new LineHome.Item(
            due.instrument(),
            due.instrument() + ": " + what,
            when,
            new LineHome.Choice.Begin(due.procedure(), due.instrument())));
  }

  private static HomeLine resumed(Store.Glance glance, Instant now, Dates dates) {
    String instrument =
        glance.instrument() != null
            ? glance.instrument()
            : glance.kind() != null ? glance.kind() : "an instrument without a name";
    Instant started = glance.started() == null ? now : glance.started();
    String what =
        glance.procedure() + " on " + instrument + ", begun " + dates.seenFrom(now, started);
    String due = due(glance, now);
    return new HomeLine(
        new HomeItem(what, glance.name(), due),
        new LineHome.Item(glance.name(), what, due, new LineHome.Choice.Resume(glance.name())));
  }

  /** How a session stands, in words. */
  private static String due(Store.Glance glance, Instant now) {
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
