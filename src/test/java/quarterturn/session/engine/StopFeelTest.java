package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.unit.Turn;

/**
 * After a sign to stop the rod is not turned again, whatever a file says, and whatever is answered,
 * taken back or taken up again. The files and the readings are invented.
 */
class StopFeelTest {
  private static final String CALLS =
      """
      procedure: outer
      revision: 1
      title: Outer
      purpose: To call again and again.
      tools: [key]
      begin: call
      steps:
        - part: All
        - call: call
          procedure: inner
          go: again
        - tell: again
          text: Once more.
          go: call
        - done: never
          text: End.
          outcome: never
      """;

  @TempDir Path own;

  private Library library(String name, String amount, String felt) throws Exception {
    Path folder = Files.createDirectories(own.resolve("procedures"));
    String text = HostileSheet.text(name, "10 min", "slack", amount, felt);
    Files.writeString(folder.resolve(name + ".yaml"), text);
    return new Shelf(own).load(name);
  }

  private static Play stopped(Library library, Role role, Feel feel, double turns)
      throws IOException {
    Play play = Play.of(library, role, "bass-34", Style.MEDIUM);
    play.to("read").read("1.20..1.25").to("turn").turned(turns, feel);
    assertWithMessage("%s goes on", feel).that(play.prompt().ended()).isFalse();
    return play;
  }

  private static void goesOn(Play play, Random random) throws Exception {
    BenchNeck neck = new BenchNeck(1.1, 0.2);
    for (int i = 0; i < 80 && !play.prompt().ended(); i++) {
      assertThat(play.prompt()).isNotInstanceOf(Prompt.TurnRod.class);
      Prompt before = play.prompt();
      try {
        switch (random.nextInt(6)) {
          case 0 -> play.bench.answer(new Answer.Correct());
          case 1 -> play.bench.answer(new Answer.Undo());
          case 2 -> play.resumeAfter(Duration.ofMinutes(random.nextInt(200)));
          default -> neck.answer(play);
        }
      } catch (RefusedException e) {
        assertThat(play.prompt()).isEqualTo(before);
      }
      if (play.prompt() instanceof Prompt.Choose recall && recall.said().step().contains("made")) {
        play.choose("made");
      }
    }
  }

  @Test
  void noWayLeadsFromAStopSignToAnotherTurn() throws Exception {
    Random random = new Random(5);
    for (String felt : List.of("turn", "tune", "read", "slack")) {
      for (String amount : List.of("advised", "tighten 1/8 turn")) {
        Library library = library("hostile", amount, felt);
        for (Feel feel : library.limits().stopFeels()) {
          for (double turns : new double[] {0, 0.0625, 0.125}) {
            Play play = Play.of(library, Role.TECHNICIAN, "bass-34", Style.MEDIUM);
            play.to("read").read("1.20..1.25").to("turn").turned(turns, feel);
            goesOn(play, random);
            assertThat(play.state().history().turns()).hasSize(1);
          }
        }
      }
    }
  }

  @Test
  void aStopSignIsNotTakenBack() throws Exception {
    Play play = stopped(library("hostile", "advised", "tune"), Role.BEGINNER, Feel.NOISE, 0.125);
    for (int deep = 0; deep < 2; deep++) {
      Answer back = new Answer.Correct();
      if (deep == 1) {
        play.ok().give(back);
        assertThat(play.step()).isEqualTo("tune");
      }
      RefusedException e = assertThrows(RefusedException.class, () -> play.bench.answer(back));
      assertThat(e)
          .hasMessageThat()
          .isEqualTo(
              "A sign to stop is not taken back. The rod is not turned again here; let a repairer"
                  + " look at it.");
    }
  }

  /** Nobody looks at a mark while something creaks: what it felt like counts without an amount. */
  @Test
  void aStopSignWithoutAnAmountCountsAsFarAsWasAsked() throws Exception {
    Library library = library("hostile", "advised", "tune");
    for (Feel feel : library.limits().stopFeels()) {
      Play play = Play.of(library, Role.BEGINNER, "bass-34", Style.MEDIUM);
      play.to("read").read("1.20..1.25").to("turn");
      Turn asked = ((Prompt.TurnRod) play.prompt()).turn();
      play.give(new Answer.Felt(feel, "?"));
      Event.Recalled recalled = (Event.Recalled) play.events.get(play.events.size() - 1);
      assertThat(recalled.feel()).isEqualTo(feel);
      assertThat(recalled.sure()).isFalse();
      assertThat(play.state().history().net()).isEqualTo(asked);
      goesOn(play, new Random(3));
      assertThat(play.state().history().turns()).hasSize(1);
    }
  }

  /** So does one with an amount that can't be right; another feel needs the amount. */
  @Test
  void anAmountThatCannotBeRightIsNoReasonToRefuseAStopSign() throws Exception {
    Library library = library("hostile", "advised", "tune");
    Play play = Play.of(library, Role.BEGINNER, "bass-34", Style.MEDIUM);
    play.to("read").read("1.20..1.25").to("turn");
    Prompt before = play.prompt();
    for (Answer wrong :
        List.of(
            new Answer.Felt(Feel.SMOOTH, "How far?"),
            new Answer.Felt(Feel.STIFF, "How far?"),
            new Answer.Turned(new Turn(4), Feel.SMOOTH))) {
      assertThrows(RefusedException.class, () -> play.bench.answer(wrong));
      assertThat(play.prompt()).isEqualTo(before);
    }
    play.turned(4, Feel.NOISE);
    assertThat(play.state().history().net()).isEqualTo(((Prompt.TurnRod) before).turn());
  }

  @Test
  void anotherFeelIsTakenBackAsEver() throws Exception {
    Play play = stopped(library("hostile", "advised", "tune"), Role.BEGINNER, Feel.STIFF, 0.125);
    play.give(new Answer.Correct());
    assertThat(play.prompt()).isInstanceOf(Prompt.Choose.class);
    play.choose("noise").to("read").read("1.10..1.15").ok();
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("noise");
  }

  @Test
  void aProcedureThatCallsTheTurnAgainDoesNotGetIt() throws Exception {
    Path folder = Files.createDirectories(own.resolve("procedures"));
    Files.writeString(folder.resolve("outer.yaml"), CALLS);
    library("inner", "advised", "end");
    Library library = new Shelf(own).load("outer");
    Play play = stopped(library, Role.BEGINNER, Feel.SLIPPED, Turn.NONE.turns());
    goesOn(play, new Random(1));
    assertThat(((Prompt.HandOver) play.prompt()).outcome()).isEqualTo("slipped");
  }
}
