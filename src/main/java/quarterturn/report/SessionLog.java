package quarterturn.report;

import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Library;
import quarterturn.session.Corrections;
import quarterturn.session.Event;
import quarterturn.unit.Counted;
import quarterturn.unit.Dates;
import quarterturn.unit.Printable;

/** A session's record in plain English: a header, each event with its date, and what it came to. */
public final class SessionLog {
  private SessionLog() {}

  /**
   * The whole record, one line each, free of control characters.
   *
   * @param name the session's name
   * @param events oldest first
   */
  public static List<String> lines(String name, List<Event> events, Labels labels, Dates dates) {
    List<String> lines = new ArrayList<>();
    lines.add("Session:   " + name);
    if (!events.isEmpty() && events.get(0) instanceof Event.Started started) {
      lines.addAll(header(started, dates));
    }
    lines.add("");
    lines.addAll(events(events, labels, dates));
    lines.add("");
    lines.addAll(Summary.of(events).lines());
    return lines.stream().map(Printable::of).toList();
  }

  private static List<String> header(Event.Started started, Dates dates) {
    List<String> lines = new ArrayList<>();
    lines.add(
        "Procedure: "
            + started.procedure()
            + ", revision "
            + started.revision()
            + " (SHA-256 "
            + started.digest()
            + ")");
    if (started.from() != null) {
      lines.add("From:      " + started.from());
    }
    if (started.by() != null) {
      lines.add("By:        " + started.by());
    }
    if (started.instrument() != null) {
      lines.add("Name:      " + started.instrument());
    }
    if (started.kind() != null) {
      lines.add("Kind:      " + started.kind());
    }
    if (started.style() != null) {
      lines.add("Playing:   " + started.style().word());
    }
    if (started.jointFret() != null) {
      lines.add("Joint:     fret " + started.jointFret());
    }
    lines.add("Role:      " + started.role().word());
    lines.add("Began:     " + dates.minute(started.at()));
    Event.Summed summed = started.earlier() == null ? null : started.earlier().summed();
    if (summed != null) {
      lines.add(
          "Earlier:   "
              + Counted.of(summed.turns(), "move")
              + " until "
              + dates.minute(summed.until())
              + ", rod "
              + TurnWords.net(summed.turn()));
    }
    for (Event.Past past : started.past()) {
      lines.add("Earlier:   " + past(past, dates));
    }
    return lines;
  }

  private static String past(Event.Past past, Dates dates) {
    return dates.minute(past.at())
        + " rod "
        + TurnWords.done(past.turn())
        + (past.before() == null ? "" : ", from " + past.before())
        + (past.after() == null ? "" : ", to " + past.after());
  }

  private static List<String> events(List<Event> events, Labels labels, Dates dates) {
    Library library = labels.library();
    EventWords words =
        library == null
            ? new EventWords(labels, dates)
            : new EventWords(library, new SessionSteps(library, events)::labels, dates);
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < events.size(); i++) {
      Event event = events.get(i);
      List<Event> before = Corrections.standing(events.subList(0, i));
      lines.add(dates.minute(event.at()) + "  " + words.of(event, before));
    }
    return lines;
  }
}
