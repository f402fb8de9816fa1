package quarterturn.procedure.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.Random;

/** What sync tools, editors and habits leave beside a file. */
public final class Stray {
  private static final int JUNK = 300;

  private Stray() {}

  /**
   * Puts strays beside a good file.
   *
   * @param good a file whose name has an ending
   * @return "NAME, why" of each that is none by its name or by what it is, in order
   */
  public static List<String> beside(Path good, String otherwise) throws IOException {
    Path folder = Objects.requireNonNull(good.toAbsolutePath().getParent());
    String name = good.getFileName().toString();
    String ending = name.substring(name.lastIndexOf('.'));
    for (String copy :
        List.of(name + "~", name + ".bak", "." + name + ".swp", "#" + name + "#", name + ".txt")) {
      Files.copy(good, folder.resolve(copy));
    }
    Files.createSymbolicLink(folder.resolve(".#" + name), Path.of("somebody@somewhere.1"));
    Files.createSymbolicLink(folder.resolve("dangling" + ending), Path.of("nowhere"));
    Files.createSymbolicLink(folder.resolve("loop" + ending), Path.of("loop" + ending));
    Files.createDirectory(folder.resolve("folder" + ending));
    Files.createDirectory(folder.resolve("handouts"));
    Files.createFile(folder.resolve("empty" + ending));
    Files.createFile(folder.resolve(".DS_Store"));
    Files.createFile(folder.resolve("." + name + ".lock"));
    Files.createFile(folder.resolve("." + name + ".draft"));
    Files.writeString(folder.resolve("notes"), "strings");
    return List.of(
        "#" + name + "#, " + otherwise,
        ".#" + name + ", its name begins with a dot",
        "." + name + ".swp, its name begins with a dot",
        "dangling" + ending + ", it is a link that leads nowhere",
        "empty" + ending + ", it is empty",
        "folder" + ending + ", it is a folder",
        "handouts, it is a folder",
        "loop" + ending + ", it is a link that leads nowhere",
        "notes, " + otherwise,
        name + ".bak, " + otherwise,
        name + ".txt, " + otherwise,
        name + "~, " + otherwise);
  }

  /** Puts copies and junk, which have the ending, beside a good file. */
  public static void copies(Path good) throws IOException {
    Path folder = Objects.requireNonNull(good.toAbsolutePath().getParent());
    String name = good.getFileName().toString();
    String ending = name.substring(name.lastIndexOf('.'));
    String stem = name.substring(0, name.lastIndexOf('.'));
    Files.copy(good, folder.resolve(stem + " (copy)" + ending));
    Files.copy(good, folder.resolve(stem + ".sync-conflict-20270301-120000-ABCDEFG" + ending));
    Files.copy(good, folder.resolve("another" + ending));
    Files.createSymbolicLink(folder.resolve("link" + ending), Path.of(name));
    byte[] junk = new byte[JUNK];
    new Random(1).nextBytes(junk);
    Files.write(folder.resolve("junk" + ending), junk);
  }
}
