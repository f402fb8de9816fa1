package quarterturn.session.store;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.session.Lists;
import quarterturn.session.Neck;
import quarterturn.session.SessionRecord;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Glances;
import quarterturn.session.listing.IndexEntry;
import quarterturn.unit.Turn;

/**
 * Which session files bear on a session of one instrument, so that not all have to be read.
 *
 * <p>Of the instrument's own sessions that is the newest: its start, as its file tells it, says
 * what all older ones come to. That is taken only where these stand as it found them; a record that
 * came, went or grew since shows by its {@link #mark}. Else, and where a record is damaged or
 * speaks of another, every one of them is read. Of sessions without a name those bear whose rod
 * does not stand as found, or that say more than turns.
 */
final class Bearing {
  private final @Nullable String instrument;
  private final Instant dayBefore;
  private final List<IndexEntry> own = new ArrayList<>();
  private final List<IndexEntry> others = new ArrayList<>();
  private boolean all;

  /**
   * @param entries the sessions' folder
   * @param instrument the name of the instrument, or null where every file bears
   * @param dayBefore when the last day began
   */
  Bearing(List<IndexEntry> entries, @Nullable String instrument, Instant dayBefore) {
    this.instrument = instrument;
    this.dayBefore = dayBefore;
    for (IndexEntry entry : entries) {
      Glance glance = entry.glance();
      if (glance == null || instrument == null || !instrument.equals(glance.instrument())) {
        others.add(entry);
      } else {
        own.add(entry);
        all |= entry.said() || entry.why() != null || glance.started() == null;
      }
    }
    own.sort(Comparator.comparing(Bearing::began));
    all |= own.size() < 2;
  }

  /** Whether all of the instrument's sessions have to be read. */
  boolean all() {
    return all;
  }

  boolean own(@Nullable String name) {
    return instrument != null && instrument.equals(name);
  }

  List<IndexEntry> own() {
    return own;
  }

  /** The instrument's newest session. */
  IndexEntry newest() {
    return own.get(own.size() - 1);
  }

  /**
   * The sessions to be read with the newest: those that went on after it had begun, and the last
   * one whose turns may be set back, with the others of its lesson.
   */
  List<IndexEntry> recent() {
    IndexEntry worked = Lists.last(own, entry -> !entry.back() && turned(entry));
    String lesson = worked == null ? null : worked.lesson();
    return own.stream()
        .filter(
            entry ->
                !last(entry).isBefore(began(newest()))
                    || entry == worked
                    || (lesson != null && lesson.equals(entry.lesson())))
        .toList();
  }

  private static boolean turned(IndexEntry entry) {
    Glance glance = entry.glance();
    return glance != null && (glance.turned() != null || glance.half() != null);
  }

  /**
   * The sessions that were not read, where the newest knew just those that are older.
   *
   * @param start of the newest session
   * @param read the records that were read, by their files
   * @return null where a record came, went or grew since
   */
  Neck.@Nullable Older older(Event.Started start, Map<IndexEntry, SessionRecord> read) {
    List<String> then = new ArrayList<>();
    List<String> unread = new ArrayList<>();
    for (IndexEntry entry : own) {
      SessionRecord record = read.get(entry);
      Glance glance = entry.glance();
      if (record == null && glance != null) {
        unread.add(mark(glance));
      } else if (record != null && record.began().isBefore(start.at())) {
        List<Event> before =
            record.events().stream().filter(event -> !event.at().isAfter(start.at())).toList();
        then.add(mark(record.session(), before));
      }
    }
    then.addAll(unread);
    Event.Earlier earlier = start.earlier();
    return earlier != null && earlier.sessions() == then.size() && earlier.sum().equals(sum(then))
        ? new Neck.Older(unread, start)
        : null;
  }

  /** Of the files that are not the instrument's own, those that bear on it. */
  List<IndexEntry> others() {
    return others.stream().filter(this::bears).toList();
  }

  private boolean bears(IndexEntry entry) {
    Glance glance = entry.glance();
    if (glance == null) {
      return entry.file().endsWith(LogFormat.ENDING) && !entry.file().startsWith(".");
    } else if (instrument == null || entry.said() || entry.why() != null) {
      return true;
    }
    Glance.Rod rod = glance.rod();
    Instant turned = glance.turned();
    return glance.instrument() == null
        && (entry.stops()
            || glance.half() != null
            || rod.net().size().atLeast(Turn.SIXTEENTH)
            || (turned != null && turned.isAfter(dayBefore)));
  }

  private static Instant began(IndexEntry entry) {
    Instant began = entry.glance() == null ? null : entry.glance().started();
    return began == null ? Instant.MIN : began;
  }

  private static Instant last(IndexEntry entry) {
    Instant last = entry.glance() == null ? null : entry.glance().last();
    return last == null ? Instant.MIN : last;
  }

  /**
   * What a record is known again by: its session, when something last happened, its turns, and
   * whether it is over, which may come in the same second as what was last.
   */
  private static String mark(Glance glance) {
    Instant last = glance.last();
    String when = last == null ? "" : last.getEpochSecond() + "." + last.getNano();
    String over = glance.over() == null ? "" : " over";
    return glance.name() + " " + when + " " + glance.rod().moves() + over;
  }

  /** The mark of a record with these events. */
  static String mark(String session, List<Event> events) {
    return mark(Glances.of(session, new Journal.Contents(null, events, null, 0)));
  }

  /** A sum over marks, whatever their order. */
  static String sum(List<String> marks) {
    CRC32 sum = new CRC32();
    for (String mark : marks.stream().sorted().toList()) {
      sum.update((mark + "\n").getBytes(StandardCharsets.UTF_8));
    }
    return Long.toHexString(sum.getValue());
  }
}
