package quarterturn.craft;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.reference.HoldsTo;
import quarterturn.reference.Reference;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

class HexSocketTest {
  @Test
  void everyKeyHasItsSocketWhichLetsItIn() {
    for (HexKey key : HexKey.ALL) {
      HexSocket socket = HexSocket.parse(key.name());
      assertThat(socket.name()).isEqualTo(key.name());
      assertThat(socket.least().mm()).isAtMost(socket.most().mm());
      assertWithMessage(key.name()).that(new KeyFit(key, socket).fits()).isTrue();
    }
  }

  /** Some sockets of head-cap screws; the key of the screw's size holds in each. */
  @Test
  @HoldsTo("iso4762.sizes")
  void theKeyOfACapScrewFitsItsSocketBest() {
    try (Reference screws = Reference.of("iso4762.sizes")) {
      double before = 0;
      for (String screw : screws.expected().keys()) {
        double size = screws.expected().number(screw);
        HexSocket socket = HexSocket.parse(size + "mm");
        KeyFit best = KeyFit.suiting(socket).get(0);
        assertWithMessage(screws.because()).that(best.key().nominal().mm()).isEqualTo(size);
        assertThat(new KeyFit(HexKey.parse(size + "mm"), socket).fits()).isTrue();
        assertThat(HexSocket.nearest(socket.most())).isEqualTo(socket);
        // A socket leaves metal around it, and grows with its screw.
        assertThat(size).isLessThan(Double.parseDouble(screw.substring(1)));
        assertThat(size).isGreaterThan(before);
        before = size;
      }
    }
  }

  /**
   * Metric limits by public tables of ISO 4762 and of ISO 4026 to 4028, which agree in these; older
   * tables of ISO 4762 end 1.5 mm at 1.56 and 2 mm at 2.06, as the pairs of the references do.
   */
  @ParameterizedTest
  @CsvSource({
    "1.5mm, 1.52, 1.58",
    "2mm, 2.02, 2.08",
    "2.5mm, 2.52, 2.58",
    "3mm, 3.02, 3.08",
    "4mm, 4.02, 4.095",
    "5mm, 5.02, 5.14",
    "6mm, 6.02, 6.14",
    "8mm, 8.025, 8.175",
  })
  void metricSocketsHaveTheirLimits(String name, double least, double most) {
    HexSocket socket = HexSocket.parse(name);
    assertThat(socket.least().mm()).isEqualTo(least);
    assertThat(socket.most().mm()).isEqualTo(most);
  }

  /** ASME B18.3, from memory: an inch socket is at least as wide as its largest key. */
  @ParameterizedTest
  @ValueSource(
      strings = {".028in", ".050in", "1/16in", "3/32in", "1/8in", "5/32in", "3/16in", "5/16in"})
  void anInchSocketStartsWhereItsKeyEnds(String name) {
    assertThat(HexSocket.parse(name).least().mm())
        .isWithin(1e-9)
        .of(HexKey.parse(name).most().mm());
  }

  @ParameterizedTest
  @CsvSource({
    "5.05, 5mm",
    "5.14, 5mm",
    "4.80, 3/16in",
    "4.9, 3/16in",
    "4.95, 5mm",
    "0.1, 0.7mm",
    "100, 8mm",
    "2.02, 2mm",
    "1.999, 5/64in",
  })
  void aMeasuredSocketIsTakenForTheNearest(double mm, String name) {
    assertThat(HexSocket.nearest(Length.mm(mm)).name()).isEqualTo(name);
  }

  /** Within two sockets' limits, or as far from both, the larger: a key that is too thin slips. */
  @Test
  void ofTwoThatAreAsNearTheLargerIsTaken() {
    HexSocket metric = HexSocket.parse("2mm");
    HexSocket inch = HexSocket.parse(".028in");
    assertThat(HexSocket.nearest(Length.mm(0.7115)).name()).isEqualTo(".028in");
    assertThat(inch.least().mm()).isGreaterThan(HexSocket.parse("0.7mm").least().mm());
    assertThat(metric.least().mm()).isGreaterThan(HexSocket.parse("5/64in").least().mm());
    assertThat(HexSocket.nearest(Length.mm(1.28)).name()).isEqualTo("1.3mm");
    assertThat(HexSocket.nearest(Length.mm(0.895)).name()).isEqualTo("0.9mm");
  }

  @Test
  void theNearestSocketIsNoFurtherThanAnyOther() {
    long seed = 4026;
    Random random = new Random(seed);
    for (int i = 0; i < 1000; i++) {
      double mm = 0.5 + 9 * random.nextDouble();
      double nearest = off(HexSocket.nearest(Length.mm(mm)), mm);
      for (HexKey key : HexKey.ALL) {
        assertWithMessage("seed %s, round %s, %s mm, %s", seed, i, mm, key.name())
            .that(off(HexSocket.parse(key.name()), mm))
            .isAtLeast(nearest);
      }
    }
  }

  private static double off(HexSocket socket, double mm) {
    if (mm < socket.least().mm()) {
      return socket.least().mm() - mm;
    }
    return mm > socket.most().mm() ? mm - socket.most().mm() : 0;
  }

  @Test
  void aMeasuredSocketHasNoLimitsAroundIt() {
    HexSocket socket = HexSocket.measured(Length.mm(4.9));
    assertThat(socket.name()).isEqualTo("4.9 mm");
    assertThat(socket.least()).isEqualTo(Length.mm(4.9));
    assertThat(socket.most()).isEqualTo(Length.mm(4.9));
  }

  @Test
  void aWidthIsAboveZeroAndItsLimitsInOrder() {
    for (double no : new double[] {0, -5}) {
      NotUnderstoodException e =
          assertThrows(NotUnderstoodException.class, () -> HexSocket.measured(Length.mm(no)));
      assertThat(e).hasMessageThat().isEqualTo("a socket's width across flats must be above zero");
    }
    assertThrows(
        NotUnderstoodException.class, () -> new HexSocket("odd", Length.mm(5.1), Length.mm(5.0)));
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> HexSocket.parse("7mm"));
    assertThat(e).hasMessageThat().startsWith("there is no key of 7mm; there are 0.7mm,");
  }
}
