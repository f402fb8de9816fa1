package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.ExitStatus;
import quarterturn.unit.Dates;

/** The lines that the README says a technician can type are typed. */
class ReadmeLinesTest {
  private static final Pattern TYPED = Pattern.compile("`([^`]+)`");

  /** What stands in the first column of the table of lines. */
  private static List<String> lines() throws Exception {
    String readme = Files.readString(Path.of("README.md"));
    String path = readme.substring(readme.indexOf("## A technician's path"));
    return path.lines()
        .dropWhile(line -> !line.startsWith("| typed "))
        .skip(2)
        .takeWhile(line -> line.startsWith("|"))
        .map(line -> line.split("\\|")[1])
        .flatMap(cell -> TYPED.matcher(cell).results().map(MatchResult.class::cast))
        .map(found -> found.group(1))
        .toList();
  }

  @Test
  void eachIsTaken() throws Exception {
    List<String> lines = lines();
    assertThat(lines).hasSize(6);
    PracticeBench bench = Practising.on(NamedNeck.RIGHT, "setup", "bass-34", Role.TECHNICIAN);
    while (!bench.prompt().said().step().equals("inspect")) {
      bench.answer(bench.truth());
    }
    StringWriter out = new StringWriter();
    PrintWriter writer = new PrintWriter(out);
    LineSource script =
        new PipeSource(new StringReader(String.join("\n", lines) + "\n"), writer, false);
    int status = LineFace.run(bench, script, writer, new Dates(ZoneOffset.UTC));
    assertWithMessage(out.toString()).that(status).isEqualTo(ExitStatus.DONE);
    String log = bench.events().toString();
    assertThat(log).contains("option=even");
    assertThat(log).contains("text=.105 .085 .065 .045");
    assertThat(out.toString()).contains("action 1.9 on G2");
  }
}
