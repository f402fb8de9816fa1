package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Fault;
import quarterturn.procedure.UnreadableException;

/** Blocks and questions of a user's own: what is wrong with them, and how much of them is taken. */
class SharedFilesTest {
  private static final String HEAD =
      "procedure: own\nrevision: 1\ntitle: Own\npurpose: Own.\ntools: [cloth]\nsteps:\n"
          + "  - part: Work\n";
  private static final String END = "  - done: fine\n    text: It was looked at.\n";

  @TempDir Path own;

  private void put(String place, String text) throws IOException {
    Path file = own.resolve(place);
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** What is said about a sheet with these steps, each with its file, line and column. */
  private List<String> faults(String steps) throws IOException {
    put("procedures/own.yaml", HEAD + steps + END);
    try {
      new Shelf(own).load("own");
      return List.of();
    } catch (UnreadableException e) {
      return e.faults().stream().map(this::told).toList();
    }
  }

  private String told(Fault fault) {
    String file = fault.mark().toString().replace(own + "/procedures/", "");
    return file + ": " + fault.rule() + ": " + fault.wrong();
  }

  private static String block(String name, String steps) {
    return "block: " + name + "\nsteps:\n" + steps;
  }

  private static String times(int many, String line) {
    return IntStream.range(0, many)
        .mapToObj(i -> line.replace("#", "" + i) + "\n")
        .collect(Collectors.joining());
  }

  @Test
  @Timeout(10)
  void aBlockThatUsesItselfIsRefusedWhereItDoes() throws IOException {
    put("procedures/blocks/round.yaml", block("round", times(50, "  - use: round")));
    List<String> faults = faults("  - use: round\n");
    assertThat(faults.get(0))
        .isEqualTo("blocks/round.yaml:3:10: unknown-id: blocks that use each other");
  }

  @Test
  @Timeout(10)
  void blocksThatMultiplyAreNotTakenForEver() throws IOException {
    for (int i = 0; i < 6; i++) {
      put("procedures/blocks/b" + i + ".yaml", block("b" + i, times(60, "  - use: b" + (i + 1))));
    }
    put("procedures/blocks/b6.yaml", block("b6", "  - tell: Look at it.\n"));
    assertThat(faults("  - use: b0\n").toString())
        .contains("more than 10000 steps stand before this block");
  }

  @Test
  void aBlockThatIsNoYamlIsSaidInItsOwnFile() throws IOException {
    put("procedures/blocks/torn.yaml", "block: torn\nsteps:\n  - tell: \"Look\n");
    assertThat(faults("  - use: torn\n"))
        .contains(
            "blocks/torn.yaml:3:11: not-yaml: the text in quotes that begins here does not end");
  }

  @Test
  void aQuestionAboutNoStepIsSaidInTheLesson() throws IOException {
    put(
        "procedures/lesson/own.yaml",
        "lesson: own\nsteps:\n  look:\n    - What?\n  loook:\n    - Why?\n");
    assertThat(faults("  - tell: look\n    text: Look at it.\n"))
        .containsExactly(
            "lesson/own.yaml:5:3: unknown-id: there is no step \"loook\" to ask about");
  }

  /** A value that a block only asks for by given is one that a sheet may say. */
  @Test
  void whatIsOnlyAskedForByGivenMayBeSaid() throws IOException {
    String given = "  - tell: Write it on a label.\n    given: labels\n  - done: looked\n";
    put("procedures/blocks/look.yaml", block("look", "  - tell: Look at it.\n" + given));
    assertThat(faults("  - use: look\n    labels: a box of them\n")).isEmpty();
    assertThat(faults("  - use: look\n    label: a box of them\n")).hasSize(1);
  }

  @Test
  @Timeout(20)
  void aBlockIsUsedTwoThousandTimes() throws IOException {
    put("procedures/blocks/look.yaml", block("look", "  - tell: Look at it.\n  - tell: Again.\n"));
    assertThat(faults(times(2000, "  - use: look"))).isEmpty();
  }

  @Test
  @Timeout(20)
  void aLargeBlockIsUsedTwice() throws IOException {
    put("procedures/blocks/look.yaml", block("look", times(5000, "  - tell: s#\n    text: Look.")));
    assertThat(faults("  - use: look\n  - use: look\n")).isEmpty();
  }

  @Test
  @Timeout(20)
  void aResultLeadsToTheNextUseAndSoOn() throws IOException {
    put("procedures/blocks/hop.yaml", block("hop", "  - done: on\n"));
    String hops =
        IntStream.range(0, 2500)
            .mapToObj(i -> "  - {use: hop, id: h" + i + ", then: [{on: h" + (i + 1) + "}]}\n")
            .collect(Collectors.joining());
    assertThat(
            faults("  - tell: Look.\n    go: h0\n" + hops + "  - tell: h2500\n    text: Fine.\n"))
        .isEmpty();
  }
}
