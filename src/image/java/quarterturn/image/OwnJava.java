package quarterturn.image;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Enumeration;
import java.util.jar.JarEntry;
import java.util.jar.JarFile;
import java.util.spi.ToolProvider;
import org.jline.nativ.OSInfo;

/** A Java with the program in it and little beside. */
final class OwnJava {
  /**
   * Sound is in java.desktop. The one package that is exported makes the program's module one that
   * is resolved without being named, so that what Java knows of modules can be archived too.
   */
  private static final String MODULE =
      """
      open module quarterturn {
        requires java.desktop;
        requires java.logging;
        requires jdk.unsupported;
        exports quarterturn;
      }
      """;

  private OwnJava() {}

  /**
   * Links a runtime.
   *
   * @param jar the program
   * @param work for what is needed on the way
   * @return {@code to}
   */
  static Path link(Path jar, Path work, Path to, String version) throws IOException {
    Path classes = work.resolve("classes");
    unpack(jar, classes);
    Path source = Files.writeString(work.resolve("module-info.java"), MODULE);
    run("javac", "--patch-module", "quarterturn=" + classes, "-d", classes, source);
    Path module = work.resolve("quarterturn.jar");
    run(
        "jar",
        "--create",
        "--no-compress",
        "--file",
        module,
        "--module-version",
        version,
        "--main-class",
        "quarterturn.Main",
        "-C",
        classes,
        ".");
    run(
        "jlink",
        "--module-path",
        module,
        "--add-modules",
        "quarterturn",
        "--compress=2",
        "--no-header-files",
        "--no-man-pages",
        "--output",
        to);
    // Else it would be unpacked at every start.
    String library = System.mapLibraryName("jlinenative");
    String here = "org/jline/nativ/" + OSInfo.getNativeLibFolderPathForCurrentOS();
    Path called = classes.resolve(here).resolve(library);
    if (Files.exists(called)) {
      Files.copy(called, to.resolve("lib").resolve(library));
    }
    return to;
  }

  /** Unpacks a jar, without what only jars have. */
  private static void unpack(Path jar, Path to) throws IOException {
    try (JarFile file = new JarFile(jar.toFile())) {
      for (Enumeration<JarEntry> all = file.entries(); all.hasMoreElements(); ) {
        JarEntry entry = all.nextElement();
        if (entry.isDirectory() || entry.getName().startsWith("META-INF/")) {
          continue;
        }
        Path path = to.resolve(entry.getName()).normalize();
        if (!path.startsWith(to)) {
          throw new IOException(entry.getName() + " leads out of " + jar);
        }
        Files.createDirectories(path.getParent());
        try (InputStream in = file.getInputStream(entry)) {
          Files.copy(in, path);
        }
      }
    }
  }

  private static void run(String tool, Object... words) throws IOException {
    String[] typed = Arrays.stream(words).map(Object::toString).toArray(String[]::new);
    ToolProvider found =
        ToolProvider.findFirst(tool)
            .orElseThrow(() -> new IOException("this JDK has no " + tool + "; use a whole one"));
    int status = found.run(System.out, System.err, typed);
    if (status != 0) {
      throw new IOException(tool + " ended with " + status);
    }
  }
}
