package quarterturn.procedure.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Slip;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** Reads a turn step: how far, the limit, and where each feel leads. */
record TurnReader(Faults faults, Scalars values, ForkReader forks) {
  @Nullable Step read(StepReader.Begun step) {
    MappingKeys fields = step.fields();
    Node written = fields.required("amount");
    Step.Amount amount = values.parsed(written, TurnReader::amount);
    Turn limit = limit(values, fields.required("limit"), Turn.QUARTER);
    if (written != null
        && limit != null
        && amount instanceof Step.Amount.Fixed fixed
        && fixed.turn().size().compareTo(limit) > 0) {
      faults.add(
          Slip.OVER_LIMIT,
          written.mark(),
          fixed.turn().size() + " is more than the limit of this step, " + limit,
          "Write " + limit + " at most");
    }
    Map<Feel, String> felt = felt(fields.required("felt"));
    return amount == null || limit == null
        ? null
        : new Step.TurnRod(step.id(), step.said(), step.mark(), amount, limit, felt);
  }

  /** Reads a turn of at most {@code most}. */
  static @Nullable Turn limit(Scalars values, @Nullable Node node, Turn most) {
    Turn limit = values.parsed(node, Amounts::turn);
    if (node != null && limit != null && limit.compareTo(most) > 0) {
      values
          .faults()
          .add(
              Slip.OVER_LIMIT,
              node.mark(),
              limit + " is too much between two readings",
              "Write " + most + " at most");
      return null;
    }
    return limit;
  }

  private static Step.Amount amount(String text) {
    if (text.equals("advised")) {
      return new Step.Amount.Advised();
    }
    if (text.equals("undo")) {
      return new Step.Amount.Undo();
    }
    if (text.equals("set back")) {
      return new Step.Amount.SetBack();
    }
    if (text.startsWith("tighten ")) {
      return new Step.Amount.Fixed(Amounts.turn(text.substring("tighten ".length()).strip()));
    }
    if (text.startsWith("loosen ")) {
      Turn turn = Amounts.turn(text.substring("loosen ".length()).strip());
      return new Step.Amount.Fixed(turn.opposite());
    }
    throw new NotUnderstoodException(
        Quote.of(text) + " is no amount of turn",
        "Allowed: advised, undo, set back, tighten 1/8 turn, loosen 1/16 turn, or another part of a turn");
  }

  private Map<Feel, String> felt(@Nullable Node node) {
    Map<Feel, String> ways = new EnumMap<>(Feel.class);
    MappingKeys fields = MappingKeys.of(node, "felt", faults);
    List<String> missing = new ArrayList<>();
    for (Feel feel : Feel.values()) {
      Scalar go = forks.way(fields.optional(feel.word()));
      if (go != null) {
        ways.put(feel, go.text());
      } else if (!fields.has(feel.word())) {
        missing.add(feel.word());
      }
    }
    fields.end();
    if (fields.found() && !missing.isEmpty()) {
      faults.add(
          Slip.OPEN_BRANCHES,
          fields.mark(),
          "felt does not say where these feels lead: " + String.join(", ", missing),
          "Add each of them with the id of a step");
    }
    return ways;
  }
}
