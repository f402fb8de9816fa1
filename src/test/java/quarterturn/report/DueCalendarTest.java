package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.ByteArrayInputStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.junit.jupiter.api.Test;
import quarterturn.session.Due;
import quarterturn.session.Program;
import quarterturn.unit.Printable;

/** The calendar as another reader, which is strict, finds it; and as RFC 5545 has it. */
class DueCalendarTest {
  private static final List<String> PIECES =
      List.of(
          "\n",
          "\r\n",
          "\r",
          "BEGIN:VEVENT",
          "\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n",
          "\\",
          "\\n",
          ";",
          ",",
          ":",
          "\"",
          "\t",
          " ",
          "🎸",
          "琴",
          "e\u0301",
          "\u0000",
          "\u001b[2J",
          "\u0085",
          "\u2028",
          "\ud800",
          "\u202e",
          "X-NAME;P=\"q\":v",
          "bass");

  /** Strict is how the reader is unless told otherwise. */
  private static Calendar read(String text) throws Exception {
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    Calendar calendar = new CalendarBuilder().build(new ByteArrayInputStream(bytes));
    ValidationResult result = calendar.validate(true);
    assertThat(result.getEntries()).isEmpty();
    return calendar;
  }

  private static List<VEvent> events(String text) throws Exception {
    return read(text).getComponents();
  }

  private static String value(VEvent event, String name) {
    return event.getRequiredProperty(name).getValue();
  }

  private static Instant time(VEvent event, String name) {
    Property property = event.getRequiredProperty(name);
    Temporal date = ((net.fortuna.ical4j.model.property.DateProperty<?>) property).getDate();
    return Instant.from(date);
  }

  @Test
  void anotherReaderFindsEachThing() throws Exception {
    List<VEvent> events = events(DueCalendar.of(Coming.BOTH, Program.here()));
    assertThat(events).hasSize(2);
    for (int i = 0; i < events.size(); i++) {
      VEvent event = events.get(i);
      Due due = Coming.BOTH.get(i);
      assertThat(time(event, Property.DTSTART)).isEqualTo(due.at());
      assertThat(time(event, Property.DTSTAMP)).isEqualTo(due.since());
      assertThat(value(event, Property.SUMMARY)).isEqualTo(due.instrument() + ": " + due.what());
      assertThat(value(event, Property.DESCRIPTION))
          .isEqualTo(
              due.what()
                  + "\nInstrument: "
                  + due.instrument()
                  + "\nType: quarterturn "
                  + due.command());
      assertThat(value(event, Property.UID)).isEqualTo(DueCalendar.uid(due));
    }
  }

  /**
   * RFC 5545, section 3.6.6: an alarm MUST have ACTION and TRIGGER, and one that displays a
   * DESCRIPTION. Section 3.8.6.3: a trigger without a RELATED is counted from the start.
   */
  @Test
  void theAlarmSoundsWhenItIsDue() throws Exception {
    for (VEvent event : events(DueCalendar.of(Coming.BOTH, Program.here()))) {
      List<VAlarm> alarms = event.getAlarms();
      assertThat(alarms).hasSize(1);
      VAlarm alarm = alarms.get(0);
      assertThat(alarm.getRequiredProperty(Property.ACTION).getValue()).isEqualTo("DISPLAY");
      assertThat(alarm.getRequiredProperty(Property.TRIGGER).getValue()).isEqualTo("PT0S");
      assertThat(alarm.getRequiredProperty(Property.DESCRIPTION).getValue())
          .isEqualTo(value(event, Property.SUMMARY));
    }
  }

  /**
   * RFC 5545, section 3.6: PRODID and VERSION "are REQUIRED, but MUST NOT occur more than once".
   */
  @Test
  void theCalendarSaysWhoWroteIt() throws Exception {
    Calendar calendar = read(DueCalendar.of(Coming.BOTH, Program.here()));
    assertThat(calendar.getProperties(Property.PRODID, Property.VERSION)).hasSize(2);
    assertThat(calendar.getRequiredProperty(Property.PRODID).getValue())
        .isEqualTo("-//quarterturn//due//EN");
    assertThat(calendar.getRequiredProperty(Property.VERSION).getValue()).isEqualTo("2.0");
  }

  /** RFC 5545, section 3.6: the body has "at least one" component. */
  @Test
  void aCalendarOfNothingIsNotWritten() {
    assertThrows(IllegalArgumentException.class, () -> DueCalendar.of(List.of(), Program.here()));
  }

