package quarterturn.lesson.store;

import java.io.ByteArrayOutputStream;
import java.io.Closeable;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.LessonEvent;
import quarterturn.lesson.Plan;
import quarterturn.platform.Folders;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.journal.Journal;
import quarterturn.session.journal.JournalLock;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.journal.NotAnEventException;
import quarterturn.session.journal.Rewording;
import quarterturn.unit.NotUnderstoodException;

/**
 * A student's name, to be struck from every file of a finished lesson's folder. In the benches' and
 * desks' files a number stands for it, so that all that was done still hangs together; each has a
 * line that says so. Nothing is written before {@link #write}.
 */
public final class Striking {
  /** Words of people in the file of a bench or desk; below, in a session. */
  private static final List<String> AT_BENCH = List.of("reason", "answer");

  private static final List<String> IN_SESSION = List.of("text", "by", "reason", "words");

  /** Shorter names are also words and strings, and are looked for as they are written alone. */
  private static final int WORDY = 3;

  /** From a lesson's folder to the sessions of its benches. */
  private static final int DEPTH = 3;

  private final Path folder;
  private final String student;
  private final @Nullable String number;
  private final Map<String, Plan> plans = new LinkedHashMap<>();
  private final Map<String, byte[]> writers = new LinkedHashMap<>();
  private final Map<Path, byte[]> changed = new LinkedHashMap<>();

  private Striking(Path folder, String student, @Nullable String number) {
    this.folder = folder;
    this.student = student;
    this.number = number;
  }

  /** What is done once no other window has the files, and before they are written. */
  public interface First {
    void run() throws IOException;
  }

  /**
   * Works out what the files would be.
   *
   * @throws NotUnderstoodException where the lesson is not finished, or nobody has that name
   * @throws IOException where a file is damaged or can't be read
   */
  public static Striking of(Path folder, String student, Instant at)
      throws IOException, UnreadableException {
    Roll roll = Roll.of(folder);
    Begun begun = Begun.in(folder);
    if (begun == null) {
      roll.check(student);
      begun = new Begun(student, roll.number(student));
    } else if (!begun.student().equals(student)) {
      throw new NotUnderstoodException(
          "the name %s is struck from some files only; strike it once more first"
              .formatted(begun.student()));
    }
    Striking striking = new Striking(folder, student, begun.number());
    for (Map.Entry<Path, Plan> plan : roll.plans().entrySet()) {
      striking.plan(plan.getKey(), plan.getValue());
    }
    for (Path file : Roll.summed(folder, DEPTH)) {
      striking.read(file, folder.equals(file.getParent()), at);
    }
    return striking;
  }

  private void plan(Path file, Plan plan) {
    Plan without = plan.without(student);
    plans.put(plan.lesson(), without);
    if (!without.equals(plan)) {
      changed.put(file, PlanFile.text(without).getBytes(StandardCharsets.UTF_8));
    }
  }

  private void read(Path file, boolean writers, Instant at) throws IOException {
    byte[] was = Files.readAllBytes(file);
    String name = String.valueOf(file.getFileName());
    try {
      byte[] now = Rewording.of(was, "a file", words(writers ? AT_BENCH : IN_SESSION));
      boolean other = !Arrays.equals(now, Arrays.copyOf(was, now.length));
      if (writers) {
        byte[] marked = other ? struck(now, name, at) : was;
        this.writers.put(name, marked);
        now = marked;
      }
      if (other) {
        changed.put(file, now);
      }
    } catch (NotAnEventException e) {
      boolean lessons = !writers || WriterLog.FORMAT.scan(was, name).log().header() != null;
      if (!lessons && !new String(was, StandardCharsets.UTF_8).contains(student)) {
        return; // no file of a lesson's, and nothing in it to be struck
      }
      throw new IOException(
          name + " is damaged: " + e.getMessage() + ". Nothing was struck; mend or move it first",
          e);
    }
  }

  /** A writer's file with a line added which says that a name was struck. */
  private byte[] struck(byte[] lines, String file, Instant at) {
    LogFormat.Scan<WriterLog> scan = WriterLog.FORMAT.scan(lines, file);
    LessonEvent event = new LessonEvent.Struck(at, shown());
    ByteArrayOutputStream out = new ByteArrayOutputStream();
    out.writeBytes(lines);
    int n = scan.log().events().size() + 1;
    out.writeBytes(WriterLog.FORMAT.event(n, event, scan.sum()).bytes());
    return out.toByteArray();
  }

  private Map<String, UnaryOperator<String>> words(List<String> free) {
    int flags = Pattern.CASE_INSENSITIVE | Pattern.UNICODE_CASE;
    Pattern word =
        Pattern.compile(
            "(?<![\\p{L}\\p{N}])" + Pattern.quote(student) + "(?![\\p{L}\\p{N}])",
            student.length() < WORDY ? 0 : flags);
    String to = Matcher.quoteReplacement(shown());
    Map<String, UnaryOperator<String>> out = new HashMap<>();
    free.forEach(key -> out.put(key, text -> word.matcher(text).replaceAll(to)));
    out.put("student", name -> name.equals(student) ? shown() : name);
    return out;
  }

  /** The number that stands for the name from then on. */
  public String shown() {
    return number == null ? "somebody" : number;
  }

  /** Whether the student was ever at a bench, and so has a number. */
  public boolean came() {
    return number != null;
  }

  /** How many files are written anew. */
  public int files() {
    return changed.size();
  }

  /** The plans of the folder's lessons without the name, by the lesson's id. */
  public Map<String, Plan> plans() {
    return Map.copyOf(plans);
  }

  /** The benches' and desks' files as they will be. */
  public List<WriterLog> logs() {
    List<WriterLog> logs = new ArrayList<>();
    writers.forEach((name, bytes) -> logs.add(WriterLog.FORMAT.scan(bytes, name).log()));
    return LessonFolder.standing(logs);
  }

  /**
   * Writes the files: where it is cut short, the same once more does the rest.
   *
   * @param first writes the sheets anew
   * @throws IOException where one of them is open in another window
   */
  public void write(First first) throws IOException {
    Deque<Closeable> locks = new ArrayDeque<>();
    try {
      for (Path file : changed.keySet()) {
        if (file.toString().endsWith(LogFormat.ENDING)) {
          locks.push(lock(file));
        }
      }
      new Begun(student, number).write(folder);
      first.run();
      for (Map.Entry<Path, byte[]> file : changed.entrySet()) {
        Folders.replace(file.getKey(), file.getValue());
      }
      Begun.done(folder);
    } finally {
      for (Closeable lock : locks) {
        lock.close();
      }
    }
  }

  private static JournalLock lock(Path file) throws IOException {
    try {
      return JournalLock.take(file);
    } catch (Journal.InUse e) {
      String name = String.valueOf(file.getFileName()).replace(LogFormat.ENDING, "");
      throw new IOException(name + " is open in another window; close it there first", e);
    }
  }
}
