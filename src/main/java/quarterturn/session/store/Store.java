package quarterturn.session.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.Strays;
import quarterturn.session.Instrument;
import quarterturn.session.Names;
import quarterturn.session.Neck;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.JournalLock;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.IndexEntry;
import quarterturn.session.listing.Listing;
import quarterturn.session.listing.Listings;
import quarterturn.session.listing.SessionIndex;
import quarterturn.unit.NotUnderstoodException;

/**
 * The data folder: {@code sessions/NAME.jsonl} and {@code instruments/NAME.yaml}.
 *
 * <p>Names come from the user and are checked ({@link NotUnderstoodException} says what a name may
 * be), so none leads out of the folder. Nothing is made on disk before something is written.
 */
public final class Store {
  private static final String INSTRUMENT = ".yaml";
  private static final int DRAWS = 100;

  private final Path folder;
  private final SessionIndex index;

  private Store(Path folder) {
    this.folder = folder;
    this.index = new SessionIndex(folder.resolve("sessions"));
  }

  public static Store at(Path folder) {
    return new Store(folder);
  }

  /** The instruments, by name, and a line for everything beside them: "not read: NAME, why". */
  public record InstrumentList(List<Instrument> instruments, List<String> notices) {}

  /** Every session, and what stands beside them that is none. */
  public Listing listing() throws IOException {
    return Listings.of(index.entries());
  }

  /** Every session, the newest first. */
  public List<Glance> sessions() throws IOException {
    return listing().sessions();
  }

  /** All that is on record of an instrument. */
  public InstrumentPast past(String instrument, Limits limits, Clock clock) throws IOException {
    List<IndexEntry> entries = index.entries();
    Path sessions = folder.resolve("sessions");
    Neck neck =
        Records.in(sessions, entries, instrument, false, limits, clock, null).necks().stream()
            .filter(one -> instrument.equals(one.instrument()))
            .findFirst()
            .orElse(Neck.UNKNOWN);
    return InstrumentPast.of(instrument, neck, index, entries);
  }

  /** Makes the journal of a new session, with its header on disk, under a new name. */
  public Created create(
      String procedure, int revision, String digest, LocalDate day, RandomGenerator random)
      throws IOException {
    Folders.make(folder.resolve("sessions"));
    for (int draw = 0; draw < DRAWS; draw++) {
      String name = Names.session(day, procedure, random);
      try {
        Journal.Header header = new Journal.Header(name, procedure, revision, digest);
        return new Created(name, Journal.create(sessionFile(name), header));
      } catch (FileAlreadyExistsException | Journal.InUse e) {
        // The name is taken; draw another.
      }
    }
    throw new IOException("found no free name for a session on " + day + "; try again");
  }

  /** The name of a new session and its open journal. */
  public record Created(String name, Journal journal) {}

  /** Opens a session's journal to append to it; see {@link Journal#open}. */
  public Journal open(String session) throws IOException {
    return Journal.open(existing(session));
  }

  /** Reads a session's journal; see {@link Journal#read}. */
  public Journal.Contents read(String session) throws IOException {
    return Journal.read(existing(session));
  }

  private Path existing(String session) throws IOException {
    Path file = sessionFile(session);
    if (!Files.isRegularFile(file)) {
      List<String> known = new ArrayList<>();
      for (Path one : files("sessions", LogFormat.ENDING)) {
        known.add(stem(one, LogFormat.ENDING));
      }
      throw new IOException(
          "there is no session "
              + Names.check("a session", session)
              + Quote.asking(session, known));
    }
    return file;
  }

  private Path sessionFile(String session) {
    return folder.resolve("sessions").resolve(Names.check("a session", session) + LogFormat.ENDING);
  }

  /** Every instrument that is kept. */
  public InstrumentList instruments() throws IOException {
    List<Instrument> good = new ArrayList<>();
    Strays found = Strays.in(folder.resolve("instruments"), INSTRUMENT);
    List<String> notices = new ArrayList<>(found.notRead());
    for (Path file : found.files()) {
      try {
        good.add(InstrumentFile.read(file));
      } catch (InstrumentFile.Misread e) {
        notices.add(e.line());
      } catch (IOException e) {
        notices.add(Strays.line(String.valueOf(file.getFileName()), "it can't be read"));
      }
    }
    good.sort(Comparator.comparing(Instrument::name));
    notices.sort(Comparator.naturalOrder());
    return new InstrumentList(good, notices);
  }

  /** The tickets of the instruments that have one, by their names. */
  public Map<String, String> tickets() throws IOException {
    Map<String, String> tickets = new HashMap<>();
    for (Path file : files("instruments", INSTRUMENT)) {
      try {
        String ticket = head(file).ticketed() ? InstrumentFile.read(file).job().ticket() : null;
        if (ticket != null) {
          tickets.put(stem(file, INSTRUMENT), ticket);
        }
      } catch (IOException e) {
        // What is wrong with it is said where instruments are listed.
      }
    }
    return tickets;
  }

