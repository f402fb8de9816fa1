package quarterturn.unit;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneOffsetTransition;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Local times around the changes of summer time, held to java.time and its zone data. */
class DatesTest {
  private static final DateTimeFormatter OVER =
      DateTimeFormatter.ofPattern("EEEE d MMMM uuuu, HH:mm", Locale.ENGLISH);
  private static final DateTimeFormatter MINUTE =
      DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm", Locale.ENGLISH);

  /** Times near each change of two years, and near the day that a zone left out. */
  private static List<Instant> near(ZoneId zone) {
    List<Instant> out = new ArrayList<>();
    for (String from : List.of("2011-09-01T00:00:00Z", "2026-12-01T00:00:00Z")) {
      Instant at = Instant.parse(from);
      for (int n = 0; n < 3; n++) {
        ZoneOffsetTransition change = zone.getRules().nextTransition(at);
        if (change == null) {
          break;
        }
        at = change.getInstant();
        for (int seconds = -7200; seconds <= 7200; seconds += 90) {
          out.add(at.plusSeconds(seconds));
        }
        out.add(at.minusSeconds(1));
      }
    }
    return out;
  }

  /** The only time that words mean. */
  private static Instant meant(String words, DateTimeFormatter format, ZoneId zone) {
    boolean first = words.endsWith(", the first time");
    boolean second = words.endsWith(", the second time");
    String time = words.replaceAll(", the .* time", "");
    LocalDateTime local = LocalDateTime.parse(time, format);
    ZonedDateTime at = local.atZone(zone);
    boolean twice = !at.withEarlierOffsetAtOverlap().equals(at.withLaterOffsetAtOverlap());
    assertWithMessage(words + " in " + zone).that(first || second).isEqualTo(twice);
    return (second ? at.withLaterOffsetAtOverlap() : at.withEarlierOffsetAtOverlap()).toInstant();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"America/New_York", "Europe/Berlin", "Australia/Lord_Howe", "Pacific/Apia"})
  void whenAWaitIsOverIsTheVeryMinuteOnBothSidesOfAChange(String name) {
    ZoneId zone = ZoneId.of(name);
    Dates dates = new Dates(zone);
    List<Instant> near = near(zone);
    assertThat(near.size()).isAtLeast(300);
    for (Instant at : near) {
      Instant over = meant(dates.over(at), OVER, zone);
      assertWithMessage(dates.over(at) + " for " + at).that(over).isAtLeast(at);
      assertWithMessage(dates.over(at) + " for " + at).that(over).isLessThan(at.plusSeconds(60));
      String seen = dates.overSeenFrom(at.minus(Duration.ofDays(3)), at);
      assertWithMessage(seen).that(meant(seen, MINUTE, zone)).isEqualTo(over);
      LocalDate day = at.atZone(zone).toLocalDate();
      assertThat(dates.day(at)).isEqualTo(day.toString());
    }
  }

  @Test
  void aTimeThatComesTwiceSaysWhichItIs() {
    Dates dates = new Dates(ZoneId.of("Europe/Berlin"));
    Instant before = Instant.parse("2027-10-31T00:10:00Z");
    assertThat(dates.overSeenFrom(before, Instant.parse("2027-10-31T00:30:00Z")))
        .isEqualTo("02:30, the first time");
    assertThat(dates.overSeenFrom(before, Instant.parse("2027-10-31T01:30:00Z")))
        .isEqualTo("02:30, the second time");
    assertThat(dates.overSeenFrom(before, Instant.parse("2027-10-31T02:00:00Z")))
        .isEqualTo("03:00");
    assertThat(dates.toOrFrom(before, Instant.parse("2027-10-31T01:30:00Z")))
        .isEqualTo("in 1 hour 20 minutes (02:30, the second time)");
  }

  @Test
  void aTimeThatIsLeftOutIsNeverSaid() {
    Dates dates = new Dates(ZoneId.of("America/New_York"));
    Instant before = Instant.parse("2027-03-14T06:30:00Z");
    assertThat(dates.clock(before)).isEqualTo("01:30");
    assertThat(dates.overSeenFrom(before, Instant.parse("2027-03-14T06:59:01Z")))
        .isEqualTo("03:00");
    assertThat(dates.toOrFrom(before, before.plus(Duration.ofHours(24))))
        .isEqualTo("in 24 hours (2027-03-15 02:30)");
  }

  @Test
  void aDayThatAZoneLeftOutIsNoDayOfAWait() {
    Dates dates = new Dates(ZoneId.of("Pacific/Apia"));
    Instant before = Instant.parse("2011-12-30T09:00:00Z");
    assertThat(dates.minute(before)).isEqualTo("2011-12-29 23:00");
    assertThat(dates.toOrFrom(before, before.plus(Duration.ofHours(24))))
        .isEqualTo("in 24 hours (2011-12-31 23:00)");
  }
}
