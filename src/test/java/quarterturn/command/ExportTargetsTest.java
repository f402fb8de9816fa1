package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.EnabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.lesson.InventedLesson;
import quarterturn.platform.UserFolders;

/** Where exports may be written, and what stands there afterwards. */
@Isolated
@DisabledOnOs(OS.WINDOWS) // it has links only for whom it trusts
class ExportTargetsTest {
  @TempDir Path folder;
  private Path data = Path.of("unset");
  private String session = "";
  private Path mine = Path.of("unset");

  @BeforeEach
  void kept() throws Exception {
    data = folder.resolve("data");
    Shop shop = Shop.of(data, "my-bass");
    Files.createDirectories(folder.resolve("own/procedures"));
    Files.createDirectories(folder.resolve(".config/quarterturn"));
    Files.writeString(folder.resolve(".config/quarterturn/settings.yaml"), "by: Ana\n");
    InventedLesson.write(Files.createDirectories(folder.resolve("lesson")));
    Shop.of(folder.resolve("other"), "their-bass");
    mine = Files.writeString(folder.resolve("mine.txt"), "mine");
    session = shop.begun("my-bass");
  }

  private Captured run(Shop shop, String... args) {
    UserFolders folders = new UserFolders(Map.of(), "Linux", folder.toString());
    String[] all =
        Stream.of(args, new String[] {"--data", data.toString(), "--own", folder + "/own"})
            .flatMap(Stream::of)
            .toArray(String[]::new);
    return Captured.of(shop, folders, InputStream.nullInputStream(), all);
  }

  private Captured export(Path to, String... more) {
    return run(new Shop(data), both(List.of("log", "export", session, "--out", to + ""), more));
  }

  private static String[] both(List<String> args, String... more) {
    return Stream.concat(args.stream(), Stream.of(more)).toArray(String[]::new);
  }

