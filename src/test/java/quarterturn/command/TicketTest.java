package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.session.Instrument;

/** Ticket and customer stand in the instrument's file alone, and can be forgotten. */
@Isolated
class TicketTest {
  @TempDir Path folder;
  private Shop shop = new Shop(Path.of("unset"));

  @BeforeEach
  void anInstrument() throws Exception {
    shop = new Shop(folder);
    run("", "instrument", "add", "blue", "--kind", "bass-34", "--style", "medium");
    run("", "instrument", "edit", "blue", "--ticket", "W-4711", "--customer", "R. Invented");
  }

  private String run(String in, String... args) {
    Captured ran = Captured.of(shop, in, Captured.at(folder, args));
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(0);
    return ran.out();
  }

  /** Every file of the folder in which a text stands. */
  private List<String> holding(String text) throws Exception {
    try (Stream<Path> files = Files.walk(folder)) {
      return files
          .filter(Files::isRegularFile)
          .filter(file -> read(file).contains(text))
          .map(file -> folder.relativize(file).toString())
          .toList();
    }
  }

  private static String read(Path file) {
    try {
      return Files.readString(file);
    } catch (java.io.IOException e) {
      throw new java.io.UncheckedIOException(e);
    }
  }

  @Test
  void noSessionHoldsThem() throws Exception {
    LeftOff.settling(shop, "blue");
    assertThat(holding("W-4711")).containsExactly("instruments/blue.yaml");
    assertThat(holding("R. Invented")).containsExactly("instruments/blue.yaml");
    assertThat(run("", "instrument", "show", "blue")).containsMatch("Ticket: +W-4711");
    assertThat(run("quit\n", "--plain")).contains("blue, ticket W-4711");
    assertThat(run("quit\n", "--plain")).doesNotContain("R. Invented");
  }

  @Test
  void theyAreForgottenAfterOneQuestion() throws Exception {
    String session = LeftOff.begun(shop, "blue");
    String kept = run("no\n", "instrument", "forget", "blue");
    assertThat(kept)
        .contains("This is removed from its file: ticket W-4711, customer R. Invented.");
    assertThat(holding("W-4711")).hasSize(1);
    String gone = run("yes\n", "instrument", "forget", "blue");
    assertThat(gone).contains("Removed from blue: ticket W-4711, customer R. Invented.");
    assertThat(gone).contains("The instrument, its sessions and its turns stay");
    assertThat(holding("W-4711")).isEmpty();
    assertThat(holding("R. Invented")).isEmpty();
    assertThat(run("", "log", "show", session)).contains(session);
    assertThat(run("", "instrument", "forget", "blue"))
        .contains("blue has no ticket and no customer on record.");
  }

  @Test
  void whatElseIsKnownOfItStays() throws Exception {
    Instrument before = shop.store().instrument("blue");
    run("yes\n", "instrument", "forget", "blue");
    assertThat(shop.store().instrument("blue")).isEqualTo(before.forgotten());
    assertThat(before.forgotten().job()).isEqualTo(Instrument.Job.NONE);
    assertThat(before.forgotten().kind()).isEqualTo("bass-34");
  }

  @Test
  void theSheetHasTheTicketOfTheFileAsItIsNow() throws Exception {
    String session = LeftOff.settling(shop, "blue");
    run("", "instrument", "edit", "blue", "--ticket", "4712");
    assertThat(run("", "log", "export", session)).containsMatch("Ticket: +4712\n");
    assertThat(run("", "log", "export", session, "--format", "markdown"))
        .contains("**Ticket:** 4712");
    assertThat(run("", "log", "export", session, "--format", "html"))
        .contains("<th scope=\"row\">Ticket</th><td>4712</td>");
    assertThat(run("", "log", "export", session, "--format", "json"))
        .contains("\"ticket\":\"4712\"");
    assertThat(run("", "log", "export", session, "--format", "csv"))
        .containsMatch(",Ana,4712,\\d+\r");
    run("yes\n", "instrument", "forget", "blue");
    assertThat(run("", "log", "export", session)).doesNotContain("Ticket");
  }

  /** A number that was written by hand without quotes is a ticket too. */
  @Test
  void aTicketByHandMayBeANumber() throws Exception {
    Path file = folder.resolve("instruments/blue.yaml");
    Files.writeString(file, Files.readString(file).replace("\"W-4711\"", "4711"));
    assertThat(shop.store().tickets()).containsExactly("blue", "4711");
  }

  @Test
  void itIsNotAskedForWhereAnInstrumentIsAdded() {
    String asked = run("bass-34\ndone\n", "instrument", "add", "red", "--plain");
    assertThat(asked).contains("1 of 9");
    assertThat(asked).doesNotContain("icket");
  }
}
