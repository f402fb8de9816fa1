package quarterturn.session.journal;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.platform.Folders;
import quarterturn.session.Names;

/**
 * The format of a file of events: a header, then one event a line, as {@link SummedLines}.
 *
 * @param <H> the type of the header
 * @param <E> the type of the events
 * @param <L> the type of a file's contents
 * @param of the thing a file holds, such as "a session"
 * @param anew what is missing from a file without a whole first line, and how to begin again
 * @param goOn how to proceed with a damaged file, in whole sentences
 * @param writer the name that the file must have for a header; null where any will do
 * @param renamed the header of the same contents in a file of another name
 * @param resumed how to go on with such a file
 */
public record LogFormat<H, E, L extends EventLog<E>>(
    String of,
    String anew,
    String goOn,
    ObjectJson<H> headers,
    ObjectJson<E> events,
    Function<H, @Nullable String> writer,
    BiFunction<L, String, H> renamed,
    Function<String, String> resumed,
    Made<H, E, L> made) {
  public static final String ENDING = ".jsonl";
  private static final int MOST = 99;

  /** Makes the contents of a file; the header is null where the first line can't be used. */
  public interface Made<H, E, L> {
    L of(@Nullable H header, List<E> events, @Nullable String notice, int damagedAtLine);
  }

  /**
   * The contents of a file with what is needed to append to it.
   *
   * @param wholeBytes length of the valid lines in bytes, where the next line goes
   * @param sum the sum of the last valid line
   */
  public record Scan<L>(L log, long wholeBytes, String sum) {}

  /** The first line of a file with a header. */
  public SummedLines.Line header(H header) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("quarterturn", SummedLines.FORMAT);
    headers.write(node, header);
    return SummedLines.line(node, "");
  }

  /**
   * The line for an event.
   *
   * @param n its number, counted from one
   * @param before the sum of the line before it
   */
  public SummedLines.Line event(int n, E event, String before) {
    ObjectNode node = JsonNodeFactory.instance.objectNode().put("n", n);
    events.write(node, event);
    return SummedLines.line(node, before);
  }

  /**
   * Makes a new file; its header is on disk when this returns.
   *
   * @throws java.nio.file.FileAlreadyExistsException when there is such a file
   */
  public <F> F create(Path file, H header, BiFunction<ForcedFile, Scan<L>, F> opened)
      throws IOException {
    SummedLines.Line line = header(header);
    L empty = made.of(header, List.of(), null, 0);
    return opened.apply(
        ForcedFile.create(file, line.bytes()), new Scan<>(empty, line.bytes().length, line.sum()));
  }

  /**
   * Writes all that a lost file held into a new one beside it, or into a folder of its own where
   * that can't be.
   *
   * @param what what happened to it, after its name
   * @throws IOException where it can be written nowhere
   */
  DisplacedException anew(Path lost, String what, L found, List<E> events) throws IOException {
    Path beside = ForcedFile.folder(lost);
    String told = name(lost) + " " + what + " while it was open. ";
    String all = "All that was recorded, your last answer too, is now in ";
    try {
      Path file = beside(beside, lost, found, events);
      return new DisplacedException(told + all + file + ".", resumed.apply(stem(file)));
    } catch (IOException e) {
      try {
        Path file = beside(Files.createTempDirectory("quarterturn-"), lost, found, events);
        return new DisplacedException(
            told + all + file + ", since nothing can be written to " + beside + ".",
            "Move it there. " + resumed.apply(stem(file)));
      } catch (IOException again) {
        e.addSuppressed(again);
        throw new IOException(
            told + "It could not be written anew (" + e.getMessage() + "): note your readings", e);
      }
    }
  }

  private Path beside(Path folder, Path lost, L found, List<E> events) throws IOException {
    Folders.make(folder);
    for (int n = 2; n <= MOST; n++) {
      String name = Names.numbered(stem(lost), n);
      Path file = folder.resolve(name + ENDING);
      ByteArrayOutputStream text = new ByteArrayOutputStream();
      SummedLines.Line line = header(renamed.apply(found, name));
      text.writeBytes(line.bytes());
      for (int i = 0; i < events.size(); i++) {
        line = event(i + 1, events.get(i), line.sum());
        text.writeBytes(line.bytes());
      }
      try {
        ForcedFile.create(file, text.toByteArray()).close();
        return file;
      } catch (FileAlreadyExistsException | Journal.InUse e) {
        // The name is taken; the next one may be free.
      }
    }
    throw new IOException("no name beside " + name(lost) + " is free");
  }

  private static String name(Path file) {
    return ForcedFile.name(file);
  }

  private static String stem(Path file) {
    String name = name(file);
    return name.substring(0, name.length() - ENDING.length());
  }

  /**
   * Opens a file to append to it. A last line that was cut short is removed first; the contents
   * tell of it.
   *
   * @throws Journal.InUse when it is open elsewhere
   * @throws IOException when it is damaged, saying where and what to do
   */
  public <F> F open(Path file, BiFunction<ForcedFile, Scan<L>, F> opened) throws IOException {
    ForcedFile forced = ForcedFile.open(file);
    try {
      byte[] read = ForcedFile.bytes(file);
      Scan<L> scan = scan(read, name(file));
      if (scan.log().damaged()) {
        throw new IOException(scan.log().notice() + " " + goOn);
      }
      forced.keep(read, scan.wholeBytes());
      return opened.apply(forced, scan);
    } catch (IOException | RuntimeException e) {
      forced.close();
      throw e;
    }
  }

  /** Reads a file; takes no lock, and the contents tell of damage. */
  public L read(Path file) throws IOException {
    return scan(ForcedFile.bytes(file), name(file)).log();
  }

  /**
   * Reads the bytes of a whole file.
   *
   * @param name the file's name, for the notices
   */
  public Scan<L> scan(byte[] file, String name) {
    H header = null;
    List<E> found = new ArrayList<>();
    String sum = "";
    int start = 0;
    for (int line = 1; ; line++) {
      int end = SummedLines.newline(file, start);
      if (end < 0 || (line > 1 && TornTail.begins(file, start, end))) {
        boolean sound = start == file.length && line > 1;
        String notice = sound ? null : torn(name, line);
        L log = made.of(header, List.copyOf(found), notice, line == 1 ? 1 : 0);
        return new Scan<>(log, start, sum);
      }
      byte[] bytes = Arrays.copyOfRange(file, start, end);
      try {
        if (line == 1) {
          header = header(bytes, name);
        } else {
          found.add(events.read(SummedLines.numbered(bytes, line - 1, sum)));
        }
      } catch (NotAnEventException e) {
        String notice = damaged(name, line, String.valueOf(e.getMessage()));
        return new Scan<>(made.of(header, List.copyOf(found), notice, line), start, sum);
      }
      sum = SummedLines.statedSum(bytes);
      start = end + 1;
    }
  }

  private H header(byte[] line, String name) throws NotAnEventException {
    H header = headers.read(SummedLines.header(line, of));
    String named = writer.apply(header);
    if (named != null && !name.equals(named + ENDING)) {
      throw new NotAnEventException("it is a copy of " + named + "'s file under another name");
    }
    return header;
  }

  private String torn(String name, int line) {
    if (line == 1) {
      return name + " has no whole first line, so there is no " + anew;
    }
    return "the last line of "
        + name
        + " was cut short, as when the machine stops while writing; it is left out, and what stands"
        + " before it is kept";
  }

  private static String damaged(String name, int line, String what) {
    return "line %d of %s: %s. %s"
        .formatted(
            line,
            name,
            what,
            line == 1
                ? "Nothing in it can be used."
                : "The %d events before it are kept and can be read; nothing can be added."
                    .formatted(line - 2));
  }
}
