package quarterturn.procedure.read;

import java.io.FileNotFoundException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Library;
import quarterturn.procedure.Outline;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.form.FullText;
import quarterturn.procedure.read.form.SharedFiles;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.procedure.read.yaml.Source;
import quarterturn.procedure.read.yaml.TreeFile;

/**
 * Where procedures, kinds, hazards and limits are found: first in a folder of the user's own, then
 * among those that come with the program.
 */
public final class Shelf {
  /** Names of the files beside the procedures that hold no procedure. */
  private static final Set<String> RESERVED = Set.of("kinds", "results");

  private static final String YAML = ".yaml";

  private final @Nullable Path own;
  private final Map<String, Kept> kept = new HashMap<>();

  /** What was read of each file, kept where files are taken not to change; else null. */
  private final @Nullable Map<String, Drafted<?>> drafts;

  /** A file as it was last read, kept since many procedures need the same ones. */
  private record Kept(byte[] bytes, Source source) {}

  /**
   * @param own the user's folder, with {@code procedures} and {@code safety} in it, or null
   */
  public Shelf(@Nullable Path own) {
    this(own, null);
  }

  private Shelf(@Nullable Path own, @Nullable Map<String, Drafted<?>> drafts) {
    this.own = own;
    this.drafts = drafts;
  }

  /** A shelf whose files are taken not to change, so that each is read once for all procedures. */
  public static Shelf steady(@Nullable Path own) {
    return new Shelf(own, new HashMap<>());
  }

  /** What was read of a file, and the faults of it. */
  record Drafted<T>(T read, Faults faults) {}

  /** What was read of a file without a fault before, or null. */
  @Nullable Drafted<?> drafted(Found found) {
    Drafted<?> before = drafts == null ? null : drafts.get(found.name());
    return before == null || !before.faults().sorted().isEmpty() ? null : before;
  }

  void keep(Found found, Drafted<?> drafted) {
    if (drafts != null) {
      drafts.put(found.name(), drafted);
    }
  }

  /**
   * A file as found.
   *
   * @param name for faults
   * @param bytes what is in it
   * @param own whether it is in the user's folder
   * @param tree its tree as kept beside one that comes with the program, or null
   */
  record Found(String name, byte[] bytes, boolean own, byte @Nullable [] tree) {
    Found(String name, byte[] bytes) {
      this(name, bytes, true, null);
    }
  }

  /**
   * Reads a procedure, those it calls, and all they need.
   *
   * @param procedure its id, or the path of a file ending in {@code .yaml}
   * @throws UnreadableException with every fault of all the files
   * @throws FileNotFoundException when there is no such procedure; its message says so
   * @throws IOException when a file cannot be read
   */
  public Library load(String procedure) throws UnreadableException, IOException {
    return ready(procedure).library();
  }

  /** The kinds, results, hazards and limits, without any procedure. */
  public Library rules() throws UnreadableException, IOException {
    return new Loading(this).load(null, null).library();
  }

  /** The limits and results; where there are files of the user's own, all of them are read. */
  public Outline outline() throws UnreadableException, IOException {
    if (own == null) {
      return ProgramRules.outline();
    }
    Library rules = rules();
    return new Outline(rules.limits(), rules.results());
  }

  /** The rules that come with the program. */
  public static Library program() throws UnreadableException, IOException {
    return new Shelf(null).rules();
  }

  /** Whether nothing of a user's own is here. */
  boolean ofProgram() {
    return own == null;
  }

  /** The library that a procedure needs, with the text of the files. */
  public Loaded open(String procedure) throws UnreadableException, IOException {
    return loaded(new Loading(this), procedure);
  }

  /** As {@link #open}, sooner: without the texts for those procedures that need no proof. */
  public Loaded ready(String procedure) throws UnreadableException, IOException {
    return loaded(new Loading(this, own != null || drafts != null), procedure);
  }

  private Loaded loaded(Loading loading, String procedure) throws UnreadableException, IOException {
    return isPath(procedure)
        ? loading.load(file(procedure), null)
        : loading.load(named(procedure), procedure);
  }

  private static boolean isPath(String procedure) {
    return procedure.toLowerCase(Locale.ROOT).endsWith(".yaml");
  }

  /**
   * A procedure's file with every short form replaced by the steps that it stands for, as YAML.
   *
   * @param procedure its id, or the path of a file ending in {@code .yaml}
   */
  public String full(String procedure) throws UnreadableException, IOException {
    return FullText.of(full(isPath(procedure) ? file(procedure) : named(procedure)));
  }

  private Node full(Found procedure) throws UnreadableException, IOException {
    Faults faults = new Faults(source(procedure));
    SharedFiles shared = new ShelfFiles(this, faults, rules().hazards().values());
    Node full = ProcedureReader.full(faults, shared);
    faults.check();
    return full;
  }

  /** What is kept of a procedure that comes with the program. */
  byte[] writtenOut(String id) throws UnreadableException, IOException {
    Found found = named(id);
    return new WrittenOut(full(found), ProcedureReader.digest(found.bytes())).bytes(found.bytes());
  }

  /** What was kept of a procedure when the program was built, or null. */
  @Nullable WrittenOut writtenOut(Found found) throws IOException {
    byte[] kept =
        found.own() ? null : shipped("procedures/" + WrittenOut.name(stem(Path.of(found.name()))));
    return kept == null ? null : WrittenOut.read(found.name(), found.bytes(), kept);
  }

