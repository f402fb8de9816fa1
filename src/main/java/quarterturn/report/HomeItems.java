package quarterturn.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Due;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** The options of the home view: the unfinished sessions, and what is due. */
public final class HomeItems {
  private static final String BEGUN = "To go on with";
  private static final String DUE = "Due";
  private static final String SOON = "Due soon";

  private HomeItems() {}

  /**
   * The sessions to go on with, then what is due to begin.
   *
   * @param open the unfinished sessions, in their order
   * @param pressing the items that are due or due soon
   * @param titles the titles of procedures, by their ids
   */
  public static List<HomeDialogue.Item> of(
      List<Work> open, List<Due> pressing, UnaryOperator<String> titles, Instant now, Dates dates) {
    List<HomeDialogue.Item> out = new ArrayList<>();
    open.forEach(work -> out.add(resumed(work, titles, dates)));
    pressing.forEach(due -> out.add(begun(due, now, dates)));
    return out;
  }

  private static HomeDialogue.Item begun(Due due, Instant now, Dates dates) {
    String detail = due.what() + " Due " + dates.toOrFrom(now, due.at());
    String group = due.come(now) ? DUE : SOON;
    return new HomeDialogue.Item(
        new Question.Option(due.instrument(), due.instrument(), detail, group),
        new HomeDialogue.Choice.Begin(due.procedure(), due.instrument(), Role.BEGINNER));
  }

  private static HomeDialogue.Item resumed(Work work, UnaryOperator<String> titles, Dates dates) {
    String session = work.glance().name();
    Instant started = work.glance().started();
    String begun = started == null ? "" : "Begun " + dates.seenFrom(work.now(), started) + ". ";
    String label = titles.apply(String.valueOf(work.glance().procedure())) + " on " + work.on();
    return new HomeDialogue.Item(
        new Question.Option(
            session, label + ": " + work.brief(), begun + Quote.sentence(work.words(dates)), BEGUN),
        new HomeDialogue.Choice.Resume(session),
        !work.ready());
  }
}