  /** Every file below the folder, with what is in it. */
  private Map<Path, String> all() throws IOException {
    Map<Path, String> all = new TreeMap<>();
    try (Stream<Path> files = Files.walk(folder)) {
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        all.put(file, Files.readString(file));
      }
    }
    return all;
  }

  private static void refused(Captured ran, String option, String says) {
    assertWithMessage(ran.err()).that(ran.status()).isEqualTo(Launch.USAGE);
    assertThat(ran.err()).startsWith("quarterturn: " + option + ": ");
    assertThat(ran.err()).contains(says);
    assertThat(ran.err().lines().toList()).hasSize(1);
    assertThat(ran.out()).isEmpty();
  }

  /** Ways to what the program keeps. */
  private List<Path> ways() throws IOException {
    Path journal = data.resolve("sessions/" + session + ".jsonl");
    Path link = Files.createSymbolicLink(folder.resolve("link.html"), journal);
    Path hard = Files.createLink(folder.resolve("hard.html"), journal);
    Path instrument = data.resolve("instruments/my-bass.yaml");
    Path hardToo = Files.createLink(folder.resolve("hard.csv"), instrument);
    Path sideways = Files.createSymbolicLink(folder.resolve("way"), data);
    Path settings = folder.resolve(".config/quarterturn/settings.yaml");
    Path hardSettings = Files.createLink(folder.resolve("hard.txt"), settings);
    Path own = Files.writeString(folder.resolve("own/procedures/x.yaml"), "procedure: x\n");
    Path copy = Files.copy(journal, folder.resolve("copy.html"));
    List<Path> ways = new ArrayList<>(List.of(journal, link, hard, instrument, hardToo, copy));
    ways.addAll(List.of(data.resolve("../data/sessions/" + session + ".jsonl"), settings, own));
    ways.addAll(List.of(sideways.resolve("instruments/my-bass.yaml"), hardSettings));
    ways.addAll(List.of(data.resolve("new.html"), sideways.resolve("sessions/new.html")));
    ways.add(folder.resolve("own/safety/../procedures/new.html"));
    ways.add(folder.resolve("lesson/lesson.yaml"));
    ways.add(folder.resolve("lesson/red.jsonl"));
    ways.add(Files.createLink(folder.resolve("plan.html"), folder.resolve("lesson/lesson.yaml")));
    ways.add(folder.resolve("other/instruments/their-bass.yaml"));
    return ways;
  }

  @Test
  void whatTheProgramKeepsIsNeverOneWithForceOrWithout() throws Exception {
    Files.createDirectories(folder.resolve("own/safety"));
    Shop shop = new Shop(data);
    List<Path> ways = ways();
    Map<Path, String> before = all();
    for (Path to : ways) {
      refused(export(to, "--force"), "--out", "belongs to what the program keeps");
    }
    refused(export(ways.get(0)), "--out", "belongs to what the program keeps");
    String journal = ways.get(0).toString();
    refused(
        run(shop, "due", "--ics", journal, "--force"),
        "--ics",
        "belongs to what the program keeps");
    refused(
        run(shop, "rehearse", "--lines", "--sheet", data.resolve("x.html") + ""),
        "--sheet",
        "belongs to what the program keeps");
    Path sheets = data.resolve("sheets");
    refused(
        run(shop, "lesson", "sheets", folder + "/lesson", "--out", sheets + ""),
        "--out",
        "belongs to what the program keeps; name another folder");
    assertThat(all()).isEqualTo(before);
  }

  @Test
  void anotherFileIsWrittenOverOnlyWhenForced() throws Exception {
    refused(export(mine), "--out", "is there already; choose another name, or add --force");
    refused(
        run(new Shop(data), "rehearse", "--lines", "--sheet", mine + ""),
        "--sheet",
        "is there already; choose another name");
    assertThat(Files.readString(mine)).isEqualTo("mine");
    Files.setPosixFilePermissions(mine, PosixFilePermissions.fromString("rw-r-----"));
    Path link = Files.createSymbolicLink(folder.resolve("link.txt"), mine);
    assertThat(export(link, "--force").status()).isEqualTo(0);
    assertThat(Files.isSymbolicLink(link)).isTrue();
    assertThat(Files.readString(mine)).startsWith("SET-UP SHEET\n");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(mine)))
        .isEqualTo("rw-r-----");
    assertThat(drafts()).isEmpty();
  }

  private List<Path> drafts() throws IOException {
    return all().keySet().stream().filter(file -> file.toString().endsWith(".draft")).toList();
  }

  @Test
  void whatCannotBeOneIsSaidInOneLine() throws Exception {
    Path nowhere = Files.createSymbolicLink(folder.resolve("dangling"), Path.of("nosuch"));
    Map<Path, String> before = all();
    refused(export(folder), "--out", "is a folder; name a file");
    refused(export(Path.of("")), "--out", "no file is named");
    refused(export(nowhere, "--force"), "--out", "is a link that leads nowhere");
    refused(export(folder.resolve("none/x")), "--out", "there is no folder to put");
    refused(export(mine.resolve("x")), "--out", "there is no folder to put");
    refused(
        run(new Shop(data), "lesson", "sheets", folder + "/lesson", "--out", mine + ""),
        "--out",
        "mine.txt is a file, not a folder; name another folder");
    refused(
        run(new Shop(data), "lesson", "sheets", folder + "/lesson", "--out", mine + "/x"),
        "--out",
        "mine.txt is a file, not a folder");
    assertThat(all()).isEqualTo(before);
  }

  @Test
  @EnabledOnOs(OS.LINUX)
  void aFullOrUnwritablePlaceIsSaidInOneLine() throws Exception {
    refused(
        export(Path.of("/dev/full"), "--force"),
        "--out",
        "/dev/full can't be written (No space left on device); name another file");
    refused(export(Path.of("/dev/full")), "--out", "is there already");
    refused(export(Path.of("/proc/x")), "--out", "/proc/x can't be written (");
    refused(
        run(new Shop(data), "lesson", "new", "/proc/x", "--neck", "too-much"), "FOLDER", "/proc/x");
    refused(
        run(new Shop(data), "lesson", "sheets", folder + "/lesson", "--out", "/proc/x"),
        "--out",
        "/proc/x can't be written (");
    assertThat(export(Path.of("/dev/null"), "--force").status()).isEqualTo(0);
    assertThat(Files.exists(Path.of("/dev/null"))).isTrue();
  }

  /** The plan before stays in its place where the next one can't be written. */
  @Test
  void thePlanBeforeStandsUntilTheNextDoes() throws Exception {
    Shop shop = new Shop(data);
    shop.pass(Duration.ofDays(1));
    Path lesson = folder.resolve("lesson");
    Files.writeString(lesson.resolve(InventedLesson.ID + ".yaml"), "mine");
    Map<Path, String> before = all();
    refused(run(shop, "lesson", "new", lesson + "", "--next"), "FOLDER", "is there already");
    assertThat(all()).isEqualTo(before);
  }
}
