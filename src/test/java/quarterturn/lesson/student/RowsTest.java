package quarterturn.lesson.student;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.NotUnderstoodException;

class RowsTest {
  private static final List<String> HERE = List.of("Ana", "Ben", "Cleo");

  private static String read(String line, String missing) {
    Expecting expecting = new Expecting(Quantity.RELIEF, java.util.Map.of());
    Rows rows = new Rows(HERE, List.of(missing.split("-")));
    return rows.read(line, expecting::fits).entrySet().stream()
        .map(row -> row.getKey() + "=" + row.getValue())
        .collect(Collectors.joining(" & "));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "1 0.30, 2 0.25, 3 0.20|Ana-Ben-Cleo|Ana=0.30 & Ben=0.25 & Cleo=0.20",
        "1 0,30, 2 0,25|Ana-Ben|Ana=0,30 & Ben=0,25",
        "1 0.30,2 0.25|Ana-Ben|Ana=0.30 & Ben=0.25",
        "2 0.25; 1 0.30 a card fits|Ana-Ben|Ben=0.25 & Ana=0.30 a card fits",
        "0.30, 0.25|Ana-Ben|Ana=0.30 & Ben=0.25",
        "ben 0.25|Ana-Ben|Ben=0.25",
        "2: 0.25|Ana-Ben|Ben=0.25",
        "0.25|Ben|Ben=0.25",
        "2 0.25|Ben|Ben=0.25",
        "2 mm|Ben|Ben=2 mm",
      })
  void eachRowByItsNumberOrAllInOrder(String line, String missing, String read) {
    assertThat(read(line, missing)).isEqualTo(read);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "0.30|Ana-Ben|says not whose it is. Begin with the row's number.",
        "4 0.30|Ana-Ben|says not whose it is",
        "1 0.30|Ben-Cleo|1 Ana is locked already.",
        "1 a|Ben|1 Ana is locked already.",
        "ana 0.30|Ben|1 Ana is locked already.",
      })
  void whoseItIsHasToBeClear(String line, String missing, String says) {
    NotUnderstoodException e =
        assertThrows(NotUnderstoodException.class, () -> read(line, missing));
    assertThat(e).hasMessageThat().contains(says);
  }
}
