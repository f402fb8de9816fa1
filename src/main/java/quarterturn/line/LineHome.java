package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/** The home view in plain lines: unfinished sessions, and what can be started. */
public final class LineHome {
  private LineHome() {}

  /**
   * One unfinished session.
   *
   * @param name to resume it by
   * @param what what and on which instrument
   * @param due what is due, in words
   */
  public record Item(String name, String what, String due) {}

  /** What the person wants. */
  public sealed interface Choice {
    record Resume(String name) implements Choice {}

    record Start() implements Choice {}

    /**
     * A simulated neck.
     *
     * @param watch whether it plays by itself
     */
    record Rehearse(boolean watch) implements Choice {}

    record Quit(boolean interrupted) implements Choice {}
  }

  /** Shows the view and asks until something is chosen; the end of the input quits. */
  public static Choice ask(List<Item> items, LineSource in, PrintWriter out) throws IOException {
    out.println("quarterturn: setting up a fretted instrument, one safe turn at a time.");
    out.println("It does not replace a qualified repairer. Local rules come first.");
    out.println();
    list(items, out);
    while (true) {
      String typed;
      try {
        typed =
            in.readLine(
                "What would you like to do? ", List.of("start", "rehearse", "watch", "quit"));
      } catch (LineSource.Interrupted e) {
        return new Choice.Quit(true);
      }
      if (typed == null) {
        return new Choice.Quit(false);
      }
      Choice choice = choice(typed.strip().toLowerCase(Locale.ROOT), items);
      if (choice != null) {
        return choice;
      }
      out.println("Type a number from the list, start, rehearse, watch, or quit.");
    }
  }

  private static void list(List<Item> items, PrintWriter out) {
    int number = 1;
    if (items.isEmpty()) {
      out.println("There is no unfinished session.");
    } else {
      out.println("Unfinished sessions:");
      for (Item item : items) {
        out.println("  " + number++ + "  " + item.what() + ". " + item.due());
      }
    }
    out.println("  " + number + "  Start neck relief (or type: start)");
    out.println("  " + (number + 1) + "  Rehearse on a simulated neck (or type: rehearse)");
    out.println("  " + (number + 2) + "  Watch a rehearsal that plays by itself (or type: watch)");
    out.println("  " + (number + 3) + "  Quit (or type: quit)");
    out.println();
  }

  private static @Nullable Choice choice(String typed, List<Item> items) {
    int size = items.size();
    if (typed.equals("quit") || typed.equals("q") || typed.equals(String.valueOf(size + 4))) {
      return new Choice.Quit(false);
    }
    if (typed.equals("rehearse") || typed.equals(String.valueOf(size + 2))) {
      return new Choice.Rehearse(false);
    }
    if (typed.equals("watch") || typed.equals(String.valueOf(size + 3))) {
      return new Choice.Rehearse(true);
    }
    if (typed.equals("start") || typed.equals("s") || typed.equals(String.valueOf(size + 1))) {
      return new Choice.Start();
    }
    for (int i = 0; i < size; i++) {
      if (typed.equals(String.valueOf(i + 1)) || typed.equals(items.get(i).name())) {
        return new Choice.Resume(items.get(i).name());
      }
    }
    return null;
  }
}
