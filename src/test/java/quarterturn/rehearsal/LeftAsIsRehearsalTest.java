package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;

import java.time.ZoneOffset;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.report.Labels;
import quarterturn.report.SessionLog;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;

/** A relief that is left as it is, within a whole set-up; and who never leaves one. */
class LeftAsIsRehearsalTest {
  private static final Bracket JUST_ABOVE = new Bracket(0.45, 0.50);

  private static Answer answer(PracticeBench bench) {
    Prompt prompt = bench.prompt();
    if (prompt instanceof Prompt.Measure asked && asked.quantity() == Quantity.RELIEF) {
      return new Answer.Measured(JUST_ABOVE);
    }
    return prompt.said().step().equals("nearly") ? new Answer.Chose("leave") : bench.truth();
  }

  @Test
  void aSetUpGoesOnWithItAndItsRecordSaysSo() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.NEGLECTED, "setup", "bass-30");
    for (int i = 0; i < 900 && !bench.prompt().ended(); i++) {
      bench.answer(answer(bench));
    }
    assertThat(((Prompt.Done) bench.prompt()).outcome()).isEqualTo("signed-off");
    List<Event> events = bench.events();
    assertThat(events.toString()).contains("step=nearly, option=leave");
    // The stages after the relief were worked through.
    for (Quantity after : List.of(Quantity.NUT_CLEARANCE, Quantity.ACTION, Quantity.INTONATION)) {
      assertThat(events.stream().anyMatch(e -> e instanceof Event.Read r && r.quantity() == after))
          .isTrue();
    }
    Library library = new Shelf(null).load("setup");
    Dates dates = new Dates(ZoneOffset.UTC);
    String left = "left as is: 0.45 to 0.50 mm, range 0.30 to 0.45 mm";
    assertThat(
            String.join("\n", SessionLog.lines("demo", events, Labels.of(library, "setup"), dates)))
        .contains(left);
    String sheet = SheetFormat.TEXT.write(Sheet.of("demo", events, library), dates);
    assertThat(sheet.replaceAll("\\s+", " ")).contains(left);
  }

  /** Their first gap, between leaves, is often just outside; each of them goes on. */
  @Test
  void aSimulatedPlayerNeverLeavesIt() {
    Rehearsal rehearsal =
        new Rehearsal(Practising.relief(), "bass-34", Style.MEDIUM, Role.BEGINNER);
    for (int seed = 0; seed < 40; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      SimulatedNeck neck = new SimulatedNeck(Draw.neck(NeckFault.NONE, random), random);
      assertThat(rehearsal.play(neck, new BeliefAdvisor()).id()).isNotEqualTo("left-as-is");
    }
  }
}
