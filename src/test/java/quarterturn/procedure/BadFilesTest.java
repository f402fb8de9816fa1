package quarterturn.procedure;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import quarterturn.procedure.read.Readings;

/** Each file in {@code bad} is refused with exactly the words in the text beside it. */
class BadFilesTest {
  @TestFactory
  Stream<DynamicTest> eachIsRefusedWithTheseWords() {
    return Readings.files("bad").stream()
        .map(file -> DynamicTest.dynamicTest(file.getFileName().toString(), () -> compare(file)));
  }

  @Test
  void thereAreManyOfThem() {
    assertThat(Readings.files("bad").size()).isAtLeast(60);
  }

  private static void compare(Path file) throws IOException {
    String name = file.getFileName().toString();
    Path expected = file.resolveSibling(name.replace(".yaml", ".txt"));
    String complaint = Readings.complaint(name, Files.readAllBytes(file));
    assertThat(complaint).isNotEmpty();
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(
          Path.of("src/test/resources/quarterturn/procedure/bad", name.replace(".yaml", ".txt")),
          complaint + "\n");
      return;
    }
    assertThat(List.of((complaint + "\n").split("\n", -1)))
        .containsExactlyElementsIn(
            Files.readString(expected, StandardCharsets.UTF_8).split("\n", -1))
        .inOrder();
  }
}
