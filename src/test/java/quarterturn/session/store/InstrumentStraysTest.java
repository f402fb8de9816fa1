package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Stray;
import quarterturn.session.Instrument;

/** What is no instrument in the folder of the instruments is told of, and stops nothing else. */
class InstrumentStraysTest {
  private static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");

  @TempDir Path folder;
  private Store store = Store.at(Path.of("unset"));

  private static Instrument named(String name) {
    Instrument.Build unknown = Instrument.Build.UNKNOWN;
    return new Instrument(name, "bass-34", Style.MEDIUM, null, null, NOON, unknown, Map.of());
  }

  @BeforeEach
  void open() throws IOException {
    store = Store.at(folder);
    store.add(named("blue"));
  }

  private Path file(String name) {
    return folder.resolve("instruments").resolve(name);
  }

  @Test
  void eachIsListedOnceAndTheInstrumentIsThere() throws Exception {
    TreeSet<String> expected =
        new TreeSet<>(Stray.beside(file("blue.yaml"), "its name does not end in .yaml"));
    Stray.copies(file("blue.yaml"));
    String other = ", it names its instrument blue; the two must agree";
    for (String copy :
        List.of("blue (copy)", "blue.sync-conflict-20270301-120000-ABCDEFG", "another", "link")) {
      expected.add(copy + ".yaml" + other);
    }
    expected.add("junk.yaml, it is no text in UTF-8");
    Store.InstrumentList list = store.instruments();
    assertThat(list.instruments()).containsExactly(named("blue"));
    assertThat(list.notices())
        .containsExactlyElementsIn(expected.stream().map("not read: "::concat).toList());
    assertThat(store.instrumentNames()).containsExactly("blue");
    assertThat(store.tickets()).isEmpty();
    assertThat(store.instrument("blue")).isEqualTo(named("blue"));
  }

  @Test
  void aDamagedFileIsStillOfItsInstrument() throws Exception {
    Files.writeString(file("red.yaml"), "# mine\nname: \"red\"\nkind: [\n");
    Files.writeString(file("grey.yaml"), "kind: bass-34\n");
    assertThat(store.instrumentNames()).containsExactly("blue", "grey", "red");
    assertThat(store.instruments().notices()).hasSize(2);
    assertThat(store.instruments().notices().get(1))
        .startsWith("not read: red.yaml, line 3: it is no YAML");
  }

  @Test
  void whatStandsInAnInstrumentsPlaceIsNamedAndNotReplaced() throws Exception {
    Stray.beside(file("blue.yaml"), "");
    for (String name : List.of("dangling", "loop", "folder", "empty")) {
      assertThat(assertThrows(IOException.class, () -> store.instrument(name)))
          .hasMessageThat()
          .matches(name + ".yaml can't be read: it is .*; mend it or move it away");
      assertThat(assertThrows(IOException.class, () -> store.checkFree(name)))
          .hasMessageThat()
          .contains("already");
      assertThrows(IOException.class, () -> store.add(named(name)));
    }
    assertThat(Files.isSymbolicLink(file("dangling.yaml"))).isTrue();
  }
}