  /**
   * Ids of every procedure there is: those in the user's folder first, then those that come with
   * the program and do not stand in it, each in order.
   */
  public List<String> procedures() throws IOException {
    Set<String> ids = new LinkedHashSet<>(own());
    ids.addAll(Shipped.names("procedures", "kinds"));
    return ids.stream().filter(Shelf::canName).toList();
  }

  /** Names of the procedures' files in the user's folder, without their ending, in order. */
  public List<String> own() throws IOException {
    return found().files().stream().map(Shelf::stem).filter(Shelf::canName).sorted().toList();
  }

  /** A line for what stands between the procedures in the user's folder: "not read: NAME, why". */
  public List<String> notRead() throws IOException {
    List<String> lines = new ArrayList<>(found().notRead());
    for (Path file : found().files()) {
      String name = String.valueOf(file.getFileName());
      if (!canName(stem(file)) && !RESERVED.contains(stem(file))) {
        lines.add(Strays.line(name, "a procedure's name has small letters, digits and dashes"));
      }
    }
    return lines.stream().sorted().toList();
  }

  private Strays found() throws IOException {
    return own == null
        ? new Strays(List.of(), List.of())
        : Strays.in(
            own.resolve("procedures"),
            YAML,
            file -> file.endsWith("blocks") && Files.isDirectory(file),
            "its name does not end in " + YAML);
  }

  /** The id of a procedure, by the name of its file. */
  private static String stem(Path file) {
    String name = String.valueOf(file.getFileName());
    return name.substring(0, name.length() - YAML.length());
  }

  /** Whether a procedure's file may have this name. */
  public static boolean mayHold(Path file) {
    return canName(stem(file));
  }

  /** Whether a procedure stands here under this name. */
  public boolean has(String id) throws IOException {
    return procedure(id) != null;
  }

  /**
   * Whether a file is, by its name, one that procedures are held to: kinds, results, hazards or
   * limits.
   */
  public static boolean isRules(Path file) {
    return Loading.RULES.contains(String.valueOf(file.getFileName()));
  }

  /**
   * The faults of a file of kinds, results, hazards or limits.
   *
   * @param file its path; its name says which it is
   * @throws IOException when there is no such file, or it cannot be read
   */
  public List<Fault> faults(String file) throws IOException {
    return new Loading(this).faults(file(file), String.valueOf(Path.of(file).getFileName()));
  }

  private static Found file(String name) throws IOException {
    try {
      Path path = Path.of(name);
      if (OwnFile.stands(path)) {
        return new Found(name, bytes(Files.newInputStream(path)));
      }
    } catch (InvalidPathException e) {
      throw new FileNotFoundException(Quote.of(name) + " is no path of a file");
    }
    throw new FileNotFoundException("there is no file " + Quote.of(name));
  }

  private Found named(String id) throws IOException {
    Found found = procedure(id);
    if (found == null) {
      throw new FileNotFoundException(
          noProcedure(id)
              + where()
              + Quote.asking(id, procedures())
              + "; check its name, or give the path of a .yaml file");
    }
    return found;
  }

  /** The message that there is no such procedure. */
  static String noProcedure(String id) {
    return "there is no procedure " + Quote.of(id);
  }

  /** A sentence on where procedures were looked for. */
  String lookedFor() {
    return "Check its name. It was looked for" + where();
  }

  private String where() {
    String shipped = " among those that come with the program";
    return own == null ? shipped : " in " + own.resolve("procedures") + " and" + shipped;
  }

  /** The text of a file; the same object as before while its bytes are the same. */
  Source source(Found found) throws UnreadableException {
    Kept before = kept.get(found.name());
    if (before != null && Arrays.equals(before.bytes(), found.bytes())) {
      return before.source();
    }
    Source source =
        found.tree() == null
            ? Source.of(found.name(), found.bytes())
            : Source.of(found.name(), found.bytes(), found.tree());
    kept.put(found.name(), new Kept(found.bytes(), source));
    return source;
  }

  /** A procedure's file, or null where there is none. */
  @Nullable Found procedure(String id) throws IOException {
    return canName(id) ? find("procedures", id) : null;
  }

  private static boolean canName(String id) {
    return Scalars.isId(id) && !RESERVED.contains(id);
  }

  /**
   * A file that must be there.
   *
   * @throws FileNotFoundException when it is not
   */
  Found needed(String folder, String name) throws IOException {
    Found found = find(folder, name);
    if (found == null) {
      throw new FileNotFoundException("the file " + folder + "/" + name + ".yaml is missing");
    }
    return found;
  }

  /**
   * A file of one of the folders, or null where there is none.
   *
   * @throws IOException when something stands there in the user's folder that cannot be read
   */
  @Nullable Found find(String folder, String name) throws IOException {
    String file = name + ".yaml";
    String place = folder + "/" + file;
    if (own != null && OwnFile.stands(own, Path.of(place))) {
      Path path = own.resolve(place);
      return new Found(path.toString(), bytes(Files.newInputStream(path)));
    }
    byte[] bytes = shipped(place);
    return bytes == null ? null : new Found(place, bytes, false, shipped(TreeFile.name(place)));
  }

  /** The bytes of a file that comes with the program, or null. */
  private static byte @Nullable [] shipped(String place) throws IOException {
    InputStream in = Shelf.class.getResourceAsStream("/" + place);
    return in == null ? null : bytes(in);
  }

  /** The bytes of a file, up to one more than the largest size that is read. */
  private static byte[] bytes(InputStream in) throws IOException {
    try (in) {
      return in.readNBytes(Source.MOST_BYTES + 1);
    }
  }
}
