package quarterturn.procedure.read;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;

/** Files of the tests, and reading them. */
public final class Readings {
  public static final List<String> HAZARDS = List.of("string-break", "key-slips");

  private Readings() {}

  /** The files of a folder beside the tests that end in {@code .yaml}, in order of name. */
  public static List<Path> files(String folder) {
    URL url = Procedure.class.getResource(folder);
    if (url == null) {
      throw new IllegalStateException("no folder " + folder);
    }
    try (Stream<Path> files = Files.list(Path.of(url.toURI()))) {
      return files.filter(file -> file.toString().endsWith(".yaml")).sorted().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    } catch (URISyntaxException e) {
      throw new IllegalStateException(e);
    }
  }

  public static byte[] bytes(String resource) {
    try (InputStream in = Procedure.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("no file " + resource);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public static byte[] utf8(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  /** Reads a file as its name says: kinds, hazards, limits, or else a procedure. */
  static void read(String name, byte[] bytes) throws UnreadableException {
    if (name.startsWith("kinds-")) {
      KindsReader.read(name, bytes);
    } else if (name.startsWith("hazards-")) {
      HazardsReader.read(name, bytes);
    } else if (name.startsWith("limits-")) {
      LimitsReader.read(name, bytes);
    } else {
      ProcedureReader.read(name, bytes, HAZARDS);
    }
  }

  /** What is said about a file, or nothing where it is read. */
  public static String complaint(String name, byte[] bytes) {
    try {
      read(name, bytes);
      return "";
    } catch (UnreadableException e) {
      return String.valueOf(e.getMessage());
    }
  }
}
