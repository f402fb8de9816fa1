package quarterturn.session.store;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.session.Neck;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.IndexEntry;
import quarterturn.unit.Turn;

/**
 * Which session files bear on a session of one instrument, so that not all have to be read.
 *
 * <p>Of the instrument's own sessions these are the last few. The start of one of them, as its file
 * tells it, says what all older ones come to; that is taken only where it knew just those sessions
 * that are there. Else, and where a record is damaged or speaks of another, every one of them is
 * read. Of sessions without a name those bear whose rod does not stand as found, or that say more
 * than turns.
 */
final class Bearing {
  /** How many of an instrument's last sessions are read at least. */
  private static final int LAST = 3;

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
    all |= own.size() <= LAST;
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

  /** The instrument's last sessions, oldest first. */
  List<IndexEntry> last() {
    return own.subList(own.size() - LAST, own.size());
  }

  /** What the sessions before one come to by its start; null where it did not know just those. */
  Neck.@Nullable Older older(IndexEntry entry, Event.Started start) {
    Event.Earlier earlier = start.earlier();
    List<String> names = new ArrayList<>();
    for (IndexEntry one : own) {
      if (began(one).isBefore(began(entry))) {
        names.add(name(one));
      }
    }
    return earlier != null
            && earlier.sessions() == names.size()
            && earlier.names().equals(sum(names))
        ? new Neck.Older(names, start)
        : null;
  }

  /**
   * The sessions to be read beside one that tells of the older ones: those that began or went on
   * since, and the others of the last lesson.
   */
  List<IndexEntry> since(IndexEntry from) {
    Set<String> lessons = new HashSet<>();
    last().forEach(entry -> lessons.add(Objects.requireNonNullElse(entry.lesson(), "")));
    lessons.remove("");
    return own.stream()
        .filter(
            entry ->
                !last(entry).isBefore(began(from))
                    || (entry.lesson() != null && lessons.contains(entry.lesson())))
        .toList();
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

  private static String name(IndexEntry entry) {
    return entry.glance() == null ? "" : entry.glance().name();
  }

  /** A sum over names, whatever their order. */
  static String sum(List<String> names) {
    CRC32 sum = new CRC32();
    for (String name : names.stream().sorted().toList()) {
      sum.update((name + "\n").getBytes(StandardCharsets.UTF_8));
    }
    return Long.toHexString(sum.getValue());
  }
}
