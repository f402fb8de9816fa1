package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Results;
import quarterturn.procedure.Role;

/** The home view in plain lines: what is due, unfinished sessions, and what can be started. */
public final class LineHome {
  private LineHome() {}

  /**
   * Something to go on with or to begin.
   *
   * @param name what can be typed in place of its number
   * @param what what and on which instrument
   * @param due when it is due or how it stands, in words
   * @param choice what it leads to
   */
  public record Item(String name, String what, String due, Choice choice) {}

  /** What the person wants. */
  public sealed interface Choice {
    record Resume(String name) implements Choice {}

    /** A procedure, on an instrument that is asked for. */
    record Start(String procedure) implements Choice {}

    /** A procedure on an instrument of the user's. */
    record Begin(String procedure, String instrument, Role role) implements Choice {
      /** Somebody is led through it, since it is due. */
      public Begin(String procedure, String instrument) {
        this(procedure, instrument, Role.BEGINNER);
      }
    }

    /**
     * A simulated neck.
     *
     * @param watch whether it plays by itself
     */
    record Rehearse(boolean watch) implements Choice {}

    record Quit(boolean interrupted) implements Choice {}
  }

  /** What can be begun, the usual procedure first, and the way out. */
  public static List<Item> starts(Results results) {
    List<Item> starts = new ArrayList<>();
    for (Results.Offer offer : results.shown()) {
      String name = starts.isEmpty() ? "start" : offer.procedure();
      Choice choice = new Choice.Start(offer.procedure());
      starts.add(new Item(name, "Start " + offer.start(), "", choice));
    }
    starts.add(
        new Item("rehearse", "Rehearse on a simulated neck", "", new Choice.Rehearse(false)));
    starts.add(
        new Item("watch", "Watch a rehearsal that plays by itself", "", new Choice.Rehearse(true)));
    starts.add(new Item("quit", "Quit", "", new Choice.Quit(false)));
    return starts;
  }

  /**
   * Shows the view and asks until something is chosen; the end of the input quits.
   *
   * @param due the most pressing things, the first one first
   * @param unfinished sessions that are not among them
   * @param results which procedures are offered
   * @param instruments names of the user's own
   */
  public static Choice ask(
      List<Item> due,
      List<Item> unfinished,
      Results results,
      List<String> instruments,
      LineSource in,
      PrintWriter out)
      throws IOException {
    out.println("quarterturn: setting up a fretted instrument, one safe turn at a time.");
    out.println("It does not replace a qualified repairer. Local rules come first.");
    out.println();
    List<Item> starts = starts(results);
    list(due, unfinished, starts, out);
    List<Item> items = Stream.of(due, unfinished, starts).flatMap(List::stream).toList();
    List<String> words = words(items, results, instruments);
    while (true) {
      String typed;
      try {
        typed = in.readLine("What would you like to do? ", words);
      } catch (LineSource.Interrupted e) {
        return new Choice.Quit(true);
      }
      if (typed == null) {
        return new Choice.Quit(false);
      }
      String wish = typed.strip().toLowerCase(Locale.ROOT);
      Choice begin = begin(wish, instruments);
      Choice choice = begin != null ? begin : choice(wish, items);
      if (choice != null) {
        return choice;
      }
      String names = String.join(", ", starts.stream().map(Item::name).toList());
      out.println("Type a number from the list, " + names.replaceAll("(?=quit$)", "or ") + ";");
      out.println("or a procedure and one of your instruments, and technician for short texts.");
    }
  }

  /** What completion offers. */
  private static List<String> words(List<Item> items, Results results, List<String> instruments) {
    List<String> words = new ArrayList<>(List.of(Role.TECHNICIAN.word()));
    results.offers().forEach(offer -> words.add(offer.procedure()));
    items.forEach(item -> words.add(item.name()));
    words.addAll(instruments);
    return words.stream().distinct().toList();
  }

  /** "relief-check blue-bass technician", or null where it is nothing like it. */
  private static @Nullable Choice begin(String typed, List<String> instruments) {
    List<String> words = List.of(typed.split("\\s+"));
    boolean technician = words.size() == 3 && words.get(2).equals(Role.TECHNICIAN.word());
    if ((words.size() != 2 && !technician) || !instruments.contains(words.get(1))) {
      return null;
    }
    return new Choice.Begin(
        words.get(0), words.get(1), technician ? Role.TECHNICIAN : Role.BEGINNER);
  }

  private static void list(
      List<Item> due, List<Item> unfinished, List<Item> starts, PrintWriter out) {
    int number = 1;
    if (!due.isEmpty()) {
      out.println("Due:");
      number = list(due, number, out);
    }
    if (!unfinished.isEmpty()) {
      out.println("Unfinished sessions:");
      number = list(unfinished, number, out);
    } else if (due.stream().noneMatch(item -> item.choice() instanceof Choice.Resume)) {
      out.println("There is no unfinished session.");
    }
    for (Item start : starts) {
      out.println("  " + number++ + "  " + start.what() + " (or type: " + start.name() + ")");
    }
    out.println();
  }

  /** Returns the number after the last one. */
  private static int list(List<Item> items, int from, PrintWriter out) {
    int number = from;
    for (Item item : items) {
      out.println("  " + number++ + "  " + item.what() + ". " + item.due());
    }
    return number;
  }

  /** The program's own words come before the names of what is due. */
  private static @Nullable Choice choice(String typed, List<Item> items) {
    String name = typed.equals("s") ? "start" : typed.equals("q") ? "quit" : typed;
    for (int i = items.size() - 1; i >= 0; i--) {
      if (typed.equals(String.valueOf(i + 1)) || name.equals(items.get(i).name())) {
        return items.get(i).choice();
      }
    }
    return null;
  }
}
