package quarterturn.procedure.read.form;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/** Names the hazards that go with a step, by what it does and says, where its sheet names none. */
final class StepHazards {
  private static final String HAZARDS = "hazards";

  private StepHazards() {}

  /** The step with its hazards; as it is where its sheet names them, or it has none. */
  static Node of(Node entry, Collection<Hazard> hazards) {
    if (!(entry instanceof Mapping step)
        || InOrder.id(step) == null
        || step.entries().containsKey(HAZARDS)) {
      return entry;
    }
    Set<String> does = new HashSet<>(List.of(step.first(), step.text("what")));
    does(step, does);
    step.items(Keys.OPTIONS).forEach(option -> does(option, does));
    String text = Hazard.plain(step.text(Keys.TEXT));
    List<Node> found =
        hazards.stream()
            .filter(hazard -> hazard.occasion(does, text) != null)
            .<Node>map(hazard -> Scalar.at(step.mark(), hazard.id()))
            .toList();
    return found.isEmpty() ? step : step.with(HAZARDS, new Sequence(found, step.mark()));
  }

  private static void does(Node piece, Set<String> does) {
    if (piece instanceof Mapping one) {
      does.add(one.text("changes"));
      one.items("establishes").forEach(fact -> does.add(fact instanceof Scalar s ? s.text() : ""));
    }
  }
}
