package quarterturn.procedure.check.rule.turn;

import java.util.List;
import java.util.stream.Stream;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.rule.Findings;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.rule.Said;
import quarterturn.procedure.check.words.Act;
import quarterturn.procedure.check.words.Order;

/** The rule that the words of a turn order what the program works out, once, and nothing more. */
public final class TurnWords {
  public static final Rule RULE =
      Rule.ofSteps(
          "turn-words",
          "A turn says way and amount by {way} and {turn}, and orders no turn beyond that.",
          TurnWords::prove);

  private static final List<String> NEEDED =
      Stream.of(Blank.WAY, Blank.TURN).map(blank -> "{" + blank.word() + "}").toList();

  private TurnWords() {}

  private static void prove(Proof proof, Step step, Findings found) {
    if (!(step instanceof Step.TurnRod)) {
      return;
    }
    blanks(step, "text", step.words().text(), found);
    String brief = step.words().brief();
    if (brief != null) {
      blanks(step, "brief", brief, found);
    }
    for (Said said : proof.said(step)) {
      if (further(said)) {
        found.add(
            step,
            "the turn " + step.id() + " orders more than the program works out: " + said.quoted(),
            "take it out; how far and which way is said by {turn}, {way} and {sense} alone");
      }
    }
  }

  private static void blanks(Step step, String key, String text, Findings found) {
    for (String blank : NEEDED) {
      int first = text.indexOf(blank);
      if (first < 0 || text.indexOf(blank, first + 1) >= 0) {
        found.add(
            step,
            "the " + key + " of the turn " + step.id() + " does not say " + blank + " once",
            "write it for example: {way} the truss rod nut by {turn}");
      }
    }
  }

  /** Whether it orders a turn with words of its own, or one beside that which is filled in. */
  private static boolean further(Said said) {
    Order order = said.order();
    boolean filled = order.sentence().contains(NEEDED.get(0)) && !order.adds();
    return order.act() == Act.TURN_ROD && !(filled && said.where() != Said.Where.WHY);
  }
}
