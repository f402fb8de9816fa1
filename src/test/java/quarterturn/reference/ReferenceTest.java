package quarterturn.reference;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

/** The reader of reference values is strict. */
class ReferenceTest {
  @Test
  void aForgottenValueFails() {
    AssertionError error =
        assertThrows(
            AssertionError.class,
            () -> {
              try (Reference reference = Reference.of("tension.scaling")) {
                assertThat(reference.expected().number("one_semitone_down_ratio")).isLessThan(1);
              }
            });
    assertThat(error).hasMessageThat().contains("expected/two_semitones_down_ratio");
    assertThat(error).hasMessageThat().doesNotContain("one_semitone_down_ratio");
  }

  @Test
  void anUnknownIdNamesThoseThereAre() {
    AssertionError error = assertThrows(AssertionError.class, () -> Reference.of("fret.none"));
    assertThat(error).hasMessageThat().contains("fret.bass_34in");
  }

  @Test
  void aMissingKeyNamesThoseThereAre() {
    Value expected = Reference.of("gauge.card").expected();
    AssertionError error = assertThrows(AssertionError.class, () -> expected.number("depth_mm"));
    assertThat(error).hasMessageThat().contains("nominal_mm");
  }

  @Test
  void everyEntrySaysWhereItIsFrom() {
    assertThat(Reference.ids().size()).isAtLeast(30);
    for (String id : Reference.ids()) {
      assertThat(Reference.of(id).because()).contains(id + " (");
    }
  }
}
