package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.platform.UserFolders;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Store;

/** What settings.yaml sets, through whole commands; a session of one's own procedure. */
@Isolated
class SettingsCommandTest {
  private static final Clock CLOCK =
      Clock.fixed(Instant.parse("2027-03-01T10:00:00Z"), ZoneOffset.UTC);

  @TempDir Path folder;
  private Path file = Path.of("unset");

  @BeforeEach
  void settings() throws IOException {
    Path own = Files.createDirectories(folder.resolve("bench/procedures"));
    Files.writeString(own.resolve("my-look.yaml"), look("my-look"));
    Files.writeString(own.resolve("torn.yaml"), "procedure: torn\n");
    Files.createDirectories(folder.resolve("kept"));
    file = folder.resolve("quarterturn/settings.yaml");
    Files.createDirectories(file.getParent());
    Files.writeString(file, "own: ../bench\nby: Ana\ndata: ../kept\n");
  }

  private Captured run(String in, String... args) {
    String at = folder.toString();
    UserFolders folders =
        new UserFolders(Map.of("XDG_CONFIG_HOME", at, "XDG_DATA_HOME", at + "/xdg"), "Linux", at);
    byte[] typed = in.getBytes(StandardCharsets.UTF_8);
    return Captured.of(CLOCK, folders, new ByteArrayInputStream(typed), args);
  }

  private static String flat(String text) {
    return text.replaceAll("\\s+", " ");
  }

  private String said() {
    return "From settings.yaml: own files in %s/bench, work by Ana, sessions in %s/kept."
        .formatted(folder, folder);
  }

  /** Starts a session of the user's own procedure and leaves it; its name. */
  private String begun() throws IOException {
    Captured ran = run("quit\n", "start", "my-look", "--kind", "bass-34", "--style", "medium");
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(0);
    assertThat(ran.out()).startsWith(said());
    return only("my-look");
  }

  /** The name of the only session of a procedure. */
  private String only(String procedure) throws IOException {
    List<String> names =
        Store.at(folder.resolve("kept")).sessions().stream()
            .filter(glance -> procedure.equals(glance.procedure()))
            .map(Glance::name)
            .toList();
    assertThat(names).hasSize(1);
    return names.get(0);
  }

  @Test
  void eachKeyStandsOnALineWithWhereItComesFrom() throws IOException {
    assertThat(run("", "settings").out().lines().toList())
        .containsExactly(
            "file: " + file,
            "own: " + folder + "/bench (from the file)",
            "by: Ana (from the file)",
            "role: beginner (default)",
            "data: " + folder + "/kept (from the file)")
        .inOrder();
    Files.writeString(file, "by: Ana\n");
    assertThat(run("", "settings", "--by", "Ben", "--own", "procedures").out().lines().toList())
        .containsExactly(
            "file: " + file,
            "own: procedures (from the option --own)",
            "by: Ben (from the option --by)",
            "role: beginner (default)",
            "data: " + folder + "/xdg/quarterturn (default)")
        .inOrder();
    Files.delete(file);
    assertThat(run("", "settings").out())
        .startsWith("file: " + file + " (not there; write it to set own, by, role or data)");
  }

  @Test
  void whatIsWrongStopsEveryCommandThatWouldFollowIt() throws IOException {
    Files.writeString(file, "by: Ana\nown: gone\n");
    String wrong =
        "quarterturn: %s:2:6: there is no folder %s. Make it, or write the path of another."
            .formatted(file, file.resolveSibling("gone"));
    for (String command :
        List.of("settings", "", "start relief", "log list", "instrument list", "due")) {
      Captured ran = run("", command.isEmpty() ? new String[0] : command.split(" "));
      assertWithMessage(command).that(ran.status()).isEqualTo(2);
      assertThat(ran.err().strip()).isEqualTo(wrong);
    }
    assertThat(run("", "settings").out()).contains("by: Ana (from the file)");
    assertThat(run("", "settings").out()).contains("own: none (default; see below)");
    assertThat(run("", "settings", "--help").status()).isEqualTo(0);
    assertThat(run("", "due", "--own", folder + "/bench").status()).isEqualTo(0);
  }

  @Test
  void anOptionOverridesItAndThenItIsNotSaid() throws IOException {
    Captured ran =
        run("", "--plain", "--own", folder + "/bench", "--data", folder + "/other", "--by", "Ben");
    assertThat(ran.out()).doesNotContain("settings.yaml");
    ran = run("", "--plain", "--data", folder + "/other");
    assertThat(flat(ran.out()))
        .contains("From settings.yaml: own files in " + folder + "/bench, work by Ana. ");
    String[] start = {
      "start", "relief-check", "--kind", "bass-34", "--by", "Ben", "--data", "OTHER"
    };
    start[7] = folder + "/other";
    run("quit\n", start);
    String other = Store.at(folder.resolve("other")).sessions().get(0).name();
    assertThat(run("", "log", "show", other, "--data", start[7]).out()).contains("By:        Ben");
  }

