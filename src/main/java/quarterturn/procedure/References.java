package quarterturn.procedure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.ConditionParser.Named;
import quarterturn.procedure.ConditionParser.NamedOption;
import quarterturn.procedure.Node.Scalar;

/** The steps a procedure has and those it names, which must agree once all of it is read. */
final class References {
  /** A step that stands in the file. */
  private record Defined(Mark mark, String kind, List<String> options) {}

  private record Condition(Scalar scalar, List<Named> named) {}

  private final Faults faults;
  private final Map<String, Defined> steps = new LinkedHashMap<>();
  private final List<Scalar> ways = new ArrayList<>();
  private final List<Condition> conditions = new ArrayList<>();

  References(Faults faults) {
    this.faults = faults;
  }

  /**
   * Notes a step.
   *
   * @param options the ids of its options, to which more can be added
   */
  void step(Scalar id, String kind, List<String> options) {
    Defined before = steps.putIfAbsent(id.text(), new Defined(id.mark(), kind, options));
    if (before != null) {
      faults.add(
          id.mark(),
          "the step "
              + Quote.of(id.text())
              + " stands here a second time; the first is in line "
              + before.mark().line());
    }
  }

  /** Notes a way to a step. */
  void way(@Nullable Scalar to) {
    if (to != null) {
      ways.add(to);
    }
  }

  /** Notes the steps that a condition names. */
  void condition(Scalar scalar, List<Named> named) {
    conditions.add(new Condition(scalar, named));
  }

  /** Adds a fault for each name that nothing stands behind. */
  void check() {
    for (Scalar way : ways) {
      if (!steps.containsKey(way.text())) {
        faults.add(way.mark(), noStep(way.text()));
      }
    }
    for (Condition condition : conditions) {
      condition.named().forEach(named -> check(condition.scalar(), named));
    }
  }

  private void check(Scalar scalar, Named named) {
    Defined step = steps.get(named.step());
    if (step == null) {
      add(scalar, named.at(), noStep(named.step()));
      return;
    }
    // How a called procedure may end stands in another file.
    boolean elsewhere = !StepReader.KINDS.contains(step.kind()) || step.kind().equals("call");
    if (named.options().isEmpty() || elsewhere) {
      return;
    }
    if (!step.kind().equals("choose")) {
      String message =
          "the step "
              + Quote.of(named.step())
              + " asks for no choice (it is a "
              + step.kind()
              + " step); \"is\" follows a choose or a call step";
      add(scalar, named.at(), message);
      return;
    }
    for (NamedOption option : named.options()) {
      if (!step.options().contains(option.option())) {
        String message =
            "the step "
                + Quote.of(named.step())
                + " has no option "
                + Quote.of(option.option())
                + Quote.hint(option.option(), step.options())
                + " Allowed: "
                + String.join(", ", step.options());
        add(scalar, option.at(), message);
      }
    }
  }

  private void add(Scalar scalar, int at, String message) {
    faults.add(Place.within(faults.source(), scalar, at), message);
  }

  private String noStep(String id) {
    return "there is no step " + Quote.of(id) + Quote.meant(id, steps.keySet());
  }
}
