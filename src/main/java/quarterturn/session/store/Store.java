package quarterturn.session.store;

import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
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
import quarterturn.procedure.Limits;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.Strays;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Names;
import quarterturn.session.Neck;
import quarterturn.session.journal.Folders;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.JournalLock;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

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

  /**
   * A session's data for listings. The texts are unchecked: show them through {@link Printable}.
   *
   * @param kind id of the kind named at the start; null also where it was chosen later
   * @param last when its last event happened
   * @param ended how it ended, or null
   * @param standing the state the instrument was left in, when the session was left or discarded;
   *     null where it was broken off since
   * @param waitingUntil when its present wait ends, or null
   * @param notice a sentence on what is wrong with the file, or null
   * @param damaged whether the session can't be resumed
   * @param turned when the rod last moved, or null
   * @param relief when the relief was last read, or null
   * @param discarded when it was discarded, or null
   * @param half the turn that was asked for and has no answer yet, or null
   * @param unread whether the rod was turned and the relief not read since
   * @param by who worked last, or null where that is not said
   * @param rod what was done to the rod in it
   */
  public record Glance(
      String name,
      @Nullable String procedure,
      @Nullable String instrument,
      @Nullable String kind,
      @Nullable Instant started,
      @Nullable Instant last,
      Event.@Nullable Ended ended,
      @Nullable String standing,
      @Nullable Instant waitingUntil,
      @Nullable String notice,
      boolean damaged,
      @Nullable Instant turned,
      @Nullable Instant relief,
      @Nullable Instant discarded,
      @Nullable Turn half,
      boolean unread,
      @Nullable String by,
      Rod rod) {
    /**
     * What a session did to the rod.
     *
     * @param moves how often it was turned
     * @param net where that left it; plus is tighter
     * @param sure whether it is known how far
     */
    public record Rod(int moves, Turn net, boolean sure) {
      public static final Rod NOT_TURNED = new Rod(0, Turn.NONE, true);
    }

    /** One without a half-made turn, whose relief was read since the last, by nobody named. */
    public Glance(
        String name,
        @Nullable String procedure,
        @Nullable String instrument,
        @Nullable String kind,
        @Nullable Instant started,
        @Nullable Instant last,
        Event.@Nullable Ended ended,
        @Nullable String standing,
        @Nullable Instant waitingUntil,
        @Nullable String notice,
        boolean damaged,
        @Nullable Instant turned,
        @Nullable Instant relief,
        @Nullable Instant discarded) {
      this(
          name,
          procedure,
          instrument,
          kind,
          started,
          last,
          ended,
          standing,
          waitingUntil,
          notice,
          damaged,
          turned,
          relief,
          discarded,
          null,
          false,
          null,
          Rod.NOT_TURNED);
    }

    /**
     * Whether the session can be resumed. One that was broken off before its start was recorded has
     * nothing to resume.
     */
    public boolean unfinished() {
      return started != null && ended == null && discarded == null && !damaged;
    }

    /** The same under another name. */
    Glance named(String other) {
      return other.equals(name)
          ? this
          : new Glance(
              other,
              procedure,
              instrument,
              kind,
              started,
              last,
              ended,
              standing,
              waitingUntil,
              notice,
              damaged,
              turned,
              relief,
              discarded,
              half,
              unread,
              by,
              rod);
    }

    /** When the session ended or was discarded, or null. */
    @Nullable Instant over() {
      return ended == null ? discarded : ended.at();
    }

    /** The name of the session's instrument, or of its kind where the instrument has none. */
    public String on() {
      String named = instrument != null ? instrument : kind;
      return named != null ? named : "an instrument without a name";
    }
  }

  /** The instruments, by name, and a line for everything beside them: "not read: NAME, why". */
  public record InstrumentList(List<Instrument> instruments, List<String> notices) {}

  /**
   * What stands in the folder of the sessions.
   *
   * @param sessions the newest first
   * @param notRead a line for everything that is no session: "not read: NAME, why"
   */
  public record Listing(List<Glance> sessions, List<String> notRead) {
    public Listing {
      sessions = List.copyOf(sessions);
      notRead = List.copyOf(notRead);
    }
  }

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
    return InstrumentPast.of(instrument, neck, index.readings(instrument, entries), entries);
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
        String ticket = ticketed(file) ? InstrumentFile.read(file).job().ticket() : null;
        if (ticket != null) {
          tickets.put(stem(file, INSTRUMENT), ticket);
        }
      } catch (IOException e) {
        // What is wrong with it is said where instruments are listed.
      }
    }
    return tickets;
  }

  /** Whether a file may have a ticket in it, which is found without reading it as YAML. */
  private static boolean ticketed(Path file) throws IOException {
    return new String(Files.readAllBytes(file), StandardCharsets.ISO_8859_1)
        .contains(FormField.TICKET.word());
  }

  /**
   * Reads an instrument from a file in any place.
   *
   * @throws IOException naming the file and what is wrong with it
   */
  public static Instrument instrumentIn(Path file) throws IOException {
    return InstrumentFile.read(file);
  }

  /** The names of the instruments, those included whose file is damaged, but no copies. */
  public Set<String> instrumentNames() throws IOException {
    return Strays.in(folder.resolve("instruments"), INSTRUMENT).files().stream()
        .filter(InstrumentFile::names)
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
