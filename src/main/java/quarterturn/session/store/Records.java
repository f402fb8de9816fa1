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
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Neck;
import quarterturn.session.SessionRecord;
import quarterturn.session.engine.EngineQuestions;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Printable;

/**
 * What a folder's session files say, copies left beside them included.
 *
 * @param necks the sessions that can be read, as far as they can, by their necks
 * @param unread the files that can't be read, or not to their end
 * @param stamps the names, lengths and times of the files as they were read
 */
record Records(List<Neck> necks, List<Unread> unread, List<String> stamps) {
  private static final int DATE = "2027-03-01".length();

  Records {
    necks = List.copyOf(necks);
    unread = List.copyOf(unread);
    stamps = List.copyOf(stamps);
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
   * Reads every file, or none where they are as they were.
   *
   * @param folder the folder of the sessions
   * @param before what was read before, or null
   */
  static Records in(Path folder, Limits limits, Clock clock, @Nullable Records before)
      throws IOException {
    List<Path> files = List.of();
    if (Files.isDirectory(folder)) {
      try (Stream<Path> all = Files.list(folder)) {
        files = all.filter(file -> !file.toString().endsWith(".lock")).sorted().toList();
      }
    }
    List<String> stamps = files.stream().map(Records::stamp).toList();
    if (before != null && before.stamps().equals(stamps)) {
      return before;
    }
    List<SessionRecord> records = new ArrayList<>();
    List<Unread> unread = new ArrayList<>();
    for (Path file : files) {
      read(file, limits, clock, records, unread);
    }
    return new Records(Neck.of(records), unread, stamps);
  }

  private static String stamp(Path file) {
    try {
      return file.getFileName() + " " + Files.size(file) + " " + Files.getLastModifiedTime(file);
    } catch (IOException e) {
      return file.getFileName() + " can't be read";
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
