package quarterturn.command.place;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Program;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Settings;
import quarterturn.session.store.Settings.Key;
import quarterturn.session.store.Store;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * Whose sessions and instruments, and which files of a user's own: what the options say, else the
 * file of settings, else the platform's own folder.
 */
@Command(addMethodSubcommands = false)
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

  @Spec(Spec.Target.MIXEE)
  private @Nullable CommandSpec spec;

  private UserFolders folders = UserFolders.ofThisUser();

  private boolean saidNew;

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
    if (own != null && !Place.isThere("--own", own, "name the folder with your files")) {
      throw new NotUnderstoodException(
          "--own: there is no folder " + own, "make it first, or name another");
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

  /** What is kept; where an option names a folder that is new, that is said once. */
  public Store store() {
    if (data == null) {
      Path folder = data();
      Place.isThere("the data folder", folder, "put it right, or name another with --data DIR");
      return Store.at(folder);
    }
    boolean there = Place.isThere("--data", data, "name another folder");
    if (!there && !saidNew) {
      saidNew = true;
      Objects.requireNonNull(spec, "an option was typed with a command")
          .commandLine()
          .getErr()
          .println("quarterturn: " + Printable.of(data + " is new: nothing is kept there yet"));
    }
    return Store.at(data);
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

  /** What a command must not write an export over. */
  public Kept kept() {
    List<Path> kept = new ArrayList<>();
    kept.add(data());
    try {
      kept.add(folders.data());
    } catch (NotUnderstoodException e) {
      // Without a home folder nothing is kept there.
    }
    String set = settings().set().get(Key.OWN);
    for (Path files :
        own != null ? List.of(own) : set == null ? List.<Path>of() : List.of(Path.of(set))) {
      kept.add(files.resolve("procedures"));
      kept.add(files.resolve("safety"));
    }
    Path settings = folders.settings();
    return new Kept(kept, settings == null ? List.of() : List.of(settings));
  }

  /** That of a command, or null where it has none. */
  public static @Nullable Where of(CommandLine command) {
    for (CommandSpec mixed : command.getCommandSpec().mixins().values()) {
      if (mixed.userObject() instanceof Where where) {
        return where;
      }
    }
    return null;
  }

  /** The folder of a lesson that the command was given, or null. */
  public @Nullable Path lesson() {
    List<PositionalParamSpec> all = spec == null ? List.of() : spec.positionalParameters();
    for (PositionalParamSpec given : all) {
      if (given.paramLabel().equals("FOLDER") && given.getValue() instanceof Path folder) {
        return folder;
      }
    }
    return null;
  }

  /** Whether something is in the data folder. */
  public boolean keeps(String file) {
    try {
      return within(data(), file);
    } catch (NotUnderstoodException e) {
      return false;
    }
  }

  /** Whether something is in a folder, by its path. */
  public static boolean within(Path folder, String file) {
    try {
      return Path.of(file).toAbsolutePath().startsWith(folder.toAbsolutePath());
    } catch (InvalidPathException e) {
      return false;
    }
  }
}
