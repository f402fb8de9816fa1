package quarterturn.rehearsal;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.rehearsal.simulated.SimulatedNeck;

/** A rehearsal works on every kind that ships, in every style that it has. */
class KindsRehearsalTest {
  @Test
  void everyKindComesToItsWindowOrHasNoRod() {
    Library library = Practising.relief();
    for (Kind kind : library.kinds().values()) {
      for (Style style : kind.styles()) {
        Rehearsal rehearsal = new Rehearsal(library, kind.id(), style, Role.TECHNICIAN);
        SimulatedNeck neck =
            new SimulatedNeck(NamedNeck.TOO_MUCH.traits(), new SplittableRandom(1));
        Outcome outcome = rehearsal.play(neck, new BeliefAdvisor());
        assertWithMessage(kind.id() + " " + style.word())
            .that(outcome.id())
            .isEqualTo(kind.make().rod() ? "in-window" : "no-rod");
        assertThat(outcome.moves() > 0).isEqualTo(kind.make().rod());
      }
    }
  }
}
