package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.clause.ConditionParser.Named;
import quarterturn.procedure.read.clause.ConditionParser.NamedOption;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.TextPosition;

/**
 * Collects the steps a procedure has and those it names, which must agree once all of it is read.
 */
final class References {
  /** A step that stands in the file. */
  private record Defined(Mark mark, String kind, List<String> options) {}

  /** A step to which something leads. */
  private record Way(Scalar to, String wrong) {}

  private record Condition(Scalar scalar, List<Named> named) {}

  /**
   * Ids that a procedure names and that other files define, with their places in it.
   *
   * @param calls procedures that are called
   * @param changes changes that are made
   * @param results results that are needed or given
   */
  public record Elsewhere(List<Scalar> calls, List<Scalar> changes, List<Scalar> results) {}

  private final Faults faults;
  private final Map<String, Defined> steps = new LinkedHashMap<>();
  private final List<Way> ways = new ArrayList<>();
  private final List<Scalar> answered = new ArrayList<>();
  private final List<Condition> conditions = new ArrayList<>();
  private final Elsewhere elsewhere =
      new Elsewhere(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());

  References(Faults faults) {
    this.faults = faults;
  }

  /** The ids that other files define, to which more can be added. */
  Elsewhere elsewhere() {
    return elsewhere;
  }

  /**
   * Notes a step.
   *
   * @param options the ids of its options, to which more can be added
   */
  void step(Scalar id, String kind, List<String> options) {
    Defined before = steps.putIfAbsent(id.text(), new Defined(id.mark(), kind, options));
    if (before != null) {
      Mark first = before.mark();
      boolean here = first.file().equals(id.mark().file());
      String place = here ? "in line " + first.line() : "at " + first;
      faults.twice(id, "the step ", "Give each step its own id; the first is " + place);
    }
  }

  /** Notes a way to a step. */
  void way(@Nullable Scalar to) {
    if (to != null) {
      ways.add(new Way(to, noStep(to.text())));
    }
  }

  /** Notes the step that a question refers to. */
  void about(@Nullable Scalar step) {
    if (step != null) {
      String wrong =
          "the step " + Quote.of(step.text()) + ", which the question refers to, is gone";
      ways.add(new Way(step, wrong));
    }
  }

  /** Notes a step whose answer is asked for once more. */
  void answered(Scalar step) {
    answered.add(step);
  }

  /** Notes the steps that a condition names. */
  void condition(Scalar scalar, List<Named> named) {
    conditions.add(new Condition(scalar, named));
  }

  /** Adds a fault for each name that is not defined. */
  void check() {
    for (Way way : ways) {
      String to = way.to().text();
      if (!steps.containsKey(to)) {
        faults.add(Slip.UNKNOWN_ID, way.to().mark(), way.wrong(), instead(to));
      }
    }
    answered.forEach(this::check);
    for (Condition condition : conditions) {
      condition.named().forEach(named -> check(condition.scalar(), named));
    }
  }

  private void check(Scalar step) {
    Defined asks = steps.get(step.text());
    if (asks == null) {
      faults.add(Slip.UNKNOWN_ID, step.mark(), noStep(step.text()), instead(step.text()));
    } else if (!asks.kind().equals("choose")) {
      faults.value(
          step.mark(),
          "the " + asks.kind() + " step " + Quote.of(step.text()) + " asks for no choice",
          "Name a choose step, a reading such as relief lowest, or direction");
    }
  }

  private void check(Scalar scalar, Named named) {
    Defined step = steps.get(named.step());
    if (step == null) {
      add(Slip.UNKNOWN_ID, scalar, named.at(), noStep(named.step()), instead(named.step()));
      return;
    }
    // How a called procedure may end stands in another file.
    boolean unknown = !Keys.KINDS.contains(step.kind()) || step.kind().equals("call");
    if (named.options().isEmpty() || unknown) {
      return;
    }
    if (!step.kind().equals("choose")) {
      String wrong =
          "the " + step.kind() + " step " + Quote.of(named.step()) + " asks for no choice";
      String mend = "Only a choose or a call step can stand before \"is\"";
      add(Slip.BAD_CONDITION, scalar, named.at(), wrong, mend);
      return;
    }
    for (NamedOption option : named.options()) {
      if (!step.options().contains(option.option())) {
        String wrong =
            "the step " + Quote.of(named.step()) + " has no option " + Quote.of(option.option());
        String mend = Quote.allowed(option.option(), step.options());
        add(Slip.UNKNOWN_ID, scalar, option.at(), wrong, mend);
      }
    }
  }

  private void add(Slip slip, Scalar scalar, int at, String wrong, String mend) {
    faults.add(slip, TextPosition.within(faults.source(scalar.mark()), scalar, at), wrong, mend);
  }

  private static String noStep(String id) {
    return id.equals(Keys.GO_ON)
        ? "nothing stands below to go on to"
        : "there is no step " + Quote.of(id);
  }

  private String instead(String id) {
    if (faults.many()) {
      return "";
    }
    String meant = Quote.meant(id, steps.keySet());
    return meant.isEmpty() ? "Write the id of a step of this procedure" : meant;
  }
}