  /**
   * Reads an instrument from a file in any place.
   *
   * @throws IOException naming the file and what is wrong with it
   */
  public static Instrument instrumentIn(Path file) throws IOException {
    return InstrumentFile.read(file);
  }

  private static InstrumentHead head(Path file) {
    return InstrumentHead.of(file, stem(file, INSTRUMENT));
  }

  /** The names of the instruments, those included whose file is damaged, but no copies. */
  public Set<String> instrumentNames() throws IOException {
    return Strays.in(folder.resolve("instruments"), INSTRUMENT).files().stream()
        .filter(file -> head(file).named())
        .map(f -> stem(f, INSTRUMENT))
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The instrument with a name. */
  public Instrument instrument(String name) throws IOException {
    Path file = instrumentFile(name);
    if (Files.exists(file, LinkOption.NOFOLLOW_LINKS) && Strays.why(file) != null) {
      throw new IOException(
          file.getFileName() + " can't be read: " + Strays.why(file) + "; mend it or move it away");
    }
    if (!Files.isRegularFile(file)) {
      throw new IOException(
          "there is no instrument "
              + Names.check("an instrument", name)
              + Quote.asking(name, instrumentNames())
              + "; add it first");
    }
    return InstrumentFile.read(file);
  }

  /** Adds an instrument; refuses a name that is taken. */
  public void add(Instrument instrument) throws IOException {
    Folders.make(folder.resolve("instruments"));
    try {
      InstrumentFile.write(instrumentFile(instrument.name()), instrument);
    } catch (FileAlreadyExistsException e) {
      throw taken(instrument.name(), e);
    }
  }

  /**
   * Checks a name for a new instrument.
   *
   * @throws NotUnderstoodException where the name is not allowed
   * @throws IOException where it is taken
   */
  public void checkFree(String name) throws IOException {
    if (Files.exists(instrumentFile(name), LinkOption.NOFOLLOW_LINKS)) {
      throw taken(Names.check("an instrument", name), null);
    }
  }

  private static IOException taken(String name, @Nullable Exception cause) {
    return new IOException(
        "there is an instrument " + name + " already; choose another name", cause);
  }

  /**
   * Replaces the instrument with the same name.
   *
   * @throws IOException where there is none with that name
   */
  public void replace(Instrument instrument) throws IOException {
    instrument(instrument.name());
    InstrumentFile.replace(instrumentFile(instrument.name()), instrument);
  }

  private Path instrumentFile(String name) {
    return folder.resolve("instruments").resolve(Names.check("an instrument", name) + INSTRUMENT);
  }

  /**
   * What the sessions' files say that bears on an instrument, copies and files that can't be read
   * included.
   *
   * @param instrument its name, or null for one without, on which all of them bear
   * @param each whether each of the instrument's own sessions is to be read, as for one that goes
   *     on beside others
   * @param before what they said before, or null where they were not read yet
   */
  Records records(
      @Nullable String instrument,
      boolean each,
      Limits limits,
      Clock clock,
      @Nullable Records before)
      throws IOException {
    Path sessions = folder.resolve("sessions");
    return Records.in(sessions, index.entries(), instrument, each, limits, clock, before);
  }

  /** All sessions on record, as far as they can be read, by their necks. */
  public List<Neck> necks(Limits limits) throws IOException {
    return records(null, true, limits, Clock.systemUTC(), null).necks();
  }

  /**
   * Reserves an instrument for one session until it is closed. Two sessions open at once on one
   * neck would not know of each other's turns; any two without a name may be on one.
   *
   * @param instrument its name, or null for one without
   * @throws IOException where another session has it open
   */
  public Closeable hold(@Nullable String instrument) throws IOException {
    Folders.make(folder.resolve(instrument == null ? "sessions" : "instruments"));
    Path file =
        instrument == null ? folder.resolve("sessions/unnamed") : instrumentFile(instrument);
    try {
      return JournalLock.take(file);
    } catch (Journal.InUse e) {
      throw new IOException(
          instrument == null
              ? "a session on an instrument without a name is open in another window; close it"
                  + " there first, or name this instrument with --instrument NAME"
              : "a session on " + instrument + " is open in another window; close it there first",
          e);
    }
  }

  private List<Path> files(String part, String ending) throws IOException {
    Path in = folder.resolve(part);
    if (!Files.isDirectory(in)) {
      return List.of();
    }
    try (Stream<Path> all = Files.list(in)) {
      return all.filter(f -> !stem(f, ending).isEmpty()).filter(Files::isRegularFile).toList();
    }
  }

  /** A file's name without its ending; empty where it has another ending, or is hidden. */
  private static String stem(Path file, String ending) {
    String name = String.valueOf(file.getFileName());
    return name.startsWith(".") || !name.endsWith(ending)
        ? ""
        : name.substring(0, name.length() - ending.length());
  }
}
