package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.HomeDialogues;

/** The home view in typed lines. All is invented. */
class HomeLinesTest {
  private static final HomeDialogue.Item AGAIN =
      new HomeDialogue.Item(
          new Question.Option(
              "practice-bass",
              "practice-bass",
              "A day on, read again. Due 2 hours ago (10:05)",
              "Due"),
          new HomeDialogue.Choice.Begin("relief", "practice-bass", Role.BEGINNER));
  private static final HomeDialogue.Item OPEN =
      new HomeDialogue.Item(
          new Question.Option(
              "a-1", "Neck relief on blue-guitar", "Begun 12:00. Broken off", "To go on with"),
          new HomeDialogue.Choice.Resume("a-1"));

  private final StringWriter shown = new StringWriter();

  private Dialogue.End typed(HomeDialogue dialogue, String lines) throws IOException {
    PrintWriter out = new PrintWriter(shown);
    return DialogueLines.run(dialogue, Echoing.of(lines, out), out);
  }

  private static HomeDialogue dialogue(HomeDialogue.Item... begun) {
    return HomeDialogues.of(List.of(begun), List.of());
  }

  @Test
  void eachGroupHasItsHeadingAndTheNumbersGoOn() throws IOException {
    HomeDialogue dialogue = dialogue(AGAIN, OPEN);
    assertThat(typed(dialogue, "2\n")).isEqualTo(Dialogue.End.ANSWERED);
    assertThat(dialogue.choice()).isEqualTo(OPEN.choice());
    assertThat(shown.toString())
        .startsWith(
            """
            quarterturn: setting up a fretted instrument, one safe turn at a time.
            It does not replace a qualified repairer. Local rules come first.

            Due:
            1. practice-bass: A day on, read again. Due 2 hours ago (10:05)

            To go on with:
            2. Neck relief on blue-guitar (a-1): Begun 12:00. Broken off

            Begin:
            3. Neck relief (start): Bring the curve""");
    assertThat(shown.toString()).contains("\n13. Quit (quit)\n\nWhat would you like to do? [2] > ");
  }

  @Test
  void whereNothingIsDueNothingIsSaidOfIt() throws IOException {
    assertThat(typed(dialogue(), "quit\n")).isEqualTo(Dialogue.End.LEFT);
    assertThat(shown.toString()).contains("come first.\n\nBegin:\n1. Neck relief");
  }

  @Test
  void whatIsNotTakenDoesNotShowTheListAgain() throws IOException {
    assertThat(typed(dialogue(OPEN), "13\n")).isEqualTo(Dialogue.End.CUT_SHORT);
    assertThat(shown.toString()).contains("Not taken: Type a number from the list");
    assertThat(shown.toString().split("Neck relief on blue-guitar", -1)).hasLength(2);
  }
}
