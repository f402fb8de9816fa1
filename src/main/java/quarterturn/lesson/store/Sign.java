package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.format.DateTimeParseException;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * A bench's sign of life: a small file beside its events, written whole every few seconds. Whoever
 * sees its text change knows that the bench is there, by their own clock.
 *
 * @param count how often it was written
 * @param at by the bench's own clock
 */
public record Sign(int count, Instant at) {
  private static final String ENDING = ".sign";

  /** Far more characters than a sign has. */
  private static final int LONGEST = 80;

  /** Writes a bench's sign in place of the one before. */
  public void write(Path folder, String bench) throws IOException {
    Files.writeString(file(folder, bench), count + " " + at + "\n");
  }

  /** Takes a bench's sign away. */
  public static void remove(Path folder, String bench) throws IOException {
    Files.deleteIfExists(file(folder, bench));
  }

  /** Whether a file is, by its name, a bench's sign. */
  static boolean is(String name) {
    return name.endsWith(ENDING);
  }

  private static Path file(Path folder, String bench) {
    return folder.resolve(bench + ENDING);
  }

  /** The signs in a lesson's folder by their benches; one that can't be read now is left out. */
  public static Map<String, Sign> in(Path folder) throws IOException {
    Map<String, Sign> out = new TreeMap<>();
    try (Stream<Path> all = Files.list(folder)) {
      for (Path file : all.toList()) {
        String name = String.valueOf(file.getFileName());
        if (name.endsWith(ENDING) && !name.startsWith(".")) {
          read(file, name.substring(0, name.length() - ENDING.length()), out);
        }
      }
    }
    return out;
  }

  private static void read(Path file, String bench, Map<String, Sign> out) {
    try {
      String text = Files.size(file) > LONGEST ? "" : Files.readString(file).strip();
      String[] words = text.split(" ");
      if (words.length == 2) {
        out.put(bench, new Sign(Integer.parseInt(words[0]), Instant.parse(words[1])));
      }
    } catch (IOException | NumberFormatException | DateTimeParseException e) {
      // It is being written, or gone for a moment; the next one counts.
      return;
    }
  }
}
