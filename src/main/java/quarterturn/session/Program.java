package quarterturn.session;

import java.io.File;
import java.net.URISyntaxException;
import java.nio.file.Path;
import java.security.CodeSource;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;

/**
 * How this program is called at a shell, so that what it tells a person to type can be typed as it
 * stands.
 *
 * @param call what comes before a command
 * @param options what must be repeated behind each command, so that it finds the same files
 */
public record Program(String call, List<String> options) {
  /** The program's name, by which texts without a shell beside them call it. */
  public static final String NAME = "quarterturn";

  /** A property of the system by which a launcher says its name. */
  static final String LAUNCHER = NAME + ".launcher";

  /** A variable of the environment by which a launcher says its name. */
  static final String VARIABLE = "QUARTERTURN_LAUNCHER";

  public Program {
    options = List.copyOf(options);
  }

  /** The program as it was started this time, with no option to repeat. */
  public static Program here() {
    String property = System.getProperty(LAUNCHER);
    String launcher = property == null ? System.getenv(VARIABLE) : property;
    boolean named = launcher != null && !launcher.isBlank();
    return of(launcher, System.getProperty("java.class.path", ""), named ? null : Found.HERE);
  }

  /**
   * @param launcher the name a launcher gave, or null
   * @param classPath where Java was told to look for classes
   * @param source where this class was found, or null
   */
  static Program of(@Nullable String launcher, String classPath, @Nullable Path source) {
    if (launcher != null && !launcher.isBlank()) {
      return new Program(launcher.strip(), List.of());
    }
    if (source == null || !source.toString().endsWith(".jar")) {
      return new Program(NAME, List.of());
    }
    // As it was typed, where that was the jar itself: shorter than its whole path.
    boolean typed =
        !classPath.contains(File.pathSeparator)
            && Path.of(classPath).toAbsolutePath().normalize().equals(source);
    return new Program("java -jar " + word(typed ? classPath : source.toString()), List.of());
  }

  /** Where this class was found; it is asked for often and never changes. */
  private static final class Found {
    static final @Nullable Path HERE = source();
  }

  private static @Nullable Path source() {
    CodeSource code = Program.class.getProtectionDomain().getCodeSource();
    try {
      return code == null || code.getLocation() == null
          ? null
          : Path.of(code.getLocation().toURI()).toAbsolutePath().normalize();
    } catch (URISyntaxException | IllegalArgumentException e) {
      return null;
    }
  }

  /** This program, with options that each command needs. */
  public Program with(List<String> more) {
    List<String> all = new ArrayList<>(options);
    all.addAll(more);
    return new Program(call, all);
  }

  /** The whole line to type for a command such as "resume 2027-03-01-relief-ab12". */
  public String typed(String command) {
    return Stream.concat(Stream.of(call, command), options.stream().map(Program::word))
        .reduce((one, other) -> one + " " + other)
        .orElse(call);
  }

  /** A word for a shell, in quotes where a blank or a sign of the shell's is in it. */
  public static String word(String word) {
    StringBuilder quoted = new StringBuilder("\"");
    boolean plain = !word.isEmpty();
    for (char letter : word.toCharArray()) {
      boolean usual = letter < 128 && Character.isLetterOrDigit(letter);
      plain &= usual || "_.,:/@%+=\\~-".indexOf(letter) >= 0;
      quoted.append("\"$`".indexOf(letter) < 0 ? "" : "\\").append(letter);
    }
    return plain ? word : quoted.append('"').toString();
  }
}
