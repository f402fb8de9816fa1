package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Recorded;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.PastAnswers;
import quarterturn.session.Prompt;

/** What earlier sessions were told of an instrument comes back. All is invented. */
class AsRecordedTest {
  private static Event.Known known(Recorded what, String answer) {
    return new Event.Known(Play.NOON, what, answer);
  }

  /** On a neck that needs a turn, up to where its rod is asked about. */
  private static Play rod(Role role) throws Exception {
    Play play =
        Play.known(
            Play.relief(),
            role,
            "bass-34",
            known(Recorded.ROD_PLACE, "under-plate"),
            known(Recorded.ROD, "two-way"),
            known(Recorded.ROD_NUT, "slot"));
    return play.found("0.60..0.65").to("changed").choose("nothing");
  }

  @Test
  void aBeginnerIsShownOnePageOfItAndConfirmsIt() throws Exception {
    Play play = rod(Role.BEGINNER);
    assertThat(play.step()).isEqualTo(EngineQuestions.AS_RECORDED);
    String text = play.prompt().said().text();
    assertThat(text.lines().toList())
        .containsExactly(
            "Where is the truss rod nut? At the headstock, under a small plate.",
            "Kind of rod? Two-way: it can bend the neck either way.",
            "Truss rod nut? A slot or a cross.",
            "As recorded?")
        .inOrder();
    play.choose(EngineQuestions.SAME).to("key-fit").choose("fits").to("turn-rod");
    assertThat(chosen(play)).containsNoneOf("rod-place", "rod-kind", "nut-form");
    assertThat(play.events.toString()).contains("why=on record: under-plate");
    assertThat(play.state().bench().has(Fact.ROD_IDENTIFIED)).isTrue();
  }

  @Test
  void whereSomethingDiffersEachIsAskedAnew() throws Exception {
    Play play = rod(Role.BEGINNER).choose("differs");
    assertThat(play.step()).isEqualTo("rod-place");
    play.choose("headstock").choose("single").choose("socket").to("key-fit").choose("fits");
    play.to("turn-rod");
    assertThat(chosen(play)).containsAtLeast("rod-place", "rod-kind", "nut-form");
    assertThat(play.events.toString()).doesNotContain("why=on record");
  }

  @Test
  void aTechnicianIsNotAskedWhetherItIsStillSo() throws Exception {
    Play play = rod(Role.TECHNICIAN);
    assertThat(play.step()).isEqualTo("plate");
    play.to("key-fit");
    assertThat(chosen(play)).containsNoneOf(EngineQuestions.AS_RECORDED, "rod-place", "nut-form");
  }

  @Test
  void stringsThatWereNotedOnceAreNotWrittenDownAgain() throws Exception {
    Library library = new Shelf(null).load("intake");
    for (boolean noted : new boolean[] {true, false}) {
      List<Event.Known> earlier =
          noted ? List.of(known(Recorded.GAUGES, ".105 .085 .065 .045")) : List.of();
      Play play =
          Play.known(library, Role.BEGINNER, "bass-34", earlier.toArray(Event.Known[]::new));
      play.to("complaint").give(new Answer.Wrote("It buzzes (invented)"));
      play.to("frets").choose("even");
      assertThat(play.step()).isEqualTo(noted ? "humidity" : "gauges");
    }
  }

  @Test
  void howAnInstrumentIsBuiltIsAskedOnce() throws Exception {
    Play play =
        Play.known(
            new Shelf(null).load("intake"),
            Role.TECHNICIAN,
            "bass-34",
            known(Recorded.BUILD, "left-handed"));
    play.to("complaint").give(new Answer.Wrote("It buzzes (invented)"));
    assertThat(play.events.toString()).contains("step=build, why=on record: left-handed");
    assertThat(play.prompt().said().toString()).contains("only the strings change sides");
    play.choose("sound");
    assertThat(chosen(play)).containsExactly("inspect");
  }

  /** Its fit is looked at all the same; one that rocks is followed by another, which is written. */
  @Test
  void aKeyThatFittedOnceIsNotLookedForAgain() throws Exception {
    Play play =
        Play.known(
            Play.relief(),
            Role.BEGINNER,
            "bass-34",
            known(Recorded.ROD_PLACE, "headstock"),
            known(Recorded.ROD, "single"),
            known(Recorded.ROD_NUT, "socket"),
            known(Recorded.ROD_KEY, "5 mm"));
    play.found("0.60..0.65").to("changed").choose("nothing");
    assertThat(play.prompt().said().text()).contains("\nKey that seats fully? 5 mm.\nAs recorded?");
    play.choose(EngineQuestions.SAME);
    assertThat(play.step()).isEqualTo("key-fit");
    play.choose("rocks");
    assertThat(play.step()).isEqualTo("next-size");
    play.give(new Answer.Wrote("3/16 in"));
    assertThat(play.step()).isEqualTo("key-fit");
    assertThat(
            PastAnswers.of(List.of(), List.of(play.events), Play.relief()).stream()
                .map(Event.Known::answer))
        .contains("3/16 in");
  }

  /** Whether the key fits is seen at the nut, not in a record. */
  @Test
  void theKeyIsTriedHoweverMuchIsKnown() throws Exception {
    for (Role role : Role.values()) {
      Play play = rod(role).to("key-fit");
      assertThat(play.prompt()).isInstanceOf(Prompt.Choose.class);
      assertThat(play.bench.onRecord()).isNull();
    }
  }

  @Test
  void ofANewInstrumentNothingIsShown() throws Exception {
    Play play = Play.known(Play.relief(), Role.BEGINNER, "bass-34").found("0.60..0.65");
    assertThat(play.to("changed").choose("nothing").step()).isEqualTo("rod-place");
  }

  private static List<String> chosen(Play play) {
    return play.events.stream()
        .filter(Event.Chose.class::isInstance)
        .map(event -> ((Event.Chose) event).step())
        .toList();
  }
}
