package quarterturn.session.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Neck;
import quarterturn.session.SessionRecord;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.listing.IndexEntry;
import quarterturn.unit.Printable;

/**
 * What a folder's session files say that bears on an instrument, copies left beside them included.
 *
 * @param necks the sessions that can be read, as far as they can, by their necks
 * @param unread the files that can't be read, or not to their end
 * @param entries the folder as it stood then
 */
record Records(List<Neck> necks, List<Unread> unread, List<IndexEntry> entries) {
  private static final int DATE = "2027-03-01".length();

  Records {
    necks = List.copyOf(necks);
    unread = List.copyOf(unread);
    entries = List.copyOf(entries);
  }

  /**
   * A session's file of which something is lost.
   *
   * @param file its name
   * @param owner the readable part, or null where it does not say whose it is
   * @param at the latest time at which anything lost may have been written
   * @param why what is wrong with it, in a sentence
   */
  record Unread(String file, @Nullable SessionRecord owner, Instant at, String why) {}

  /**
   * Reads the files that bear on an instrument, or none where all are as they were.
   *
   * @param folder the folder of the sessions
   * @param entries what stands in it
   * @param instrument its name, or null for one without, on which every file bears
   * @param each whether each of its own sessions is to be read
   * @param before what was read before, or null
   */
  static Records in(
      Path folder,
      List<IndexEntry> entries,
      @Nullable String instrument,
      boolean each,
      Limits limits,
      Clock clock,
      @Nullable Records before)
      throws IOException {
    if (before != null && before.entries().equals(entries)) {
      return before;
    }
    Bearing bearing = new Bearing(entries, instrument, clock.instant().minus(limits.day()));
    Reading reading =
        new Reading(
            folder, limits, clock, new ArrayList<>(), new ArrayList<>(), new LinkedHashMap<>());
    bearing.others().forEach(reading::read);
    Neck.Older older = each || bearing.all() ? null : reading.newest(bearing);
    if (older == null) {
      bearing.own().forEach(reading::read);
    }
    List<Neck> necks = new ArrayList<>(Neck.of(reading.records()));
    if (older != null && instrument != null) {
      necks.replaceAll(neck -> instrument.equals(neck.instrument()) ? neck.after(older) : neck);
    }
    return new Records(necks, reading.unread(), entries);
  }

  /**
   * Reads files one after the other, each once.
   *
   * @param done the files that were read, with what they say where they say something
   */
  private record Reading(
      Path folder,
      Limits limits,
      Clock clock,
      List<SessionRecord> records,
      List<Unread> unread,
      Map<IndexEntry, Optional<SessionRecord>> done) {

    void read(IndexEntry entry) {
      if (!done.containsKey(entry)) {
        int before = records.size();
        Records.read(folder.resolve(entry.file()), limits, clock, records, unread);
        done.put(entry, records.stream().skip(before).findFirst());
      }
    }

    /**
     * Reads an instrument's last sessions; tells of the older ones where they need not be read.
     * Where a stop holds every session may have to be told of.
     */
    Neck.@Nullable Older newest(Bearing bearing) {
      bearing.recent().forEach(this::read);
      Map<IndexEntry, SessionRecord> read = new HashMap<>();
      done.forEach((entry, one) -> one.ifPresent(record -> read.put(entry, record)));
      SessionRecord newest = read.get(bearing.newest());
      boolean stopped =
          records.stream().anyMatch(one -> bearing.own(one.instrument()) && !one.stops().isEmpty());
      return newest == null || stopped || !unread.isEmpty()
          ? null
          : bearing.older(newest.started(), read);
    }
  }

  private static void read(
      Path file, Limits limits, Clock clock, List<SessionRecord> records, List<Unread> unread) {
    String name = Printable.of(String.valueOf(file.getFileName()));
    boolean named = name.endsWith(LogFormat.ENDING) && !name.startsWith(".");
    if (!named && !Files.isRegularFile(file)) {
      return;
    }
    Journal.Contents contents;
    try {
      if (Files.exists(file) && !Files.isRegularFile(file)) {
        throw new IOException(name + " is no file");
      }
      contents = Journal.read(file);
    } catch (IOException e) {
      if (named) {
        unread.add(new Unread(name, null, at(file, name, null, clock), "It can't be read."));
      }
      return;
    }
    Journal.Header header = contents.header();
    if (header == null && !named) {
      return; // no copy of a session either
    }
    SessionRecord record =
        header == null
            ? null
            : SessionRecord.of(header.session(), contents.events(), limits, EngineQuestions.KIND);
    if (record != null) {
      records.add(record);
    }
    if (contents.notice() != null) {
      String why = Printable.of(contents.notice());
      unread.add(new Unread(name, record, at(file, name, record, clock), why));
    }
  }

  /**
   * The latest of a file's own time, the day in its name and its last readable event; now where the
   * file has no time. It may lie after now, where the clock was set back.
   */
  private static Instant at(Path file, String name, @Nullable SessionRecord record, Clock clock) {
    Instant at = record == null ? Instant.MIN : record.last();
    try {
      at = later(at, Files.getLastModifiedTime(file, LinkOption.NOFOLLOW_LINKS).toInstant());
    } catch (IOException e) {
      at = later(at, clock.instant());
    }
    try {
      LocalDate day = LocalDate.parse(name.substring(0, Math.min(DATE, name.length())));
      return later(at, day.atStartOfDay(clock.getZone()).toInstant());
    } catch (DateTimeParseException e) {
      return at; // the name tells no day
    }
  }

  private static Instant later(Instant one, Instant other) {
    return one.isAfter(other) ? one : other;
  }
}