  @Test
  void atHomeOwnProceduresAreListedAndBeginInTypedLines() {
    Captured ran = run("my-look; new-bass-34\nmedium\nquit\n", "--plain");
    assertThat(flat(ran.out())).contains(said());
    assertThat(ran.out()).contains("6. My own check (my-look): A procedure of your own.");
    assertThat(flat(ran.out())).contains("7. torn: It can't be started. " + folder + "/bench/");
    assertThat(ran.out()).contains("My own check");
    assertThat(ran.out()).contains("Look along the neck.");
    assertThat(ran.status()).isEqualTo(0);
    Captured refused = run("torn; my-look\nmy-look\n", "--plain");
    assertThat(flat(refused.out())).contains("Not taken: It can't be started. " + folder);
    assertThat(flat(refused.out())).contains("Not used: my-look. The script ends at its line 1.");
    assertThat(refused.status()).isEqualTo(2);
  }

  @Test
  void atHomeOwnProceduresAreListedAndBeginInJsonLines() {
    String typed =
        """
        {"answer":"torn"}
        {"answer":"my-look"}
        {"answer":"new-bass-34"}
        {"answer":"my-bass"}
        {"answer":"medium"}
        {"answer":"quit"}
        """;
    Captured ran = run(typed, "--lines");
    assertThat(ran.out()).contains(said());
    assertThat(ran.out()).contains("{\"name\":\"my-look\",\"label\":\"My own check\",");
    assertThat(ran.out()).contains("{\"error\":\"It can't be started. ");
    assertThat(ran.out()).contains("{\"left\":\"strings as found");
    assertThat(run("", "log", "list").out()).contains("my-look");
  }

  @Test
  void aSessionInJsonLinesIsToldWhatIsSet() throws IOException {
    Captured ran = run("{\"answer\":\"quit\"}\n", "--lines", "resume", begun());
    assertThat(ran.out()).startsWith("{\"told\":[\"" + said() + "\"]}\n{\"prompt\"");
  }

  @Test
  void theRecordSaysWhereTheProcedureStoodAndWhoWorked() throws IOException {
    String session = begun();
    String log = run("", "log", "show", session).out();
    assertThat(log).contains("From:      " + folder + "/bench/procedures/my-look.yaml");
    assertThat(log).contains("By:        Ana");
    assertThat(run("", "log", "export", session).out()).contains("Ana, beginner");
    assertThat(run("", "log", "export", session, "--format", "json").out()).contains("\"Ana\"");
    run("quit\n", "start", "relief-check", "--kind", "bass-34", "--own", folder.toString());
    assertThat(run("", "log", "show", only("relief-check")).out()).doesNotContain("From:");
  }

  @Test
  void whereItsProcedureIsNotThereASessionSaysWhereItWas() throws IOException {
    String session = begun();
    Path was = folder.resolve("bench/procedures/my-look.yaml");
    String there =
        "this session follows my-look from " + was + "; start with --own " + folder + "/bench";
    String other = folder + "/kept";
    assertThat(run("", "resume", session, "--own", other).err().strip())
        .isEqualTo("quarterturn: " + there);
    Files.delete(was);
    String gone =
        "this session follows my-look from "
            + was
            + ", which is not there; start with --own DIR, the folder with"
            + " procedures/my-look.yaml";
    Captured resumed = run("", "resume", session);
    assertThat(resumed.status()).isEqualTo(2);
    assertThat(resumed.err().strip()).isEqualTo("quarterturn: " + gone);
    Captured log = run("", "log", "show", session);
    assertThat(log.status()).isEqualTo(0);
    assertThat(log.err().strip()).isEqualTo("quarterturn: " + gone);
    assertThat(run("", "log", "export", session).err().strip()).isEqualTo("quarterturn: " + gone);
    Captured home = run("1\nquit\n", "--plain");
    assertThat(home.status()).isEqualTo(2);
    assertThat(flat(home.out())).contains("Not taken: " + gone + ".");
    assertThat(run("{\"answer\":\"1\"}\n", "--lines").out())
        .contains("{\"error\":\"" + gone + "\"}");
    // One of the user's own never goes on as the program's of the same name.
    Files.writeString(was.resolveSibling("sign-off.yaml"), look("sign-off"));
    run("quit\n", "start", "sign-off", "--kind", "bass-34");
    assertThat(run("", "resume", only("sign-off"), "--own", other).err())
        .contains("follows sign-off from " + was.resolveSibling("sign-off.yaml") + "; start with");
  }

  /** A procedure that asks for one look, which takes no time to prove. */
  private static String look(String id) {
    return """
        procedure: %s
        revision: 1
        title: My own check
        purpose: See whether all is well.
        tools: []
        begin: look
        retune: look
        reread: look
        steps:
          - part: All
          - tell: look
            text: Look along the neck.
            go: end
          - done: end
            text: Done.
            outcome: done
        """
        .formatted(id);
  }
}
