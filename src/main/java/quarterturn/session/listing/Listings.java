package quarterturn.session.listing;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.read.Strays;
import quarterturn.session.Names;
import quarterturn.session.journal.LogFormat;

/** Tells sessions from what only stands beside them. */
public final class Listings {
  private Listings() {}

  /** Every session, the newest first, and a line for everything that is none. */
  public static Listing of(List<IndexEntry> entries) {
    Set<String> own = new HashSet<>();
    List<@Nullable String> stems = new ArrayList<>(entries.size());
    for (IndexEntry entry : entries) {
      String stem = stem(entry);
      stems.add(stem);
      if (entry.session() != null && entry.session().equals(stem)) {
        own.add(entry.session());
      }
    }
    List<Glance> sessions = new ArrayList<>();
    List<String> notRead = new ArrayList<>();
    for (int i = 0; i < entries.size(); i++) {
      IndexEntry entry = entries.get(i);
      String why = why(entry, stems.get(i), own);
      Glance glance = entry.glance();
      if (why == null && glance != null) {
        sessions.add(glance.named(String.valueOf(stems.get(i))));
      } else if (entry.session() != null || !entry.file().startsWith(".")) {
        notRead.add(Strays.line(entry.file(), String.valueOf(why)));
      }
    }
    sessions.sort(Listings::newestFirst);
    return new Listing(sessions, notRead);
  }

  /** What there is of one instrument, copies of its sessions included; null for those without. */
  public static List<IndexEntry> on(@Nullable String instrument, List<IndexEntry> entries) {
    List<IndexEntry> on = new ArrayList<>();
    for (IndexEntry entry : entries) {
      Glance glance = entry.glance();
      if (glance != null && Objects.equals(instrument, glance.instrument())) {
        on.add(entry);
      }
    }
    return on;
  }

  /** By when they began, then by their names, what has not begun last. */
  private static int newestFirst(Glance one, Glance other) {
    Instant began = one.started();
    Instant otherBegan = other.started();
    if (began == null || otherBegan == null) {
      int unknown = Boolean.compare(began == null, otherBegan == null);
      return unknown != 0 ? unknown : other.name().compareTo(one.name());
    }
    int later = otherBegan.compareTo(began);
    return later != 0 ? later : other.name().compareTo(one.name());
  }

  /**
   * Why an entry is no session of its own, or null where it is one.
   *
   * @param stem the name that it goes by, or null
   * @param own the names of the sessions that stand in files of their own names
   */
  private static @Nullable String why(IndexEntry entry, @Nullable String stem, Set<String> own) {
    String session = entry.session();
    IndexStamp stamp = entry.stamp();
    if (session == null) {
      return entry.why();
    }
    boolean link = stamp != null && stamp.sort() == IndexStamp.Sort.LINK;
    if (link || (!session.equals(stem) && own.contains(session))) {
      return (link ? "a link to session " : "a copy of session ") + session + "; its turns count";
    }
    return stem != null
        ? null
        : "it begins as session "
            + session
            + ", which is not here: name it "
            + session
            + LogFormat.ENDING
            + "; its turns count";
  }

  /** The name that the session in a file goes by; null where the file's name can't be one. */
  private static @Nullable String stem(IndexEntry entry) {
    String file = entry.file();
    if (!file.endsWith(LogFormat.ENDING)) {
      return null;
    }
    String stem = file.substring(0, file.length() - LogFormat.ENDING.length());
    return Names.good(stem) ? stem : null;
  }
}
