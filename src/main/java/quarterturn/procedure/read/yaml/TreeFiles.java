package quarterturn.procedure.read.yaml;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.procedure.UnreadableException;

/**
 * Puts a tree beside every YAML file in some folders, when the program is built: it starts sooner
 * where no parser has to be loaded.
 */
public final class TreeFiles {
  private TreeFiles() {}

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
  }

  private static List<Path> files(Path folder) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(file -> file.toString().endsWith(TreeFile.YAML)).sorted().toList();
    }
  }
}
