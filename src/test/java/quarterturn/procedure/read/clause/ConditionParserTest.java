package quarterturn.procedure.read.clause;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Condition.Differs.More;
import quarterturn.procedure.condition.Doubt;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Response;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.BoundsReader;
import quarterturn.procedure.read.clause.ConditionParser.Named;
import quarterturn.procedure.read.clause.ConditionParser.NamedOption;
import quarterturn.unit.Turn;

class ConditionParserTest {
  private static Condition read(String text) throws MisreadException {
    return ConditionParser.parse(text, BoundsReader::of).condition();
  }

  @ParameterizedTest
  @EnumSource(Verdict.class)
  void everyVerdictOnRelief(Verdict verdict) throws MisreadException {
    assertThat(read("relief " + verdict.words()))
        .isEqualTo(new Condition.Against(Quantity.RELIEF, verdict));
  }

  @ParameterizedTest
  @EnumSource(Response.class)
  void everyResponseOfTheNeck(Response response) throws MisreadException {
    assertThat(read("neck " + response.words())).isEqualTo(new Condition.Answered(response, 1));
    assertThat(read("neck " + response.words() + " at least 3 times"))
        .isEqualTo(new Condition.Answered(response, 3));
  }

  private static Condition not(Condition part) {
    return new Condition.Not(part);
  }

  private static List<Condition> outside() {
    return List.of(
        new Condition.Strings(false, Quantity.ACTION, Verdict.BELOW),
        new Condition.Strings(false, Quantity.ACTION, Verdict.ABOVE));
  }

