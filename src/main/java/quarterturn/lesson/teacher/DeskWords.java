package quarterturn.lesson.teacher;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.lesson.BenchLesson;
import quarterturn.lesson.Direction;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Levels;
import quarterturn.lesson.Order;
import quarterturn.lesson.Spot;
import quarterturn.lesson.Spread;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.Waiting;
import quarterturn.unit.Bracket;
import quarterturn.unit.Dates;
import quarterturn.unit.Decimals;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** The words of a desk, for every face. The value to be read back is never among them. */
public final class DeskWords {
  private static final int LONGEST_NAME = 50;

  private DeskWords() {}

  /** The students of a bench, "Ana, Ben", or that nobody is there. */
  public static String who(BenchLesson bench) {
    return bench.students().isEmpty() ? "nobody" : names(bench.students());
  }

  private static String names(List<String> names) {
    return names.stream().map(Printable::of).collect(Collectors.joining(", "));
  }

  /** Where a bench is, "Measure: relief on the lowest string", or that it has not begun. */
  public static String where(Sight sight, BenchLesson bench) {
    Spot spot = bench.spot();
    if (spot == null) {
      return "not begun";
    }
    String what = sight.what(spot.key());
    // What is long, or has values of its own, is no name of a step.
    boolean named = what.length() <= LONGEST_NAME && !what.contains("...");
    return Printable.of(named ? spot.part() + ": " + what : spot.part());
  }

  /** How a bench stands: "STOPPED: It creaked", "waits for predictions of Ben", "works". */
  public static String stands(DeskView.Row row) {
    Waiting waiting = row.waiting();
    String what = Printable.of(waiting.what());
    return switch (waiting.kind()) {
      case STOPPED -> "STOPPED" + what.substring("stopped".length());
      case HELD ->
          row.releases().get(0).kind() == Keep.Kind.TEACHER
              ? "HELD by the teacher: " + what
              : "HOLD POINT: " + what;
      case PREDICTING, READING, THINKING -> "waits for " + what + " of " + names(waiting.who());
      case WORKING -> "works";
      case OVER -> what;
    };
  }

  /** When a bench was last heard of; empty where it was left in order. */
  public static String heard(Sight sight, DeskView.Row row) {
    Heard heard = sight.heard().get(row.bench().bench());
    if (heard == null || row.bench().gone()) {
      return "";
    }
    String lasting = lasting(heard.ago());
    if (!heard.ever()) {
      return heard.silent() ? "not heard of since this desk opened" : "";
    }
    return heard.silent() ? "not heard of for " + lasting : "heard " + lasting + " ago";
  }

  private static String lasting(Duration time) {
    long seconds = Math.max(0, time.toSeconds());
    return seconds < 60 ? seconds + " s" : seconds / 60 + " min";
  }

  /** How a bench stands, and for how long. */
  public static String standsFor(DeskView.Row row) {
    Waiting waiting = row.waiting();
    String lasts =
        waiting.howLong().toSeconds() < 60
            ? ", for less than a minute"
            : ", for " + Dates.lasting(waiting.howLong());
    return stripped(stands(row)) + (waiting.since() == null ? "" : lasts);
  }

  /** How a bench stands, and whether it was released and has not looked at that yet. */
  public static String standsFor(Sight sight, DeskView.Row row) {
    boolean given = !row.releases().isEmpty() && sight.toRelease(row).isEmpty();
    return standsFor(row) + (given ? " (released; it has not looked yet)" : "");
  }

  /** A text without a full stop at its end, so that a comma can follow. */
  private static String stripped(String text) {
    return text.endsWith(".") ? text.substring(0, text.length() - 1) : text;
  }

  /** One bench in a sentence. */
  public static String sentence(Sight sight, DeskView.Row row) {
    String at = " (" + who(row.bench()) + "; " + where(sight, row.bench()) + "): ";
    String silent = sight.silent(row) ? "; " + heard(sight, row) : "";
    return Called.name(row) + at + standsFor(sight, row) + silent + ".";
  }

  /** Where each student of a bench stands. */
  public static List<String> levels(BenchLesson bench) {
    List<String> out = new ArrayList<>();
    new TreeMap<>(bench.levels())
        .forEach(
            (student, standing) ->
                out.add(
                    Printable.of(student)
                        + (bench.students().contains(student) ? ": " : " (gone): ")
                        + level(standing)));
    return out;
  }

  public static String level(Levels.Standing standing) {
    return standing.level().words() + (standing.frozen() ? ", kept so by the teacher" : "");
  }

  /** A desk's name and its order: "desk: release RED". */
  public static String order(Sight sight, DeskView.Given given) {
    String to =
        given.answers().size() == 1
            ? called(sight, given.answers().keySet().iterator().next())
            : "all";
    Order order = given.order();
    String words =
        order instanceof Order.Release
            ? "release " + to
            : order instanceof Order.Hold hold
                ? "hold " + to + ": " + Printable.of(hold.reason())
                : order instanceof Order.SetLevel set
                    ? Printable.of(set.student())
                        + " at "
                        + to
                        + ": "
                        + (set.level() == null ? "the level as it is" : set.level().words())
                        + (set.frozen() ? ", kept so" : "")
                    : "end the lesson";
    return Printable.of(given.ref().writer()) + ": " + words;
  }

