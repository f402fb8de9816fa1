package quarterturn.procedure.check;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Library;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.check.rule.Proof;
import quarterturn.procedure.check.walk.Calls;
import quarterturn.procedure.check.walk.Walks;
import quarterturn.procedure.read.Loaded;
import quarterturn.procedure.read.Shelf;

/** Checks procedures against all the rules. */
public final class Checker {
  private Checker() {}

  /**
   * Checks one procedure, and reads those it calls.
   *
   * @param procedure its id, or the path of a file ending in {@code .yaml}
   * @param walks the walks made before, to which more are added
   * @throws IOException when there is no such file, or it cannot be read
   */
  public static Report check(Shelf shelf, String procedure, Walks walks) throws IOException {
    try {
      Loaded loaded = shelf.open(procedure);
      return new Report(check(loaded, List.of(loaded.library().main().id()), walks), true);
    } catch (UnreadableException e) {
      boolean readable = e.faults().stream().noneMatch(f -> f.rule().equals(Slip.NOT_YAML.word()));
      return new Report(e.faults(), readable);
    }
  }

  /**
   * Reads a procedure that is to be run, and those it calls.
   *
   * @throws UnreadableException with all that is wrong with it, or with one it calls; those that
   *     came with the program were proven when it was built
   */
  public static Library proven(Shelf shelf, String procedure)
      throws IOException, UnreadableException {
    Loaded loaded = shelf.ready(procedure);
    List<Fault> findings = check(loaded, loaded.own(), new Walks());
    if (!findings.isEmpty()) {
      throw new UnreadableException(findings);
    }
    return loaded.library();
  }

  /** The faults of some procedures of a library that was read. */
  public static List<Fault> check(Loaded loaded, Collection<String> procedures, Walks walks) {
    List<Fault> all = new ArrayList<>();
    Library library = loaded.library();
    Calls calls = new Calls(library, walks);
    for (String id : procedures) {
      Procedure procedure = library.procedure(id);
      Proof proof =
          new Proof(library, procedure, calls.paths(procedure), loaded.own().contains(id));
      List<Fault> broken =
          Rules.of(loaded.tightened().contains(id))
              // No rule changes what another one reads.
              .parallel()
              .flatMap(rule -> rule.broken(loaded, proof).stream())
              .sorted(Fault.BY_PLACE)
              .toList();
      all.addAll(Causes.first(procedure, broken));
    }
    return all;
  }
}
