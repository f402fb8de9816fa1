package quarterturn.lesson;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import quarterturn.session.journal.ForcedFile;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.SummedLines;

/** One writer's file, open for appending. What was appended is on disk before it counts. */
public final class WriterFile implements Closeable {
  public static final String ENDING = ".jsonl";

  private final ForcedFile file;
  private final WriterLog found;
  private int events;
  private String sum;

  private WriterFile(ForcedFile file, WriterLog found, String sum) {
    this.file = file;
    this.found = found;
    this.events = found.events().size();
    this.sum = sum;
  }

  /**
   * Makes a writer's file in a lesson's folder.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is such a file
   */
  public static WriterFile create(Path folder, WriterLog.Header header) throws IOException {
    SummedLines.Line line = WriterLog.line(header);
    Path path = folder.resolve(header.writer() + ENDING);
    WriterLog empty = WriterLog.of(header, List.of());
    return new WriterFile(ForcedFile.create(path, line.bytes()), empty, line.sum());
  }

  /**
   * Opens a writer's file once more, as after a crash. A last line that was cut short is removed
   * first; {@link #found} says so.
   *
   * @throws IOException where it is open elsewhere or damaged, saying what to do
   */
  public static WriterFile open(Path folder, String writer) throws IOException {
    String name = writer + ENDING;
    List<WriterLog.Scan> read = new ArrayList<>();
    try {
      ForcedFile opened =
          ForcedFile.open(
              folder.resolve(name),
              bytes -> {
                WriterLog.Scan scan = WriterLog.scan(bytes, name);
                if (scan.log().damagedAtLine() > 0) {
                  throw new IOException(
                      scan.log().notice() + " Join the lesson anew under another name.");
                }
                read.add(scan);
                return scan.wholeBytes();
              });
      WriterLog.Scan scan = read.get(0);
      return new WriterFile(opened, scan.log(), scan.sum());
    } catch (Journal.InUse e) {
      throw new IOException(writer + " is open in another window; close it there first", e);
    }
  }

  /** What stood in the file when it was opened. */
  public WriterLog found() {
    return found;
  }

  /** Appends events, all or none; they are on disk when this returns. */
  public void append(List<LessonEvent> more) throws IOException {
    ByteArrayOutputStream text = new ByteArrayOutputStream();
    String last = sum;
    int n = events;
    for (LessonEvent event : more) {
      n++;
      SummedLines.Line line = WriterLog.line(n, event, last);
      text.writeBytes(line.bytes());
      last = line.sum();
    }
    file.append(text.toByteArray());
    sum = last;
    events = n;
  }

  @Override
  public void close() throws IOException {
    file.close();
  }
}
