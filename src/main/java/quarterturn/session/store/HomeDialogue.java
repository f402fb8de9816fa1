package quarterturn.session.store;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Guide;
import quarterturn.procedure.Results;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;

/**
 * Asks what to do: go on with something due or unfinished, begin something new, or look at what was
 * done. What has several answers of its own is a page, from which Esc, typed {@code back}, leads
 * back.
 */
public final class HomeDialogue implements Dialogue {
  private static final String BACK = "back";

  private final Results results;
  private final List<String> instruments;
  private final Consumer<Choice> proving;
  private final Past past;
  private final HomePages pages;
  private final Deque<HomePages.Page> open = new ArrayDeque<>();
  private @Nullable Choice choice;

  /**
   * An option to go on with or begin something, and the choice it stands for.
   *
   * @param waits whether it is a session that waits for a time to come
   */
  public record Item(Question.Option option, Choice choice, boolean waits) {
    public Item(Question.Option option, Choice choice) {
      this(option, choice, false);
    }
  }

  /** What is on record, to look at or to discard. */
  public interface Past {
    /** Every session in a sentence, the newest first. */
    List<String> all() throws IOException;

    /** What there is to go on with now, and what is due; null where that is as it was. */
    default @Nullable List<Item> begun() throws IOException {
      return null;
    }

    /** What was read and turned on an instrument. */
    List<String> history(String instrument) throws IOException, UnreadableException;

    /** The state that an unfinished session left its instrument in. */
    String standing(String session) throws IOException;

    void discard(String session) throws IOException;
  }

