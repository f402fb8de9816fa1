package quarterturn.platform;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.NotUnderstoodException;

/**
 * Where a user's data and settings are by each platform's own rule.
 *
 * @param env the environment
 * @param osName as in the property {@code os.name}
 * @param userHome as in the property {@code user.home}
 */
public record UserFolders(Map<String, String> env, String osName, String userHome) {
  private static final String OURS = "quarterturn";

  private enum Platform {
    WINDOWS,
    MAC,
    OTHER
  }

  /** Those of whoever runs the program. */
  public static UserFolders ofThisUser() {
    return new UserFolders(
        System.getenv(), System.getProperty("os.name", ""), System.getProperty("user.home", ""));
  }

  /** The folder for data. */
  public Path data() {
    return switch (system()) {
      case WINDOWS -> under(first("LOCALAPPDATA", "APPDATA"), "AppData", "Local");
      case MAC -> under(null, "Library", "Application Support");
      case OTHER -> under(xdg("XDG_DATA_HOME"), ".local", "share");
    };
  }

  /** The file of settings, or null where the home folder is needed for it and unknown. */
  public @Nullable Path settings() {
    try {
      Path folder =
          switch (system()) {
            case WINDOWS -> under(first("APPDATA"), "AppData", "Roaming");
            case MAC -> under(null, "Library", "Application Support");
            case OTHER -> under(xdg("XDG_CONFIG_HOME"), ".config");
          };
      return folder.resolve("settings.yaml");
    } catch (NotUnderstoodException e) {
      return null;
    }
  }

  /**
   * The home folder.
   *
   * @throws NotUnderstoodException where it is unknown
   */
  public Path home() {
    // A user whom the system has no entry for, as in a container, may still have said it.
    boolean unknown = userHome.isBlank() || userHome.equals("?");
    String home = unknown ? env.getOrDefault("HOME", "") : userHome;
    if (home.isBlank()) {
      throw new NotUnderstoodException(
          "the home folder is unknown", "name a data folder with --data DIR");
    }
    return Path.of(home);
  }

  private Platform system() {
    String system = osName.toLowerCase(Locale.ROOT);
    return system.startsWith("windows")
        ? Platform.WINDOWS
        : system.startsWith("mac") ? Platform.MAC : Platform.OTHER;
  }

  /** The program's folder in {@code base}, or where that is null in a folder of the home folder. */
  private Path under(@Nullable String base, String... inHome) {
    Path folder = base == null ? home().resolve(Path.of("", inHome)) : Path.of(base);
    return folder.resolve(OURS);
  }

  /** The XDG Base Directory Specification: a relative path is invalid and to be ignored. */
  private @Nullable String xdg(String name) {
    String base = env.get(name);
    return base != null && base.startsWith("/") ? base : null;
  }

  /** The first of these variables that holds anything, or null. */
  private @Nullable String first(String... names) {
    for (String name : names) {
      String value = env.get(name);
      if (value != null && !value.isBlank()) {
        return value;
      }
    }
    return null;
  }
}
