package quarterturn.report.graph;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.Ways;
import quarterturn.procedure.read.Readings;
import quarterturn.procedure.read.Shelf;

/** A procedure drawn as text. */
class GraphTextTest {
  private static final Path GOLDEN = Path.of("src/test/resources/quarterturn/report/graph");

  static final String ODD =
      """
      procedure: odd
      revision: 1
      title: Ümlaut "and" Ω
      purpose: An invented procedure.
      tools: []
      begin: ask
      retune: ask
      reread: look
      steps:
        - part: Prüfen & more
        - choose: ask
          text: Which?
          options:
            - is: a-very-long-name-of-an-option-it-is
              label: A label that goes on and on \\N until it has no room on the line any more
              go: a-step-with-quite-a-long-name-it-has-too
            - is: b
              label: '"Quoted"'
              go: turn
        - tell: a-step-with-quite-a-long-name-it-has-too
          text: Look.
          go: rest
        - turn: turn
          text: Turn.
          amount: loosen 1/16 turn
          limit: 1/8 turn
          felt:
            smooth: rest
            stiff: rest
            jammed: stop
            free: stop
            noise: stop
            slipped: ask
        - wait: rest
          text: Rest.
          for: 2 days
          rest: true
          go: look
        - measure: look
          text: Read.
          quantity: relief
          string: lowest
          gauge: 0.05 mm
          plausible: 0..3 mm
          branches:
            - when: relief cannot be measured
              go: stop
            - when: relief below target or leans below target and turned today at least 1/2 turn and rod does not seem dead
              go: a-step-with-quite-a-long-name-it-has-too
            - otherwise: fine
        - tell: island
          text: Nothing leads here.
          go: fine
        - part: Done
        - done: fine
          text: Fine.
          outcome: fine
        - hand-over: stop
          text: Stop.
          outcome: stop
      """;

  static Procedure odd() throws UnreadableException {
    return Readings.procedure("odd.yaml", ODD.getBytes(StandardCharsets.UTF_8), List.of());
  }

  static Procedure shipped(String id) throws UnreadableException, IOException {
    return new Shelf(null).load(id).main();
  }

  /** To accept a change on purpose, run this with {@code -Dgolden.write=true} and read the diff. */
  static void golden(String name, List<String> lines) throws IOException {
    Path file = GOLDEN.resolve(name);
    String drawn = String.join("\n", lines) + "\n";
    if (Boolean.getBoolean("golden.write")) {
      Files.createDirectories(GOLDEN);
      Files.writeString(file, drawn);
    }
    assertThat(drawn).isEqualTo(Files.exists(file) ? Files.readString(file) : "");
  }

  @Test
  void pickupsAsItIsDrawn() throws Exception {
    golden("pickups.txt", GraphText.lines(ProcedureGraph.overview(shipped("pickups"))));
    golden("pickups-all.txt", GraphText.lines(ProcedureGraph.inside(shipped("pickups"), "all")));
  }

  @Test
  void reliefAsItIsDrawnWithItsPartsOnePartAndOneBlock() throws Exception {
    Procedure relief = shipped("relief");
    golden("relief.txt", GraphText.lines(ProcedureGraph.overview(relief)));
    golden("relief-part.txt", GraphText.lines(ProcedureGraph.inside(relief, "measure as found")));
    golden("relief-block.txt", GraphText.lines(ProcedureGraph.inside(relief, "one-turn")));
  }

  @Test
  void everyKindOfWayAsItIsDrawn() throws Exception {
    golden("odd.txt", GraphText.lines(ProcedureGraph.inside(odd(), "all")));
  }

  @Test
  void oneSinglePartIsDrawnWhole() throws Exception {
    Procedure setup = shipped("setup");
    assertThat(ProcedureGraph.overview(setup)).isEqualTo(ProcedureGraph.inside(setup, "all"));
  }

