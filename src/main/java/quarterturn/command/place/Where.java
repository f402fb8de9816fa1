package quarterturn.command.place;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Option;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Program;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.session.store.Store;
import quarterturn.session.store.UserFolders;
import quarterturn.unit.NotUnderstoodException;

/**
 * Whose sessions and instruments, and which files of a user's own: what the options say, else the
 * file of settings, else the platform's own folder.
 */
public final class Where {
  /** The place of these options in an unsorted help: behind a command's own. */
  public static final int ORDER = 1;

  @Option(
      names = "--data",
      paramLabel = "DIR",
      order = ORDER,
      description = "Folder for sessions and instruments, in place of the platform's own.")
  private @Nullable Path data;

  @Option(
      names = "--own",
      paramLabel = "DIR",
      order = ORDER,
      description = "Folder with your own procedures/ and safety/ files, which come first.")
  private @Nullable Path own;

  @Option(
      names = "--by",
      paramLabel = "NAME",
      order = ORDER,
      description =
          "Who works, for the record of a session that begins or goes on outside a lesson.")
  private @Nullable String by;

  private UserFolders folders = UserFolders.ofThisUser();

  private @Nullable Settings read;

  /** Gives it the folders of its user. */
  public void of(UserFolders user) {
    folders = user;
  }

  /** Where this user's data and settings are by the platform's own rule. */
  public UserFolders folders() {
    return folders;
  }

  /** The values that options give. */
  public Map<Key, String> typed() {
    Map<Key, String> typed = new EnumMap<>(Key.class);
    if (own != null) {
      typed.put(Key.OWN, own.toString());
    }
    if (by != null) {
      typed.put(Key.BY, by);
    }
    if (data != null) {
      typed.put(Key.DATA, data.toString());
    }
    return typed;
  }

  /** What the file of settings sets beside the options, with what is wrong with it. */
  public Settings settings() {
    Settings settings = read == null ? Settings.read(folders, typed().keySet()) : read;
    read = settings;
    return settings;
  }

  /** One line on what the file of settings sets of these keys; none where that is nothing. */
  public List<String> said(Key... keys) {
    return settings().sound().said(keys);
  }

  /** How the program is called to find the same files again. */
  public Program program() {
    List<String> options = new ArrayList<>();
    if (own != null) {
      options.addAll(List.of("--own", own.toString()));
    }
    if (data != null) {
      options.addAll(List.of("--data", data.toString()));
    }
    return Program.here().with(options);
  }

  public Sessions sessions(Clock clock) {
    Map<Key, String> set = settings().sound().set();
    if (own != null && !Files.isDirectory(own)) {
      throw new NotUnderstoodException("--own: there is no folder " + own);
    }
    String folder = set.get(Key.OWN);
    Path files = own != null || folder == null ? own : Path.of(folder);
    return new Sessions(
        store(), files, by == null ? set.get(Key.BY) : Settings.name(by), clock, program());
  }

  /** How who works is spoken to, where no option says it. */
  public Role role() {
    String set = settings().sound().set().get(Key.ROLE);
    return set == null ? Role.BEGINNER : Role.valueOf(set.toUpperCase(Locale.ROOT));
  }

  public Store store() {
    return Store.at(data());
  }

  /** The folder for sessions and instruments. */
  public Path data() {
    settings().sound();
    return Objects.requireNonNull(knownData(), "sound settings hide no folder");
  }

  /** As {@link #data}; null where the settings are wrong and may name another folder. */
  public @Nullable Path knownData() {
    if (data != null) {
      return data;
    }
    String set = settings().set().get(Key.DATA);
    if (set != null) {
      return Path.of(set);
    }
    return settings().faults().isEmpty() ? folders.data() : null;
  }
}
