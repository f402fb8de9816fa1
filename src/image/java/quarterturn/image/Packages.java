package quarterturn.image;

import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.apache.commons.compress.archivers.tar.TarArchiveEntry;
import org.apache.commons.compress.archivers.tar.TarArchiveOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipCompressorOutputStream;
import org.apache.commons.compress.compressors.gzip.GzipParameters;

/** Packs an image into single files, which have the same bytes each time. */
final class Packages {
  private static final String CONTROL =
      """
      Package: quarterturn
      Version: %s
      Architecture: %s
      Maintainer: quarterturn
      Section: misc
      Priority: optional
      Depends: libc6
      Installed-Size: %d
      Description: guides the set-up of a fretted string instrument in a terminal
       Tune, measure, decide, turn the truss rod a little, measure again: it does the
       arithmetic, keeps the log, and says when to stop and hand over to a repairer.
      """;

  private Packages() {}

  /** Packs a folder as a tar file, compressed, under the folder's own name. */
  static Path tar(Path folder, Path to, String date) throws IOException {
    GzipParameters parameters = new GzipParameters();
    parameters.setOperatingSystem(255);
    try (OutputStream file = new BufferedOutputStream(Files.newOutputStream(to));
        TarArchiveOutputStream out =
            new TarArchiveOutputStream(new GzipCompressorOutputStream(file, parameters))) {
      out.setLongFileMode(TarArchiveOutputStream.LONGFILE_POSIX);
      for (Path path : Trees.in(folder)) {
        String name = folder.getFileName() + "/" + folder.relativize(path);
        boolean directory = Files.isDirectory(path);
        TarArchiveEntry entry =
            new TarArchiveEntry(directory && !name.endsWith("/") ? name + "/" : name);
        entry.setModTime(Trees.begin(date));
        entry.setMode(directory || Files.isExecutable(path) ? 0755 : 0644);
        entry.setSize(directory ? 0 : Files.size(path));
        out.putArchiveEntry(entry);
        if (!directory) {
          Files.copy(path, out);
        }
        out.closeArchiveEntry();
      }
    }
    return to;
  }

  /** Makes a Debian package, where this system can; says so where it can't. */
  static Path deb(Path image, Path work, Path folder, String version, String date)
      throws IOException, InterruptedException {
    String machine =
        System.getProperty("os.arch").equals("aarch64") ? "arm64" : System.getProperty("os.arch");
    Path deb = folder.resolve("quarterturn_" + version + "_" + machine + ".deb");
    Path root = work.resolve("deb");
    Path usr = root.resolve("usr");
    Path lib = Files.createDirectories(usr.resolve("lib/quarterturn"));
    copy(image.resolve("bin"), lib.resolve("bin"));
    copy(image.resolve("runtime"), lib.resolve("runtime"));
    copy(image.resolve("share"), usr.resolve("share"));
    // Debian's zsh looks for what packages bring in a folder of its own.
    Path zsh = usr.resolve("share/zsh");
    Files.move(zsh.resolve("site-functions"), zsh.resolve("vendor-completions"));
    Path license = usr.resolve("share/doc/quarterturn/LICENSE");
    Files.move(license, license.resolveSibling("copyright"));
    Files.createSymbolicLink(
        Files.createDirectories(usr.resolve("bin")).resolve("quarterturn"),
        Path.of("../lib/quarterturn/bin/quarterturn"));
    Path control = Files.createDirectories(root.resolve("DEBIAN")).resolve("control");
    Files.writeString(control, CONTROL.formatted(version, machine, Trees.bytes(usr) / 1024));
    ProcessBuilder builder =
        new ProcessBuilder(
            List.of("dpkg-deb", "--root-owner-group", "--build", root.toString(), deb.toString()));
    builder.environment().put("SOURCE_DATE_EPOCH", Trees.begin(date).toMillis() / 1000 + "");
    try {
      if (builder.redirectErrorStream(true).start().waitFor() != 0) {
        throw new IOException("dpkg-deb could not make " + deb);
      }
    } catch (IOException none) {
      System.out.println("No .deb was made, since this system has no dpkg-deb that works.");
    }
    return deb;
  }

  private static void copy(Path from, Path to) throws IOException {
    for (Path path : Trees.in(from)) {
      Files.copy(
          path,
          to.resolve(from.relativize(path).toString()),
          StandardCopyOption.COPY_ATTRIBUTES,
          LinkOption.NOFOLLOW_LINKS);
    }
  }
}
