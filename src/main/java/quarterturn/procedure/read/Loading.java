package quarterturn.procedure.read;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Outline;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Results;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.read.Shelf.Found;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.Source;

/** One reading of a library: the files read so far, and the faults of all of them. */
final class Loading {
  /** A procedure that was read, with what is needed to name its faults. */
  private record Read(ProcedureReader.Draft draft, Faults faults, boolean own) {}

  /** Names of the files that procedures are held to. */
  static final Set<String> RULES =
      Set.of("kinds.yaml", "results.yaml", "hazards.yaml", "limits.yaml");

  private final Shelf shelf;
  private final boolean texts;
  private final List<Faults> files = new ArrayList<>();
  private final List<Fault> broken = new ArrayList<>();
  private final Map<String, Read> procedures = new LinkedHashMap<>();
  private final Set<String> tried = new LinkedHashSet<>();
  private Collection<Hazard> shown = List.of();
  private @Nullable List<String> known;
  private boolean ownRules;

  Loading(Shelf shelf) {
    this(shelf, true);
  }

  /**
   * @param texts whether the text of every file is read that a procedure takes something from, for
   *     faults to show
   */
  Loading(Shelf shelf, boolean texts) {
    this.shelf = shelf;
    this.texts = texts;
  }

  /**
   * Reads everything that the procedure {@code first} needs.
   *
   * @param first null where no procedure is asked for, but what they are held to
   * @param expected the id it was asked for by, or null where its file says it
   */
  Loaded load(@Nullable Found first, @Nullable String expected)
      throws UnreadableException, IOException {
    Rules rules = shelf.ofProgram() ? ProgramRules.all() : rules();
    Map<String, Hazard> hazards = rules.hazards();
    Map<String, Kind> kinds = rules.kinds();
    Limits limits = rules.limits();
    Results results = rules.results();
    known = hazards == null ? null : List.copyOf(hazards.keySet());
    shown = hazards == null ? List.of() : hazards.values();
    if (expected != null) {
      tried.add(expected);
    }
    String begin = first == null ? null : procedure(first, expected);
    if (results != null) {
      needed(results);
    }
    if (begin != null) {
      circles(begin, new LinkedHashSet<>(), new LinkedHashSet<>());
    }
    if (results != null) {
      procedures.values().forEach(one -> named(one, results));
    }
    List<Fault> faults = faults();
    if (!faults.isEmpty()) {
      throw new UnreadableException(faults);
    }
    if (hazards == null || limits == null || kinds == null || results == null) {
      throw new IllegalStateException("a file was not read, and has no fault");
    }
    Map<String, Procedure> read = new LinkedHashMap<>();
    Tightened tightened = new Tightened(limits, ownRules ? Shelf.program().limits() : limits);
    procedures.forEach((id, one) -> read.put(id, tightened.of(one.draft().procedure())));
    Map<String, Source> sources = new LinkedHashMap<>();
    Stream.concat(rules.files().stream(), files.stream())
        .forEach(file -> file.sources().forEach(one -> sources.put(one.file(), one)));
    Set<String> own = new LinkedHashSet<>();
    Set<String> shipped = new LinkedHashSet<>();
    procedures.forEach((id, one) -> (one.own() ? own : shipped).add(id));
    if (ownRules) {
      own.addAll(shipped);
    }
    Library library = new Library(read, kinds, hazards, limits, results);
    return new Loaded(library, sources, own, ownRules ? shipped : Set.of());
  }

  /** Reads what procedures are held to. */
  Rules rules() throws IOException {
    Map<String, Hazard> hazards = hazards(shelf.needed("safety", "hazards"));
    List<String> ids = hazards == null ? null : List.copyOf(hazards.keySet());
    Map<String, Kind> kinds = read(shelf.needed("procedures", "kinds"), KindsReader::draft);
    Limits limits = limits(shelf.needed("safety", "limits"), ids);
    Results results = results(shelf.needed("procedures", "results"), limits);
    return new Rules(hazards, kinds, limits, results, List.copyOf(files));
  }

