package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Role;
import quarterturn.procedure.ShippedRules;

class LineHomeTest {
  private static final LineHome.Choice BEGIN = new LineHome.Choice.Begin("relief", "practice-bass");
  private static final LineHome.Choice RESUME = new LineHome.Choice.Resume("a-1");
  private static final LineHome.Item AGAIN =
      new LineHome.Item(
          "practice-bass", "practice-bass: A day on, read again", "Due 2 hours ago (10:05)", BEGIN);
  private static final LineHome.Item OPEN =
      new LineHome.Item("a-1", "relief on blue-guitar, begun 12:00", "Go on", RESUME);

  private final StringWriter shown = new StringWriter();

  private LineHome.Choice typed(
      List<LineHome.Item> due, List<LineHome.Item> unfinished, String typed) throws IOException {
    PrintWriter out = new PrintWriter(shown);
    List<String> own = List.of("practice-bass", "blue-guitar");
    PipeSource in = new PipeSource(new StringReader(typed), out, false);
    return LineHome.ask(due, unfinished, ShippedRules.ALL.results(), own, in, out);
  }

  private String list(List<LineHome.Item> due, List<LineHome.Item> unfinished) throws IOException {
    assertThat(typed(due, unfinished, "quit\n")).isEqualTo(new LineHome.Choice.Quit(false));
    // Two lines of greeting and an empty one stand before it.
    return shown.toString().lines().skip(3).collect(Collectors.joining("\n"));
  }

  @Test
  void whatIsDueStandsFirstAndTheNumbersGoOn() throws IOException {
    assertThat(list(List.of(AGAIN), List.of(OPEN)))
        .startsWith(
            """
            Due:
              1  practice-bass: A day on, read again. Due 2 hours ago (10:05)
            Unfinished sessions:
              2  relief on blue-guitar, begun 12:00. Go on
              3  Start neck relief (or type: start)
              4  Start a whole set-up (or type: setup)
              5  Rehearse""");
  }

  @Test
  void whereNothingIsDueNothingIsSaidOfIt() throws IOException {
    assertThat(list(List.of(), List.of()))
        .startsWith("There is no unfinished session.\n  1  Start");
  }

  @Test
  void anUnfinishedSessionThatIsDueIsNotListedTwice() throws IOException {
    assertThat(list(List.of(OPEN), List.of()))
        .startsWith("Due:\n  1  relief on blue-guitar, begun 12:00. Go on\n  2  Start");
  }

  @Test
  void aProcedureAndAnInstrumentBeginAtOnce() throws IOException {
    assertThat(typed(List.of(), List.of(), "relief-check blue-guitar technician\n"))
        .isEqualTo(new LineHome.Choice.Begin("relief-check", "blue-guitar", Role.TECHNICIAN));
    assertThat(typed(List.of(), List.of(), "Season practice-bass\n"))
        .isEqualTo(new LineHome.Choice.Begin("season", "practice-bass"));
    assertThat(typed(List.of(), List.of(), "relief red-guitar\nrelief blue-guitar now\nquit\n"))
        .isEqualTo(new LineHome.Choice.Quit(false));
    assertThat(shown.toString()).contains("a procedure and one of your instruments");
  }

  @Test
  void aLineIsChosenByItsNumberOrItsName() throws IOException {
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "1\n")).isEqualTo(BEGIN);
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "practice-bass\n")).isEqualTo(BEGIN);
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "2\n")).isEqualTo(RESUME);
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "A-1\n")).isEqualTo(RESUME);
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "3\n"))
        .isEqualTo(new LineHome.Choice.Start("relief"));
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "4\n"))
        .isEqualTo(new LineHome.Choice.Start("setup"));
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "5\n"))
        .isEqualTo(new LineHome.Choice.Rehearse(false));
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "6\n"))
        .isEqualTo(new LineHome.Choice.Rehearse(true));
    assertThat(typed(List.of(AGAIN), List.of(OPEN), "8\n7\n"))
        .isEqualTo(new LineHome.Choice.Quit(false));
    assertThat(shown.toString()).contains("Type a number from the list");
  }
}
