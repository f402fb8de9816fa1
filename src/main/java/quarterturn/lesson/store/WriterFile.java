package quarterturn.lesson.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Objects;
import java.util.regex.Pattern;
import quarterturn.lesson.LessonEvent;
import quarterturn.procedure.read.Strays;
import quarterturn.session.journal.EventFile;
import quarterturn.session.journal.ForcedFile;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.unit.NotUnderstoodException;

/** One writer's file, open for appending. An event counts once it is on disk. */
public final class WriterFile extends EventFile<LessonEvent, WriterLog> {
  private static final int MOST = 99;

  private WriterFile(ForcedFile file, LogFormat.Scan<WriterLog> scan) {
    super(WriterLog.FORMAT, file, scan);
  }

  /**
   * Makes a writer's file in a lesson's folder, as {@link LogFormat#create}.
   *
   * @throws InUse where there is one that is open elsewhere
   */
  public static WriterFile create(Path folder, WriterLog.Header header) throws IOException {
    Path file = folder.resolve(header.writer() + LogFormat.ENDING);
    try {
      return WriterLog.FORMAT.create(file, header, WriterFile::new);
    } catch (Journal.InUse e) {
      throw new InUse(header.writer(), e);
    }
  }

  /**
   * Opens a writer's file once more, as after a crash; as {@link LogFormat#open}.
   *
   * @throws InUse where it is open elsewhere
   * @throws IOException where it is damaged, saying what to do
   */
  public static WriterFile open(Path folder, String writer) throws IOException {
    try {
      return WriterLog.FORMAT.open(folder.resolve(writer + LogFormat.ENDING), WriterFile::new);
    } catch (Journal.InUse e) {
      throw new InUse(writer, e);
    }
  }

  /** Thrown where another window has the file open. */
  public static final class InUse extends IOException {
    private static final long serialVersionUID = 1L;

    InUse(String writer, IOException cause) {
      super(writer + " is open in another window; close it there first", cause);
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
    for (WriterLog log : LessonFolder.read(folder).logs()) {
      WriterLog.Header header = log.header();
      if (header != null
          && header.file() != null
          && header.lesson().equals(lesson)
          && header.role() == part
          && header.writer().matches(Pattern.quote(name) + "(-\\d+)?")) {
        return open(folder, header.file());
      }
    }
    for (int n = 1; n <= MOST; n++) {
      String writer = n == 1 ? name : name + "-" + n;
      usable(folder.resolve(writer + LogFormat.ENDING));
      WriterFile file;
      try {
        return create(folder, new WriterLog.Header(lesson, writer, part));
      } catch (FileAlreadyExistsException e) {
        file = open(folder, writer);
      }
      WriterLog.Header found = file.found().header();
      if (found != null && found.lesson().equals(lesson) && found.named().equals(found.writer())) {
        if (found.role() == part) {
          return file;
        }
        file.close();
        throw new NotUnderstoodException(
            writer
                + (part == WriterLog.Part.BENCH ? " is the teacher's desk" : " is a bench")
                + " of this folder; choose another name");
      }
      file.close();
    }
    throw new NotUnderstoodException(
        "every name from " + name + " to " + name + "-" + MOST + " is taken");
  }

  /** Refuses a name in whose place something stands that is no file of anybody's. */
  private static void usable(Path file) throws IOException {
    String why = Strays.why(file);
    if (why != null && Files.exists(file, LinkOption.NOFOLLOW_LINKS)) {
      throw new NotUnderstoodException(
          file.getFileName() + " can't be used: " + why + "; choose another name");
    }
  }

  /** The writer's name in its lesson's folder. */
  public String writer() {
    return header().writer();
  }

  /** The file's name, without its ending. */
  String file() {
    return header().named();
  }

  private WriterLog.Header header() {
    return Objects.requireNonNull(found().header(), "an open file has a header");
  }
}
