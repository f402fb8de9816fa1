package quarterturn.session.store;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Event;
import quarterturn.unit.Turn;

/**
 * The index as text: a first line with its format and the sum of all that follows, then a line for
 * each entry.
 */
final class IndexText {
  private static final String FORMAT = "quarterturn index 1 ";
  private static final int LENGTH = 320;

  private IndexText() {}

  static String of(List<IndexEntry> entries) {
    StringBuilder body = new StringBuilder(entries.size() * LENGTH);
    for (IndexEntry entry : entries) {
      FileStamp stamp = entry.stamp();
      if (stamp != null) {
        write(new IndexCells.Out(body), entry, stamp);
      }
    }
    String text = body.toString();
    return FORMAT + sum(text) + "\n" + text;
  }

  /**
   * The entries of a text.
   *
   * @throws IllegalArgumentException where it is no whole index, or one of another format
   */
  static List<IndexEntry> read(String text) {
    int at = text.indexOf('\n') + 1;
    String body = text.substring(at);
    if (!text.startsWith(FORMAT) || !text.startsWith(sum(body) + "\n", FORMAT.length())) {
      throw new IllegalArgumentException("it is no index, or not all of one");
    }
    List<IndexEntry> entries = new ArrayList<>(body.length() / LENGTH + 1);
    int from = 0;
    int end = body.indexOf('\n');
    while (end >= 0) {
      entries.add(entry(new IndexCells(body.substring(from, end))));
      from = end + 1;
      end = body.indexOf('\n', from);
    }
    return entries;
  }

  private static String sum(String text) {
    CRC32 crc = new CRC32();
    crc.update(text.getBytes(StandardCharsets.UTF_8));
    return Long.toHexString(crc.getValue());
  }

  private static void write(IndexCells.Out out, IndexEntry entry, FileStamp stamp) {
    out.text(entry.file())
        .text(stamp.sort().name())
        .number(stamp.size())
        .number(stamp.modified())
        .text(stamp.key())
        .text(entry.session())
        .yes(entry.said())
        .yes(entry.stops())
        .text(entry.lesson())
        .text(entry.why());
    Store.Glance glance = entry.glance();
    if (glance != null) {
      glance(out, glance);
    }
    out.end();
  }

  private static void glance(IndexCells.Out out, Store.Glance glance) {
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
      out.text(ended.step()).yes(ended.handOver()).text(ended.outcome()).text(ended.why());
    }
  }

  private static IndexEntry entry(IndexCells in) {
    String file = in.some();
    FileStamp.Sort sort = FileStamp.Sort.valueOf(in.some());
    long size = in.whole();
    long modified = in.whole();
    String key = in.text();
    FileStamp stamp = new FileStamp(sort, size, modified, key == null ? "" : key);
    String session = in.text();
    boolean said = in.yes();
    boolean stops = in.yes();
    String lesson = in.text();
    String why = in.text();
    Store.Glance glance = session == null ? null : glance(in, session, why);
    return new IndexEntry(file, stamp, session, glance, said, stops, lesson, why);
  }

  private static Store.Glance glance(IndexCells in, String session, @Nullable String why) {
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
    var rod = new Store.Glance.Rod((int) in.whole(), new Turn(in.number()), in.yes());
    var over = in.time();
    Event.Ended ended =
        over == null ? null : new Event.Ended(over, text(in), in.yes(), text(in), text(in));
    return new Store.Glance(
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
