package quarterturn.lesson;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import quarterturn.session.journal.ForcedFile;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.SummedLines;
import quarterturn.unit.NotUnderstoodException;

/** One writer's file, open for appending. What was appended is on disk before it counts. */
public final class WriterFile implements Closeable {
  public static final String ENDING = ".jsonl";

  private static final int MOST = 99;

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

  /**
   * A writer's file in this lesson, for the first time or once more; in a folder's later lessons it
   * has a number behind it.
   *
   * @throws NotUnderstoodException where the name is another's
   */
  public static WriterFile of(Path folder, String lesson, String name, WriterLog.Part part)
      throws IOException {
    for (int n = 1; n <= MOST; n++) {
      String writer = n == 1 ? name : name + "-" + n;
      WriterFile file;
      try {
        return create(folder, new WriterLog.Header(lesson, writer, part));
      } catch (FileAlreadyExistsException e) {
        file = open(folder, writer);
      }
      WriterLog.Header found = file.found.header();
      if (found != null && found.lesson().equals(lesson)) {
        if (found.role() == part) {
          return file;
        }
        file.close();
        throw new NotUnderstoodException(
            writer
                + (part == WriterLog.Part.BENCH ? " is the teacher's board" : " is a bench")
                + " of this folder; choose another name");
      }
      file.close();
    }
    throw new NotUnderstoodException(
        "every name from " + name + " to " + name + "-" + MOST + " is taken");
  }

  /** The writer's name in its lesson's folder. */
  public String writer() {
    return Objects.requireNonNull(found.header(), "an open file has a header").writer();
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
