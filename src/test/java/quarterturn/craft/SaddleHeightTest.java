package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class SaddleHeightTest {
  @Test
  void aSaddleMovesTwiceAsFarAsTheActionAtFret12() {
    assertThat(SaddleHeight.change(Length.mm(0.5), 12).mm()).isWithin(1e-12).of(1);
    assertThat(SaddleHeight.change(Length.mm(-0.5), 12).mm()).isWithin(1e-12).of(-1);
    assertThat(SaddleHeight.change(Length.mm(0.75), 24).mm()).isWithin(1e-12).of(1);
  }

  /** The second way: move the saddle under a string and look at its action. */
  @Test
  void theStringFollowsTheSaddle() {
    long seed = 21;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      Neck neck =
          Neck.uniform(
              new Scale(Length.mm(500 + 500 * random.nextDouble())),
              17,
              Length.mm(random.nextDouble()),
              Held.at(17, 7));
      int fret = 1 + random.nextInt(24);
      double change = random.nextDouble() - 0.5;
      double rise = SaddleHeight.change(Length.mm(change), fret).mm();
      StringLine before = new StringLine(neck, Length.mm(0.5), Length.mm(4));
      StringLine after = new StringLine(neck, Length.mm(0.5), Length.mm(4 + rise));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(after.openMm(fret) - before.openMm(fret))
          .isWithin(1e-9)
          .of(change);
    }
  }

  @Test
  void turnsTimesPitchIsTheWay() {
    long seed = 22;
    Random random = new Random(seed);
    for (int i = 0; i < 300; i++) {
      ScrewThread thread = new ScrewThread("any", Length.mm(0.2 + random.nextDouble()));
      Length change = Length.mm(2 * random.nextDouble() - 1);
      assertWithMessage("seed %s, round %s", seed, i)
          .that(thread.travel(SaddleHeight.turns(change, thread)).mm())
          .isWithin(1e-12)
          .of(change.mm());
    }
    assertThat(SaddleHeight.turns(Length.mm(1), ScrewThread.parse("M3")).turns()).isEqualTo(2.0);
  }

  @ParameterizedTest
  @ValueSource(ints = {0, -1})
  void theNutHasNoAction(int fret) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> SaddleHeight.change(Length.mm(1), fret));
    assertThat(e).hasMessageThat().isEqualTo("action is read at fret 1 or beyond, not at " + fret);
  }

  @Test
  void theFirstFretAndTheLastAreFrets() {
    assertThat(SaddleHeight.change(Length.mm(1), 1).mm()).isWithin(1e-9).of(1 / 0.056125687318306);
    assertThat(SaddleHeight.change(Length.mm(1), 36).mm()).isWithin(1e-12).of(8 / 7.0);
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> SaddleHeight.change(Length.mm(1), 37));
    assertThat(e).hasMessageThat().isEqualTo("a fret must lie between 0 and 36, not 37");
  }
}
