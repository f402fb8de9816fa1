package quarterturn.session.store;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Guide;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Question;
import quarterturn.session.YesOrNo;
import quarterturn.session.store.HomeDialogue.Choice;
import quarterturn.session.store.HomeDialogue.Further;
import quarterturn.session.store.HomeDialogue.Item;

/** The pages of the home view: what each of them lists. */
public final class HomePages {
  static final String DISCARD = "discard";

  private static final List<String> GREETING =
      List.of(
          "quarterturn: setting up a fretted instrument, one safe turn at a time.",
          "It does not replace a qualified repairer. Local rules come first.");
  private static final String ASKS = "What would you like to do?";
  private static final String REHEARSE =
      "Nothing can break, and at the end you see the neck as it really was.";
  private static final String BEGIN = "Begin";
  private static final String INSTRUMENTS = "Your instruments";
  private static final String OWN = "Your own procedures";
  private static final String MORE = "More";
  private static final String WORDS = "Words, and what you need";

  private final List<String> greeting;
  private final List<Item> begun;
  private final Results results;
  private final List<OwnProcedure> own;
  private final List<String> instruments;
  private final Map<String, String> tickets;

  HomePages(
      List<String> said,
      List<Item> begun,
      Results results,
      List<OwnProcedure> own,
      List<String> instruments,
      Map<String, String> tickets) {
    this.greeting = Stream.concat(GREETING.stream(), said.stream()).toList();
    this.begun = new ArrayList<>(begun);
    this.results = results;
    this.own = own;
    this.instruments = instruments;
    this.tickets = Map.copyOf(tickets);
  }

  /**
   * A page.
   *
   * @param items what can be chosen; none where it only shows lines
   * @param help what may be typed
   */
  record Page(String title, List<String> lines, String asks, List<Item> items, String help) {
    boolean shows() {
      return items.isEmpty();
    }

    Question question() {
      String entered = marks() ? asks + " [" + (marked() + 1) + "]" : asks;
      return shows()
          ? new Question.Show(title, lines)
          : new Question.Choose(
              title,
              lines,
              entered,
              help,
              items.stream().map(Item::option).toList(),
              false,
              marked());
    }

    /** The first session that can go on now; else the first option. */
    int marked() {
      for (int i = 0; i < items.size(); i++) {
        if (items.get(i).choice() instanceof Choice.Resume && !items.get(i).waits()) {
          return i;
        }
      }
      return 0;
    }

    /** Whether Enter alone goes on with a session. */
    boolean marks() {
      return !shows() && items.get(marked()).choice() instanceof Choice.Resume;
    }

    /** The choice of a number or a name, or null; of the same names the program's own wins. */
    @Nullable Choice listed(String wish) {
      if (wish.matches("[1-9]\\d{0,3}") && Integer.parseInt(wish) <= items.size()) {
        return items.get(Integer.parseInt(wish) - 1).choice();
      }
      String name = wish.equals("s") ? "start" : wish.equals("q") ? "quit" : wish;
      return Stream.of(false, true)
          .flatMap(theirs -> items.stream().filter(item -> theirs(item) == theirs))
          .filter(item -> name.equals(item.option().name()))
          .map(Item::choice)
          .findFirst()
          .orElse(null);
    }

    /** Whether an option has a name that the user gave. */
    private static boolean theirs(Item item) {
      String group = item.option().group();
      return !group.equals(BEGIN) && !group.equals(MORE) && !group.isEmpty();
    }
  }

  Page home() {
    List<Item> items = new ArrayList<>(begun);
    items.addAll(offered(null));
    own.forEach(one -> items.add(new Item(one.option(own, OWN), begin(one.id(), null))));
    for (String name : instruments) {
      items.add(item(name, label(name), "", INSTRUMENTS, new Further.Instrument(name)));
    }
    items.add(
        item(
            "rehearse",
            "Practise on a simulated neck",
            REHEARSE,
            MORE,
            new Choice.Rehearse(false)));
    items.add(
        item(
            "watch",
            "Watch a session that plays by itself",
            "See how it is done.",
            MORE,
            new Choice.Rehearse(true)));
    String done = "Every session, and the history of each instrument.";
    items.add(item("history", "What was done", done, MORE, new Further.Records()));
    if (!sessions().isEmpty()) {
      String kept = "It is kept, and its turns still count.";
      items.add(item(DISCARD, "Discard a session", kept, MORE, new Further.Discards()));
    }
    items.add(item("words", WORDS, "What each word means.", MORE, new Further.Guides()));
    items.add(item("quit", "Quit", "", MORE, new Choice.Quit()));
    return new Page("", greeting, ASKS, items, help(items));
  }

  private String label(String instrument) {
    String ticket = tickets.get(instrument);
    return ticket == null ? instrument : instrument + ", ticket " + ticket;
  }

