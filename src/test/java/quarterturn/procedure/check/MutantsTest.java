package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/**
 * The shipped procedures and their blocks are changed as they are written, one place at a time, and
 * the rules have to notice. What they do not notice stands in {@code survivors.txt}, each with why.
 */
@Tag("slow")
class MutantsTest {
  private static final List<String> WRITTEN =
      List.of(
          "setup",
          "intake",
          "strings",
          "relief",
          "nut-clearance",
          "action",
          "neck-angle",
          "intonation",
          "pickups",
          "spring-bridge",
          "season",
          "buzz",
          "sign-off",
          "relief-check",
          "set-back",
          "ladder",
          "blocks/at-pitch",
          "blocks/find-rod",
          "blocks/fit-strings",
          "blocks/ladder",
          "blocks/make-ready",
          "blocks/next-day",
          "blocks/one-turn",
          "blocks/pocket-turn",
          "blocks/reading");

  /** A sheet that leaves a block's words as they are. */
  private static final Path PLAIN =
      Path.of("src/test/resources/quarterturn/procedure/good/plain.yaml");

  /** The procedures that use a block, where it is not this one alone. */
  private static final String OF_BLOCKS = "relief";

  private static final Map<String, List<String>> USERS =
      Map.of(
          "blocks/fit-strings",
          List.of("strings"),
          "blocks/at-pitch",
          List.of("action", "nut-clearance", "intonation"),
          "blocks/next-day",
          List.of("strings", OF_BLOCKS),
          "blocks/ladder",
          List.of("ladder", "buzz"),
          "blocks/make-ready",
          List.of("relief-check", "season", OF_BLOCKS),
          "blocks/reading",
          List.of(
              "plain",
              "nut-clearance",
              "action",
              "intonation",
              "pickups",
              "season",
              "ladder",
              OF_BLOCKS));

  /** The most changes that are drawn, as they come; a long run tries all there are. */
  private static final int DRAWN = Draws.of(240);

  /** So many of each operator come first, so that one with many places crowds out no other. */
  private static final int OF_EACH = 8;

  private static final double AT_LEAST = 0.97;

  @TempDir Path folder;

  /** The walks of what a mutant calls unchanged. */
  private final Walks shipped = new Walks();

  @Test
  void theRulesNoticeNearlyAllOfThem() throws Exception {
    Checker.check(new Shelf(null), "setup", shipped);
    List<Mutant> mutants = drawn();
    assertThat(mutants.size()).isAtLeast(Math.min(DRAWN, 400));
    List<String> survivors =
        mutants.parallelStream().filter(this::clean).map(MutantsTest::words).sorted().toList();
    double caught = 1 - survivors.size() / (double) mutants.size();
    assertWithMessage("%s of %s: %s", survivors.size(), mutants.size(), survivors)
        .that(caught)
        .isAtLeast(AT_LEAST);
    TreeSet<String> unexplained = new TreeSet<>(survivors);
    unexplained.removeAll(explained());
    assertWithMessage("survivors without a reason in survivors.txt").that(unexplained).isEmpty();
  }

  private static List<Mutant> drawn() throws IOException {
    List<Mutant> all = new ArrayList<>();
    for (String id : WRITTEN) {
      all.addAll(Mutants.of(id, Files.readString(sheet(Path.of(""), id))));
    }
    Collections.shuffle(all, new Random(20_261));
    Set<Mutant> drawn = new LinkedHashSet<>();
    for (Mutant.Operator operator : Mutant.Operator.values()) {
      all.stream().filter(one -> one.operator() == operator).limit(OF_EACH).forEach(drawn::add);
    }
    drawn.addAll(all);
    return drawn.stream().limit(DRAWN).toList();
  }

  private boolean clean(Mutant mutant) {
    try {
      Path own = Files.createTempDirectory(folder, "mutant");
      Path file = sheet(own, mutant.file());
      Files.createDirectories(own.resolve("procedures/blocks"));
      Files.writeString(file, mutant.text());
      Files.copy(PLAIN, sheet(own, "plain"));
      boolean block = mutant.file().startsWith("blocks/");
      String one = block ? OF_BLOCKS : mutant.file();
      for (String procedure : USERS.getOrDefault(mutant.file(), List.of(one))) {
        Walks walks = block ? new Walks() : shipped.copy();
        if (!Checker.check(new Shelf(own), procedure, walks).findings().isEmpty()) {
          return false;
        }
      }
      return true;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Path sheet(Path folder, String file) {
    return folder.resolve("procedures").resolve(file + ".yaml");
  }

  private static String words(Mutant mutant) {
    return mutant.file() + " " + mutant.what();
  }

  /** The lines of the list, without their reasons. */
  private static List<String> explained() throws IOException {
    Path list = Path.of("src/test/resources/quarterturn/procedure/survivors.txt");
    return Files.readAllLines(list).stream()
        .filter(line -> !line.isBlank() && !line.startsWith("#") && !line.startsWith(" "))
        .toList();
  }
}
