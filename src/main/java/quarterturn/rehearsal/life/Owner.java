package quarterturn.rehearsal.life;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.Limits;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.Question;
import quarterturn.session.journal.Journal;
import quarterturn.unit.Turn;

/**
 * Answers what is open about other records, truly: which instrument it is, what was turned in a
 * record that can't be read, whether a repairer saw it; or says "not sure".
 *
 * @param sessions the folder of the sessions
 */
record Owner(Subject subject, Path sessions, Limits limits, SplittableRandom random) {
  private static final Pattern FILE = Pattern.compile("Session file (.+?): ");

  /** The answer to a question about a session of this owner's instrument. */
  String answer(Question.Asked question) {
    if (question instanceof Question.Choose choose) {
      List<String> names = choose.options().stream().map(Question.Option::name).toList();
      if (names.contains("clock")) {
        return "clock";
      }
      if (names.contains("not-passed")) {
        return "not-passed";
      }
      if (names.contains("finding")) {
        return stopped(names);
      }
      Matcher file = FILE.matcher(choose.lines().get(0));
      return file.find() ? lost(file.group(1), names) : which(names);
    }
    return question.asks().equals("How far?") ? far(question) : "as said at the bench (invented)";
  }

  private String which(List<String> names) {
    if (random.nextInt(6) == 0) {
      return "not-sure";
    }
    for (String name : names) {
      if (name.equals(subject.name()) || subject.sessions().containsKey(name)) {
        return name;
      }
    }
    return "another";
  }

  private String stopped(List<String> names) {
    if (subject.repaired()) {
      return "finding";
    }
    boolean anew = names.contains("new-start") && !subject.history().stopped();
    return anew && random.nextInt(3) > 0 ? "new-start" : names.get(0);
  }

  private String lost(String file, List<String> names) {
    String session = subject.sessionOf(file);
    if (session == null) {
      return names.contains("another") ? "another" : "not-sure";
    }
    List<Subject.Made> lost = lostOf(file, session);
    boolean sign = lost.stream().anyMatch(made -> limits.stopFeels().contains(made.feel()));
    if (sign || lost.size() > 1 || random.nextInt(4) == 0) {
      return "not-sure";
    }
    return lost.isEmpty() ? "none" : "turned";
  }

  /** What was done in a session and can't be read in a file any more. */
  private List<Subject.Made> lostOf(String file, String session) {
    List<Subject.Made> lost = new ArrayList<>(subject.made(session));
    try {
      for (Event.Past past : PastTurns.of(Journal.read(sessions.resolve(file)).events())) {
        lost.stream()
            .filter(made -> made.turn().equals(past.turn()))
            .findFirst()
            .ifPresent(lost::remove);
      }
    } catch (IOException e) {
      return lost;
    }
    return lost;
  }

  /** The one turn that is lost; the question before it named the file. */
  private String far(Question.Asked question) {
    String file = question.lines().get(0);
    String session = subject.sessionOf(file);
    Turn turn = session == null ? Turn.NONE : lostOf(file, session).get(0).turn();
    String size = turn.size().toString().replaceAll(" turns?$", "");
    return turn.turns() > 0 ? "tighten " + size : "loosen " + size;
  }
}