  static Stream<Arguments> clauses() {
    return Stream.of(
        Arguments.of(
            "humidity cannot be measured",
            new Condition.Against(Quantity.HUMIDITY, Verdict.NOT_MEASURED)),
        Arguments.of(
            "relief leans below target", new Condition.Leans(Quantity.RELIEF, Verdict.BELOW)),
        Arguments.of("relief leans into target", new Condition.Leans(Quantity.RELIEF, Verdict.IN)),
        Arguments.of(
            "relief just below target", new Condition.Near(Quantity.RELIEF, Verdict.BELOW)),
        Arguments.of(
            "relief just above target", new Condition.Near(Quantity.RELIEF, Verdict.ABOVE)),
        Arguments.of(
            "relief leans above target", new Condition.Leans(Quantity.RELIEF, Verdict.ABOVE)),
        Arguments.of("humidity below 40 %", new Condition.Below(Quantity.HUMIDITY, 40)),
        Arguments.of("humidity below 40%", new Condition.Below(Quantity.HUMIDITY, 40)),
        Arguments.of("humidity at least 60 %", new Condition.AtLeast(Quantity.HUMIDITY, 60)),
        Arguments.of("relief below 0.10 mm", new Condition.Below(Quantity.RELIEF, 0.1)),
        // One inch is 25.4 mm by definition (international yard and pound agreement, 1959).
        Arguments.of("relief at least 10 thou", new Condition.AtLeast(Quantity.RELIEF, 0.254)),
        Arguments.of(
            "relief differs by more than 0.10 mm",
            new Condition.Differs(Quantity.RELIEF, More.EITHER, 0.1)),
        Arguments.of(
            "relief lowest above highest by more than 0.15 mm",
            new Condition.Differs(Quantity.RELIEF, More.LOWEST, 0.15)),
        Arguments.of(
            "relief highest above lowest by at most 0.10 mm",
            not(new Condition.Differs(Quantity.RELIEF, More.HIGHEST, 0.1))),
        Arguments.of("relief may creep out of target", new Condition.Creeps(Quantity.RELIEF)),
        Arguments.of(
            "relief will not creep out of target", not(new Condition.Creeps(Quantity.RELIEF))),
        Arguments.of("relief repeats within 0.05 mm", new Condition.Repeats(Quantity.RELIEF, 0.05)),
        Arguments.of("role is beginner", new Condition.Is(Role.BEGINNER)),
        Arguments.of("role is technician", new Condition.Is(Role.TECHNICIAN)),
        Arguments.of(
            "turned today at least 1/2 turn",
            new Condition.Turned(Condition.Span.TODAY, new Turn(0.5))),
        Arguments.of(
            "turned in all at least 1 turn",
            new Condition.Turned(Condition.Span.IN_ALL, new Turn(1))),
        Arguments.of(
            "turned in all at least 90 deg",
            new Condition.Turned(Condition.Span.IN_ALL, Turn.QUARTER)),
        Arguments.of(
            "relief touches or below target or leans below target",
            new Condition.Any(
                List.of(
                    new Condition.Against(Quantity.RELIEF, Verdict.TOUCHES),
                    new Condition.Against(Quantity.RELIEF, Verdict.BELOW),
                    new Condition.Leans(Quantity.RELIEF, Verdict.BELOW)))),
        Arguments.of(
            "humidity was read",
            not(new Condition.Against(Quantity.HUMIDITY, Verdict.NOT_MEASURED))),
        Arguments.of(
            "relief differs by at most 0.10 mm",
            not(new Condition.Differs(Quantity.RELIEF, More.EITHER, 0.1))),
        Arguments.of(
            "relief does not repeat within 0.05 mm",
            not(new Condition.Repeats(Quantity.RELIEF, 0.05))),
        Arguments.of(
            "rod-place is not pocket or heel",
            not(new Condition.Chosen("rod-place", Set.of("pocket", "heel")))),
        Arguments.of(
            "read-low reached less than 3 times", not(new Condition.Reached("read-low", 3))),
        Arguments.of(
            "turned today less than 1/2 turn",
            not(new Condition.Turned(Condition.Span.TODAY, new Turn(0.5)))),
        Arguments.of(
            "turned in all less than 1 turn",
            not(new Condition.Turned(Condition.Span.IN_ALL, new Turn(1)))),
        Arguments.of(
            "neck gave no answer less than 2 times",
            not(new Condition.Answered(Response.NO_ANSWER, 2))),
        Arguments.of(
            "neck not turned yet or moved as told",
            new Condition.Any(
                List.of(
                    new Condition.Answered(Response.NOT_TURNED, 1),
                    new Condition.Answered(Response.MOVED, 1)))),
        Arguments.of("rod seems dead", new Condition.Seems(Doubt.DEAD)),
        Arguments.of(
            "rod does not seem dead or fully loose",
            not(
                new Condition.Any(
                    List.of(
                        new Condition.Seems(Doubt.DEAD), new Condition.Seems(Doubt.FULLY_LOOSE))))),
        Arguments.of("rod felt stiff", new Condition.Felt(Feel.STIFF)),
        Arguments.of(
            "rod felt jammed or slipped",
            new Condition.Any(
                List.of(new Condition.Felt(Feel.JAMMED), new Condition.Felt(Feel.SLIPPED)))),
        Arguments.of(
            "every action in target", new Condition.Strings(true, Quantity.ACTION, Verdict.IN)),
        Arguments.of(
            "not every action in target",
            not(new Condition.Strings(true, Quantity.ACTION, Verdict.IN))),
        Arguments.of("some action below target or above target", new Condition.Any(outside())),
        Arguments.of("no action below target or above target", not(new Condition.Any(outside()))),
        Arguments.of(
            "no action touches",
            not(new Condition.Strings(false, Quantity.ACTION, Verdict.TOUCHES))),
        Arguments.of("called by setup", new Condition.Called("setup")),
        Arguments.of(
            "not called by setup or season",
            not(
                new Condition.Any(
                    List.of(new Condition.Called("setup"), new Condition.Called("season"))))),
        Arguments.of("read-low reached at least 2 times", new Condition.Reached("read-low", 2)),
        Arguments.of("relief reached at least 1 time", new Condition.Reached("relief", 1)));
  }

  @ParameterizedTest
  @MethodSource("clauses")
  void eachClause(String text, Condition expected) throws MisreadException {
    assertThat(read(text)).isEqualTo(expected);
  }

  @Test
  void aChoiceNamesItsStepAndOptions() throws MisreadException {
    ConditionParser.Parsed parsed =
        ConditionParser.parse("rod-place is sound-hole or pocket", BoundsReader::of);
    assertThat(parsed.condition())
        .isEqualTo(new Condition.Chosen("rod-place", Set.of("sound-hole", "pocket")));
    assertThat(parsed.named())
        .containsExactly(
            new Named(
                "rod-place",
                0,
                List.of(new NamedOption("sound-hole", 13), new NamedOption("pocket", 27))));
  }

  @Test
  void clausesJoinedByAndAllHold() throws MisreadException {
    assertThat(read("relief in target and  rod is old or new and humidity below 40 %"))
        .isEqualTo(
            new Condition.All(
                List.of(
                    new Condition.Against(Quantity.RELIEF, Verdict.IN),
                    new Condition.Chosen("rod", Set.of("old", "new")),
                    new Condition.Below(Quantity.HUMIDITY, 40))));
  }

