package quarterturn.script;

import static com.google.common.truth.Truth.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Player;

class AutoLinesTest {
  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void aWholeRehearsalNeedsNoOtherAnswers(NamedNeck neck) throws Exception {
    PracticeBench bench = Practising.on(neck);
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    AutoLines answers = new AutoLines(new Player(bench, bench::truth, 1));
    new ScriptFace(answers, new PrintStream(bytes, true, StandardCharsets.UTF_8)).run(bench);
    List<String> lines = bytes.toString(StandardCharsets.UTF_8).lines().toList();
    assertThat(lines.stream().filter(line -> line.contains("\"error\"")).toList()).isEmpty();
    assertThat(lines.get(lines.size() - 1)).contains("The neck as it really was");
    assertThat(bench.prompt().ended()).isTrue();
  }
}
