package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.time.Duration;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.quick.TypedAhead;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;

/** How much a technician types, counted on simulated instruments, and printed. */
class KeystrokesTest {
  /** A prompt with what was answered there. */
  private record Step(Prompt prompt, Answer answer) {
    boolean named() {
      return prompt instanceof Prompt.Choose
          || prompt instanceof Prompt.Measure
          || prompt instanceof Prompt.Write;
    }

    /** Whether something is to be done first, so that nothing can be read before it is on view. */
    boolean news() {

      boolean pause = prompt.said().text().matches("(?s).*\\n1 of \\d  [^\\n]*\\?(\\n.*)?");
      return pause || prompt.said().first().stream().anyMatch(first -> !first.stands());
    }

    String typed() {
      String typed = AutoSource.typed(prompt, answer).replace(",", "");
      return typed.equals("understood") ? "u" : typed;
    }

    /** "relief 0.30 passes 0.35 lifts E1", "rod-place headstock". */
    String typedByName() {
      String wanted = TypedAhead.wanted(prompt);
      if (prompt instanceof Prompt.Measure measure && measure.string() != null) {
        return measure.quantity().word() + " " + typed() + " " + measure.string();
      }
      return wanted + " " + typed();
    }
  }

  /** One session to its end: every prompt, answered well and truly. */
  private static List<Step> walk(String procedure, NamedNeck neck, Role role) throws Exception {
    PracticeBench bench = Practising.on(neck, procedure, "bass-34", role);
    List<Step> steps = new ArrayList<>();
    while (!bench.prompt().ended()) {
      steps.add(new Step(bench.prompt(), bench.truth()));
      bench.answer(bench.truth());
    }
    return steps;
  }

  /** Somebody who knows what is coming, and types as much of it on a line as can be given. */
  private static final class Technician implements LineSource {
    private final List<Step> steps;
    private final List<String> typed = new ArrayList<>();
    private int at;

    Technician(List<Step> steps) {
      this.steps = steps;
    }

    @Override
    public String readLine(String prompt, List<String> words) {
      Step here = steps.get(at++);
      List<String> parts = new ArrayList<>();
      if (here.named()) {
        parts.add(here.typedByName());
      } else if (!(here.prompt() instanceof Prompt.Wait)) {
        parts.add(here.prompt() instanceof Prompt.Tell ? "done" : here.typed());
      }
      Set<String> given = new HashSet<>(Set.of(TypedAhead.wanted(here.prompt())));
      // What is given twice on a line counts once.
      while (at < steps.size()
          && steps.get(at).named()
          && !steps.get(at).news()
          && given.add(TypedAhead.wanted(steps.get(at).prompt()))) {
        parts.add(steps.get(at++).typedByName());
      }
      String line = parts.isEmpty() ? "done" : String.join("; ", parts);
      typed.add(line.equals("done") && here.prompt() instanceof Prompt.Tell ? "" : line);
      return typed.get(typed.size() - 1);
    }

    @Override
    public void pause(Duration time) {}

    @Override
    public boolean typedByHand() {
      return false;
    }

    @Override
    public int width() {
      return 80;
    }
  }

  /** The lines of a technician, all of which were taken. */
  private static List<String> typed(String procedure, NamedNeck neck) throws Exception {
    Technician technician = new Technician(walk(procedure, neck, Role.TECHNICIAN));
    PracticeBench bench = Practising.on(neck, procedure, "bass-34", Role.TECHNICIAN);
    StringWriter out = new StringWriter();
    LineFace.run(bench, technician, new PrintWriter(out), new Dates(ZoneOffset.UTC));
    assertThat(bench.prompt().ended()).isTrue();
    assertThat(technician.at).isEqualTo(technician.steps.size());
    assertThat(out.toString()).doesNotContain("Not used");
    return technician.typed;
  }

  @Test
  void aRoutineReliefCheckTakesOneLineAndOneConfirmation() throws Exception {
    List<String> typed = typed("relief-check", NamedNeck.RIGHT);
    System.out.println("A routine relief check in window: " + typed.size() + " lines: " + typed);
    assertThat(typed).hasSize(2);
    assertThat(typed.get(0)).isEqualTo("u");
    assertThat(typed.get(1)).startsWith("relief ");
  }

  @Test
  void aSetUpTakesFewLines() throws Exception {
    NamedNeck neck = NamedNeck.NEGLECTED;
    int beginner = walk("setup", neck, Role.BEGINNER).size();
    int answers = walk("setup", neck, Role.TECHNICIAN).size();
    List<String> typed = typed("setup", neck);
    System.out.printf(
        "A set-up of %s: beginner %d answers; technician %d answers on %d lines, %d keys%n",
        neck, beginner, answers, typed.size(), typed.stream().mapToInt(l -> l.length() + 1).sum());
    assertThat(typed.size()).isAtMost(40);
  }
}
