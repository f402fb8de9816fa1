package quarterturn.lesson.teacher;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Level;
import quarterturn.lesson.Ref;
import quarterturn.lesson.Value;
import quarterturn.session.Dialogue;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/**
 * A teacher's orders at a desk, a line each, and what is asked where an order needs more. One
 * thread may ask for news while another gives an order.
 */
public final class DeskDialogue implements Dialogue {
  private static final List<String> WORDS =
      List.of(
          "show", "release", "hold", "level", "freeze", "thaw", "spread", "missed", "orders",
          "sheets", "end", "help");

  private static final List<String> HELP =
      List.of(
          "show: every bench, stops first, then who waits longest.",
          "show RED: one bench: when it was heard, what keeps it, levels.",
          "release RED 0.30 to 0.35: lets RED go on; the value is what the bench reads to you.",
          "release RED: where nothing is read back: a stop, or a hold of a desk.",
          "release all: lets go on what desks hold; stops and hold points stay.",
          "hold RED reason: holds RED until it is released. hold all reason: every bench.",
          "level ANNA own: sets how much ANNA is shown: worked, last-missing, two-missing or own."
              + " level RED ANNA own where two are called so.",
          "freeze ANNA: keeps ANNA's level from rising and falling. thaw ANNA: lets it again.",
          "spread: predictions and readings, by string and in the order of time.",
          "missed RED: what comes back next time for those at RED; asks what to change.",
          "orders: what desks have ordered, and which bench has taken it.",
          "sheets: writes the sheets as things stand.",
          "end: ends the lesson; asks first, and writes the sheets.");

  private final Desk desk;
  private final Question orders;
  private Sight shown;
  private List<String> said = List.of();
  private @Nullable Asking asking;

  /**
   * A question that an order needs answered before it is given.
   *
   * @param stands whether there still is something to ask
   */
  private record Asking(Question question, Predicate<Sight> stands, Order order) {}

  /** Gives an order with what was typed, and returns lines on what came of it. */
  private interface Order {
    List<String> with(String typed) throws RefusedException, IOException;
  }

  public DeskDialogue(Desk desk) {
    this.desk = desk;
    this.shown = desk.sight();
    this.orders =
        new Question.Words(
            "The desk \""
                + shown.desk()
                + "\" of the lesson \""
                + Printable.of(shown.plan().title())
                + "\"",
            List.of(),
            "desk",
            "Type help for what can be typed.");
  }

  @Override
  public synchronized Question question() {
    return asking == null ? orders : asking.question();
  }

  /** The question that an order needs answered, or null where any order is taken. */
  public synchronized @Nullable Question asked() {
    return asking == null ? null : asking.question();
  }

  @Override
  public List<String> words() {
    return WORDS;
  }

  @Override
  public synchronized boolean back() {
    boolean some = asking != null;
    asking = null;
    return some;
  }

  /** The sight of the lesson that has been told of. */
  public synchronized Sight shown() {
    return shown;
  }

  /**
   * Looks at the folder once more and returns what is new since the last telling, the most pressing
   * first.
   */
  public synchronized List<String> news() {
    Sight now = desk.look();
    List<String> news = new ArrayList<>(DeskNews.between(shown, now));
    news.removeAll(said);
    shown = now;
    said = List.of();
    if (asking != null && !asking.stands().test(now)) {
      asking = null;
    }
    return news;
  }

  /** Lines on how every bench stands. */
  public synchronized List<String> show() {
    return DeskLists.show(shown);
  }

  /** Leaves the desk and returns what to say at the end. */
  public String leave() {
    return desk.leave();
  }

  @Override
  public synchronized Taken take(String text) throws RefusedException {
    Asking now = asking;
    Taken taken = given(now == null ? this::order : now.order(), text);
    if (asking == now) {
      asking = null;
    }
    return taken;
  }

  private Taken given(Order order, String typed) throws RefusedException {
    try {
      said = order.with(typed.strip());
      return new Taken("", said);
    } catch (IOException | NotUnderstoodException e) {
      throw new RefusedException("Not done: " + e.getMessage() + ".");
    }
  }

  private List<String> order(String typed) throws RefusedException, IOException {
    int end = typed.indexOf(' ') < 0 ? typed.length() : typed.indexOf(' ');
    String rest = typed.substring(end).strip();
    List<DeskView.Row> rows = desk.look().view().rows();
    return switch (typed.substring(0, end).toLowerCase(Locale.ROOT)) {
      case "", "show" -> show(rows, rest);
      case "release" -> release(rows, rest);
      case "hold" -> hold(rows, rest);
      case "level" -> level(rows, rest, null);
      case "freeze" -> level(rows, rest, true);
      case "thaw" -> level(rows, rest, false);
      case "spread" -> DeskLists.spread(desk.sight());
      case "missed" -> missed(Called.bench(rows, rest).row()).told();
      case "orders" -> DeskLists.orders(desk.sight());
      case "sheets" -> List.of(desk.sheets());
      case "end" -> end();
      case "help", "?" -> HELP;
      default ->
          throw new RefusedException(
              "\""
                  + Printable.of(typed.substring(0, end))
                  + "\" is no order; help says what there is.");
    };
  }

  private List<String> show(List<DeskView.Row> rows, String bench) throws RefusedException {
    DeskView.Row one = bench.isEmpty() ? null : Called.bench(rows, bench).row();
    List<String> out = new ArrayList<>(news());
    out.addAll(one == null ? show() : DeskLists.bench(shown, one));
    return out;
  }

