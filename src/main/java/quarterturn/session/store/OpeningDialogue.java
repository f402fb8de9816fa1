package quarterturn.session.store;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Limits;
import quarterturn.session.Carried.Answer;
import quarterturn.session.Carried.Said;
import quarterturn.session.Dialogue;
import quarterturn.session.Neck;
import quarterturn.session.Question;
import quarterturn.session.SessionRecord;
import quarterturn.session.clock.ClockDoubt;
import quarterturn.unit.Dates;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/**
 * Asks what is open about other records before a session begins or goes on: whether the clock or a
 * record is wrong, whether turns on record are of this instrument, what was turned where a record
 * can't be read, and what a repairer found after a stop. A procedure that turns no rod asks
 * nothing.
 */
public final class OpeningDialogue implements Dialogue {
  private static final Pattern TURN = Pattern.compile("(tighten|loosen)(?:ed)?\\s+(.+)");
  private static final int FEWEST_LETTERS = 3;
  private static final int LONGEST = 200;

  private final Beginning beginning;
  private final OpeningQuestions questions;
  private final Deque<Stage> stages = new ArrayDeque<>();

  /**
   * The answers so far.
   *
   * @param asked the option that words are asked for, or empty
   * @param stopped whether the stops were spoken of
   * @param timed whether the clock was spoken of
   */
  private record Stage(Opening opening, String asked, boolean stopped, boolean timed) {
    Stage asking(String option) {
      return new Stage(opening, option, stopped, timed);
    }

    Stage with(Opening now) {
      return new Stage(now, "", stopped, timed);
    }

    Stage spoken(Opening now) {
      return new Stage(now, "", true, timed);
    }

    Stage timed(Opening now) {
      return new Stage(now, "", stopped, true);
    }
  }

  /**
   * A dialogue before its first answer.
   *
   * @param dates how times are shown
   */
  public OpeningDialogue(Beginning beginning, Dates dates) {
    this.beginning = beginning;
    this.questions = new OpeningQuestions(dates);
    stages.push(new Stage(beginning.opening(), "", false, false));
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
    if (left()) {
      return null;
    }
    ClockDoubt doubt = doubt(now);
    if (doubt != null) {
      return questions.clock(doubt, opening.now());
    }
    if (!(beginning.turns() || slack(opening))) {
      return null;
    }
    if (!now.asked().isEmpty()) {
      List<Records.Unread> unread = opening.unreadOpen();
      return OpeningQuestions.words(now.asked(), unread.isEmpty() ? "" : unread.get(0).file());
    }
    if (opening.whichOpen()) {
      return questions.which(opening);
    }
    List<Records.Unread> unread = opening.unreadOpen();
    if (!unread.isEmpty()) {
      return OpeningQuestions.unread(unread.get(0));
    }
    return now.stopped() || opening.stops().isEmpty()
        ? null
        : questions.stopped(opening.stops(), slack(opening));
  }

  private @Nullable ClockDoubt doubt(Stage now) {
    Opening opening = now.opening();
    boolean turns = beginning.turns();
    return now.timed()
        ? null
        : ClockDoubt.of(
            opening.dated(false),
            opening.dated(true),
            opening.now(),
            opening.limits().clocks(),
            turns || opening.session() != null,
            at -> opening.waits(at) || (turns && opening.turned(at)));
  }

  /** Whether nothing is begun: the strings stay slack, or the clock is to be set first. */
  public boolean left() {
    return now().asked().equals(OpeningQuestions.LEAVE);
  }

  private static boolean slack(Opening opening) {
    return opening.stops().stream()
        .anyMatch(stop -> opening.limits().keptSlack().contains(stop.outcome()));
  }

  @Override
  public Taken take(String typed) {
    Question.Asked question = question();
    String text = typed.strip();
    Stage now = now();
    if (question instanceof Question.Choose choose) {
      ClockDoubt doubt = doubt(now);
      String option = choose.chosen(text);
      stages.push(doubt == null ? chosen(now, option) : timed(now, doubt, option));
    } else {
      stages.push(worded(now, text));
    }
    return Taken.SILENTLY;
  }

  private static Stage timed(Stage now, ClockDoubt doubt, String option) {
    return switch (option) {
      case OpeningQuestions.LEAVE -> now.asking(option);
      case OpeningQuestions.PASSED -> now.timed(now.opening());
      default -> now.timed(now.opening().with(doubt.said()));
    };
  }

  private static Stage chosen(Stage now, String option) {
    Opening opening = now.opening();
    if (opening.whichOpen()) {
      return now.with(which(opening, option));
    }
    List<Records.Unread> unread = opening.unreadOpen();
    if (unread.isEmpty()) {
      return option.equals(OpeningQuestions.NOT_YET) ? now.spoken(opening) : now.asking(option);
    }
    Records.Unread one = unread.get(0);
    return switch (option) {
      case OpeningQuestions.TURNED -> now.asking(option);
      case OpeningQuestions.NONE -> now.with(opening.with(said(one, Answer.TURNED, Turn.NONE)));
      case OpeningQuestions.ANOTHER -> now.with(opening.with(said(one, Answer.ANOTHER, null)));
      default -> now.with(opening.with(said(one, Answer.UNSURE, null)));
    };
  }

  /** One neck is chosen as the same, and the rest is asked about anew; or all are said alike. */
  private static Opening which(Opening opening, String option) {
    Opening now = opening;
    for (Neck neck : opening.possible()) {
      if (option.equals(OpeningQuestions.UNSURE)
          || option.equals(OpeningQuestions.ANOTHER)
          || option.equals(OpeningQuestions.name(neck))) {
        Answer answer =
            option.equals(OpeningQuestions.UNSURE)
                ? Answer.UNSURE
                : option.equals(OpeningQuestions.ANOTHER) ? Answer.ANOTHER : Answer.SAME;
        SessionRecord newest = OpeningQuestions.newest(neck);
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
    if (now.asked().equals(OpeningQuestions.TURNED)) {
      return now.with(
          opening.with(
              said(opening.unreadOpen().get(0), Answer.TURNED, turn(text, opening.limits()))));
    }
    Answer answer =
        now.asked().equals(OpeningQuestions.FINDING) ? Answer.FINDING : Answer.NEW_START;
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
