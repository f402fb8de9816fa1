package quarterturn.report;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import quarterturn.craft.Window;
import quarterturn.craft.rod.Belief;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Prior;
import quarterturn.procedure.ShippedRules;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.engine.Story;
import quarterturn.session.listing.Calibration;
import quarterturn.session.listing.SessionReadings;
import quarterturn.unit.Turn;

class HistoryReportTest {
  private static final Window WINDOW = new Window(0.30, 0.45);
  private static final Calibration CAME = new Calibration(7, 8);
  private static final Calibration ALL = new Calibration(41, 46);

  private static Known known() {
    return Belief.of(Known.of(Prior.BASS), Story.of(Storied.turns(), ShippedRules.LIMITS)).known();
  }

  private static String report(ReadingHistory history, Window window) {
    return String.join(
            "\n", HistoryReport.lines(history, List.of(), window, known(), CAME, ALL, Told.DATES))
        + "\n";
  }

  private static String golden(String name) throws IOException {
    String file = "/quarterturn/report/" + name;
    try (InputStream in =
        Objects.requireNonNull(HistoryReportTest.class.getResourceAsStream(file), file)) {
      return new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void aYearOfAnInventedBass() throws IOException {
    assertThat(report(Storied.history(), WINDOW)).isEqualTo(golden("history.txt"));
  }

  @Test
  void whatElseIsReadHasAColumnAndAPlotOfItsOwn() throws IOException {
    assertThat(report(Storied.withAction(), WINDOW)).isEqualTo(golden("history-action.txt"));
  }

  @Test
  void oneShortSessionWithoutAWindow() throws IOException {
    Map<String, SessionReadings> one =
        Map.of(
            "a-1",
            SessionReadings.of(Told.everything()),
            "b-2",
            SessionReadings.of(List.of(Told.started("Demo bass"))));
    List<Event.Past> turns =
        List.of(
            new Event.Past(Told.minute(10), Turn.EIGHTH.opposite(), null, null),
            new Event.Past(Told.minute(11), Turn.EIGHTH, null, null));
    ReadingHistory history = ReadingHistory.of("short", one, turns);
    Known known = Known.of(Prior.GUITAR);
    assertThat(
            String.join(
                    "\n",
                    HistoryReport.lines(history, List.of(), null, known, CAME, ALL, Told.DATES))
                + "\n")
        .isEqualTo(golden("history-short.txt"));
  }

  @Test
  void noLineIsWiderThanItsPaperAndAllArePlain() {
    for (String line :
        HistoryReport.lines(
            Storied.withAction(), List.of(), WINDOW, known(), CAME, ALL, Told.DATES)) {
      assertThat(line.length()).isAtMost(78);
      assertThat(line).matches("[ -~]*");
    }
  }

  @Test
  void beyondTheLeavesAndOneInstantArePlottedToo() {
    ReadingHistory history =
        new ReadingHistory(
            "demo",
            List.of(),
            List.of(
                new ReadingHistory.Point(
                    Told.BEGAN, "a", "relief", "mm", true, "E1", 8, 1, Double.POSITIVE_INFINITY)),
            List.of());
    assertThat(
            new TimePlot(history.points(), null, Told.BEGAN, Told.BEGAN)
                .lines(List.of(), Told.DATES))
        .containsExactly(
            "  1.10 |",
            "  1.05 |",
            "  1.00 |^",
            "       +" + "-".repeat(70),
            "        2027-03-01 10:00")
        .inOrder();
  }

  @Test
  void noneYet() {
    assertThat(
            HistoryReport.lines(
                ReadingHistory.of("demo", Map.of(), List.of()),
                List.of(),
                null,
                null,
                CAME,
                ALL,
                Told.DATES))
        .containsExactly("History of demo", "", "No session yet.")
        .inOrder();
  }

  @Test
  void aStopThatHoldsStandsOnTop() {
    Carried.Stop stop = new Carried.Stop(Told.minute(3), "s", "damage", "There is a crack.");
    ReadingHistory none = ReadingHistory.of("demo", Map.of(), List.of());
    assertThat(HistoryReport.lines(none, List.of(stop), null, null, CAME, ALL, Told.DATES))
        .containsExactly(
            "History of demo",
            "",
            "2027-03-01 10:03: There is a crack. The rod is not turned in any session until",
            "a qualified repairer's finding is on record.",
            "",
            "No session yet.")
        .inOrder();
  }

  @Test
  void whatIsKnownOfANeckThatWasNeverTurned() {
    assertThat(NeckWords.of(Known.of(Prior.BASS), List.of()))
        .isEqualTo(
            "The rod was never turned, so how this neck answers is not known yet. What to expect"
                + " of a quarter turn: about 0.22 mm, nine times in ten between 0.10 and 0.50 mm.");
  }

  @Test
  void howOftenTheExpectedCameTrueIsSaidOfBoth() throws IOException {
    assertThat(report(Storied.history(), WINDOW).replaceAll("\\s+", " "))
        .contains(
            "came true 7 times of 8 on this neck, 41 times of 46 on all necks here (nine in ten"
                + " expected)");
    assertThat(came(Calibration.NONE, new Calibration(1, 2)))
        .contains("came true 1 time of 2 on all");
    assertThat(came(Calibration.NONE, Calibration.NONE)).contains("not known yet");
  }

  private static String came(Calibration here, Calibration all) {
    return String.join(
            " ",
            HistoryReport.lines(Storied.history(), List.of(), WINDOW, null, here, all, Told.DATES))
        .replaceAll("\\s+", " ");
  }
}
