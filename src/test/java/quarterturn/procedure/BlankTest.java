package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.api.Test;

class BlankTest {
  @Test
  void everyBlankIsFilled() {
    for (Blank blank : Blank.values()) {
      assertThat(Blank.fill("a {" + blank.word() + "} b", Blank::meaning))
          .isEqualTo("a " + blank.meaning() + " b");
    }
  }

  @Test
  void whatIsFilledInIsTakenAsItIs() {
    assertThat(Blank.fill("{turn}{way}", blank -> "$1 \\ {net}"))
        .isEqualTo("$1 \\ {net}$1 \\ {net}");
  }

  @Test
  void otherBracesStay() {
    assertThat(Blank.fill("{other} {} { turn", Blank::word)).isEqualTo("{other} {} { turn");
  }
}