  /** The limits and results that come with the program. */
  Outline outline() throws UnreadableException, IOException {
    Limits limits = limits(shelf.needed("safety", "limits"), null);
    Results results = results(shelf.needed("procedures", "results"), limits);
    if (limits == null || results == null) {
      throw new UnreadableException(faults());
    }
    return new Outline(limits, results);
  }

  /**
   * The faults of one of the files that procedures are held to.
   *
   * @param name one of {@link #RULES}, which says what it is
   */
  List<Fault> faults(Found file, String name) throws IOException {
    Map<String, Kind> kinds = null;
    Map<String, Hazard> own = null;
    switch (name) {
      case "kinds.yaml" -> kinds = read(file, KindsReader::draft);
      case "results.yaml" -> results(file, null);
      case "hazards.yaml" -> own = hazards(file);
      default -> {
        Map<String, Hazard> hazards = hazards(shelf.needed("safety", "hazards"));
        List<String> known = hazards == null ? null : List.copyOf(hazards.keySet());
        limits(file, known);
      }
    }
    List<Fault> faults = faults();
    return faults.isEmpty() ? unlikely(file, kinds, own) : faults;
  }

  /** What can hardly be meant in a file without a fault. */
  private List<Fault> unlikely(
      Found file, @Nullable Map<String, Kind> kinds, @Nullable Map<String, Hazard> hazards)
      throws IOException {
    try {
      Faults told = new Faults(shelf.source(file));
      Library program = Shelf.program();
      if (kinds != null) {
        new Unlikely(told).kinds(kinds, program.kinds().values());
      }
      if (hazards != null) {
        new Unlikely(told).hazards(hazards, program.hazards());
      }
      return told.sorted();
    } catch (UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Reads a file as far as it can be read. */
  private interface Drafting<T> {
    T read(Faults faults) throws UnreadableException;
  }

  private @Nullable Map<String, Hazard> hazards(Found found) throws IOException {
    Faults shipped = behind(found, "safety", "hazards");
    return read(found, faults -> HazardsReader.draft(faults, shipped));
  }

  private @Nullable Limits limits(Found found, @Nullable List<String> hazards) throws IOException {
    Faults shipped = behind(found, "safety", "limits");
    return read(found, faults -> LimitsReader.draft(faults, hazards, shipped));
  }

  private @Nullable Results results(Found found, @Nullable Limits limits) throws IOException {
    Faults shipped = behind(found, "procedures", "results");
    return read(found, faults -> ResultsReader.draft(faults, limits, shipped));
  }

  /**
   * The file that comes with the program, to which a user's own is held and which supplies what
   * that leaves out; null where the file is not a user's.
   */
  private @Nullable Faults behind(Found found, String folder, String name) throws IOException {
    ownRules |= found.own();
    try {
      Shelf program = new Shelf(null);
      return found.own() ? new Faults(shelf.source(program.needed(folder, name))) : null;
    } catch (UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Reads a file; one name always stands for one kind of file. */
  @SuppressWarnings("unchecked")
  private <T> @Nullable T read(Found found, Drafting<T> drafting) throws IOException {
    Shelf.Drafted<T> drafted = (Shelf.Drafted<T>) shelf.drafted(found);
    try {
      if (drafted == null) {
        Faults faults = new Faults(shelf.source(found));
        drafted = new Shelf.Drafted<>(drafting.read(faults), faults);
        shelf.keep(found, drafted);
      }
      files.add(drafted.faults());
      return drafted.read();
    } catch (UnreadableException e) {
      broken.addAll(e.faults());
      return null;
    } catch (UncheckedIOException e) {
      throw e.getCause();
    }
  }

  /**
   * Reads a procedure, and those it calls.
   *
   * @param expected the id it is called by, or null where its file says it
   * @return its id, or null where it could not be read
   */
  private @Nullable String procedure(Found found, @Nullable String expected) throws IOException {
    WrittenOut full = texts ? null : shelf.writtenOut(found);
    Read one =
        read(
            found,
            faults -> {
              if (full != null) {
                return new Read(ProcedureReader.draft(faults, full, known), faults, false);
              }
              ShelfFiles files = new ShelfFiles(shelf, faults, shown);
              ProcedureReader.Draft draft =
                  ProcedureReader.draft(faults, found.bytes(), known, files);
              return new Read(draft, faults, found.own() || files.ownBlocks());
            });
    if (one == null) {
      return null;
    }
    Scalar id = one.draft().id();
    if (expected != null && id != null && !id.text().equals(expected)) {
      one.faults()
          .add(
              Slip.BAD_ID,
              id.mark(),
              "the file of the procedure " + Quote.of(expected) + " calls itself another",
              "Write procedure: " + expected + ", or give the file the name of its procedure");
    }
    String name = expected != null ? expected : one.draft().procedure().id();
    procedures.put(name, one);
    for (Scalar call : one.draft().names().calls()) {
      follow(one, call);
    }
    return name;
  }

  /** Reads the procedures that measure anew the results that others need. */
  private void needed(Results results) throws IOException {
    Deque<Read> open = new ArrayDeque<>(procedures.values());
    while (!open.isEmpty()) {
      Read one = open.pop();
      for (String need : one.draft().procedure().needs()) {
        Results.Result result = results.results().get(need);
        String by = result == null ? null : result.by();
        Found found = by == null ? null : shelf.procedure(by);
        if (by != null && found != null && !procedures.containsKey(by) && tried.add(by)) {
          procedure(found, by);
          Read read = procedures.get(by);
          if (read != null) {
            open.add(read);
          }
        }
      }
    }
  }

  /** Checks that the changes and results a procedure names are known. */
  private static void named(Read one, Results results) {
    Scalars values = new Scalars(one.faults());
    for (Scalar change : one.draft().names().changes()) {
      if (!results.changes().containsKey(change.text())) {
        values.unknown(
            Slip.UNKNOWN_ID, change, "a change", List.copyOf(results.changes().keySet()));
      }
    }
    for (Scalar result : one.draft().names().results()) {
      if (!results.results().containsKey(result.text())) {
        values.unknown(
            Slip.UNKNOWN_ID, result, "a result", List.copyOf(results.results().keySet()));
      }
    }
  }

  private void follow(Read caller, Scalar call) throws IOException {
    String called = call.text();
    Found found = shelf.procedure(called);
    if (found == null && !procedures.containsKey(called)) {
      caller
          .faults()
          .add(Slip.UNKNOWN_ID, call.mark(), Shelf.noProcedure(called), shelf.lookedFor());
    } else if (found != null && !procedures.containsKey(called) && tried.add(called)) {
      procedure(found, called);
    }
  }

  /** Checks that no procedure calls itself, by whatever way round, since it would never end. */
  private void circles(String id, Set<String> above, Set<String> done) {
    Read caller = procedures.get(id);
    if (caller == null || !done.add(id)) {
      return;
    }
    above.add(id);
    for (Scalar call : caller.draft().names().calls()) {
      if (above.contains(call.text())) {
        String way =
            Stream.concat(
                    above.stream().dropWhile(one -> !one.equals(call.text())),
                    Stream.of(call.text()))
                .collect(Collectors.joining(", which calls "));
        caller
            .faults()
            .add(
                Slip.CALL_CIRCLE,
                call.mark(),
                "procedures that call each other never end: " + way,
                "Take one of these calls out");
      } else {
        circles(call.text(), above, done);
      }
    }
    above.remove(id);
  }

  List<Fault> faults() {
    List<Fault> all = new ArrayList<>(broken);
    files.forEach(file -> all.addAll(file.sorted()));
    return all;
  }
}
