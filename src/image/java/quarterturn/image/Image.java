package quarterturn.image;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import quarterturn.command.CommandTree;
import quarterturn.procedure.UnreadableException;

/**
 * Makes an image of the program with a Java of its own, an archive of it, and a Debian package
 * where that can be made: {@code JAR FOLDER VERSION DATE}, in the project's folder.
 */
public final class Image {
  private static final String NAME = "quarterturn";
  private static final long MOST_BYTES = 100_000_000;

  private final Path work;
  private final Path image;
  private final String version;
  private final String date;

  private Image(Path folder, String version, String date) {
    this.work = folder.resolve("work");
    this.image = folder.resolve(NAME);
    this.version = version;
    this.date = date.substring(0, 10);
  }

  public static void main(String[] args)
      throws IOException, InterruptedException, UnreadableException {
    Path folder = Path.of(args[1]).toAbsolutePath();
    Trees.delete(folder);
    new Image(folder, args[2], args[3]).make(Path.of(args[0]).toAbsolutePath(), folder);
  }

  private void make(Path jar, Path folder)
      throws IOException, InterruptedException, UnreadableException {
    Files.createDirectories(work);
    Path runtime = OwnJava.link(jar, work, image.resolve("runtime"), version);
    documents();
    launcher();
    Archive.make(runtime, work);
    Trees.settle(image, date);
    String name = NAME + "-" + version + "-" + system();
    Path tar = Packages.tar(image, folder.resolve(name + ".tar.gz"), date);
    Path deb = Packages.deb(image, work, folder, version, date);
    Trees.delete(work);
    sizes(folder, Stream.of(tar, deb).filter(Files::exists).toList());
  }

  private void launcher() throws IOException {
    Path bin = Files.createDirectories(image.resolve("bin"));
    Files.copy(Path.of("src/main/sh", NAME), bin.resolve(NAME), StandardCopyOption.COPY_ATTRIBUTES);
  }

  private void documents() throws IOException, UnreadableException {
    CommandTree program = CommandTree.ofProgram();
    Path share = image.resolve("share");
    write(share.resolve("bash-completion/completions/" + NAME), BashCompletion.of(program));
    write(share.resolve("zsh/site-functions/_" + NAME), ZshCompletion.of(program));
    write(share.resolve("fish/vendor_completions.d/" + NAME + ".fish"), FishCompletion.of(program));
    write(share.resolve("man/man1/" + NAME + ".1"), ManPage.of(program, version, date));
    write(
        share.resolve("applications/" + NAME + ".desktop"),
        Files.readString(Path.of("src/main/sh", NAME + ".desktop")));
    write(share.resolve("doc/" + NAME + "/LICENSE"), Files.readString(Path.of("LICENSE")));
  }

  private static void write(Path file, String text) throws IOException {
    Files.createDirectories(file.getParent());
    Files.writeString(file, text);
  }

  /** Such as "linux-amd64". */
  private static String system() {
    return (System.getProperty("os.name") + "-" + System.getProperty("os.arch"))
        .toLowerCase(Locale.ROOT)
        .replace(" ", "");
  }

  /** Says how large each part is, and fails where the whole is too large. */
  private void sizes(Path folder, List<Path> packed) throws IOException {
    Path lib = image.resolve("runtime/lib");
    long modules = Trees.bytes(lib.resolve("modules"));
    long archive = Trees.bytes(Archive.of(image.resolve("runtime")));
    long machine = Trees.bytes(lib.resolve("server")) - archive;
    long runtime = Trees.bytes(image.resolve("runtime"));
    long whole = Trees.bytes(image);
    List<String> lines = new ArrayList<>();
    lines.add(line("classes and files (modules)", modules));
    lines.add(line("classes as loaded (archive)", archive));
    lines.add(line("the virtual machine", machine));
    lines.add(line("the rest of the runtime", runtime - modules - archive - machine));
    lines.add(line("launcher, completion, manual", whole - runtime));
    lines.add(line("the whole, unpacked", whole));
    for (Path file : packed) {
      lines.add(line(String.valueOf(file.getFileName()), Files.size(file)));
    }
    lines.forEach(System.out::println);
    Files.write(folder.resolve("sizes.txt"), lines);
    if (whole > MOST_BYTES) {
      throw new IllegalStateException("the image is too large: " + whole + " bytes");
    }
  }

  private static String line(String what, long bytes) {
    return String.format(Locale.ROOT, "%-40s %6.1f MB", what, bytes / 1e6);
  }
}