  @Test
  void nothingIsInsideAnUnknownName() throws Exception {
    Procedure relief = shipped("relief");
    assertThat(ProcedureGraph.inside(relief, "reading").parts()).isEmpty();
    assertThat(ProcedureGraph.names(relief))
        .containsAtLeast("Turn", "find-rod", "one-turn", "answer", "may-turn", "all");
    assertThat(ProcedureGraph.names(relief)).containsNoneOf("reading", "turn", "endings", "");
  }

  @Test
  void theStepsInsideAreThoseOfThePartOrBlock() throws Exception {
    Procedure relief = shipped("relief");
    List<String> inside =
        ProcedureGraph.inside(relief, "pocket-turn").parts().stream()
            .flatMap(part -> part.boxes().stream())
            .map(ProcedureGraph.Box::id)
            .toList();
    // The turns in it are written in safety/turn.yaml and belong to it all the same.
    assertThat(inside).containsAtLeast("pocket-slacken", "pocket-undo", "pocket-turn").inOrder();
    assertThat(inside).doesNotContain("retune");
  }

  @Test
  void everyPartHasItsWaysAndItsEnds() throws Exception {
    for (String id : new Shelf(null).procedures()) {
      Procedure procedure = shipped(id);
      PartBoxes parts = PartBoxes.of(procedure);
      for (ProcedureGraph.Box box : parts.boxes()) {
        Set<String> ends = new HashSet<>();
        Set<String> next = new HashSet<>();
        for (Step step : procedure.steps().values()) {
          if (step.words().part().equals(box.id())) {
            for (String to : Ways.from(step)) {
              Step target = procedure.step(to);
              boolean end = target instanceof Step.End;
              (end ? ends : next).add(end ? to : target.words().part());
            }
          }
        }
        next.remove(box.id());
        assertWithMessage(id + " " + box.id()).that(box.ends()).isEqualTo(ends);
        assertWithMessage(id + " " + box.id())
            .that(
                parts.ways().getOrDefault(box.id(), List.of()).stream()
                    .map(ProcedureGraph.Way::to)
                    .toList())
            .containsExactlyElementsIn(next);
      }
    }
  }

  @Test
  void everyShippedProcedureFitsAndLacksNothing() throws Exception {
    for (String id : new Shelf(null).procedures()) {
      Procedure procedure = shipped(id);
      fits(GraphText.lines(ProcedureGraph.overview(procedure)));
      for (String name : ProcedureGraph.names(procedure)) {
        fits(GraphText.lines(ProcedureGraph.inside(procedure, name)));
      }
      List<String> lines = GraphText.lines(ProcedureGraph.inside(procedure, "all"));
      for (Step step : procedure.steps().values()) {
        int at = at(lines, step.id() + " (");
        assertWithMessage(step.id()).that(at).isAtLeast(0);
        for (String to : Ways.from(step)) {
          int arrow = after(lines, at, to);
          assertWithMessage(id + ": " + step.id() + " -> " + to).that(arrow).isAtLeast(0);
        }
      }
    }
  }

  private static void fits(List<String> lines) {
    for (String line : lines) {
      assertWithMessage(line).that(line.length()).isAtMost(80);
      assertWithMessage(line).that(line.chars().allMatch(c -> c >= ' ' && c <= '~')).isTrue();
    }
  }

  private static int at(List<String> lines, String start) {
    for (int i = 0; i < lines.size(); i++) {
      if (lines.get(i).startsWith(start)) {
        return i;
      }
    }
    return -1;
  }

  /** The line of an arrow to {@code to} below line {@code at} and above the next step. */
  private static int after(List<String> lines, int at, String to) {
    for (int i = at + 1; i < lines.size() && lines.get(i).startsWith("  "); i++) {
      if (lines.get(i).endsWith("-> " + to) || lines.get(i).endsWith("-> back to " + to)) {
        return i;
      }
    }
    return -1;
  }
}
