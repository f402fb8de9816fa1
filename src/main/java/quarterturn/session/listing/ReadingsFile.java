package quarterturn.session.listing;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** Keeps the readings of an instrument's sessions, so that a history need not read all of them. */
final class ReadingsFile {
  private static final int LENGTH = 1024;

  private ReadingsFile() {}

  /** A file's readings, and what tells whether it has changed since. */
  private record Kept(@Nullable IndexStamp stamp, SessionReadings readings) {}

  /**
   * The readings of each session, by their names, the newest first.
   *
   * @param kept what was read before
   * @param entries the sessions' folder
   * @param glances the sessions wanted, the newest first
   */
  static Map<String, SessionReadings> of(
      Path folder, DerivedFile kept, List<IndexEntry> entries, List<Glance> glances)
      throws IOException {
    Set<String> files = new HashSet<>();
    glances.forEach(glance -> files.add(glance.name() + LogFormat.ENDING));
    Map<String, Kept> before = new HashMap<>();
    Map<String, Kept> now = new LinkedHashMap<>();
    kept.lines(ReadingsFile::read).forEach(one -> before.put(one.getKey(), one.getValue()));
    int read = 0;
    for (IndexEntry entry : entries) {
      if (files.contains(entry.file()) && entry.begun()) {
        Kept was = before.get(entry.file());
        IndexStamp stamp = entry.stamp();
        boolean same = was != null && stamp != null && stamp.same(was.stamp());
        read += same ? 0 : 1;
        now.put(entry.file(), same ? was : read(folder, entry));
      }
    }
    if (read > SessionIndex.FEW) {
      StringBuilder body = new StringBuilder(now.size() * LENGTH);
      now.forEach((file, one) -> write(new IndexCells.Out(body), file, one));
      kept.write(body);
    }
    Map<String, SessionReadings> sessions = new LinkedHashMap<>();
    for (Glance glance : glances) {
      Kept one = now.get(glance.name() + LogFormat.ENDING);
      if (one != null) {
        sessions.put(glance.name(), one.readings());
      }
    }
    return sessions;
  }

  private static Kept read(Path folder, IndexEntry entry) throws IOException {
    List<Event> events = Journal.read(folder.resolve(entry.file())).events();
    return new Kept(entry.stamp(), SessionReadings.of(events));
  }

  private static void write(IndexCells.Out out, String file, Kept kept) {
    IndexStamp stamp = kept.stamp();
    if (stamp == null) {
      return;
    }
    out.text(file).stamp(stamp).time(kept.readings().began());
    for (Event event : kept.readings().events()) {
      write(out, event);
    }
    out.end();
  }

  private static void write(IndexCells.Out out, Event event) {
    if (event instanceof Event.Read read) {
      Bracket bracket = read.bracket();
      out.text("reading")
          .time(read.at())
          .text(read.quantity().name())
          .text(read.which() == null ? null : read.which().name())
          .text(read.string())
          .number(read.readAt())
          .number(read.value())
          .number(bracket == null ? null : bracket.lowMm())
          .number(bracket == null ? null : bracket.highMm());
    } else if (event instanceof Event.OnRod rod) {
      Feel feel = rod.feel();
      out.text("rod")
          .time(event.at())
          .number(rod.moved().turns())
          .yes(rod.sure())
          .text(feel == null ? null : feel.name());
    } else if (event instanceof Event.Offered offered) {
      out.text("asked").time(event.at()).number(offered.turn().turns());
    } else {
      out.text("undo").time(event.at());
    }
  }

  private static Map.Entry<String, Kept> read(IndexCells in) {
    String file = in.some();
    IndexStamp stamp = in.stamp();
    Instant began = some(in.time());
    List<Event> events = new ArrayList<>();
    while (in.more()) {
      events.add(event(in));
    }
    return Map.entry(file, new Kept(stamp, new SessionReadings(began, events)));
  }

  private static Event event(IndexCells in) {
    String kind = in.some();
    Instant at = some(in.time());
    return switch (kind) {
      case "reading" -> reading(in, at);
      case "rod" -> {
        Turn turn = new Turn(in.number());
        boolean sure = in.yes();
        String feel = in.text();
        yield new Event.Recalled(at, "", turn, sure, feel == null ? null : Feel.valueOf(feel));
      }
      case "asked" -> new Event.Offered(at, "", new Turn(in.number()));
      default -> new Event.UndoAsked(at, "");
    };
  }

  private static Event reading(IndexCells in, Instant at) {
    Quantity quantity = Quantity.valueOf(in.some());
    String which = in.text();
    String string = in.text();
    int readAt = (int) in.whole();
    String value = in.text();
    String low = in.text();
    String high = in.text();
    return new Event.Read(
        at,
        "",
        quantity,
        which == null ? null : Which.valueOf(which),
        string,
        List.of(),
        readAt,
        0,
        low == null || high == null
            ? null
            : new Bracket(Double.parseDouble(low), Double.parseDouble(high)),
        value == null ? null : Double.valueOf(value));
  }

  private static Instant some(@Nullable Instant at) {
    if (at == null) {
      throw new IllegalArgumentException("it has no time");
    }
    return at;
  }
}
