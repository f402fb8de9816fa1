package quarterturn.procedure.read;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URISyntaxException;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.jar.JarFile;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;

/** The files that come with the program, packed into a jar or not. */
final class Shipped {
  private static final String ENDING = ".yaml";

  private Shipped() {}

  /**
   * Names of the {@code .yaml} files in a folder that comes with the program, without their ending,
   * in order.
   *
   * @param known one of them, by which the folder is found
   */
  static List<String> names(String folder, String known) throws IOException {
    String place = folder + "/" + known + ENDING;
    URL url = Shipped.class.getResource("/" + place);
    if (url == null) {
      throw new FileNotFoundException("the file " + place + " is missing");
    }
    URLConnection connection = url.openConnection();
    if (connection instanceof JarURLConnection jar) {
      // One of its own, which can be closed without closing it under somebody else.
      jar.setUseCaches(false);
      try (JarFile file = jar.getJarFile()) {
        return names(file.stream().map(ZipEntry::getName), folder + "/");
      }
    }
    try (Stream<Path> files = Files.list(Path.of(url.toURI()).resolveSibling("."))) {
      return names(files.map(file -> String.valueOf(file.getFileName())), "");
    } catch (URISyntaxException e) {
      throw new IOException("the program's files cannot be found at " + url, e);
    }
  }

  private static List<String> names(Stream<String> files, String before) {
    return files
        .filter(file -> file.startsWith(before) && file.endsWith(ENDING))
        .map(file -> file.substring(before.length(), file.length() - ENDING.length()))
        .filter(name -> !name.contains("/"))
        .sorted()
        .toList();
  }
}
