package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Carried.Stop;
import quarterturn.session.Dialogue;
import quarterturn.session.Event;
import quarterturn.session.Neck;
import quarterturn.session.Question;
import quarterturn.session.SessionRecord;
import quarterturn.unit.Dates;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * Asks what is open about other records before a session begins or goes on: whether turns on record
 * are of this instrument, what was turned where a record can't be read, and what a repairer found
 * after a stop. A procedure that turns no rod asks nothing.
 */
public final class OpeningDialogue implements Dialogue {
  private static final String ANOTHER = "another";
  private static final String UNSURE = "not-sure";
  private static final String NONE = "none";
  private static final String TURNED = "turned";
  private static final String NOT_YET = "not-yet";
  private static final String FINDING = "finding";
  private static final String NEW_START = "new-start";

  private static final Pattern TURN = Pattern.compile("(tighten|loosen)(?:ed)?\\s+(.+)");
  private static final int FEWEST_LETTERS = 3;
  private static final int LONGEST = 200;

  private final Beginning beginning;
  private final Dates dates;
  private final Deque<Stage> stages = new ArrayDeque<>();

  /**
   * The answers so far.
   *
   * @param asked the option that words are asked for, or empty
   * @param stopped whether the stops were spoken of
   */
  private record Stage(Opening opening, String asked, boolean stopped) {
    Stage asking(String option) {
      return new Stage(opening, option, stopped);
    }

    Stage with(Opening now) {
      return new Stage(now, "", stopped);
    }

    Stage spoken(Opening now) {
      return new Stage(now, "", true);
    }
  }

  /**
   * A dialogue before its first answer.
   *
   * @param dates how times are shown
   */
  public OpeningDialogue(Beginning beginning, Dates dates) {
    this.beginning = beginning;
    this.dates = dates;
    stages.push(new Stage(beginning.opening(), "", false));
  }

  /** The session to begin or resume, with what was said. */
  public Beginning answered() {
    return beginning.saying(now().opening().said());
  }

  private Stage now() {
    return stages.getFirst();
  }

  @Override
  public Question.@Nullable Asked question() {
    Stage now = now();
    Opening opening = now.opening();
    if (!beginning.turns()) {
      return null;
    }
    if (!now.asked().isEmpty()) {
      List<Records.Unread> unread = opening.unreadOpen();
      return words(now.asked(), unread.isEmpty() ? "" : unread.get(0).file());
    }
    if (opening.whichOpen()) {
      return which(opening);
    }
    List<Records.Unread> unread = opening.unreadOpen();
    if (!unread.isEmpty()) {
      return unread(unread.get(0));
    }
    return now.stopped() || opening.stops().isEmpty() ? null : stopped(opening.stops());
  }

  private Question.Choose which(Opening opening) {
    List<String> lines = new ArrayList<>();
    List<Question.Option> options = new ArrayList<>();
    for (Neck neck : opening.possible()) {
      lines.add(named(neck) + ": " + done(neck, opening));
      options.add(option(name(neck), "This is " + named(neck)));
    }
    lines.add("Until you say that this is another instrument, all of this counts here.");
    options.add(option(ANOTHER, "This is another instrument"));
    options.add(option(UNSURE, "I am not sure: let it all count"));
    return choose("Which instrument is this?", lines, "Which is it?", options);
  }

  private static String name(Neck neck) {
    String instrument = neck.instrument();
    return instrument != null ? instrument : newest(neck).session();
  }

  private static SessionRecord newest(Neck neck) {
    return neck.sessions().get(neck.sessions().size() - 1);
  }

  private String named(Neck neck) {
    return neck.instrument() != null
        ? neck.instrument()
        : "the one without a name of " + dates.day(newest(neck).began());
  }

  /** What was done to a neck's rod, the turns of the last day first. */
  private String done(Neck neck, Opening opening) {
    Limits limits = opening.limits();
    Instant day = opening.now().minus(limits.day());
    List<String> parts = new ArrayList<>();
    for (Event.Past past : neck.turns()) {
      if (past.at().isAfter(day)) {
        String way = past.turn().turns() > 0 ? "tightened " : "loosened ";
        parts.add(way + past.turn() + " at " + dates.minute(past.at()));
      }
    }
    double net = neck.counted().stream().mapToDouble(past -> past.turn().turns()).sum();
    String way = net > 0 ? " tighter" : " looser";
    parts.add("in all " + (net == 0 ? "as found" : new Turn(net) + way + " than found"));
    neck.stops().forEach(stop -> parts.add("stopped: " + stop.outcome()));
    return String.join("; ", parts) + ".";
  }

  private Question.Choose unread(Records.Unread one) {
    List<Question.Option> options = new ArrayList<>();
    options.add(option(NONE, "The rod was not turned in what is lost"));
    options.add(option(TURNED, "It was turned, and I know how far"));
    if (one.owner() == null) {
      options.add(option(ANOTHER, "That record is of another instrument"));
    }
    options.add(option(UNSURE, "I don't know"));
    List<String> lines =
        List.of(
            "Session file " + one.file() + ": " + one.why(),
            "Until you say what you know of it, the day's turns count as used up, and the rod as"
                + " turned by an unknown amount.");
    return choose("A record that can't be read", lines, "What do you know?", options);
  }

