package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;

/** Who works is on record, from the start and each time a session goes on. */
@Isolated
class WhoWorksTest {
  @TempDir Path folder;
  @TempDir Path elsewhere;
  private Shop shop = new Shop(Path.of("unset"));
  private String session = "";

  @BeforeEach
  void anaBegins() throws Exception {
    shop = Shop.of(folder, "blue");
    session = LeftOff.settling(shop, "blue");
  }

  private String run(String in, String... args) {
    Captured ran = Captured.of(shop, in, Captured.at(folder, args));
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(0);
    return ran.out();
  }

  @Test
  void whoGoesOnIsOnRecordBesideWhoBegan() {
    run("quit\n", "resume", session, "--by", "Ben", "--plain");
    String log = run("", "log", "show", session);
    assertThat(log).contains("By:        Ana");
    assertThat(log).contains("Taken up again by Ben.");
    assertThat(run("", "log", "export", session)).containsMatch("Done by: +Ana, Ben, beginner");
    assertThat(run("", "due", "--lines")).contains("\"by\":\"Ben\"");
  }

  @Test
  void whereNobodyIsNamedWhoBeganStands() {
    run("quit\n", "resume", session, "--plain");
    assertThat(run("", "log", "show", session)).contains("Taken up again.");
    assertThat(run("", "due", "--lines")).contains("\"by\":\"Ana\"");
  }

  @Test
  void aProgramIsToldWhoWorksAndTheTicketWithEveryPrompt() {
    String said = run("{\"answer\":true}\n", "resume", session, "--by", "Ben", "--lines");
    assertThat(said.lines().filter(line -> line.startsWith("{\"prompt\"")).toList()).hasSize(2);
    said.lines()
        .filter(line -> line.startsWith("{\"prompt\""))
        .forEach(line -> assertThat(line).endsWith(",\"by\":\"Ben\",\"ticket\":\"T-blue\"}"));
  }

  @Test
  void aRehearsalsSheetNamesWhoPractised() throws Exception {
    Path sheet = elsewhere.resolve("sheet.txt");
    run("quit\n", "rehearse", "--neck", "right", "--by", "Cy", "--sheet", sheet.toString());
    assertThat(Files.readString(sheet)).containsMatch("Done by: +Cy, beginner");
    assertThat(Files.readString(sheet)).doesNotContain("Bench time");
  }
}
