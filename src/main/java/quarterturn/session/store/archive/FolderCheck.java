package quarterturn.session.store.archive;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Quote;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.store.Store;
import quarterturn.unit.Printable;

/**
 * Reads all that a data folder holds, one file at a time, and says what is wrong with it, a line a
 * finding: the file, what, and what to do. Nothing is changed.
 */
public final class FolderCheck {
  private static final String BACK = "put it back from an archive, or move it out of the folder";
  private static final Set<String> PARTS =
      Arrays.stream(Part.values()).map(Part::folder).collect(Collectors.toUnmodifiableSet());

  private final Path data;
  private final Consumer<String> say;
  private long findings;

  private FolderCheck(Path data, Consumer<String> say) {
    this.data = data;
    this.say = say;
  }

  /** How many files were read as sessions and as instruments, and what was found in all. */
  public record Checked(long sessions, long instruments, long findings) {}

  /**
   * Checks a folder.
   *
   * @param others what else may stand in it: whole paths of the user's own files
   * @param say takes each finding
   * @throws IOException where there is no such folder, or it can't be listed
   */
  public static Checked of(Path data, Set<Path> others, Consumer<String> say) throws IOException {
    FolderCheck check = new FolderCheck(data, say);
    check.beside(others);
    long[] counts = new long[Part.values().length];
    for (Part part : Part.values()) {
      counts[part.ordinal()] = check.part(part);
    }
    return new Checked(
        counts[Part.SESSIONS.ordinal()], counts[Part.INSTRUMENTS.ordinal()], check.findings);
  }

  /** What stands in the folder beside its parts, which nothing reads. */
  private void beside(Set<Path> others) throws IOException {
    for (Path file : DataFolder.listed(data)) {
      String name = String.valueOf(file.getFileName());
      Path place = file.toAbsolutePath().normalize();
      boolean known = others.stream().anyMatch(other -> other.startsWith(place));
      if (!PARTS.contains(name) && !known) {
        found(name, "is not read", "move it out of the data folder");
      }
    }
  }

  private long part(Part part) {
    DataFolder folder;
    try {
      folder = DataFolder.at(data, part);
    } catch (IOException e) {
      found(
          part.folder(),
          "can't be listed: " + Reading.why(e),
          "see that it is a folder which you may read");
      return 0;
    }
    for (Kept file : folder.kept()) {
      try {
        if (part == Part.SESSIONS) {
          session(file);
        } else {
          Store.instrumentIn(file.in(data));
        }
      } catch (IOException e) {
        found(file.path(), wrong(file, e), "mend that, or put it back from an archive");
      }
    }
    folder.strays().forEach(this::stray);
    return folder.kept().size();
  }

  private void session(Kept file) throws IOException {
    Path place = file.in(data);
    Journal.Contents contents = Journal.read(place);
    if (contents.notice() != null && !contents.damaged()) {
      contents = Journal.read(place); // it may have been written to just then
    }
    Journal.Header header = contents.header();
    String notice = contents.notice();
    if (header == null) {
      found(file.path(), notice == null ? "holds no session" : notice, BACK);
      return;
    }
    if (!header.session().equals(file.name())) {
      copy(file.path(), header.session());
    }
    if (notice != null) {
      found(
          file.path(),
          notice,
          contents.damaged() ? BACK : "see its last answer with log show " + file.name());
    }
  }

  /** A file that begins like the session of another name: its turns count too. */
  private void copy(String path, String session) {
    Kept whole = Kept.of(Part.SESSIONS, session + LogFormat.ENDING);
    boolean beside = whole != null && Files.exists(whole.in(data), LinkOption.NOFOLLOW_LINKS);
    found(
        path,
        "begins as session " + session + " and has another name; its turns count",
        whole != null && !beside
            ? "give it the name " + session + LogFormat.ENDING
            : "move it out of the folder where " + session + " holds as much");
  }

  private void stray(DataFolder.Stray stray) {
    String begins = stray.file() && stray.part() == Part.SESSIONS ? begins(stray) : null;
    if (begins != null) {
      copy(stray.path(), begins);
    } else {
      String what = "is not read: " + stray.why();
      found(stray.path(), what, "move it out of the data folder");
    }
  }

  /** The session that a stray file begins as, or null. */
  private @Nullable String begins(DataFolder.Stray stray) {
    try {
      Journal.Header header = Journal.read(data.resolve(stray.path())).header();
      return header == null ? null : header.session();
    } catch (IOException e) {
      return null;
    }
  }

  private static String wrong(Kept file, IOException e) {
    String why = Reading.why(e);
    // What reads a file names it in its own complaint.
    return why.startsWith(file.name()) ? why : "can't be read: " + why;
  }

  private void found(String path, String what, String mend) {
    findings++;
    String end = what.matches("(?s).*[.!?]") ? " " : ". ";
    say.accept(Printable.of(path + ": " + what + end + Quote.sentence(mend) + "."));
  }
}
