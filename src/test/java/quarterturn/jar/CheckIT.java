package quarterturn.jar;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code check} as typed, to its end. */
class CheckIT {
  /** A procedure of our own invention, with nothing wrong in it. */
  static final String GOOD =
      """
      procedure: glance
      revision: 1
      title: A glance
      purpose: To look at it.
      tools: []
      begin: look
      steps:
        - part: Look
        - tell: look
          text: Look at it.
          go: fine
        - done: fine
          text: It was looked at.
          outcome: fine
      """;

  static final String BAD = GOOD.replace("go: fine", "go: fin");

  @TempDir Path folder;

  private static JarProcess.Ran check(Object... args) throws Exception {
    String[] all = new String[args.length + 1];
    all[0] = "check";
    for (int i = 0; i < args.length; i++) {
      all[i + 1] = args[i].toString();
    }
    return JarProcess.inside("", all);
  }

  private Path put(String place, String text) throws Exception {
    Path file = folder.resolve(place);
    Files.createDirectories(file.getParent());
    return Files.writeString(file, text);
  }

  @Test
  void withoutANameItChecksAllThatComeWithTheProgram() throws Exception {
    JarProcess.Ran ran = check();
    assertWithMessage(ran.out()).that(ran.status()).isEqualTo(0);
    assertThat(ran.err()).isEmpty();
    long shipped;
    try (var files = Files.list(Path.of("procedures"))) {
      // All but the kinds and the results.
      shipped = files.filter(file -> file.toString().endsWith(".yaml")).count() - 2;
    }
    assertThat(ran.out()).isEqualTo(shipped + " procedures checked, nothing found.\n");
  }

  @Test
  void onesOwnAreCheckedFirstAndTheShippedToo() throws Exception {
    put("procedures/glance.yaml", GOOD);
    JarProcess.Ran ran = check("--own", folder, "--format", "json");
    assertWithMessage(ran.out()).that(ran.status()).isEqualTo(0);
    JsonNode checked = ran.json().get(0).get("checked");
    assertThat(checked.get(0).asText()).isEqualTo("glance");
    assertThat(checked.get(1).asText()).isEqualTo("action");
  }

