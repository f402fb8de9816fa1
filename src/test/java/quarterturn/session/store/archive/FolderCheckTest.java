package quarterturn.session.store.archive;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderCheckTest {
  @TempDir Path folder;
  private Path data = Path.of("unset");

  @BeforeEach
  void fill() throws IOException {
    data = Invented.folder(folder.resolve("data"));
  }

  private List<String> found(Path... others) throws IOException {
    Map<String, String> before = Invented.holds(folder);
    List<String> found = new ArrayList<>();
    FolderCheck.Checked checked = FolderCheck.of(data, Set.of(others), found::add);
    assertThat(checked.findings()).isEqualTo(found.size());
    assertThat(Invented.holds(folder)).isEqualTo(before);
    return found;
  }

  @Test
  void inASoundFolderNothingIsFound() throws IOException {
    Files.writeString(data.resolve("sessions/.index"), "derived");
    Files.writeString(data.resolve(".unpack.draft"), "half");
    List<String> none = new ArrayList<>();
    assertThat(FolderCheck.of(data, Set.of(), none::add))
        .isEqualTo(new FolderCheck.Checked(3, 2, 0));
    assertThat(none).isEmpty();
  }

  @Test
  void eachDamagedFileIsNamedWithWhatToDo() throws IOException {
    Path first = Invented.file(data, Invented.FIRST);
    Files.writeString(first, Files.readString(first).replace("practice-bass", "practice-bash"));
    Files.writeString(
        Invented.file(data, Invented.SECOND), "{\"n\":2,\"ty", StandardOpenOption.APPEND);
    Files.writeString(Invented.file(data, Invented.THIRD), "");
    Files.writeString(data.resolve("sessions/2027-03-04-relief-eeee.jsonl"), "hello\nthere\n");
    Path bass = data.resolve("instruments/my-bass.yaml");
    Files.writeString(bass, Files.readString(bass).replace("my-bass", "your-bass"));
    Files.writeString(data.resolve("instruments/blue-guitar.yaml"), "name: [\n");
    Files.write(data.resolve("instruments/large.yaml"), new byte[20_000]);

    String back = " Put it back from an archive, or move it out of the folder.";
    String mend = " Mend that, or put it back from an archive.";
    assertThat(found())
        .containsExactly(
            "sessions/2027-03-01-relief-k3f9.jsonl: line 2 of 2027-03-01-relief-k3f9.jsonl: it does"
                + " not agree with its sum: something changed it, or the line before. The 0 events"
                + " before it are kept and can be read; nothing can be added."
                + back,
            "sessions/2027-03-02-relief-x2m7.jsonl: the last line of 2027-03-02-relief-x2m7.jsonl"
                + " was cut short, as when the machine stops while writing; it is left out, and"
                + " what stands before it is kept. See its last answer with log show"
                + " 2027-03-02-relief-x2m7.",
            "sessions/2027-03-03-season-a1b2.jsonl: 2027-03-03-season-a1b2.jsonl has no whole first"
                + " line, so there is no session in it; start a new session."
                + back,
            "sessions/2027-03-04-relief-eeee.jsonl: line 1 of 2027-03-04-relief-eeee.jsonl: it is"
                + " no whole JSON object. Nothing in it can be used."
                + back,
            "instruments/blue-guitar.yaml: blue-guitar.yaml:1 is no YAML: while parsing a flow"
                + " node."
                + mend,
            "instruments/large.yaml: large.yaml is far too large for an instrument." + mend,
            "instruments/my-bass.yaml: my-bass.yaml names its instrument your-bass; the two must"
                + " agree."
                + mend)
        .inOrder();
  }

  @Test
  void eachStrayIsNamedAndACopyIsToldApart() throws IOException {
    Path sessions = data.resolve("sessions");
    Path first = Invented.file(data, Invented.FIRST);
    Files.copy(first, sessions.resolve("2027-03-01-relief-k3f9 (1).jsonl"));
    Files.copy(first, sessions.resolve("2027-03-01-relief-k3f9.bak"));
    Files.move(Invented.file(data, Invented.THIRD), sessions.resolve("season.jsonl"));
    Files.createDirectory(sessions.resolve("old"));
    Files.writeString(sessions.resolve("notes\u001b[2J.txt"), "hello\n");
    Files.createSymbolicLink(data.resolve("instruments/linked.yaml"), folder.resolve("nowhere"));
    Files.writeString(data.resolve("instruments/my-bass.yaml.orig"), "name: my-bass\n");
    Files.createDirectory(data.resolve("sessions (1)"));
    Path settings = Files.writeString(data.resolve("settings.yaml"), "by: Ana\n");
    Path own = Files.createDirectories(data.resolve("mine/own"));

    String copy =
        "begins as session 2027-03-01-relief-k3f9 and has another name; its turns count. Move it"
            + " out of the folder where 2027-03-01-relief-k3f9 holds as much.";
    String away = " Move it out of the data folder.";
    assertThat(found(settings, own))
        .containsExactly(
            "sessions (1): is not read." + away,
            "sessions/season.jsonl: begins as session 2027-03-03-season-a1b2 and has another name;"
                + " its turns count. Give it the name 2027-03-03-season-a1b2.jsonl.",
            "sessions/2027-03-01-relief-k3f9 (1).jsonl: " + copy,
            "sessions/2027-03-01-relief-k3f9.bak: " + copy,
            "sessions/notes\ufffd[2J.txt: is not read: no session has such a name." + away,
            "sessions/old: is not read: it is a folder." + away,
            "instruments/linked.yaml: is not read: it is a link." + away,
            "instruments/my-bass.yaml.orig: is not read: no instrument has such a name." + away)
        .inOrder();
  }

  @Test
  void whatIsNoFolderIsSaidAndTheRestIsRead() throws IOException {
    Path none = folder.resolve("none");
    Files.createDirectory(none);
    Files.writeString(none.resolve("sessions"), "");
    data = none;
    assertThat(found())
        .containsExactly(
            "sessions: can't be listed: it is no folder. See that it is a folder which you may"
                + " read.");
    Path file = Files.writeString(folder.resolve("file"), "");
    assertThrows(FileSystemException.class, () -> FolderCheck.of(file, Set.of(), found -> {}));
  }
}
