package quarterturn.rehearsal.life;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.Checker;
import quarterturn.procedure.read.Shelf;
import quarterturn.unit.Worded;

/**
 * The rule files that a life meets, each read once: the program's own, stricter ones and looser
 * ones of a user's own.
 */
public final class LifeRules {
  private final Map<Own, @Nullable Library> libraries = new EnumMap<>(Own.class);

  /** A user's own limits. */
  enum Own implements Worded {
    NONE,
    SMALLER("per-reading: 1/16 turn", "first-move: 1/16 turn"),
    FEWER("beginner-day: 1/4 turn", "settle: 10 min"),
    FEWER_STOPS("stop-feels: [noise]", "finding-needed: [noise]"),
    LARGER_MOVE("first-move: 1/4 turn"),
    LARGER_DAY("beginner-day: 2 turns"),
    FARTHER("from-as-found: 3 turns"),
    NO_REST("day: 1 h", "rest: 1 h");

    private final List<String> lines;

    Own(String... lines) {
      this.lines = List.of(lines);
    }

    boolean looser() {
      return ordinal() > FEWER_STOPS.ordinal();
    }
  }

  private LifeRules() {}

  /**
   * Reads and proves a procedure under each of the rule files.
   *
   * @param folder where the files are written
   */
  public static LifeRules of(String procedure, Path folder)
      throws IOException, UnreadableException {
    LifeRules rules = new LifeRules();
    for (Own own : Own.values()) {
      Path at = own == Own.NONE ? null : folder.resolve(own.word());
      if (at != null) {
        Files.createDirectories(at.resolve("safety"));
        String text = "limits:\n  " + String.join("\n  ", own.lines) + "\n";
        Files.writeString(at.resolve("safety/limits.yaml"), text);
      }
      rules.libraries.put(own, read(procedure, at));
    }
    return rules;
  }

  private static @Nullable Library read(String procedure, @Nullable Path own)
      throws IOException, UnreadableException {
    try {
      return Checker.proven(new Shelf(own), procedure);
    } catch (UnreadableException e) {
      if (own == null) {
        throw e;
      }
      return null;
    }
  }

  /** The library under rule files, or null where they are refused. */
  @Nullable Library library(Own own) {
    return libraries.get(own);
  }

  /** The library under the program's own rules. */
  Library shipped() {
    Library shipped = libraries.get(Own.NONE);
    if (shipped == null) {
      throw new IllegalStateException("the program's own rules were refused");
    }
    return shipped;
  }
}