  /** The person's choice. */
  public sealed interface Choice
      permits Choice.Resume, Choice.Begin, Choice.Rehearse, Choice.Quit, Further {
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

  /** What a choice leads to within the dialogue. */
  sealed interface Further extends Choice {
    /** What can be done with one instrument. */
    record Instrument(String name) implements Further {}

    /**
     * The stages that can be begun alone.
     *
     * @param instrument the user's instrument, or null where it is asked for
     */
    record Stages(@Nullable String instrument) implements Further {}

    /** The records that can be looked at. */
    record Records() implements Further {}

    /**
     * What was done.
     *
     * @param instrument the user's instrument, or null for every session
     */
    record History(@Nullable String instrument) implements Further {}

    /** The sessions that can be discarded. */
    record Discards() implements Further {}

    /** The question whether to discard a session. */
    record Discard(String session) implements Further {}

    /** The discarding of a session. */
    record Discarded(String session) implements Further {}

    /** What helps beside the steps. */
    record Guides() implements Further {}

    /** The words, what the work needs, or when one may play. */
    record Entries(String title, List<Guide.Entry> entries) implements Further {}

    /** The page before. */
    record Back() implements Further {}
  }

  /**
   * A dialogue without a choice yet.
   *
   * @param said what the file of settings sets, in a line, or none
   * @param begun unfinished sessions, the most pressing first, then what is due
   * @param results the matrix of results, whose procedures are offered
   * @param own the user's own procedures
   * @param instruments names of the user's instruments
   * @param tickets of those that have one, by their names
   * @param proving throws a {@link NotUnderstoodException} saying why a choice can't be had
   */
  public HomeDialogue(
      List<String> said,
      List<Item> begun,
      Results results,
      List<OwnProcedure> own,
      Collection<String> instruments,
      Map<String, String> tickets,
      Consumer<Choice> proving,
      Past past) {
    this.results = results;
    this.instruments = List.copyOf(instruments);
    this.proving = proving;
    this.past = past;
    this.pages = new HomePages(said, begun, results, own, this.instruments, tickets);
    open.push(pages.home());
  }

  /** The choice; to quit, where nothing was chosen. */
  public Choice choice() {
    return choice == null ? new Choice.Quit() : choice;
  }

  @Override
  public @Nullable Question question() {
    return choice != null ? null : open.getFirst().question();
  }

  @Override
  public List<String> words() {
    Stream<String> names = open.getFirst().items().stream().map(item -> item.option().name());
    Stream<String> procedures = results.offers().stream().map(Results.Offer::procedure);
    return Stream.of(
            names, procedures, instruments.stream(), Stream.of(BACK, Role.TECHNICIAN.word()))
        .flatMap(words -> words)
        .distinct()
        .toList();
  }

  @Override
  public boolean lookAgain() throws IOException {
    List<Item> now = open.size() == 1 ? past.begun() : null;
    if (now == null || !pages.begun(now)) {
      return false;
    }
    open.clear();
    open.push(pages.home());
    return true;
  }

  @Override
  public boolean back() {
    boolean some = open.size() > 1;
    if (some) {
      open.pop();
    }
    return some;
  }

  @Override
  public Taken take(String typed) throws RefusedException, IOException {
    HomePages.Page page = open.getFirst();
    String wish = typed.strip().toLowerCase(Locale.ROOT);
    if (page.shows() || (wish.equals(BACK) && open.size() > 1)) {
      back();
      return Taken.SILENTLY;
    }
    if (wish.isEmpty() && page.marks()) {
      wish = String.valueOf(page.marked() + 1);
    }
    Choice named = wish.equals("?") ? new Further.Guides() : named(wish);
    Choice wanted = named != null ? named : page.listed(wish);
    if (wanted == null) {
      throw new NotUnderstoodException(page.help());
    }
    if (wanted instanceof Further further) {
      return go(further);
    }
    proving.accept(wanted);
    choice = wanted;
    return Taken.SILENTLY;
  }

  private Taken go(Further further) throws RefusedException, IOException {
    if (further instanceof Further.Discarded discarded) {
      try {
        past.discard(discarded.session());
      } catch (IOException e) {
        throw new RefusedException(String.valueOf(e.getMessage()));
      }
      pages.without(discarded.session());
      open.clear();
      open.push(pages.home());
      return Taken.briefly("Discarded: " + discarded.session() + ". It is kept, and marked so.");
    }
    if (further instanceof Further.Back) {
      back();
    } else {
      open.push(page(further));
    }
    return Taken.SILENTLY;
  }

  private HomePages.Page page(Further further) throws RefusedException {
    try {
      if (further instanceof Further.Instrument of) {
        return pages.instrument(of.name());
      } else if (further instanceof Further.Stages of) {
        return pages.stages(of.instrument());
      } else if (further instanceof Further.History of) {
        String instrument = of.instrument();
        return instrument == null
            ? HomePages.shown("Every session", past.all())
            : HomePages.shown("History of " + instrument, past.history(instrument));
      } else if (further instanceof Further.Discard of) {
        return HomePages.sure(of.session(), past.standing(of.session()));
      } else if (further instanceof Further.Guides) {
        return pages.guides();
      } else if (further instanceof Further.Entries shown) {
        return HomePages.entries(shown);
      }
      return further instanceof Further.Records ? pages.records() : pages.discards();
    } catch (IOException | UnreadableException e) {
      throw new RefusedException(String.valueOf(e.getMessage()));
    }
  }

  /**
   * The choice for a typed line such as "relief-check blue-bass technician" or "discard SESSION",
   * or null for any other.
   */
  private @Nullable Choice named(String wish) {
    List<String> words = new ArrayList<>(List.of(wish.split("\\s+")));
    boolean technician = words.size() == 3 && words.get(2).equals(Role.TECHNICIAN.word());
    if (words.size() == 2 && words.get(0).equals(HomePages.DISCARD)) {
      return pages.unfinished(words.get(1)) ? new Further.Discard(words.get(1)) : null;
    }
    if ((words.size() != 2 && !technician) || !instruments.contains(words.get(1))) {
      return null;
    }
    return new Choice.Begin(
        words.get(0), words.get(1), technician ? Role.TECHNICIAN : Role.BEGINNER);
  }
}
