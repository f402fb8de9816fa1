package quarterturn.procedure.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf.Found;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.form.SharedFiles;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.TreeReader;

/**
 * What one procedure takes from other files of a shelf. What limits demand comes with the program;
 * a user's own folder may have further blocks and questions.
 *
 * @param faults the faults of the procedure, which get those of the other files
 */
record ShelfFiles(Shelf shelf, Faults faults) implements SharedFiles {
  private static final String SAFETY = "safety";

  @Override
  public @Nullable Mapping block(String name) {
    if (!Scalars.isId(name)) {
      return null;
    }
    Mapping safety = file(new Shelf(null), SAFETY, name);
    boolean block = safety != null && safety.entries().containsKey("block");
    return block ? safety : file(shelf, "procedures/blocks", name);
  }

  @Override
  public List<Node> endings() {
    Mapping file = file(new Shelf(null), SAFETY, "endings");
    return file != null && file.value("endings") instanceof Node.Sequence all
        ? all.items()
        : List.of();
  }

  @Override
  public @Nullable Mapping questions(String procedure) {
    Mapping file = file(shelf, "procedures/lesson", procedure);
    return file != null && file.value(Keys.STEPS) instanceof Mapping steps ? steps : null;
  }

  @Override
  public @Nullable Node limit(String name) {
    for (Shelf from : List.of(shelf, new Shelf(null))) {
      Mapping file = file(from, SAFETY, "limits");
      if (file != null && file.value("limits") instanceof Mapping limits) {
        Node limit = limits.value(name);
        if (limit != null) {
          return limit;
        }
      }
    }
    return null;
  }

  private @Nullable Mapping file(Shelf from, String folder, String name) {
    try {
      Found found = from.find(folder, name);
      if (found == null) {
        return null;
      }
      Faults own = new Faults(shelf.source(found));
      Node tree = TreeReader.read(own);
      faults.including(own);
      return tree instanceof Mapping mapping ? mapping : null;
    } catch (UnreadableException e) {
      faults.including(e.faults());
      return null;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