  @Test
  void aBadFileIsShownWithItsLineAndHowMuchIsWrong() throws Exception {
    Path file = put("glance.yaml", BAD);
    JarProcess.Ran ran = check(file);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.err()).isEmpty();
    List<String> lines = ran.out().lines().toList();
    assertThat(lines.get(0)).startsWith(file + ":11:9: ");
    assertThat(lines.get(1)).isEqualTo("    go: fin");
    assertThat(lines.get(2)).isEqualTo("        ^");
    assertThat(lines.get(lines.size() - 2)).isEmpty();
    assertThat(lines.get(lines.size() - 1)).isEqualTo("1 finding in 1 file; 1 procedure checked.");
  }

  @Test
  void aFileReachedTwiceIsFoundOnce() throws Exception {
    Path file = put("glance.yaml", BAD);
    Path roundabout = folder.resolve("../" + folder.getFileName() + "/glance.yaml");
    JarProcess.Ran ran = check(file, roundabout, folder);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("\n1 finding in 1 file; 1 procedure checked.\n");
  }

  @Test
  void aFolderIsAllItsFilesEachByItsOwnReader() throws Exception {
    put("a.yaml", GOOD.replace("glance", "a"));
    put("b.yaml", BAD);
    put("c.txt", "no procedure");
    put("kinds.yaml", "kinds:\n  - kind: x\n");
    JarProcess.Ran ran = check(folder);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains(folder.resolve("b.yaml") + ":11:9: ");
    assertThat(ran.out()).contains(folder.resolve("kinds.yaml") + ":2:5: ");
    assertThat(ran.out())
        .contains("\n2 findings in 2 files; 2 procedures and 1 rule file checked.\n");
  }

  @Test
  void aFolderOfOnesOwnIsTakenAsOne() throws Exception {
    // The call finds its procedure in that folder alone.
    String caller =
        GOOD.replace("glance", "round")
            .replace("tell: look\n    text: Look at it.", "call: look\n    procedure: glance");
    put("procedures/round.yaml", caller);
    put("procedures/glance.yaml", GOOD);
    assertThat(check(folder).out()).isEqualTo("2 procedures checked, nothing found.\n");
    put("procedures/glance.yaml", BAD);
    JarProcess.Ran ran = check(folder);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("\n1 finding in 1 file; 2 procedures checked.\n");
  }

  @Test
  void aFileThatIsNoYamlIsAFindingAmongOthersAndUnreadableAlone() throws Exception {
    Path bad = folder.resolve("noise.yaml");
    Files.write(bad, new byte[] {'a', ':', ' ', (byte) 0xC3, '(', '\n'});
    Path good = put("glance.yaml", GOOD);
    assertThat(check(bad).status()).isEqualTo(2);
    JarProcess.Ran ran = check(bad, good);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("does not belong to UTF-8");
    assertThat(ran.out()).contains("\n1 finding in 1 file; 2 procedures checked.\n");
  }

  @Test
  void whatIsNoYamlIsShownWhereItBreaks() throws Exception {
    Path bad = put("bad.yaml", GOOD.replace("title: A glance", "title: A: glance"));
    JarProcess.Ran ran = check(bad);
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.err()).isEmpty();
    List<String> lines = ran.out().lines().toList();
    assertThat(lines.get(0)).startsWith(bad + ":3:9: not-yaml: ");
    assertThat(lines.get(1)).isEqualTo("title: A: glance");
    assertThat(lines.get(2)).isEqualTo("        ^");
  }

  @Test
  void everyWayIsTakenInSimulatedSessions() throws Exception {
    JarProcess.Ran ran = check("--cover", "pickups");
    assertWithMessage(ran.out()).that(ran.status()).isEqualTo(0);
    assertThat(ran.out()).matches("pickups: (\\d+) of \\1 ways taken in \\d+ sessions.\n");
  }

  @Test
  void aWayThatIsNeverTakenIsPrinted() throws Exception {
    String asked =
        """
          - choose: hear
            text: Does it buzz?
            options:
              - is: no-buzz
                label: No
                go: sort
              - is: buzz
                label: Yes
                go: fine
          - compute: sort
            calculation: response
            branches:
              - when: hear is no-buzz
                go: fine
              - when: hear is buzz
                go: fine
        """;
    String text =
        GOOD.replace("go: fine\n", "go: hear\n")
            .replace("  - done: fine", asked + "  - done: fine");
    JarProcess.Ran ran = check("--cover", put("glance.yaml", text));
    assertWithMessage(ran.out()).that(ran.status()).isEqualTo(1);
    assertThat(ran.out()).contains("never taken: sort -> fine (hear is buzz)");
  }

  @Test
  void aFileThatIsMissingDoesNotKeepTheOthersFromBeingChecked() throws Exception {
    Path bad = put("glance.yaml", BAD);
    assertThat(check(folder.resolve("none.yaml")).status()).isEqualTo(2);
    JarProcess.Ran ran = check(folder.resolve("none.yaml"), bad);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.err()).contains("there is no file");
    assertThat(ran.out()).contains("1 finding in 1 file; 1 procedure checked.");
  }

  @Test
  void jsonHoldsEverythingThatTextHolds() throws Exception {
    Path file = put("glance.yaml", BAD);
    JarProcess.Ran ran = check("--format", "json", file);
    assertThat(ran.status()).isEqualTo(1);
    assertThat(ran.json()).hasSize(1);
    JsonNode json = ran.json().get(0);
    assertThat(json.get("checked").get(0).asText()).isEqualTo(file.toString());
    assertThat(json.get("readable").asBoolean()).isTrue();
    assertThat(json.get("findings")).hasSize(1);
    JsonNode finding = json.get("findings").get(0);
    assertThat(finding.get("file").asText()).isEqualTo(file.toString());
    assertThat(finding.get("line").asInt()).isEqualTo(11);
    assertThat(finding.get("column").asInt()).isEqualTo(9);
    assertThat(finding.get("source").asText()).isEqualTo("    go: fin");
    assertThat(finding.get("caret").asInt()).isEqualTo(8);
    assertThat(finding.get("rule").asText()).isNotEmpty();
    assertThat(finding.get("wrong").asText()).contains("fin");
    assertThat(finding.has("mend")).isTrue();
    assertThat(finding.get("way").isArray()).isTrue();
  }

  @Test
  void itDrawsAProcedure() throws Exception {
    JarProcess.Ran ran = check("--draw", put("glance.yaml", GOOD));
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out())
        .isEqualTo(
            """
            glance: A glance
            2 steps, begins at look

            Look
            ----
            look (tell) [begin]
              -> fine
            fine (done) ends: fine
            """);
    assertThat(check("--draw", "relief").out()).contains("-> back to ");
  }

  @Test
  void itDrawsInDot() throws Exception {
    JarProcess.Ran ran = check("--draw", "--format", "dot", put("glance.yaml", GOOD));
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out()).startsWith("digraph \"glance\" {\n");
    assertThat(ran.out()).contains("\n  \"look\" -> \"fine\";\n");
  }

  @Test
  void whatCannotBeReadIsNotDrawn() throws Exception {
    JarProcess.Ran ran = check("--draw", put("glance.yaml", BAD));
    assertThat(ran.status()).isEqualTo(2);
    assertThat(ran.out()).isEmpty();
    assertThat(ran.err()).contains("glance.yaml:11:9: ");
  }

  @Test
  void theSchemaIsTheOneThatIsPublished() throws Exception {
    JarProcess.Ran ran = check("--schema");
    assertThat(ran.status()).isEqualTo(0);
    assertThat(ran.out()).isEqualTo(Files.readString(Path.of("procedures/procedure.schema.json")));
  }
}
