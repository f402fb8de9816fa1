package quarterturn.procedure.check.walk;

import static com.google.common.truth.Truth.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.bench.Freshness;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.Shelf;

/**
 * The abstract states in which each step of a small procedure is reached. The text beside each has
 * a line for each state: its number in the order found, the state it comes from, what holds of the
 * bench, and how a subject may stand. A subject that may stand in any way is left out.
 */
class WalkedStatesTest {
  private static final Path FOLDER = Path.of("src/test/resources/quarterturn/procedure/walk");

  @ParameterizedTest
  @ValueSource(strings = {"turning", "pocket", "caller", "asking"})
  void eachStepIsReachedInTheseStates(String procedure) throws Exception {
    Library library = new Shelf(FOLDER).load(procedure);
    Reachability paths = new Calls(library, new Walks()).paths(library.main());
    String states = states(paths);
    Path text = FOLDER.resolve(procedure + ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(text, states);
    }
    assertThat(states.lines().toList())
        .containsExactlyElementsIn(Files.readAllLines(text))
        .inOrder();
  }

  /** The states by step, each with its number and the number of the state it comes from. */
  private static String states(Reachability paths) {
    StringBuilder out = new StringBuilder();
    for (String step : paths.frame().procedure().steps().keySet()) {
      out.append(step).append('\n');
      for (Reachability.Node node : paths.at(step)) {
        out.append("  ").append(paths.nodes().indexOf(node)).append(from(node)).append(": ");
        out.append(String.join(", ", state(paths.frame(), node.at()))).append('\n');
      }
    }
    return out.toString();
  }

  private static String from(Reachability.Node node) {
    return node.from() < 0 ? "" : (node.broken() ? " after a break at " : " from ") + node.from();
  }

  private static List<String> state(Frame frame, AbstractState at) {
    List<String> known = new ArrayList<>();
    Arrays.stream(Fact.values()).filter(at::has).map(Fact::word).forEach(known::add);
    Arrays.stream(Quantity.values())
        .filter(quantity -> at.held(quantity) != Freshness.NEVER)
        .forEach(
            quantity ->
                known.add(
                    quantity.word() + " is " + at.held(quantity).name().toLowerCase(Locale.ROOT)));
    if (at.turned()) {
      known.add("turned");
    }
    if (at.dayLeft()) {
      known.add("day left");
    }
    for (int i = 0; i < frame.domains().size(); i++) {
      Domain domain = frame.domains().get(i);
      int mask = at.mask(i);
      if (mask != domain.all()) {
        known.add(
            IntStream.range(0, domain.cells().size())
                .filter(cell -> (mask >> cell & 1) == 1)
                .mapToObj(cell -> CellWords.of(domain.subject(), domain.cells().get(cell)))
                .collect(Collectors.joining(" or ")));
      }
    }
    return known;
  }
}
