package quarterturn.session.store;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.unit.NotUnderstoodException;

/** Asks what to do: go on with something due or unfinished, or begin something new. */
public final class HomeDialogue implements Dialogue {
  private static final List<String> GREETING =
      List.of(
          "quarterturn: setting up a fretted instrument, one safe turn at a time.",
          "It does not replace a qualified repairer. Local rules come first.");
  private static final String REHEARSE =
      "Practise without an instrument. Nothing can break, and at the end you see the neck as it"
          + " really was.";

  private static final String BEGIN = "Begin";

  private final List<String> greeting;
  private final List<Item> begun;
  private final List<Item> offered;
  private final List<Item> own;
  private final List<Item> further;
  private final Results results;
  private final List<String> instruments;
  private final Consumer<Choice> proving;
  private @Nullable Choice choice;

  /** An option to go on with or begin something, and the choice it stands for. */
  public record Item(Question.Option option, Choice choice) {}

  /** The person's choice. */
  public sealed interface Choice {
    record Resume(String session) implements Choice {}

    /**
     * The choice to begin a procedure.
     *
     * @param instrument the user's instrument, or null where it is asked for
     */
    record Begin(String procedure, @Nullable String instrument, Role role) implements Choice {}

    /**
     * The choice to rehearse on a simulated neck.
     *
     * @param watch whether the session plays by itself
     */
    record Rehearse(boolean watch) implements Choice {}

    record Quit() implements Choice {}
  }

  /**
   * A dialogue without a choice yet.
   *
   * @param said what the file of settings sets, in a line, or none
   * @param begun what is due, the most pressing first, then other unfinished sessions
   * @param results the matrix of results, whose procedures are offered
   * @param own the user's own procedures
   * @param instruments names of the user's instruments
   * @param proving throws a {@link NotUnderstoodException} saying why a choice can't be had
   */
  public HomeDialogue(
      List<String> said,
      List<Item> begun,
      Results results,
      List<OwnProcedure> own,
      Collection<String> instruments,
      Consumer<Choice> proving) {
    this.greeting = Stream.concat(GREETING.stream(), said.stream()).toList();
    this.begun = List.copyOf(begun);
    this.results = results;
    this.instruments = List.copyOf(instruments);
    this.proving = proving;
    this.offered = offered(results);
    this.own = own.stream().map(one -> new Item(one.option(own, BEGIN), begin(one.id()))).toList();
    this.further = further();
  }

  private static Choice begin(String procedure) {
    return new Choice.Begin(procedure, null, Role.BEGINNER);
  }

  /** The options to begin a procedure of the program, the usual one first. */
  private static List<Item> offered(Results results) {
    List<Item> out = new ArrayList<>();
    for (Results.Offer offer : results.shown()) {
      String name = out.isEmpty() ? "start" : offer.procedure();
      out.add(offered(name, "Start " + offer.start(), offer.about(), begin(offer.procedure())));
    }
    return out;
  }

  /** The options to rehearse and to quit. */
  private static List<Item> further() {
    return List.of(
        offered("rehearse", "Rehearse on a simulated neck", REHEARSE, new Choice.Rehearse(false)),
        offered(
            "watch",
            "Watch a rehearsal that plays by itself",
            "See how it is done.",
            new Choice.Rehearse(true)),
        offered("quit", "Quit", "", new Choice.Quit()));
  }

  private static Item offered(String name, String label, String detail, Choice choice) {
    return new Item(new Question.Option(name, label, detail, BEGIN), choice);
  }

  /** The choice; to quit, where nothing was chosen. */
  public Choice choice() {
    return choice == null ? new Choice.Quit() : choice;
  }

  private List<Item> items() {
    return Stream.of(begun, offered, own, further).flatMap(List::stream).toList();
  }

  @Override
  public Question.@Nullable Choose question() {
    return choice != null
        ? null
        : new Question.Choose(
            "",
            greeting,
            "What would you like to do?",
            help(),
            items().stream().map(Item::option).toList());
  }

  private String help() {
    List<String> names =
        Stream.of(offered, own, further)
            .flatMap(List::stream)
            .map(item -> item.option().name())
            .toList();
    return "Type a number from the list, "
        + String.join(", ", names).replaceAll(", (?=quit$)", " or ")
        + "; or a procedure and one of your instruments, and technician for short texts.";
  }

  @Override
  public List<String> words() {
    Stream<String> names = items().stream().map(item -> item.option().name());
    Stream<String> procedures = results.offers().stream().map(Results.Offer::procedure);
    return Stream.of(names, procedures, instruments.stream(), Stream.of(Role.TECHNICIAN.word()))
        .flatMap(words -> words)
        .distinct()
        .toList();
  }

  @Override
  public Taken take(String typed) {
    String wish = typed.strip().toLowerCase(Locale.ROOT);
    Choice named = named(wish);
    Choice wanted = named != null ? named : listed(wish);
    if (wanted == null) {
      throw new NotUnderstoodException(help());
    }
    proving.accept(wanted);
    choice = wanted;
    return Taken.SILENTLY;
  }

  /**
   * The choice for a typed line such as "relief-check blue-bass technician", or null for any other.
   */
  private @Nullable Choice named(String wish) {
    List<String> words = List.of(wish.split("\\s+"));
    boolean technician = words.size() == 3 && words.get(2).equals(Role.TECHNICIAN.word());
    if ((words.size() != 2 && !technician) || !instruments.contains(words.get(1))) {
      return null;
    }
    return new Choice.Begin(
        words.get(0), words.get(1), technician ? Role.TECHNICIAN : Role.BEGINNER);
  }

  /** The choice of a listed option, or null; the program's own words go before the user's names. */
  private @Nullable Choice listed(String wish) {
    List<Item> items = items();
    if (wish.matches("[1-9]\\d{0,3}") && Integer.parseInt(wish) <= items.size()) {
      return items.get(Integer.parseInt(wish) - 1).choice();
    }
    String name = wish.equals("s") ? "start" : wish.equals("q") ? "quit" : wish;
    return Stream.of(offered, further, own, begun)
        .flatMap(List::stream)
        .filter(item -> name.equals(item.option().name()))
        .map(Item::choice)
        .findFirst()
        .orElse(null);
  }
}
