package quarterturn.session.listing;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.unit.Turn;

/** The lines of the index, one for each entry. */
final class IndexText {
  private static final int LENGTH = 240;

  private IndexText() {}

  static StringBuilder of(List<IndexEntry> entries) {
    StringBuilder body = new StringBuilder(entries.size() * LENGTH);
    for (IndexEntry entry : entries) {
      IndexStamp stamp = entry.stamp();
      if (stamp != null) {
        write(new IndexCells.Out(body), entry, stamp);
      }
    }
    return body;
  }

  /** The entries of a file; none where it is missing or wrong. */
  static List<IndexEntry> read(DerivedFile file) {
    return file.lines(IndexText::entry);
  }

  private static void write(IndexCells.Out out, IndexEntry entry, IndexStamp stamp) {
    out.text(entry.file())
        .stamp(stamp)
        .text(entry.session())
        .yes(entry.said())
        .yes(entry.stops())
        .text(entry.lesson())
        .yes(entry.back())
        .number(entry.came().right())
        .number(entry.came().turns())
        .text(entry.why());
    Glance glance = entry.glance();
    if (glance != null) {
      glance(out, glance);
    }
    out.end();
  }

  private static void glance(IndexCells.Out out, Glance glance) {
    Event.Ended ended = glance.ended();
    out.text(glance.procedure())
        .text(glance.instrument())
        .text(glance.kind())
        .time(glance.started())
        .time(glance.last())
        .text(glance.standing())
        .time(glance.waitingUntil())
        .yes(glance.damaged())
        .time(glance.turned())
        .time(glance.relief())
        .time(glance.discarded())
        .number(glance.half() == null ? null : glance.half().turns())
        .yes(glance.unread())
        .text(glance.by())
        .number(glance.rod().moves())
        .number(glance.rod().net().turns())
        .yes(glance.rod().sure())
        .time(ended == null ? null : ended.at());
    if (ended != null) {
      out.yes(ended.handOver()).text(ended.outcome());
    }
  }

  private static IndexEntry entry(IndexCells in) {
    String file = in.some();
    IndexStamp stamp = in.stamp();
    String session = in.text();
    boolean said = in.yes();
    boolean stops = in.yes();
    String lesson = in.text();
    boolean back = in.yes();
    Calibration came = new Calibration((int) in.whole(), (int) in.whole());
    String why = in.text();
    Glance glance = session == null ? null : glance(in, session, why);
    return new IndexEntry(file, stamp, session, glance, said, stops, lesson, back, came, why);
  }

  private static Glance glance(IndexCells in, String session, @Nullable String why) {
    String procedure = in.text();
    String instrument = in.text();
    String kind = in.text();
    var started = in.time();
    var last = in.time();
    String standing = in.text();
    var waits = in.time();
    boolean damaged = in.yes();
    var turned = in.time();
    var relief = in.time();
    var discarded = in.time();
    String half = in.text();
    boolean unread = in.yes();
    String by = in.text();
    var rod = new Glance.Rod((int) in.whole(), new Turn(in.number()), in.yes());
    var over = in.time();
    Event.Ended ended = over == null ? null : new Event.Ended(over, "", in.yes(), text(in), "");
    return new Glance(
        session,
        procedure,
        instrument,
        kind,
        started,
        last,
        ended,
        standing,
        waits,
        why,
        damaged,
        turned,
        relief,
        discarded,
        half == null ? null : new Turn(Double.parseDouble(half)),
        unread,
        by,
        rod);
  }

  /** A cell of a text that may be empty, but is not null. */
  private static String text(IndexCells in) {
    String text = in.text();
    return text == null ? "" : text;
  }
}
