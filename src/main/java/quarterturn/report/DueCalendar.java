package quarterturn.report;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.UUID;
import quarterturn.session.Due;
import quarterturn.session.Program;

/**
 * What is due as an iCalendar file (RFC 5545), an event with an alarm for each item. Events are
 * used since many calendars neither show to-dos nor sound their alarms.
 *
 * <p>The same items always give the same file, so that reading it in twice changes nothing.
 */
public final class DueCalendar {
  private static final DateTimeFormatter UTC =
      DateTimeFormatter.ofPattern("uuuuMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

  private DueCalendar() {}

  /**
   * The file's text, with its own line breaks, to be written as UTF-8.
   *
   * @param dues at least one, since a calendar without a component is not allowed (section 3.6)
   * @param program how the program is called
   */
  public static String of(List<Due> dues, Program program) {
    if (dues.isEmpty()) {
      throw new IllegalArgumentException("a calendar needs something that is due");
    }
    CalendarText text = new CalendarText();
    text.line("BEGIN", "VCALENDAR");
    text.line("VERSION", "2.0");
    text.line("PRODID", "-//quarterturn//due//EN");
    text.line("CALSCALE", "GREGORIAN");
    for (Due due : dues) {
      event(text, due, program);
    }
    text.line("END", "VCALENDAR");
    return text.toString();
  }

  private static void event(CalendarText text, Due due, Program program) {
    String summary = CalendarText.escaped(due.instrument() + ": " + due.what());
    text.line("BEGIN", "VEVENT");
    text.line("UID", uid(due));
    text.line("DTSTAMP", UTC.format(due.since()));
    text.line("DTSTART", UTC.format(due.at()));
    text.line("SUMMARY", summary);
    text.line(
        "DESCRIPTION",
        CalendarText.escaped(
            due.what()
                + "\nInstrument: "
                + due.instrument()
                + "\nType: "
                + program.typed(due.command())));
    // Nobody is busy for it: it waits until there is time.
    text.line("TRANSP", "TRANSPARENT");
    text.line("BEGIN", "VALARM");
    text.line("ACTION", "DISPLAY");
    text.line("DESCRIPTION", summary);
    text.line("TRIGGER", "PT0S");
    text.line("END", "VALARM");
    text.line("END", "VEVENT");
  }

  /**
   * An id for a calendar event, the same on every run, which says nothing of the machine or its
   * user (RFC 7986, section 5.3).
   */
  static String uid(Due due) {
    byte[] key = ("quarterturn due " + due.key()).getBytes(StandardCharsets.UTF_8);
    return UUID.nameUUIDFromBytes(key).toString();
  }

  /** The items of {@code dues} that are due later than {@code now}. */
  public static List<Due> toCome(List<Due> dues, Instant now) {
    return dues.stream().filter(d -> !d.come(now)).toList();
  }
}
