package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.Random;
import org.junit.jupiter.api.Test;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.reference.Value;
import quarterturn.unit.Length;

class ShrinkageTest {
  @Test
  @HoldsTo("shrinkage.table")
  void woodsShrinkAsTheTableSays() {
    try (Reference table = Reference.of("shrinkage.table")) {
      Value maple = table.expected().at("maple_sugar");
      Shrinkage sugar = Shrinkage.SUGAR_MAPLE;
      assertThat(sugar.radial()).isEqualTo(maple.number("CR"));
      assertThat(sugar.tangential()).isEqualTo(maple.number("CT"));
      assertThat(sugar.radial()).isWithin(5e-6).of(perPoint(maple.number("radial")));
      assertThat(sugar.tangential()).isWithin(5e-6).of(perPoint(maple.number("tangential")));
    }
  }

  /**
   * The second way: the handbook's other formula, width (M2 - M1) / (3000 / S - 30 + M1), from the
   * whole shrinkage S in percent, in the middle of the range, M1 = 10; from memory.
   */
  private static double perPoint(double greenToDry) {
    return 1 / (3000 / greenToDry - 20);
  }

  @Test
  void aBoardGrowsAsItDrinks() {
    // 50 mm of flat-sawn maple, two points damper: 50 * 0.00353 * 2.
    assertThat(Shrinkage.SUGAR_MAPLE.tangentialMm(Length.mm(50), 2)).isWithin(1e-12).of(0.353);
    assertThat(Shrinkage.SUGAR_MAPLE.radialMm(Length.mm(50), 2)).isWithin(1e-12).of(0.165);
    long seed = 50;
    Random random = new Random(seed);
    for (int i = 0; i < 200; i++) {
      double width = 20 + 60 * random.nextDouble();
      double points = 8 * random.nextDouble() - 4;
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Shrinkage.SUGAR_MAPLE.tangentialMm(Length.mm(width), -points))
          .isWithin(1e-12)
          .of(-Shrinkage.SUGAR_MAPLE.tangentialMm(Length.mm(width), points));
      assertWithMessage("seed %s, round %s", seed, i)
          .that(Shrinkage.SUGAR_MAPLE.radialMm(Length.mm(3 * width), points))
          .isWithin(1e-12)
          .of(3 * Shrinkage.SUGAR_MAPLE.radialMm(Length.mm(width), points));
    }
  }
}