  private static String help(List<Item> items) {
    List<String> names =
        items.stream()
            .filter(item -> !Page.theirs(item))
            .map(item -> item.option().name())
            .toList();
    return "Type a number from the list, "
        + String.join(", ", names).replaceAll(", (?=quit$)", " or ")
        + "; or a procedure and one of your instruments, and technician for short texts.";
  }

  /** The options to begin a procedure of the program, the usual one first. */
  private List<Item> offered(@Nullable String instrument) {
    List<Item> out = new ArrayList<>();
    for (Results.Offer offer : results.shown()) {
      String name = out.isEmpty() ? "start" : offer.procedure();
      Choice choice = begin(offer.procedure(), instrument);
      out.add(item(name, offer.start(), offer.about(), BEGIN, choice));
    }
    out.add(
        item(
            "stage",
            "One stage alone",
            "A part of a set-up by itself.",
            BEGIN,
            new Further.Stages(instrument)));
    return out;
  }

  Page instrument(String name) {
    List<Item> items = new ArrayList<>(offered(name));
    items.add(item("history", "What was done", "", MORE, new Further.History(name)));
    return page(label(name), List.of(), ASKS, items);
  }

  Page stages(@Nullable String instrument) {
    List<Item> items = new ArrayList<>();
    for (Results.Offer offer : results.stages()) {
      Choice choice = begin(offer.procedure(), instrument);
      items.add(item(offer.procedure(), offer.name(), offer.about(), "", choice));
    }
    return page("One stage alone", List.of(), "Which one?", items);
  }

  Page records() {
    List<Item> items = new ArrayList<>();
    for (String name : instruments) {
      items.add(item(name, name, "", "", new Further.History(name)));
    }
    items.add(item("all", "Every session", "", "", new Further.History(null)));
    return page("What was done", List.of(), "Of what?", items);
  }

  /** What helps beside the steps. */
  Page guides() {
    Guide guide = results.guide();
    List<Item> items =
        List.of(
            guide(
                "words",
                "All words",
                guide.words().stream().sorted(Comparator.comparing(Guide.Entry::name)).toList()),
            guide("needs", "What you need", guide.needs()),
            guide("meanwhile", "May I play it meanwhile?", guide.meanwhile()));
    return page(WORDS, List.of(), "Which?", items);
  }

  private static Item guide(String name, String title, List<Guide.Entry> entries) {
    return item(name, title, "", "", new Further.Entries(title, entries));
  }

  static Page entries(Further.Entries shown) {
    return shown(
        shown.title(),
        shown.entries().stream().map(entry -> entry.name() + ": " + entry.means()).toList());
  }

  Page discards() {
    List<Item> items = new ArrayList<>();
    for (Item one : sessions()) {
      String session = ((Choice.Resume) one.choice()).session();
      Question.Option option = one.option();
      items.add(item(session, option.label(), option.detail(), "", new Further.Discard(session)));
    }
    return page("Discard a session", List.of(), "Which one?", items);
  }

  /**
   * Asks once before a session is discarded.
   *
   * @param standing the state that the session left its instrument in
   */
  public static YesOrNo discarding(String session, String standing) {
    return new YesOrNo(
        "Discard " + session + "?",
        List.of(
            "The instrument stays as it is now: " + standing + ".",
            "The session is kept and marked as discarded. You can't go on with it. What was turned"
                + " in it still counts, and a stop still holds."),
        "Discard it?",
        "Keep it as it is",
        "Discard it");
  }

  /** The last question before a session is discarded, as a page of home. */
  static Page sure(String session, String standing) {
    Question.Choose asked = discarding(session, standing).asked();
    List<Item> items =
        List.of(
            new Item(asked.options().get(0), new Further.Back()),
            new Item(asked.options().get(1), new Further.Discarded(session)));
    return new Page(asked.title(), asked.lines(), asked.asks(), items, asked.help());
  }

  static Page shown(String title, List<String> lines) {
    return new Page(title, lines, "", List.of(), "");
  }

  private static Page page(String title, List<String> lines, String asks, List<Item> items) {
    return new Page(title, lines, asks, items, "Type a number or a name from the list, or back.");
  }

  private List<Item> sessions() {
    return begun.stream().filter(item -> item.choice() instanceof Choice.Resume).toList();
  }

  boolean unfinished(String session) {
    return begun.stream().anyMatch(item -> item.choice().equals(new Choice.Resume(session)));
  }

  /** Lists other sessions, and what else is due; false where they are the same. */
  boolean begun(List<Item> now) {
    boolean other = !begun.equals(now);
    begun.clear();
    begun.addAll(now);
    return other;
  }

  /** Lists a session no more. */
  void without(String session) {
    begun.removeIf(item -> item.choice().equals(new Choice.Resume(session)));
  }

  private static Choice begin(String procedure, @Nullable String instrument) {
    return new Choice.Begin(procedure, instrument, Role.BEGINNER);
  }

  private static Item item(String name, String label, String detail, String group, Choice choice) {
    return new Item(new Question.Option(name, label, detail, group), choice);
  }
}
