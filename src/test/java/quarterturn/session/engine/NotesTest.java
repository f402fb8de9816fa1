package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

/** What is said of a reading that was just taken. The readings are invented. */
class NotesTest {
  private static String after(Play play, String reading) {
    return play.to("found-low").read(reading).prompt().said().notes().get(0);
  }

  @Test
  void nobodySaysThatAStringTouchesWhichMayClearItsFret() throws Exception {
    assertThat(after(Play.beginner("bass-34"), "0.05 lifts"))
        .endsWith(" There is hardly any relief, if any.");
    assertThat(after(Play.beginner("bass-34"), "touches")).contains("The string touches");
  }

  @Test
  void aBeginnerReadsTheLetterAndATechnicianTheName() throws Exception {
    assertThat(after(Play.beginner("bass-34"), "1.20..1.25")).startsWith("Relief on E: ");
    assertThat(after(Play.technician("bass-34"), "1.20..1.25")).startsWith("Relief on E1: ");
  }

  @Test
  void twoStringsOfOneLetterKeepTheirNumbers() throws Exception {
    assertThat(after(Play.beginner("electric-25"), "1.20..1.25")).startsWith("Relief on E2: ");
  }
}
