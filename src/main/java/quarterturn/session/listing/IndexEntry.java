package quarterturn.session.listing;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.read.Strays;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.clock.ClockDoubt;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Printable;

/**
 * What was read of one member of the sessions' folder.
 *
 * @param file its name
 * @param stamp what tells whether it has changed since; null where that is not known
 * @param session the name in its first line; null where it does not begin as a session
 * @param glance its data for listings; null where it does not begin as a session
 * @param said whether it says something of other records
 * @param stops whether it may hold a reason not to turn the rod in later sessions
 * @param lesson id of the lesson that it is part of, or null
 * @param back whether it sets another one's turns back
 * @param came how often its turns did what was expected
 * @param why what is wrong with it, or null
 */
public record IndexEntry(
    String file,
    @Nullable IndexStamp stamp,
    @Nullable String session,
    @Nullable Glance glance,
    boolean said,
    boolean stops,
    @Nullable String lesson,
    boolean back,
    Calibration came,
    @Nullable String why) {

  /** What a file holds. */
  static IndexEntry read(Path path, @Nullable IndexStamp stamp) {
    String file = String.valueOf(path.getFileName());
    if (stamp == null || stamp.sort() == IndexStamp.Sort.OTHER || stamp.size() == 0) {
      String why = Strays.why(path);
      return none(file, stamp, why == null ? "it changed just now; try again" : why);
    }
    try {
      return of(file, stamp, Journal.read(path));
    } catch (IOException e) {
      return none(file, null, "it can't be read: " + e.getMessage());
    }
  }

  private static IndexEntry none(String file, @Nullable IndexStamp stamp, String why) {
    return new IndexEntry(
        file, stamp, null, null, false, false, null, false, Calibration.NONE, why);
  }

  private static IndexEntry of(String file, IndexStamp stamp, Journal.Contents contents) {
    Journal.Header header = contents.header();
    String notice = contents.notice();
    if (header == null) {
      return notice == null || !file.endsWith(LogFormat.ENDING)
          ? none(file, stamp, "it is no session")
          : none(file, stamp, notice);
    }
    List<Event> events = contents.events();
    boolean said = false;
    boolean stops = false;
    for (Event event : events) {
      Carried carried = Carried.of(event);
      said |= carried != null && !carried.said().isEmpty();
      stops |=
          (carried != null && !carried.stops().isEmpty())
              || (event instanceof Event.OnRod rod
                  && rod.feel() != null
                  && rod.feel() != Feel.SMOOTH)
              || (event instanceof Event.Ended ended && ended.handOver());
    }
    String name = Printable.of(header.session());
    Event.Started start =
        !events.isEmpty() && events.get(0) instanceof Event.Started started ? started : null;
    String lesson = start == null ? null : start.lesson();
    boolean back = start != null && start.back() != null;
    Glance glance = Glances.of(name, contents);
    return new IndexEntry(
        file, stamp, name, glance, said, stops, lesson, back, Calibration.of(events), notice);
  }

  /** Whether it holds the start of a session. */
  boolean begun() {
    return glance != null && glance.started() != null;
  }

  /** The times of its session; null where it is none. */
  public ClockDoubt.@Nullable Dated dated() {
    Instant began = glance == null ? null : glance.started();
    Instant last = glance == null ? null : glance.last();
    return session == null || began == null || last == null
        ? null
        : new ClockDoubt.Dated(session, began, last);
  }
}
