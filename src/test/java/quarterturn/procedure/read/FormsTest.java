package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Ways;

/** Each short form beside the steps that it stands for, written out. */
class FormsTest {
  private static final String FOLDER = "src/test/resources/quarterturn/procedure/forms/";

  private static Procedure read(String name) throws Exception {
    return new Shelf(null).load(FOLDER + name + ".yaml").main();
  }

  @ParameterizedTest
  @ValueSource(strings = {"in-order"})
  void theShortFormMeansWhatIsWrittenOut(String name) throws Exception {
    assertThat(Ways.of(read(name))).isEqualTo(Ways.of(read(name + "-full")));
  }
}
