package quarterturn.line;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Level;
import quarterturn.lesson.teacher.Sight;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/** What is typed at a board. Names of benches and students stay in {@code rest} to be looked up. */
sealed interface BoardTyped {
  List<String> WORDS =
      List.of(
          "show", "release", "hold", "level", "freeze", "thaw", "spread", "orders", "sheets",
          "wait", "end", "quit", "help");

  List<String> HELP =
      List.of(
          "show             every bench: stops first, then who waits longest",
          "show RED         one bench: when it was heard, what to release, levels",
          "release RED 0.30 to 0.35",
          "                 lets RED go on; the value is what the bench reads to you",
          "release RED      where nothing is read back: a stop, or a hold of a board",
          "release all      lets go on what boards hold; stops and hold points stay",
          "hold RED reason  holds RED until it is released; hold all reason: every bench",
          "level ANNA own   sets how much ANNA is shown: worked, last-missing,",
          "                 two-missing or own; level RED ANNA own where two are called so",
          "freeze ANNA      keeps ANNA's level from rising and falling",
          "thaw ANNA        lets it rise and fall again",
          "spread           predictions and readings of each step",
          "orders           what boards have ordered, and which bench has taken it",
          "sheets           writes the sheets as things stand",
          "wait 60          waits until a bench needs you, 60 s at most",
          "wait taken       waits until every order is answered",
          "wait over        waits until every bench has left the lesson",
          "end              ends the lesson; asks first, and writes the sheets",
          "quit             leaves the board; the lesson goes on");

  record Show(String bench) implements BoardTyped {}

  record Release(String rest) implements BoardTyped {}

  record ReleaseAll() implements BoardTyped {}

  record Hold(String rest) implements BoardTyped {}

  record HoldAll(String reason) implements BoardTyped {}

  /**
   * Sets a level.
   *
   * @param frozen null where that stays as it is
   */
  record SetLevel(String rest, @Nullable Boolean frozen) implements BoardTyped {
    /** The level that stands after a student's name; null where it stays. */
    @Nullable Level level(String word) throws RefusedException {
      String typed = word.strip().toLowerCase(Locale.ROOT);
      for (Level level : Level.values()) {
        if (level.word().equals(typed)) {
          return level;
        }
      }
      if (frozen != null && typed.isEmpty()) {
        return null;
      }
      String all = Stream.of(Level.values()).map(Level::word).collect(Collectors.joining(", "));
      throw new RefusedException(
          typed.isEmpty()
              ? "Say which level: " + all + "."
              : "\"" + Printable.of(word.strip()) + "\" is no level; there are " + all + ".");
    }
  }

  public record Spread() implements BoardTyped {}

  record Orders() implements BoardTyped {}

  record Sheets() implements BoardTyped {}

  record Help() implements BoardTyped {}

  record End() implements BoardTyped {}

  record Quit() implements BoardTyped {}

  /** Lets time pass until something is so, or the seconds are over. */
  record Wait(Until until, int seconds) implements BoardTyped {}

  record Bad(String why) implements BoardTyped {}

  /** What is waited for. */
  enum Until {
    NEEDED(sight -> sight.view().rows().stream().anyMatch(r -> !sight.toRelease(r).isEmpty())),
    TAKEN(sight -> sight.unanswered().isEmpty()),
    OVER(Sight::over);

    private final Predicate<Sight> is;

    Until(Predicate<Sight> is) {
      this.is = is;
    }

    boolean is(Sight sight) {
      return is.test(sight);
    }
  }

  /** What a line means. */
  static BoardTyped of(String line) {
    String typed = line.strip();
    int end = typed.indexOf(' ') < 0 ? typed.length() : typed.indexOf(' ');
    String word = typed.substring(0, end).toLowerCase(Locale.ROOT);
    String rest = typed.substring(end).strip();
    return switch (word) {
      case "", "show" -> new Show(rest);
      case "release" -> rest.equalsIgnoreCase("all") ? new ReleaseAll() : new Release(rest);
      case "hold" -> hold(rest);
      case "level" -> new SetLevel(rest, null);
      case "freeze" -> new SetLevel(rest, true);
      case "thaw" -> new SetLevel(rest, false);
      case "wait" -> wait(rest);
      case "spread", "orders", "sheets", "end", "quit", "q", "help", "?" ->
          rest.isEmpty()
              ? alone(word)
              : new Bad(
                  "After " + word + " nothing can stand; \"" + Printable.of(rest) + "\" does.");
      default ->
          new Bad(
              "\""
                  + Printable.of(typed.substring(0, end))
                  + "\" is no command. There are: "
                  + String.join(", ", WORDS)
                  + ".");
    };
  }

  private static BoardTyped alone(String word) {
    return switch (word) {
      case "spread" -> new Spread();
      case "orders" -> new Orders();
      case "sheets" -> new Sheets();
      case "end" -> new End();
      case "quit", "q" -> new Quit();
      default -> new Help();
    };
  }

  private static BoardTyped hold(String rest) {
    String first = rest.split(" ", 2)[0];
    return first.equalsIgnoreCase("all")
        ? new HoldAll(rest.substring(first.length()).strip())
        : new Hold(rest);
  }

  private static BoardTyped wait(String rest) {
    Until until = Until.NEEDED;
    int seconds = 60;
    List<String> words = new ArrayList<>(List.of(rest.toLowerCase(Locale.ROOT).split(" +")));
    words.remove("");
    for (String word : words) {
      if (word.matches("\\d{1,5}")) {
        seconds = Integer.parseInt(word);
      } else if (word.equals("taken")) {
        until = Until.TAKEN;
      } else if (word.equals("over")) {
        until = Until.OVER;
      } else {
        return new Bad(
            "\""
                + Printable.of(word)
                + "\" can't be waited for; type for example wait 60, wait taken, or wait over 30.");
      }
    }
    return new Wait(until, seconds);
  }
}
