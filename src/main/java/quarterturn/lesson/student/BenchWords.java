package quarterturn.lesson.student;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Students;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/** The words that can be typed at a bench at any time, and what they do. */
public final class BenchWords {
  public static final List<String> WORDS = List.of("stop", "who", "come", "gone");

  public static final List<String> HELP =
      List.of(
          "stop, or stop REASON: stop this bench at once, also as the last word of a line. It is"
              + " always right; nobody is named.",
          "who: who is here, and who does what.",
          "come NAME: somebody joins this bench. gone NAME: somebody leaves it.");

  private static final Pattern FIRST =
      Pattern.compile("stop[!.]*(?:\\s+(.*))?", Pattern.CASE_INSENSITIVE);

  private static final Pattern LAST =
      Pattern.compile("(.*?)[\\s,;]+stop[\\s!.]*", Pattern.CASE_INSENSITIVE);

  /** What is said where nothing is left to do. */
  public static final String DONE = "Everything that was planned is done at this bench. Thank you.";

  private BenchWords() {}

  /**
   * Tells what is kept once the bench is left, and how to go on.
   *
   * @param again the command by which it goes on
   */
  public static String later(BenchLesson lesson, String again) {
    return lesson.over()
        ? "Everything is kept."
        : "Everything is kept. Go on later with:\n" + again;
  }

  /**
   * Whether a line can't wait while the bench does: a stop always, and to leave where nothing was
   * typed before it.
   */
  public static boolean urgent(String line, boolean afterOthers) {
    String word = line.strip().toLowerCase(Locale.ROOT);
    return stop(line, false) != null || (!afterOthers && word.matches("quit|exit"));
  }

  /**
   * A line that stops the bench.
   *
   * @param before what stood on the line before the word
   * @param reason what stood after it
   */
  record Stop(String before, String reason) {}

  /**
   * The stop that a line asks for by its first word or its last; null where it asks for none.
   *
   * @param ownWords whether the line is in one's own words, in which it may come last by chance
   */
  static @Nullable Stop stop(String line, boolean ownWords) {
    Matcher first = FIRST.matcher(line.strip());
    if (first.matches()) {
      return new Stop("", Objects.requireNonNullElse(first.group(1), ""));
    }
    Matcher last = LAST.matcher(line.strip());
    return !ownWords && last.matches() ? new Stop(last.group(1), "") : null;
  }

  /**
   * Does what a line asks for, where it is one of the words of a bench.
   *
   * @param ownWords whether the line is in one's own words
   * @return what is said to it, or null where the line is none of these words
   */
  static @Nullable List<String> take(LessonSession session, String typed, boolean ownWords)
      throws RefusedException, IOException {
    String text = typed.strip();
    Stop stop = stop(text, ownWords);
    if (stop != null) {
      session.stop(Printable.of(stop.reason()));
      return List.of();
    }
    int space = text.indexOf(' ');
    String word = (space < 0 ? text : text.substring(0, space)).toLowerCase(Locale.ROOT);
    String rest = space < 0 ? "" : text.substring(space + 1).strip();
    switch (word) {
      case "who" -> {
        return rest.isEmpty() ? who(session) : null;
      }
      case "come" -> {
        if (!Students.named(rest)) {
          return null;
        }
        session.come(rest);
        return List.of(rest + " is at this bench now.");
      }
      case "gone" -> {
        if (!session.lesson().students().contains(rest)) {
          return null;
        }
        session.go(rest);
        return List.of(rest + " has left this bench.");
      }
      default -> {
        return null;
      }
    }
  }

  private static List<String> who(LessonSession session) {
    BenchLesson lesson = session.lesson();
    List<String> out = new ArrayList<>();
    out.add(
        lesson.students().isEmpty()
            ? "Nobody is at this bench."
            : "Here: " + String.join(", ", lesson.students()) + ".");
    String duties = session.duties();
    if (!duties.isEmpty()) {
      out.add("In this part: " + duties + ".");
    }
    return out;
  }
}
