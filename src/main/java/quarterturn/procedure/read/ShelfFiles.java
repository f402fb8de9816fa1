package quarterturn.procedure.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf.Found;
import quarterturn.procedure.read.form.Keys;
import quarterturn.procedure.read.form.SharedFiles;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Scalars;

/**
 * What one procedure takes from other files of a shelf. What limits demand comes with the program;
 * a user's own folder may have further blocks and questions.
 */
final class ShelfFiles implements SharedFiles {
  private static final String SAFETY = "safety";
  private static final String BLOCKS = "procedures/blocks";
  private static final Mapping NONE = Mapping.at(new Mark("", 1, 1));

  private final Shelf shelf;
  private final Shelf shipped = new Shelf(null);
  private final Faults faults;
  private final Collection<Hazard> hazards;
  private final Map<Path, Mapping> own = new HashMap<>();
  private final Map<Path, Mapping> ours = new HashMap<>();
  private boolean ownBlocks;

  /**
   * @param faults the faults of the procedure, which get those of the other files
   * @param hazards those that are shown with the steps they go with
   */
  ShelfFiles(Shelf shelf, Faults faults, Collection<Hazard> hazards) {
    this.shelf = shelf;
    this.faults = faults;
    this.hazards = hazards;
  }

  /** Whether a block of the user's own was taken, which nobody has proven yet. */
  boolean ownBlocks() {
    return ownBlocks;
  }

  @Override
  public Collection<Hazard> hazards() {
    return hazards;
  }

  @Override
  public @Nullable Mapping block(String name) {
    if (!Scalars.isId(name)) {
      return null;
    }
    Mapping safety = file(shipped, SAFETY, name);
    return safety.entries().containsKey("block") ? safety : known(file(shelf, BLOCKS, name));
  }

  private static @Nullable Mapping known(Mapping file) {
    return file.entries().isEmpty() ? null : file;
  }

  @Override
  public List<Node> endings() {
    return file(shipped, SAFETY, "endings").items("endings");
  }

  @Override
  public @Nullable Mapping questions(String procedure) {
    Mapping file = file(shelf, "procedures/lesson", procedure);
    if (file.value("lesson") instanceof Node.Scalar id && !id.text().equals(procedure)) {
      faults.add(
          Slip.BAD_ID,
          id.mark(),
          "the questions of " + procedure + " call themselves another's",
          "Write lesson: " + procedure);
    }
    return known(file.mapping(Keys.STEPS));
  }

  @Override
  public boolean questionsOfAnother(String procedure) {
    return own("procedures", procedure) && !own("procedures/lesson", procedure);
  }

  private boolean own(String folder, String name) {
    try {
      Found found = shelf.find(folder, name);
      return found != null && found.own();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Override
  public @Nullable Node limit(String name) {
    Node own = file(shelf, SAFETY, "limits").mapping("limits").value(name);
    return own != null ? own : file(shipped, SAFETY, "limits").mapping("limits").value(name);
  }

  /** The keys of a file; none where there is no such file. */
  private Mapping file(Shelf from, String folder, String name) {
    Map<Path, Mapping> kept = from == shipped ? ours : own;
    return kept.computeIfAbsent(Path.of(folder, name), path -> read(from, folder, name));
  }

  private Mapping read(Shelf from, String folder, String name) {
    try {
      Found found = from.find(folder, name);
      if (found == null) {
        return NONE;
      }
      ownBlocks |= found.own() && folder.equals(BLOCKS);
      Faults own = new Faults(shelf.source(found));
      Node tree = own.tree();
      faults.including(own);
      return tree instanceof Mapping mapping ? mapping : NONE;
    } catch (UnreadableException e) {
      faults.including(e.faults());
      return NONE;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
