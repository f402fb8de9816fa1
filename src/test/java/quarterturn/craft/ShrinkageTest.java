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
      whole(table.because(), sugar, maple);
      assertThat(sugar.radial()).isEqualTo(maple.number("CR"));
      assertThat(sugar.tangential()).isEqualTo(maple.number("CT"));
      whole(table.because(), Shrinkage.INDIAN_ROSEWOOD, table.expected().at("rosewood_indian"));
    }
  }

  private static void whole(String because, Shrinkage wood, Value row) {
    assertWithMessage(because).that(wood.radialPercent()).isEqualTo(row.number("radial"));
    assertWithMessage(because).that(wood.tangentialPercent()).isEqualTo(row.number("tangential"));
    assertWithMessage(because)
        .that(wood.volumetricPercent())
        .isWithin(1e-12)
        .of(row.number("volumetric"));
  }

  /** The second way: the handbook's other formula, from the whole shrinkage; from memory. */
  @Test
  void theListedCoefficientsFollowFromTheWholeShrinkage() {
    Shrinkage reckoned = Shrinkage.ofGreenToDry(4.8, 9.9);
    assertThat(reckoned.radial()).isWithin(5e-6).of(Shrinkage.SUGAR_MAPLE.radial());
    assertThat(reckoned.tangential()).isWithin(5e-6).of(Shrinkage.SUGAR_MAPLE.tangential());
    // Rosewood by hand: 1 / (3000 / 2.7 - 20) and 1 / (3000 / 5.8 - 20).
    assertThat(Shrinkage.INDIAN_ROSEWOOD.radial()).isWithin(1e-7).of(0.0009165);
    assertThat(Shrinkage.INDIAN_ROSEWOOD.tangential()).isWithin(1e-7).of(0.0020111);
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
