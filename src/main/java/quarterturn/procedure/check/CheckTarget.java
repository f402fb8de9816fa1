package quarterturn.procedure.check;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.read.Shelf;
import quarterturn.procedure.read.Strays;

/**
 * One procedure or file to check.
 *
 * @param shelf where what it needs is found
 * @param name a procedure's id, or the path of a file
 * @param file the file it stands in, or null where it came with the program
 */
public record CheckTarget(Shelf shelf, String name, @Nullable Path file) {
  private static final String ENDING = ".yaml";
  private static final String PROCEDURES = "procedures";
  private static final String SAFETY = "safety";

  /** Whether the file holds kinds, results, hazards or limits, and is no procedure. */
  public boolean rules() {
    return file != null && Shelf.isRules(file);
  }

  /**
   * The targets that a command line asks for.
   *
   * @param typed names, files and folders; where there are none, every procedure there is
   * @param own the user's own folder, or null
   */
  public static List<CheckTarget> of(List<String> typed, @Nullable Path own) throws IOException {
    Shelf shelf = Shelf.steady(own);
    List<CheckTarget> targets = new ArrayList<>();
    for (String one : typed) {
      Path path = path(one);
      if (path != null && Files.isDirectory(path) && !shelf.has(one)) {
        targets.addAll(folder(path, shelf));
      } else {
        targets.add(named(shelf, one, path, own));
      }
    }
    if (typed.isEmpty()) {
      if (own != null) {
        targets.addAll(ownFolder(own));
      }
      for (String id : shelf.procedures()) {
        if (targets.stream().noneMatch(target -> target.name().equals(id))) {
          targets.add(named(shelf, id, null, own));
        }
      }
    }
    return List.copyOf(targets);
  }

  private static CheckTarget named(
      Shelf shelf, String name, @Nullable Path path, @Nullable Path own) {
    if (isYaml(name)) {
      return new CheckTarget(shelf, name, path);
    }
    Path file = own == null ? null : own.resolve(PROCEDURES).resolve(name + ENDING);
    return new CheckTarget(shelf, name, file != null && Files.isRegularFile(file) ? file : null);
  }

  private static List<CheckTarget> folder(Path folder, Shelf shelf) throws IOException {
    return Files.isDirectory(folder.resolve(PROCEDURES))
            || Files.isDirectory(folder.resolve(SAFETY))
        ? ownFolder(folder)
        : yaml(folder).stream().map(file -> new CheckTarget(shelf, file.toString(), file)).toList();
  }

  /** The targets in a user's folder: what procedures are held to, then the procedures by name. */
  private static List<CheckTarget> ownFolder(Path own) throws IOException {
    Shelf shelf = Shelf.steady(own);
    List<CheckTarget> targets = new ArrayList<>();
    for (String folder : List.of(SAFETY, PROCEDURES)) {
      for (Path file : yaml(own.resolve(folder))) {
        if (Shelf.isRules(file)) {
          targets.add(new CheckTarget(shelf, file.toString(), file));
        }
      }
    }
    for (Path file : yaml(own.resolve(PROCEDURES))) {
      if (!Shelf.isRules(file) && Shelf.mayHold(file)) {
        String name = file.getFileName().toString();
        String id = name.substring(0, name.length() - ENDING.length());
        targets.add(new CheckTarget(shelf, shelf.has(id) ? id : file.toString(), file));
      }
    }
    return targets;
  }

  /** Whether a check of {@code typed} reads any file of the user's own, which may change. */
  public static boolean watchable(List<String> typed, @Nullable Path own) {
    return own != null
        || typed.stream()
            .anyMatch(
                one -> {
                  Path path = path(one);
                  return isYaml(one) || (path != null && Files.isDirectory(path));
                });
  }

  /**
   * The files that may change what is found: those asked for, and all of the folders that they were
   * found in or that belong to the user.
   */
  public static Set<Path> watched(List<String> typed, @Nullable Path own) throws IOException {
    Set<Path> files = new LinkedHashSet<>();
    for (String one : typed) {
      Path path = path(one);
      if (path != null && Files.isDirectory(path)) {
        files.addAll(all(path));
      } else if (path != null && isYaml(one)) {
        files.add(path);
      }
    }
    if (own != null) {
      files.addAll(all(own));
    }
    return files;
  }

  private static List<Path> all(Path folder) throws IOException {
    if (!Files.isDirectory(folder.resolve(PROCEDURES))
        && !Files.isDirectory(folder.resolve(SAFETY))) {
      return yaml(folder);
    }
    List<Path> files = new ArrayList<>(yaml(folder.resolve(PROCEDURES)));
    files.addAll(yaml(folder.resolve(SAFETY)));
    return files;
  }

  /** The files of a folder whose names end in {@code .yaml}, in order. */
  private static List<Path> yaml(Path folder) throws IOException {
    return Strays.in(folder, ENDING).files();
  }

  /** A line for what stands in the folders and is not checked: "not read: NAME, why". */
  public static List<String> notRead(List<String> typed, @Nullable Path own) throws IOException {
    List<String> lines = new ArrayList<>();
    for (String one : typed) {
      Path path = path(one);
      if (path != null && Files.isDirectory(path)) {
        boolean whole = Files.isDirectory(path.resolve(PROCEDURES));
        lines.addAll(whole ? new Shelf(path).notRead() : Strays.in(path, ENDING).notRead());
      }
    }
    lines.addAll(typed.isEmpty() ? new Shelf(own).notRead() : List.of());
    return lines;
  }

  private static boolean isYaml(String name) {
    return name.toLowerCase(Locale.ROOT).endsWith(ENDING);
  }

  private static @Nullable Path path(String typed) {
    try {
      return Path.of(typed);
    } catch (InvalidPathException e) {
      return null;
    }
  }
}