  /** Tells a desk whose release came second who was first, and that nothing is wrong. */
  static String late(Sight sight, DeskView.Given given) {
    String bench = given.answers().keySet().iterator().next();
    DeskView.Row row = sight.row(bench);
    Keep keep =
        row != null && given.order() instanceof Order.Release release
            ? row.bench().keep(release.keeps())
            : null;
    String by =
        keep == null || keep.releasedBy() == null
            ? "already"
            : "by " + Printable.of(keep.releasedBy().writer()) + " just before";
    return called(sight, bench)
        + " was let go on "
        + by
        + ". Your release came second and changes"
        + " nothing.";
  }

  /** The benches' answers to an order: "RED taken; BLUE not seen yet". */
  public static String answers(Sight sight, DeskView.Given given) {
    Map<String, String> answers = new TreeMap<>(given.answers());
    List<String> different = answers.values().stream().distinct().toList();
    return answers.size() > 1 && different.size() == 1
        ? "all " + different.get(0)
        : answers.entrySet().stream()
            .map(e -> called(sight, e.getKey()) + " " + e.getValue())
            .collect(Collectors.joining("; "));
  }

  private static String called(Sight sight, String bench) {
    DeskView.Row row = sight.row(bench);
    return row == null ? Printable.of(bench) : Called.name(row);
  }

  /** What was predicted and read at one step: how far apart first, the mean last. */
  public static List<String> spread(StepSpread spread) {
    List<String> out = new ArrayList<>();
    int ways = spread.directions().values().stream().mapToInt(Integer::intValue).sum();
    int hidden = spread.locked() - Math.max(ways, spread.sizes().size());
    String said =
        Stream.of(ways(spread), spread.sizes().isEmpty() ? "" : sizes(spread))
            .filter(words -> !words.isEmpty())
            .collect(Collectors.joining("; "));
    if (!said.isEmpty()) {
      out.add("Predicted: " + said + ".");
    }
    if (hidden > 0) {
      out.add(
          hidden + (hidden == 1 ? " prediction is" : " predictions are") + " locked and hidden.");
    }
    Spread readings = Spread.of(spread.readings(), spread.readings().size());
    if (readings != null) {
      out.addAll(readings(readings));
    }
    return out;
  }

  private static String ways(StepSpread spread) {
    Map<Direction, Integer> directions = new TreeMap<>(spread.directions());
    return directions.entrySet().stream()
        .map(e -> e.getValue() + " " + e.getKey().words(spread.turn()))
        .collect(Collectors.joining(", "));
  }

  private static String sizes(StepSpread spread) {
    double least = spread.sizes().get(0);
    double most = spread.sizes().get(spread.sizes().size() - 1);
    if (spread.turn()) {
      String from = new Turn(least).toString();
      return least == most ? from : from + " to " + new Turn(most);
    }
    String from = Decimals.plain(least);
    String both = least == most ? from : from + " to " + Decimals.plain(most);
    return (both + " " + spread.unit()).strip();
  }

  /**
   * Lines on the readings of several benches with a neck each, without a verdict on whether one gap
   * explains them all.
   */
  private static List<String> readings(Spread spread) {
    List<String> out = new ArrayList<>();
    String all =
        spread.readings().stream().map(Bracket::toString).collect(Collectors.joining("; "));
    out.add("Read: " + all + ".");
    if (spread.readings().size() > 1) {
      if (spread.extent() != null && spread.extent().bounded()) {
        out.add("They reach from " + spread.extent() + ".");
      }
      List<String> lines = spread.lines();
      out.add(lines.get(lines.size() - 1));
    }
    return out;
  }

  /** The benches in one line: "3 benches: 1 stopped, 1 waits for you". */
  public static String summary(Sight sight) {
    List<DeskView.Row> rows = sight.view().rows();
    if (rows.isEmpty()) {
      return "no bench yet";
    }
    long stopped = count(rows, Waiting.Kind.STOPPED);
    long held = count(rows, Waiting.Kind.HELD);
    String benches = rows.size() + (rows.size() == 1 ? " bench" : " benches");
    String stops = stopped == 0 ? "" : ", " + stopped + " stopped";
    String holds = held == 0 ? "" : ", " + held + (held == 1 ? " waits" : " wait") + " for you";
    long silent = rows.stream().filter(sight::silent).count();
    String unheard = silent == 0 ? "" : ", " + silent + " not heard of";
    String all = sight.ended() ? ", the lesson is over" : ", all done or left";
    String over = sight.over() ? all : sight.ended() ? ", ending" : "";
    return benches + stops + holds + unheard + over;
  }

  private static long count(List<DeskView.Row> rows, Waiting.Kind kind) {
    return rows.stream().filter(r -> r.waiting().kind() == kind).count();
  }
}
