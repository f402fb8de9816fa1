package quarterturn.session.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.InWindow;
import quarterturn.session.Carried.Stop;
import quarterturn.session.Event;
import quarterturn.session.Neck;
import quarterturn.session.Question;
import quarterturn.session.SessionRecord;
import quarterturn.session.clock.ClockDoubt;
import quarterturn.unit.Dates;
import quarterturn.unit.Turn;

/**
 * The questions of an {@link OpeningDialogue}, in words, and the names of their options.
 *
 * @param dates how times are shown
 */
record OpeningQuestions(Dates dates) {
  static final String ANOTHER = "another";
  static final String UNSURE = "not-sure";
  private static final String SLACK =
      "Leave the strings slack. Nothing is begun before a qualified repairer's finding is on"
          + " record.";

  static final String PASSED = "passed";
  static final String NOT_PASSED = "not-passed";
  static final String CLOCK = "clock";
  static final String NONE = "none";
  static final String TURNED = "turned";
  static final String NOT_YET = "not-yet";
  static final String LEAVE = "leave";
  static final String FINDING = "finding";
  static final String NEW_START = "new-start";

  /** Whether the clock or the record is wrong; the careful answer stands first. */
  Question.Choose clock(ClockDoubt doubt, Instant now) {
    String record = "The last record is of " + dates.minute(doubt.last()) + ".";
    String clock = "The clock says " + dates.minute(now);
    if (doubt.behind()) {
      return choose(
          "The clock and the records",
          List.of(record, clock + ", which is earlier. One of them is wrong."),
          "Which is right?",
          List.of(
              option(LEAVE, "The clock is wrong: stop here, and set it first"),
              option(CLOCK, "The clock is right: go on")));
    }
    return choose(
        "The clock and the records",
        List.of(record, clock + ".", "A wait or a day's turning would be over by now."),
        "Has so much time gone by?",
        List.of(
            option(NOT_PASSED, "No, or I am not sure: the waiting begins anew"),
            option(PASSED, "Yes, so much time has gone by")));
  }

  /** Which of the necks that may be this one it is. */
  Question.Choose which(Opening opening) {
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

  /** The name by which a neck is chosen. */
  static String name(Neck neck) {
    String instrument = neck.instrument();
    return instrument != null ? instrument : newest(neck).session();
  }

  static SessionRecord newest(Neck neck) {
    return neck.sessions().get(neck.sessions().size() - 1);
  }

  private String named(Neck neck) {
    return neck.instrument() != null
        ? neck.instrument()
        : "the one without a name of " + dates.day(newest(neck).began());
  }

  /** What was done to a neck's rod, the turns of the last day first. */
  private String done(Neck neck, Opening opening) {
    Instant day = opening.now().minus(opening.limits().day());
    List<String> parts = new ArrayList<>();
    for (Event.Past past : neck.turns()) {
      if (past.when().isAfter(day)) {
        String way = past.turn().turns() > 0 ? "tightened " : "loosened ";
        parts.add(way + past.turn() + " at " + dates.minute(past.at()));
      }
    }
    double net = neck.counted().stream().mapToDouble(past -> past.turn().turns()).sum();
    String way = net > 0 ? " tighter" : " looser";
    parts.add("in all " + (net == 0 ? "as found" : new Turn(net) + way + " than found"));
    neck.stops().forEach(stop -> parts.add("stopped: " + InWindow.shown(stop.outcome())));
    return String.join("; ", parts) + ".";
  }

  /** What was turned in the part of a record that can't be read. */
  static Question.Choose unread(Records.Unread one) {
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

  /**
   * What is new since the work on the rod was stopped.
   *
   * @param slack whether nothing is begun until a finding is on record
   */
  Question.Choose stopped(List<Stop> stops, boolean slack) {
    List<String> lines = new ArrayList<>();
    for (Stop stop : stops) {
      lines.add(dates.minute(stop.at()) + ", " + stop.session() + ": " + stop.why());
    }
    lines.add(slack ? SLACK : Stop.HOLDS);
    List<Question.Option> options = new ArrayList<>();
    options.add(
        slack
            ? option(LEAVE, "Not yet: leave the strings slack, and stop here")
            : option(NOT_YET, "Not yet: go on, and the rod is not turned"));
    options.add(option(FINDING, "A repairer has looked at it since"));
    if (stops.stream().allMatch(OpeningQuestions::counted)) {
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

  /**
   * The question for words that an option leads to.
   *
   * @param asked the option
   * @param file the record's file, where it is about one
   */
  static Question.Words words(String asked, String file) {
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
}
