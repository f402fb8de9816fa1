package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import java.time.Instant;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.Known;
import quarterturn.craft.rod.Prior;
import quarterturn.report.ReadingHistory;
import quarterturn.session.listing.Calibration;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

class HistoryJsonTest {
  private static final Instant AT = Instant.parse("2027-03-01T10:00:00Z");
  private static final Calibration CAME = new Calibration(7, 8);
  private static final Calibration ALL = new Calibration(41, 46);
  private static final String SHARES =
      ",\"expected_came_true\":{\"times\":7,\"of\":8},"
          + "\"expected_came_true_on_all\":{\"times\":41,\"of\":46}}";

  @Test
  void everythingOfAnInventedHistory() {
    ReadingHistory history =
        new ReadingHistory(
            "demo",
            List.of(
                new ReadingHistory.Visit("a-1", AT, Bracket.touches(), null, Turn.EIGHTH, 1, true)),
            List.of(
                new ReadingHistory.Point(
                    AT, "a-1", "relief", "mm", true, "E1", 8, Double.NEGATIVE_INFINITY, 0),
                new ReadingHistory.Point(AT, "a-1", "humidity", "%", true, null, 0, 48, 48)),
            List.of(new ReadingHistory.Move(AT, Turn.EIGHTH.opposite())));
    assertThat(HistoryJson.of(history, Known.of(Prior.BASS), CAME, ALL))
        .isEqualTo(
            "{\"instrument\":\"demo\",\"sessions\":[{\"session\":\"a-1\","
                + "\"began\":\"2027-03-01T10:00:00Z\",\"found_mm\":[null,0.0],\"left_mm\":null,"
                + "\"net_turns\":0.125,\"moves\":1}],\"readings\":["
                + "{\"at\":\"2027-03-01T10:00:00Z\",\"session\":\"a-1\",\"quantity\":\"relief\","
                + "\"unit\":\"mm\",\"lowest\":true,\"string\":\"E1\",\"read_at\":8,"
                + "\"between\":[null,0.0]},"
                + "{\"at\":\"2027-03-01T10:00:00Z\",\"session\":\"a-1\","
                + "\"quantity\":\"humidity\",\"unit\":\"%\",\"lowest\":true,\"value\":48.0}],"
                + "\"turns\":[{\"at\":\"2027-03-01T10:00:00Z\",\"turned\":-0.125}],"
                + "\"known\":{\"mm_per_quarter\":0.2200,\"sigma\":0.5000,"
                + "\"slack\":[0.6000,0.2000,0.2000],\"way\":0,\"answered\":false}"
                + SHARES);
    assertThat(HistoryJson.of(history, null, CAME, ALL)).endsWith("\"known\":null" + SHARES);
  }
}