  private List<String> release(List<DeskView.Row> rows, String rest)
      throws RefusedException, IOException {
    if (rest.equalsIgnoreCase("all")) {
      return List.of(desk.releaseAll());
    }
    Called.Bench called = Called.bench(rows, rest);
    Keep keep = first(desk.sight(), called.row().bench().bench()).orElse(null);
    if (called.rest().isEmpty() && keep != null && !(keep.value() instanceof Value.None)) {
      return release(called.row()).told();
    }
    return List.of(desk.release(called.row().bench().bench(), called.rest(), shown));
  }

  /** The first thing that a release of a bench would release, if there is any. */
  private static Optional<Keep> first(Sight sight, String bench) {
    return Optional.ofNullable(sight.row(bench)).stream()
        .flatMap(row -> sight.toRelease(row).stream())
        .findFirst();
  }

  /** Asks the question whose answer releases a bench. */
  public synchronized Taken release(DeskView.Row row) throws RefusedException {
    String bench = row.bench().bench();
    Keep keep = first(desk.sight(), bench).orElse(null);
    if (keep == null) {
      // The desk says why.
      return given(none -> List.of(desk.release(bench, none, shown)), "");
    }
    Ref ref = keep.ref();
    asking =
        new Asking(
            releasing(row, keep),
            // What was asked to be let go on is never another thing under the teacher's fingers.
            sight -> first(sight, bench).map(Keep::ref).equals(Optional.of(ref)),
            answer -> List.of(desk.release(bench, answer, shown)));
    return Taken.SILENTLY;
  }

  private Question releasing(DeskView.Row row, Keep keep) {
    String title = Called.name(row) + ": Let it go on";
    List<String> lines = new ArrayList<>(List.of("Kept by " + DeskLists.what(keep) + "."));
    int more = desk.sight().toRelease(row).size() - 1;
    if (more > 0) {
      lines.add("After it, " + more + " more will keep it.");
    }
    if (keep.value() instanceof Value.None) {
      return new Question.Show(title, lines, "Look at the bench. When it may go on, press Enter.");
    }
    lines.add(
        "Have the bench read it to you: "
            + ReadBack.kind(keep.value())
            + ". Type what you hear, for example "
            + ReadBack.example(keep.value())
            + ".");
    return new Question.Words(title, lines, "What it reads", "It must agree with the bench's own.");
  }

  private List<String> hold(List<DeskView.Row> rows, String rest)
      throws RefusedException, IOException {
    String first = rest.split(" ", 2)[0];
    boolean all = first.equalsIgnoreCase("all");
    DeskView.Row row = all ? null : Called.bench(rows, rest).row();
    String reason = all ? rest.substring(first.length()) : Called.bench(rows, rest).rest();
    return reason.isBlank()
        ? hold(row).told()
        : List.of(desk.hold(row == null ? null : row.bench().bench(), reason));
  }

  /**
   * Asks for the reason to hold a bench.
   *
   * @param row null for all of them
   */
  public synchronized Taken hold(DeskView.@Nullable Row row) {
    asking =
        new Asking(
            new Question.Words(
                row == null ? "Hold every bench" : Called.name(row) + ": Hold the bench",
                List.of(
                    (row == null ? "Every" : "The")
                        + " bench waits until you let it go on. Say why, in a few words."),
                "Why",
                "The bench shows it."),
            sight -> true,
            reason -> List.of(desk.hold(row == null ? null : row.bench().bench(), reason)));
    return Taken.SILENTLY;
  }

  private List<String> level(List<DeskView.Row> rows, String rest, @Nullable Boolean frozen)
      throws RefusedException, IOException {
    Called.Student called = Called.student(rows, rest);
    boolean stays = frozen != null && called.rest().isEmpty();
    Level level = stays ? null : Level.of(called.rest());
    return List.of(desk.level(called.row().bench().bench(), called.name(), level, frozen));
  }

  /** Sets where a student stands, as {@link Desk#level} does. */
  public synchronized Taken level(
      DeskView.Row row, String student, @Nullable Level level, @Nullable Boolean frozen)
      throws RefusedException {
    return given(none -> List.of(desk.level(row.bench().bench(), student, level, frozen)), "");
  }

  /** Lists what comes back for those at a bench, and asks what to change. */
  public synchronized Taken missed(DeskView.Row row) throws RefusedException {
    String called = Called.name(row);
    ComingBack back = new ComingBack(desk, called, desk.asked(row.bench().bench()));
    if (back.asked().isEmpty()) {
      return new Taken("", List.of("Nothing was asked at " + called + " yet."));
    }
    asking = new Asking(back.question(), sight -> true, back::change);
    return Taken.SILENTLY;
  }

  private List<String> end() throws RefusedException, IOException {
    Sight sight = desk.sight();
    if (sight.ended()) {
      // The desk says so.
      return List.of(desk.end());
    }
    List<String> lines = new ArrayList<>();
    lines.add("The lesson ends at every bench, and no desk can take it back.");
    lines.add("Each bench leaves its instrument in order; then the sheets are written.");
    for (DeskView.Row row : sight.view().rows()) {
      lines.add(Called.name(row) + ": " + DeskWords.standsFor(row));
    }
    asking =
        new Asking(
            Question.Choose.sure(
                "End the lesson?", lines, "Type yes to end it", "Anything else lets it go on."),
            now -> true,
            answer -> List.of(answer.equalsIgnoreCase("yes") ? desk.end() : "The lesson goes on."));
    return List.of();
  }
}
