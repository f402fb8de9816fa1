package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.condition.Role;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Player;
import quarterturn.unit.Dates;

/**
 * Whole rehearsals as they are typed and printed, to be read like a book: all that a person is told
 * and asked from the first line to the last. To accept a change on purpose, run the test with
 * {@code -Dgolden.write=true} and read the diff.
 */
class WholeRehearsalTest {
  private static final Path FOLDER = Path.of("src/test/resources/quarterturn/line/rehearsals");

  @ParameterizedTest
  @CsvSource({
    "relief, BACK_BOW, bass-34, BEGINNER",
    "relief, SLACK, acoustic-steel, TECHNICIAN",
    "setup, NEGLECTED, bass-34, TECHNICIAN",
    "setup, NEGLECTED, electric-25, BEGINNER",
    "season, TOO_MUCH, bass-34, BEGINNER",
    "buzz, RIGHT, electric-25, TECHNICIAN"
  })
  void everythingIsSaidAndAskedAsItStandsHere(
      String procedure, NamedNeck neck, String kind, Role role) throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, kind, role);
    StringWriter said = new StringWriter();
    PrintWriter out = new PrintWriter(said);
    LineSource place = new PipeSource(new StringReader(""), out, false);
    Player player = new Player(bench, bench::truth, 1_000_000);
    LineFace.run(bench, new AutoSource(place, out, player), out, new Dates(ZoneOffset.UTC));
    Path text = FOLDER.resolve(procedure + "-" + neck.word() + "-" + role.word() + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(FOLDER);
      Files.writeString(text, said.toString());
    }
    assertThat(said.toString().lines().toList())
        .containsExactlyElementsIn(Files.readAllLines(text))
        .inOrder();
  }
}