  static Stream<Arguments> misreadings() {
    return Stream.of(
        Arguments.of("", 0, "a condition is missing here"),
        Arguments.of("and relief touches", 0, "a condition is missing here"),
        Arguments.of("relief touches and", 18, "a condition is missing here"),
        Arguments.of("relief", 6, "Allowed after relief: cannot be measured, touches, below"),
        Arguments.of("relief and humidity below 40 %", 7, "something is missing here"),
        Arguments.of("Relief touches", 0, "Did you mean \"relief\"?"),
        Arguments.of(
            "humidity in target", 9, "Allowed after humidity: cannot be measured, was read"),
        Arguments.of("humidity touches", 9, "\"touches\" cannot stand here"),
        Arguments.of("humidity leans into target", 9, "\"leans\" cannot stand here"),
        Arguments.of("humidity repeats within 5 %", 9, "\"repeats\" cannot stand here"),
        Arguments.of("humidity below 40 mm", 15, "in %"),
        Arguments.of("humidity below target", 15, "Allowed after humidity below: an amount"),
        Arguments.of("humidity below 140 %", 15, "from 0 to 100"),
        Arguments.of("relief below 40 %", 13, "Write it in mm, in or thou"),
        Arguments.of("relief below", 12, "target or an amount"),
        Arguments.of("relief below -0.1 mm", 13, "below nothing"),
        Arguments.of("relief at least 0.1", 16, "Write it in mm, in or thou"),
        Arguments.of("relief differs by 0.1 mm", 18, "\"0.1\" cannot stand here"),
        Arguments.of("relief leans in target", 13, "\"in\" cannot stand here"),
        Arguments.of("relief touches or below 3 mm", 24, "Allowed after relief ... or: cannot be"),
        Arguments.of("relief touches below", 15, "\"and\" with a further condition"),
        Arguments.of("role is teacher", 8, "beginner, technician"),
        Arguments.of("role beginner", 5, "Allowed after role: is beginner, is technician"),
        Arguments.of("turned at least 1/2 turn", 7, "today less than 1/2 turn, in all at least"),
        Arguments.of("turned today at least 1/2", 22, "no part of a turn"),
        Arguments.of("turned today at least 0 turn", 22, "no turn at all"),
        Arguments.of("neck moved", 10, "moved as told"),
        Arguments.of("neck moved as told at least once", 28, "no count"),
        Arguments.of("neck moved as told at least 2", 29, "\"times\" is missing"),
        Arguments.of("rod-place is", 12, "an option of the step \"rod-place\" is missing"),
        Arguments.of("rod-place is pocket or", 22, "an option of the step"),
        Arguments.of("read-low reached", 16, "at least 2 times"),
        Arguments.of("read-low reached at least 0 times", 26, "no count"),
        Arguments.of("read-low reached less than", 26, "a count is missing"),
        Arguments.of("relief was", 10, "was read"),
        Arguments.of("relief differs by at last 0.1 mm", 21, "differs by at most 0.10 mm"),
        Arguments.of("humidity does not repeat within 5 %", 9, "\"does\" cannot stand here"),
        Arguments.of("rod-place is not", 16, "an option of the step"),
        Arguments.of("turned today less than a bit", 23, "no part of a turn"),
        Arguments.of("rod feels stiff", 4, "felt stiff"),
        Arguments.of("rod felt stif", 9, "Did you mean \"stiff\"?"),
        Arguments.of("rod felt stiff or", 17, "something is missing here"),
        Arguments.of("rod does not seem sick", 18, "Allowed after rod does not seem: dead"),
        Arguments.of("not relief in target", 4, "called by PROCEDURE"),
        Arguments.of("every action in target or above target", 23, "\"or\" cannot stand here"),
        Arguments.of("no humidity below 40 %", 3, "Allowed after no: relief"),
        Arguments.of("called by", 9, "the name of a procedure is missing"),
        Arguments.of("not called by Setup", 14, "no name of a procedure"));
  }

  @ParameterizedTest
  @MethodSource("misreadings")
  void eachMistakeIsPointedAt(String text, int at, String said) {
    MisreadException misread =
        assertThrows(MisreadException.class, () -> ConditionParser.parse(text, BoundsReader::of));
    assertThat(misread).hasMessageThat().contains(said);
    assertThat(misread.at()).isEqualTo(at);
  }
}
