package quarterturn.session.journal;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A file of events on disk, open for appending. No event in it is ever changed.
 *
 * <p>While it is open no other process can open it ({@link Journal.InUse}). Reading needs no lock.
 *
 * @param <E> the type of the events
 * @param <L> the type of a file's contents
 */
public abstract class EventFile<E, L extends EventLog<E>> implements Closeable {
  private final LogFormat<?, E, L> format;
  private final ForcedFile file;
  private final L found;
  private final List<E> events;
  private String sum;
  private @Nullable DisplacedException displaced;

  protected EventFile(LogFormat<?, E, L> format, ForcedFile file, LogFormat.Scan<L> scan) {
    this.format = format;
    this.file = file;
    this.found = scan.log();
    this.events = new ArrayList<>(found.events());
    this.sum = scan.sum();
  }

  /** The contents of the file when it was opened. */
  public L found() {
    return found;
  }

  /**
   * Appends events, all or none: they are on disk when this returns, and the file is as it was when
   * it throws.
   *
   * @throws DisplacedException where it is not the file at its path any more; all events, these
   *     too, then stand in a new file
   */
  public void append(List<E> more) throws IOException {
    if (displaced != null) {
      throw displaced;
    }
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    String last = sum;
    int n = events.size();
    for (E event : more) {
      n++;
      SummedLines.Line line = format.event(n, event, last);
      text.writeBytes(line.bytes());
      last = line.sum();
    }
    try {
      file.append(text.toByteArray());
    } catch (ForcedFile.Swapped e) {
      List<E> all = new ArrayList<>(events);
      all.addAll(more);
      displaced = format.anew(file.path(), String.valueOf(e.getMessage()), found, all);
      throw displaced;
    }
    sum = last;
    events.addAll(more);
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
