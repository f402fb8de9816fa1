package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.Stage;
import quarterturn.unit.Bracket;

/** What is fresh, and what a change has made stale: common practice, no source. */
class StagesTest {
  private static final Library SETUP = Play.library("setup");

  /**
   * Readings that each change spoils, written down a second time, apart from the program's file.
   */
  private static final Map<String, Set<String>> SPOILS =
      Map.ofEntries(
          Map.entry(
              "new-set",
              Set.of(
                  "relief",
                  "nut-clearance",
                  "action",
                  "saddle-arc",
                  "intonation",
                  "pickup-height")),
          Map.entry("new-strings", Set.of("relief", "action", "intonation", "pickup-height")),
          Map.entry("rod", Set.of("relief", "action", "intonation")),
          Map.entry("nut", Set.of("nut-clearance", "action", "intonation")),
          Map.entry("saddle-height", Set.of("action", "saddle-arc", "intonation", "pickup-height")),
          Map.entry(
              "neck-refit",
              Set.of("relief", "action", "saddle-arc", "intonation", "pickup-height")),
          Map.entry("saddle-place", Set.of("intonation")),
          Map.entry("pickup-height", Set.of("pickup-height")),
          Map.entry(
              "fret-work",
              Set.of(
                  "relief",
                  "nut-clearance",
                  "action",
                  "saddle-arc",
                  "intonation",
                  "pickup-height")),
          Map.entry("springs", Set.of()),
          Map.entry("climate", Set.of("relief", "action", "intonation")));

  private static Event.Before before(Quantity quantity, int daysAgo, String... since) {
    boolean bracket = quantity.bracket();
    return new Event.Before(
        Play.NOON.minus(Duration.ofDays(daysAgo)),
        quantity,
        "E1",
        bracket ? new Bracket(0.35, 0.40) : null,
        bracket ? null : quantity == Quantity.INTONATION ? 1.0 : 2.5,
        List.of(since));
  }

  private static Event.Before[] all(int daysAgo, String... since) {
    List<Event.Before> all = new ArrayList<>();
    for (Quantity quantity : Quantity.values()) {
      if (quantity.onString()) {
        all.add(before(quantity, daysAgo, since));
      }
    }
    return all.toArray(Event.Before[]::new);
  }

  private static List<Stage> stages(Event.Before... before) throws Exception {
    return Play.of(SETUP, Role.BEGINNER, "bass-34", Style.MEDIUM, before).bench.overview().stages();
  }

  private static Set<String> stale(List<Stage> stages) {
    Set<String> stale = new HashSet<>();
    for (Stage stage : stages) {
      if (stage.status() == Stage.Status.STALE) {
        stale.add(stage.id());
      }
    }
    return stale;
  }

  @Test
  void eachChangeSpoilsWhatTheMatrixSays() throws Exception {
    assertThat(SETUP.results().changes().keySet()).isEqualTo(SPOILS.keySet());
    for (String change : SPOILS.keySet()) {
      assertWithMessage(change).that(stale(stages(all(1, change)))).isEqualTo(SPOILS.get(change));
    }
    assertThat(stale(stages(all(1)))).isEmpty();
  }

  @Test
  void aWeekIsAChangeOfClimate() throws Exception {
    assertThat(stale(stages(all(6)))).isEmpty();
    List<Stage> stages = stages(all(8));
    assertThat(stale(stages)).isEqualTo(SPOILS.get("climate"));
    Stage relief = stages.get(1);
    assertThat(relief.because()).contains("a week went by");
  }

  @Test
  void whatWasNeverReadIsNotDone() throws Exception {
    for (Stage stage : stages()) {
      assertThat(stage.status()).isEqualTo(Stage.Status.NOT_DONE);
    }
  }

  @Test
  void whatIsOutOfItsWindowIsSaidWhileItIsFresh() throws Exception {
    Event.Before high = new Event.Before(Play.NOON, Quantity.ACTION, "E1", null, 3.5, List.of());
    Stage action =
        stages(high).stream().filter(s -> s.id().equals("action")).findFirst().orElseThrow();
    assertThat(action.status()).isEqualTo(Stage.Status.OUT);
    assertThat(action.reading()).isEqualTo("E1 3.5 mm");
  }

  @Test
  void aTurnMakesStaleAndAReadingMakesFreshAgain() throws Exception {
    Play play = Play.of(Play.relief(), Role.BEGINNER, "bass-34", Style.MEDIUM, all(1));
    play.to("found-low").read("0.60..0.65").read("0.60..0.65").read("0.60..0.65").to("turn-rod");
    play.turned(0.125, Feel.SMOOTH);
    Set<String> stale = new HashSet<>(SPOILS.get("rod"));
    stale.add("pitch");
    assertThat(stale(play.bench.overview().stages())).isEqualTo(stale);
    play.to("read-low").read("0.40..0.45");
    stale.removeAll(Set.of("pitch", "relief"));
    assertThat(stale(play.bench.overview().stages())).isEqualTo(stale);
  }

