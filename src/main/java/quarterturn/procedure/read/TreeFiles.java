package quarterturn.procedure.read;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Source;
import quarterturn.procedure.read.yaml.TreeFile;

/**
 * Puts a tree beside every YAML file in some folders, and beside every procedure what it is written
 * out, when the program is built: it starts sooner where neither has to be worked out.
 */
public final class TreeFiles {
  private TreeFiles() {}

  /**
   * @param folders those that the program finds its own files in, {@code procedures} the first
   */
  public static void main(String[] folders) throws IOException, UnreadableException {
    for (String folder : folders) {
      for (Path file : files(Path.of(folder))) {
        byte[] yaml = Files.readAllBytes(file);
        Faults faults = new Faults(Source.of(file.toString(), yaml));
        byte[] tree = TreeFile.of(faults.tree(), yaml);
        faults.check();
        Files.write(file.resolveSibling(TreeFile.name(String.valueOf(file.getFileName()))), tree);
      }
    }
    Shelf shelf = new Shelf(null);
    for (String id : shelf.procedures()) {
      Files.write(Path.of(folders[0], WrittenOut.name(id)), shelf.writtenOut(id));
    }
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(TreeFile.YAML)).sorted().toList();
    }
  }
}
