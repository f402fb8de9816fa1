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
import java.util.Map;
import java.util.stream.Stream;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Source;

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

  /** Reads a file as far as it goes. */
  private interface Drafting<T> {
    T read(Faults faults) throws UnreadableException;
  }

  private static <T> T whole(String name, byte[] bytes, Drafting<T> drafting)
      throws UnreadableException {
    Faults faults = new Faults(Source.of(name, bytes));
    T read = drafting.read(faults);
    faults.check();
    return read;
  }

  public static Map<String, Kind> kinds(String name, byte[] bytes) throws UnreadableException {
    return whole(name, bytes, KindsReader::draft);
  }

  public static Map<String, Hazard> hazards(String name, byte[] bytes) throws UnreadableException {
    return whole(name, bytes, faults -> HazardsReader.draft(faults, null));
  }

  public static Limits limits(String name, byte[] bytes) throws UnreadableException {
    return whole(name, bytes, faults -> LimitsReader.draft(faults, null, null));
  }

  public static Procedure procedure(String name, byte[] bytes, List<String> hazards)
      throws UnreadableException {
    return whole(
        name,
        bytes,
        faults ->
            ProcedureReader.draft(
                    faults, bytes, hazards, new ShelfFiles(new Shelf(null), faults, List.of()))
                .procedure());
  }

  /** Reads a file as its name says: kinds, hazards, limits, or else a procedure. */
  static void read(String name, byte[] bytes) throws UnreadableException {
    if (name.startsWith("kinds-")) {
      kinds(name, bytes);
    } else if (name.startsWith("hazards-")) {
      hazards(name, bytes);
    } else if (name.startsWith("limits-")) {
      limits(name, bytes);
    } else {
      procedure(name, bytes, HAZARDS);
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
