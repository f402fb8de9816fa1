package quarterturn.procedure.read;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;
import static java.nio.charset.StandardCharsets.UTF_8;
import static java.util.Objects.requireNonNull;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.Library;
import quarterturn.procedure.read.form.FullText;

/** What was written out when the program was built is what would be written out now. */
class WrittenOutTest {
  private final Shelf shelf = new Shelf(null);

  private Shelf.Found found(String id) throws Exception {
    return requireNonNull(shelf.procedure(id));
  }

  @Test
  void everyProcedureIsReadAsFromItsYaml() throws Exception {
    assertThat(shelf.procedures().size()).isAtLeast(16);
    for (String id : shelf.procedures()) {
      Library now = shelf.open(id).library();
      Library kept = shelf.ready(id).library();
      assertWithMessage(id).that(kept).isEqualTo(now);
      assertWithMessage(id).that(now.main().digest()).hasLength(64);
    }
  }

  @Test
  void itSaysWhatTheProgramPrints() throws Exception {
    for (String id : shelf.procedures()) {
      WrittenOut kept = shelf.writtenOut(found(id));
      assertWithMessage(id)
          .that(FullText.of(requireNonNull(kept).tree()))
          .isEqualTo(shelf.full(id));
    }
  }

  @Test
  void oneOfAnotherStateOfTheFileIsNotTaken() throws Exception {
    byte[] kept = shelf.writtenOut("relief");
    byte[] yaml = found("relief").bytes();
    assertThat(WrittenOut.read("relief.yaml", yaml, kept)).isNotNull();
    assertThat(WrittenOut.read("relief.yaml", "# other".getBytes(UTF_8), kept)).isNull();
  }

  @Test
  void aUsersOwnProcedureIsNeverTheProgramsOne() throws Exception {
    Path own = Path.of("procedures", "relief.yaml");
    assertThat(shelf.ready(own.toString()).own()).contains("relief");
  }
}