  /** RFC 5545, section 3.3.5, form 2: UTC, with "the LATIN CAPITAL LETTER Z suffix". */
  @Test
  void timesAreUtc() {
    String text = DueCalendar.of(List.of(Coming.DAY), Program.here());
    assertThat(text).contains("\r\nDTSTART:20270302T100000Z\r\n");
    assertThat(text).contains("\r\nDTSTAMP:20270301T100000Z\r\n");
  }

  /**
   * RFC 5545, section 3.8.4.7: a UID is "persistent, globally unique". RFC 7986, section 5.3: it
   * "MUST NOT include any data that might identify a user, host, domain".
   */
  @Test
  void theUidOfAThingIsTheSameOnEveryRunAndNoOtherThings() {
    // RFC 4122, section 4.3, of "quarterturn due 2027-03-01-relief-k3f9 day"; reckoned elsewhere.
    assertThat(DueCalendar.uid(Coming.DAY)).isEqualTo("5d898edd-4b32-3b24-90ac-861aff8463ac");
    Set<String> uids = new HashSet<>();
    Due day = Coming.DAY;
    for (Due.Why why : Due.Why.values()) {
      for (String session : List.of("a-1", "a-2")) {
        Due due =
            new Due(day.at(), why, day.instrument(), "relief", session, day.what(), day.since());
        uids.add(DueCalendar.uid(due));
      }
    }
    assertThat(uids).hasSize(2 * Due.Why.values().length);
  }

  @Test
  void onlyWhatIsStillToComeIsWritten() {
    Instant between = Coming.WAIT.at();
    assertThat(DueCalendar.toCome(Coming.BOTH, between)).containsExactly(Coming.DAY);
    assertThat(DueCalendar.toCome(Coming.BOTH, between.minus(Duration.ofSeconds(1)))).hasSize(2);
  }

  @Test
  void hostileNamesStayWithinTheirText() throws Exception {
    Random random = new Random(20270301);
    for (int round = 0; round < 300; round++) {
      List<Due> dues = new ArrayList<>();
      for (int i = 0; i < 3; i++) {
        dues.add(Coming.on(hostile(random), hostile(random)));
      }
      String text = DueCalendar.of(dues, Program.here());
      for (String line : text.split("\r\n", -1)) {
        assertThat(line.getBytes(StandardCharsets.UTF_8).length).isAtMost(75);
        // RFC 5545, section 3.1: no control but HTAB in a value.
        assertThat(line).doesNotContainMatch("[\\p{Cntrl}&&[^\\t]]");
      }
      List<VEvent> events = events(text);
      assertThat(events).hasSize(3);
      for (int i = 0; i < 3; i++) {
        Due due = dues.get(i);
        assertThat(value(events.get(i), Property.SUMMARY))
            .isEqualTo(due.instrument() + ": " + due.what());
        assertThat(due.instrument()).isEqualTo(Printable.of(due.instrument()));
      }
    }
  }

  /** What a text holds is the same after a strict reader unfolded and unescaped it. */
  @Test
  void textOfAnyKindComesBack() throws Exception {
    Random random = new Random(7);
    for (int round = 0; round < 300; round++) {
      // The reader takes a backslash before a line break for two; CalendarTextTest has that one.
      String hostile = hostile(random).replaceAll("\\\\(?=[\r\n])", "\\\\ ");
      CalendarText text = new CalendarText();
      text.line("BEGIN", "VCALENDAR").line("VERSION", "2.0").line("PRODID", "-//test//EN");
      text.line("BEGIN", "VEVENT").line("UID", "a").line("DTSTAMP", "20270301T100000Z");
      text.line("DTSTART", "20270301T100000Z").line("SUMMARY", CalendarText.escaped(hostile));
      text.line("END", "VEVENT").line("END", "VCALENDAR");
      String shown =
          hostile
              .replaceAll("\r\n?", "\n")
              .lines()
              .map(Printable::of)
              .collect(Collectors.joining("\n"));
      assertThat(value(events(text.toString()).get(0), Property.SUMMARY)).isEqualTo(shown);
    }
  }

  /** Up to some thousand characters. */
  private static String hostile(Random random) {
    StringBuilder text = new StringBuilder("n");
    int length = random.nextInt(random.nextInt(10) == 0 ? 1500 : 30);
    for (int i = 0; i < length; i++) {
      text.append(PIECES.get(random.nextInt(PIECES.size())));
    }
    return text.append("n").toString();
  }
}
