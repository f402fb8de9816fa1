package quarterturn.procedure.read.clause;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Doubt;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.condition.Response;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/** The part of a condition that follows "turned", "neck" or "rod". */
record RodClause(Clause words) {

  /** Takes the rest of a clause such as "turned today at least 1/2 turn". */
  Condition turned() throws MisreadException {
    List<String> phrases = new ArrayList<>();
    for (Condition.Span span : Condition.Span.values()) {
      for (String count : Count.BEGINNINGS) {
        String phrase = span.words() + " " + count;
        phrases.add(phrase);
        if (words.take(phrase)) {
          return Count.of(count, new Condition.Turned(span, turn()));
        }
      }
    }
    List<String> shown = phrases.stream().map(phrase -> phrase + " 1/2 turn").toList();
    throw words.noneOf(phrases, "turned", shown);
  }

  private Turn turn() throws MisreadException {
    int at = words.at();
    try {
      return Amounts.turn(words.takeRest());
    } catch (NotUnderstoodException e) {
      throw new MisreadException(at, e.wrong(), Quote.sentence(e.mend()));
    }
  }

  /** Takes the rest of a clause such as "neck moved" or "neck did not answer at least 2 times". */
  Condition neck() throws MisreadException {
    Response first = response();
    Count count = Count.next(words);
    if (count != null) {
      return count.of(new Condition.Answered(first, count.times()));
    }
    List<Condition> parts = new ArrayList<>(List.of(new Condition.Answered(first, 1)));
    while (words.take("or")) {
      parts.add(new Condition.Answered(response(), 1));
    }
    return Clause.any(parts);
  }

  private Response response() throws MisreadException {
    return words.oneOf("neck", Response.values(), Response::words);
  }

  /** Takes the rest of a clause such as "rod felt free or smooth" or "rod does not seem dead". */
  Condition rod() throws MisreadException {
    boolean unfelt = words.take("did not feel");
    if (unfelt || words.take("felt")) {
      return not(unfelt, words.anyOf("rod felt", Feel.values(), Feel::word, Condition.Felt::new));
    }
    boolean unlike = words.take("does not seem");
    if (unlike || words.take("seems")) {
      String after = unlike ? "rod does not seem" : "rod seems";
      return not(unlike, words.anyOf(after, Doubt.values(), Doubt::words, Condition.Seems::new));
    }
    List<String> shown =
        Stream.of(
                Arrays.stream(Doubt.values()).map(doubt -> "seems " + doubt.words()),
                Arrays.stream(Doubt.values()).map(doubt -> "does not seem " + doubt.words()),
                Arrays.stream(Feel.values()).map(feel -> "felt " + feel.word()),
                Arrays.stream(Feel.values()).map(feel -> "did not feel " + feel.word()))
            .flatMap(Function.identity())
            .toList();
    throw words.noneOf(List.of("seems", "does not seem", "felt", "did not feel"), "rod", shown);
  }

  private static Condition not(boolean not, Condition condition) {
    return not ? new Condition.Not(condition) : condition;
  }
}
