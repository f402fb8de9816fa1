package quarterturn.procedure.check;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.File;
import java.io.IOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.procedure.Fault;
import quarterturn.procedure.check.rule.Rule;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Shelf;

/**
 * Each rule has a folder of files: those whose name begins with {@code bad} break it, and are
 * answered with exactly the words in the text beside them; those whose name begins with {@code
 * good} break no rule. One named as {@code bad-own-limits.yaml} is a rule file of a user's own.
 */
class RuleFilesTest {
  private static final String FOLDER = "quarterturn/procedure/rules";
  private static final String OWN = "-own-";

  @TempDir static Path folder;

  private static List<Path> listed(Path folder) throws IOException {
    try (Stream<Path> found = Files.list(folder)) {
      return found.sorted().toList();
    }
  }

  private static List<Path> folders() throws IOException {
    URL url = RuleFilesTest.class.getResource("/" + FOLDER);
    if (url == null) {
      throw new IllegalStateException("no folder " + FOLDER);
    }
    try {
      return listed(Path.of(url.toURI()));
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  private static String name(Path path) {
    return String.valueOf(path.getFileName());
  }

  private static List<Path> files(Path folder, String begin) throws IOException {
    return listed(folder).stream()
        .filter(file -> name(file).startsWith(begin) && name(file).endsWith(".yaml"))
        .toList();
  }

  private static List<Fault> findings(Path file) throws IOException {
    int own = name(file).indexOf(OWN);
    if (own >= 0) {
      Path rules = folder.resolve(name(file).substring(own + OWN.length()));
      Files.copy(file, rules, StandardCopyOption.REPLACE_EXISTING);
      return new Shelf(null).faults(rules.toString());
    }
    return Checker.check(new Shelf(null), file.toString(), new Walks()).findings();
  }

  @TestFactory
  List<DynamicTest> badFilesAreAnsweredWithTheseWords() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path folder : folders()) {
      for (Path file : files(folder, "bad")) {
        String shown = name(folder) + "/" + name(file);
        tests.add(DynamicTest.dynamicTest(shown, () -> bad(name(folder), file)));
      }
    }
    return tests;
  }

  private static void bad(String rule, Path file) throws IOException {
    List<Fault> findings = findings(file);
    String said =
        findings.stream()
            .map(fault -> fault.toString().replace(file.toString(), name(file)) + "\n")
            .map(one -> one.replace(folder + File.separator, ""))
            .collect(Collectors.joining());
    assertWithMessage(said).that(findings.stream().map(Fault::rule).toList()).contains(rule);
    String text = name(file).replace(".yaml", ".txt");
    if (Boolean.getBoolean("golden.write")) {
      Files.writeString(Path.of("src/test/resources", FOLDER, rule, text), said);
      return;
    }
    assertThat(List.of(said.split("\n", -1)))
        .containsExactlyElementsIn(Files.readString(file.resolveSibling(text)).split("\n", -1))
        .inOrder();
  }

  @TestFactory
  List<DynamicTest> goodFilesBreakNoRule() throws IOException {
    List<DynamicTest> tests = new ArrayList<>();
    for (Path folder : folders()) {
      for (Path file : files(folder, "good")) {
        String shown = name(folder) + "/" + name(file);
        tests.add(DynamicTest.dynamicTest(shown, () -> assertThat(findings(file)).isEmpty()));
      }
    }
    return tests;
  }

  @Test
  void everyRuleHasABadAndAGoodFile() throws IOException {
    List<String> complete = new ArrayList<>();
    for (Path folder : folders()) {
      if (!files(folder, "bad").isEmpty() && !files(folder, "good").isEmpty()) {
        complete.add(name(folder));
      }
    }
    List<String> lacking =
        Rules.ALL.stream().map(Rule::id).filter(id -> !complete.contains(id)).toList();
    assertWithMessage("rules without files").that(lacking).isEmpty();
  }

  @Test
  void everyFolderIsNamedAfterARule() throws IOException {
    assertThat(Rules.ALL.stream().map(Rule::id).toList())
        .containsAtLeastElementsIn(folders().stream().map(RuleFilesTest::name).toList());
  }
}