  private Question.Choose stopped(List<Stop> stops) {
    List<String> lines = new ArrayList<>();
    for (Stop stop : stops) {
      lines.add(dates.minute(stop.at()) + ", " + stop.session() + ": " + stop.why());
    }
    lines.add(
        "The rod is not turned in any session until a qualified repairer's finding is on record.");
    List<Question.Option> options = new ArrayList<>();
    options.add(option(NOT_YET, "Not yet: go on without turning the rod"));
    options.add(option(FINDING, "A repairer has looked at it since"));
    if (stops.stream().allMatch(OpeningDialogue::counted)) {
      options.add(option(NEW_START, "Count anew: the rod is taken as found where it stands now"));
    }
    return choose("The work on the rod was stopped", lines, "What is new?", options);
  }

  /** Whether only the count of the turns stopped the work, and no sign of the rod or the neck. */
  private static boolean counted(Stop stop) {
    return stop.outcome().equals(Opening.UNKNOWN) || stop.outcome().equals(Opening.LIMIT);
  }

  private static Question.Choose choose(
      String title, List<String> lines, String asks, List<Question.Option> options) {
    List<String> names = options.stream().map(Question.Option::name).toList();
    return new Question.Choose(
        title, lines, asks, "Type a number from the list, or " + String.join(", ", names), options);
  }

  private static Question.Option option(String name, String label) {
    return new Question.Option(name, label, "", "");
  }

  private static Question.Words words(String asked, String file) {
    return switch (asked) {
      case TURNED ->
          new Question.Words(
              "A record that can't be read",
              List.of(file),
              "How far?",
              "For example: tighten 1/8, or loosen 1/4");
      case FINDING ->
          new Question.Words(
              "A repairer's finding",
              List.of(),
              "What did the repairer find or do?",
              "One line, for the record.");
      default ->
          new Question.Words(
              "A new start",
              List.of(),
              "Why does the count begin anew?",
              "One line, for the record.");
    };
  }

  @Override
  public Taken take(String typed) {
    Question.Asked question = question();
    String text = typed.strip();
    Stage now = now();
    if (question instanceof Question.Choose choose) {
      stages.push(chosen(now, option(choose, text)));
    } else {
      stages.push(worded(now, text));
    }
    return Taken.SILENTLY;
  }

  private static String option(Question.Choose choose, String typed) {
    List<String> names = choose.options().stream().map(Question.Option::name).toList();
    if (typed.matches("[1-9]\\d?") && Integer.parseInt(typed) <= names.size()) {
      return names.get(Integer.parseInt(typed) - 1);
    }
    if (!names.contains(typed)) {
      throw new NotUnderstoodException(choose.help());
    }
    return typed;
  }

  private static Stage chosen(Stage now, String option) {
    Opening opening = now.opening();
    if (opening.whichOpen()) {
      return now.with(which(opening, option));
    }
    List<Records.Unread> unread = opening.unreadOpen();
    if (unread.isEmpty()) {
      return option.equals(NOT_YET) ? now.spoken(opening) : now.asking(option);
    }
    Records.Unread one = unread.get(0);
    return switch (option) {
      case TURNED -> now.asking(option);
      case NONE -> now.with(opening.with(said(one, Answer.TURNED, Turn.NONE)));
      case ANOTHER -> now.with(opening.with(said(one, Answer.ANOTHER, null)));
      default -> now.with(opening.with(said(one, Answer.UNSURE, null)));
    };
  }

  /** One neck is chosen as the same, and the rest is asked about anew; or all are said alike. */
  private static Opening which(Opening opening, String option) {
    Opening now = opening;
    for (Neck neck : opening.possible()) {
      if (option.equals(UNSURE) || option.equals(ANOTHER) || option.equals(name(neck))) {
        Answer answer =
            option.equals(UNSURE)
                ? Answer.UNSURE
                : option.equals(ANOTHER) ? Answer.ANOTHER : Answer.SAME;
        SessionRecord newest = newest(neck);
        now = now.with(new Said(newest.last(), newest.session(), answer, null, null));
      }
    }
    return now;
  }

  private static Said said(Records.Unread one, Answer answer, @Nullable Turn turn) {
    return new Said(one.at(), one.file(), answer, turn, null);
  }

  private static Stage worded(Stage now, String text) {
    Opening opening = now.opening();
    if (now.asked().equals(TURNED)) {
      return now.with(
          opening.with(
              said(opening.unreadOpen().get(0), Answer.TURNED, turn(text, opening.limits()))));
    }
    Answer answer = now.asked().equals(FINDING) ? Answer.FINDING : Answer.NEW_START;
    return now.spoken(opening.anew(answer, line(text)));
  }

  private static Turn turn(String typed, Limits limits) {
    Matcher found = TURN.matcher(typed.toLowerCase(Locale.ROOT));
    Turn turn = found.matches() ? Turn.parse(found.group(2)) : Turn.NONE;
    if (turn.turns() <= 0 || !limits.mostReported().atLeast(turn)) {
      throw new NotUnderstoodException(
          "type which way and how far in all, at most "
              + limits.mostReported()
              + ", for example: tighten 1/8");
    }
    return found.group(1).equals("tighten") ? turn : turn.opposite();
  }

  private static String line(String typed) {
    if (typed.codePoints().filter(Character::isLetter).count() < FEWEST_LETTERS
        || typed.length() > LONGEST
        || !typed.equals(Printable.of(typed))) {
      throw new NotUnderstoodException(
          "type it in a few words, on one line of at most " + LONGEST + " characters");
    }
    return typed;
  }

  @Override
  public boolean back() {
    if (stages.size() == 1) {
      return false;
    }
    stages.pop();
    return true;
  }
}