  /** A whine leads past the parts that find a buzz on a fret. */
  @Test
  void aPartThatABranchPassedOverIsNotTicked() throws Exception {
    Play play = Play.of(Play.library("buzz"), Role.BEGINNER, "bass-34", Style.MEDIUM, all(1));
    while (!(play.prompt() instanceof Prompt.Choose)) {
      play.ok();
    }
    assertThat(play.bench.overview().done()).isEmpty();
    play.choose("whine");
    Overview now = play.bench.overview();
    assertThat(now.parts().get(now.part())).isEqualTo("Other noises");
    assertThat(now.part()).isGreaterThan(3);
    assertThat(now.done()).containsExactly(0);
    assertThat(now.place()).startsWith("Buzz, part " + (now.part() + 1) + " of ");
    play.give(new Answer.Correct());
    assertThat(play.bench.overview().done()).isEmpty();
  }

  @Test
  void aStageOfASetUpIsNamedBehindIt() throws Exception {
    Play play = Play.of(SETUP, Role.BEGINNER, "bass-34", Style.MEDIUM);
    assertThat(play.bench.overview().place()).isEqualTo("Whole set-up: Intake, part 1 of 3: Look");
  }

  @Test
  void aStageThatLacksSomethingAsksForTheShortestWay() throws Exception {
    Library library = Play.library("intonation");
    Play play = Play.of(library, Role.BEGINNER, "bass-34", Style.MEDIUM, all(1, "saddle-height"));
    assertThat(play.step()).isEqualTo(EngineQuestions.NEEDS);
    String text = play.prompt().said().text();
    assertThat(text).contains("Action: stale, since a saddle was raised or lowered.");
    assertThat(text).contains("The shortest way to fresh: action.");
    play.choose(EngineQuestions.TAKE_THE_WAY);
    assertThat(play.prompt().said().procedure()).isEqualTo("action");
    play.to("read");
    for (double value : new double[] {2.5, 2.3, 2.2, 2.0}) {
      play.give(new Answer.Value(value));
    }
    assertThat(play.prompt().said().procedure()).isEqualTo("intonation");
    assertThat(play.step()).isEqualTo("pickups-down");
  }

  @Test
  void oneWhoStopsThereHasNothingSpoiled() throws Exception {
    Library library = Play.library("pickups");
    Play play = Play.of(library, Role.BEGINNER, "bass-34", Style.MEDIUM, all(1, "rod"));
    play.choose(EngineQuestions.STOP);
    assertThat(play.prompt()).isInstanceOf(Prompt.Done.class);
    assertThat(((Prompt.Done) play.prompt()).outcome()).isEqualTo("not-fresh");
    assertThat(play.events.get(play.events.size() - 1)).isInstanceOf(Event.Ended.class);
  }

  @Test
  void anotherAirAsksForTheReadingsAgain() throws Exception {
    for (double then : new double[] {45, 30}) {
      List<Event.Before> before = new ArrayList<>(List.of(all(1)));
      before.add(
          new Event.Before(
              Play.NOON.minus(Duration.ofDays(1)), Quantity.HUMIDITY, null, null, then, List.of()));
      Event.Before[] known = before.toArray(Event.Before[]::new);
      Play play = Play.of(Play.library("season"), Role.BEGINNER, "bass-34", Style.MEDIUM, known);
      assertThat(stale(play.bench.overview().stages())).isEmpty();
      play.give(new Answer.Value(21)).give(new Answer.Value(48));
      Set<String> stale = then < 38 ? SPOILS.get("climate") : Set.of();
      assertThat(stale(play.bench.overview().stages())).isEqualTo(stale);
    }
  }

  private static Stage relief(List<Integer> held, int readAt) throws Exception {
    Event.Before other =
        new Event.Before(
            Play.NOON,
            Quantity.RELIEF,
            "E1",
            new Bracket(0.35, 0.40),
            null,
            List.of(),
            held,
            readAt);
    return stages(other).get(1);
  }

  /**
   * Held at 1 and 15 over 7 an even bow shows less than held at 1 and 17 over 8: by the ratio of
   * (x_J - x_m)(x_m - x_1), here about 0.82, derived from the frets' rule.
   */
  @Test
  void aReliefReadOverOtherFretsIsReckonedOverAndSaidSo() throws Exception {
    assertThat(relief(List.of(1, 17), 8).reading()).isEqualTo("E1 0.35 to 0.40 mm");
    String reckoned = relief(List.of(1, 15), 7).reading();
    assertThat(reckoned).contains("reckoned from a reading over fret 7 held at 1 and 15");
    double low = Double.parseDouble(reckoned.replaceAll("E1 ([0-9.]+) to .*", "$1"));
    double x1 = place(1);
    double ratio =
        (place(17) - place(8)) * (place(8) - x1) / ((place(15) - place(7)) * (place(7) - x1));
    assertThat(low).isWithin(0.03).of(0.35 * ratio);
  }

  /** Of the whole string: 1 - 2^(-n/12). */
  private static double place(int fret) {
    return 1 - Math.pow(2, -fret / 12.0);
  }

  @Test
  void aReadingByAnotherConventionThatCannotBeReckonedIsNotUsed() throws Exception {
    assertThat(relief(List.of(1, 20), 19).status()).isEqualTo(Stage.Status.NOT_DONE);
    Event.Before action =
        new Event.Before(Play.NOON, Quantity.ACTION, "E1", null, 2.5, List.of(), List.of(), 17);
    Stage stage =
        stages(action).stream().filter(s -> s.id().equals("action")).findFirst().orElseThrow();
    assertThat(stage.status()).isEqualTo(Stage.Status.NOT_DONE);
  }
}
