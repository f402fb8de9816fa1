package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.time.Duration;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.Overview.Entry;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Samples;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

class TablesTest {
  private static final List<SessionList.Row> ROWS =
      List.of(
          row("a-1", Told.everything()),
          row("b-2", List.of(Told.started(null), Told.turned(1, Turn.EIGHTH, Feel.SMOOTH))),
          row("c-3", List.of()));

  private static SessionList.Row row(String name, List<Event> events) {
    Glance glance = Samples.glance(name, events);
    return SessionList.Row.of(glance, SessionList.rod(glance.rod()), "strings not yet at pitch");
  }

  @Test
  void sessions() {
    assertThat(SessionList.lines(ROWS, Told.DATES))
        .containsExactly(
            "Session  Began             Procedure  Instrument  Rod                             State",
            "a-1      2027-03-01 10:00  relief     Demo bass   as found, not sure             "
                + " handed over: no answer",
            "b-2      2027-03-01 10:00  relief     demo-bass   1/8 turn tighter than as found"
                + "  open: strings not yet at pitch",
            "c-3      -                 -          -           not turned                      open")
        .inOrder();
    assertThat(SessionList.lines(List.of(), Told.DATES)).containsExactly("No session yet.");
  }

  @Test
  void instruments() {
    assertThat(
            InstrumentPages.list(
                List.of(
                    InstrumentPages.Row.of("Bass", "Demo bass", ROWS),
                    InstrumentPages.Row.of("琴\u001b", "Demo guitar", List.of()))))
        .containsExactly(
            "Name  Kind         Sessions  Last session",
            "Bass  Demo bass    3         open",
            "琴\uFFFD   Demo guitar  0         -")
        .inOrder();
    assertThat(InstrumentPages.list(List.of())).containsExactly("No instrument yet.");
  }

  @Test
  void oneInstrument() {
    Map<String, String> facts = new LinkedHashMap<>();
    facts.put("Name", "Bass");
    facts.put("Joint fret", "17\ncounted by hand");
    assertThat(InstrumentPages.show(facts, List.of(), Told.DATES))
        .containsExactly(
            "Name:       Bass",
            "Joint fret: 17",
            "            counted by hand",
            "",
            "No session yet.")
        .inOrder();
  }

  @Test
  void theRowOfReadingsAndTurns() {
    List<Entry> trail =
        List.of(
            new Entry.Reading(Told.BEGAN, Which.LOWEST, new Bracket(0.6, 0.65), true),
            new Entry.Turned(Told.BEGAN, Turn.EIGHTH.opposite(), Feel.SMOOTH),
            new Entry.Reading(Told.BEGAN, Which.LOWEST, Bracket.passes(1), false));
    assertThat(TrailLine.of(trail)).isEqualTo("0.60 to 0.65 (stale) > loosened 1/8 > over 1.00");
    assertThat(TrailLine.of(List.of())).isEmpty();
    assertThat(
            TrailLine.of(
                List.of(
                    new Entry.Turned(Told.BEGAN, Turn.EIGHTH.opposite(), null, false),
                    new Entry.Turned(Told.BEGAN, Turn.EIGHTH, Feel.NOISE, false))))
        .isEqualTo("loosened about 1/8, not sure > tightened about 1/8, not sure (noise)");
  }

  @Test
  void lengthsOfTime() {
    assertThat(Dates.lasting(Duration.ofSeconds(-5))).isEqualTo("0 minutes");
    assertThat(Dates.lasting(Duration.ofSeconds(1))).isEqualTo("1 minute");
    assertThat(Dates.lasting(Duration.ofMinutes(90))).isEqualTo("1 hour 30 minutes");
    assertThat(Dates.lasting(Duration.ofHours(24))).isEqualTo("24 hours");
    assertThat(Dates.lasting(Duration.ofHours(74))).isEqualTo("3 days 2 hours");
  }

  @Test
  void paragraphsAreWrappedAtBlanksAndNeverTooWide() {
    assertThat(Paragraph.wrap("1. one two three fours", 13, 3))
        .containsExactly("1. one two", "   three", "   fours")
        .inOrder();
    assertThat(Paragraph.wrap("abcdefghijklmnop", 10, 0)).containsExactly("abcdefghij", "klmnop");
    assertThat(Paragraph.wrap("琴琴琴琴琴琴", 11, 0)).containsExactly("琴琴琴琴琴", "琴").inOrder();
    assertThat(Paragraph.wrap("a\n\nb\u0007", 40, 0)).containsExactly("a", "", "b\uFFFD").inOrder();
    assertThat(Paragraph.wrap("", 40, 0)).containsExactly("");
  }
}
