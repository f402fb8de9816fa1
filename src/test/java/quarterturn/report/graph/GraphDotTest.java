package quarterturn.report.graph;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Ways;
import quarterturn.procedure.read.Shelf;
import quarterturn.report.DotReader;

/** A procedure in the DOT language, read back. */
class GraphDotTest {
  private static DotReader read(Procedure procedure) {
    return read(ProcedureGraph.inside(procedure, "all"));
  }

  private static DotReader read(ProcedureGraph graph) {
    String text = String.join("\n", GraphDot.lines(graph));
    assertThat(text.chars().allMatch(c -> c == '\n' || (c >= ' ' && c <= '~'))).isTrue();
    return new DotReader(text);
  }

  @Test
  void itHoldsEveryStepAndEveryWay() throws Exception {
    for (String id : new Shelf(null).procedures()) {
      Procedure procedure = GraphTextTest.shipped(id);
      DotReader dot = read(procedure);
      assertThat(dot.nodes.keySet()).isEqualTo(procedure.steps().keySet());
      Map<String, Set<String>> ways =
          dot.edges.stream()
              .collect(
                  Collectors.groupingBy(
                      DotReader.Edge::from,
                      Collectors.mapping(
                          DotReader.Edge::to, Collectors.toCollection(LinkedHashSet::new))));
      procedure
          .steps()
          .forEach(
              (name, step) ->
                  assertWithMessage(id + " " + name)
                      .that(ways.getOrDefault(name, Set.of()))
                      .isEqualTo(Ways.from(step)));
    }
  }

  @Test
  void stepsOfOnePartStandInOneCluster() throws Exception {
    Procedure procedure = GraphTextTest.shipped("pickups");
    DotReader dot = read(procedure);
    dot.nodes.forEach(
        (id, node) ->
            assertThat(DotReader.shown(dot.clusterLabels.getOrDefault(node.cluster(), "")))
                .isEqualTo(procedure.step(id).words().part()));
    assertThat(dot.clusterLabels.keySet()).containsAtLeast("cluster_0", "cluster_1", "cluster_2");
  }

  @Test
  void eachKindHasAShapeOfItsOwn() throws Exception {
    Set<String> shapes = new HashSet<>();
    DotReader dot = read(GraphTextTest.odd());
    for (String id : List.of("ask", "island", "turn", "rest", "look", "fine", "stop")) {
      DotReader.Node node = dot.nodes.get(id);
      assertThat(node).isNotNull();
      shapes.add(node == null ? "" : node.attributes().getOrDefault("shape", ""));
    }
    assertThat(shapes).hasSize(7);
  }

  @Test
  void whatHasAMeaningInDotIsShownAsItStands() throws Exception {
    DotReader dot = read(GraphTextTest.odd());
    assertThat(DotReader.shown(dot.clusterLabels.getOrDefault("", "")))
        .isEqualTo("Ümlaut \"and\" Ω");
    assertThat(DotReader.shown(dot.clusterLabels.getOrDefault("cluster_0", "")))
        .isEqualTo("Prüfen & more");
    List<String> labels =
        dot.edges.stream()
            .filter(edge -> edge.from().equals("ask"))
            .map(edge -> DotReader.shown(edge.attributes().getOrDefault("label", "")))
            .toList();
    assertThat(labels.get(0)).contains("on and on \\N until");
    assertThat(labels.get(1)).isEqualTo("b: \"Quoted\"");
  }

  @Test
  void waysBackAreDashed() throws Exception {
    for (DotReader.Edge edge : read(GraphTextTest.odd()).edges) {
      // The loops of that procedure: the reading that is taken again, and the key that slipped.
      boolean back =
          (edge.from().equals("look") && edge.to().startsWith("a-step"))
              || (edge.from().equals("turn") && edge.to().equals("ask"));
      assertWithMessage(edge.toString())
          .that(edge.attributes().containsKey("style"))
          .isEqualTo(back);
    }
  }

  @Test
  void partsAreBoxesWithTheWaysBetweenThem() throws Exception {
    Procedure relief = GraphTextTest.shipped("relief");
    DotReader dot = read(ProcedureGraph.overview(relief));
    assertThat(dot.nodes.keySet())
        .containsExactlyElementsIn(
            relief.steps().values().stream().map(step -> step.words().part()).distinct().toList());
    List<String> labels =
        dot.edges.stream()
            .filter(edge -> edge.from().equals("Find the rod"))
            .map(edge -> edge.to() + ": " + edge.attributes().get("label"))
            .toList();
    assertThat(labels).hasSize(1);
    assertThat(labels.get(0)).startsWith("Turn: key-fit is fits;");
  }

  @Test
  void whatLeadsOutOfABlockIsNamedWithoutABox() throws Exception {
    Procedure relief = GraphTextTest.shipped("relief");
    DotReader dot = read(ProcedureGraph.inside(relief, "one-turn"));
    dot.nodes.forEach(
        (id, node) ->
            assertWithMessage(id)
                .that("plaintext".equals(node.attributes().get("shape")))
                .isEqualTo(!StepWords.block(relief.step(id)).equals("one-turn")));
    assertThat(dot.nodes.keySet()).containsAtLeast("seat", "retune", "jammed", "before-turn-then");
    assertThat(dot.nodes.keySet()).doesNotContain("welcome");
  }

  @Test
  void pickupsAsItIsWritten() throws Exception {
    Procedure pickups = GraphTextTest.shipped("pickups");
    GraphTextTest.golden("pickups.dot", GraphDot.lines(ProcedureGraph.overview(pickups)));
    GraphTextTest.golden("pickups-all.dot", GraphDot.lines(ProcedureGraph.inside(pickups, "all")));
  }
}
