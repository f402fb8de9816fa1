package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import quarterturn.lesson.EverySecond;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.lesson.teacher.Sight;
import quarterturn.session.ExitStatus;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/** A lesson's desk in typed lines: what changes is printed, and orders are typed. */
public final class LineDesk {
  private static final Duration LOOK = Duration.ofSeconds(1);
  private static final List<String> HELP =
      List.of(
          "wait 60: waits until a bench needs you, 60 s at most. wait taken: until every order is"
              + " answered. wait over: until every bench has left the lesson.",
          "back: gives no order where something is asked.",
          "quit: leaves the desk; the lesson goes on.");

  private final DeskDialogue dialogue;
  private final LineSource in;
  private final Paper paper;
  private final List<String> words = new ArrayList<>();

  private LineDesk(DeskDialogue dialogue, LineSource in, PrintWriter out) {
    this.dialogue = dialogue;
    this.in = in;
    this.paper = new Paper(out, in);
    words.addAll(dialogue.words());
    words.addAll(List.of("wait", "back", "quit"));
  }

  /**
   * Follows the lesson until the desk is left.
   *
   * @return the program's exit status
   */
  public static int run(DeskDialogue dialogue, LineSource in, PrintWriter out) throws IOException {
    LineDesk face = new LineDesk(dialogue, in, out);
    Question orders = dialogue.question();
    face.paper.say(orders.title() + ". " + orders.help());
    face.paper.say(dialogue.show());
    try (EverySecond looks = EverySecond.begin("follow the lesson", face::look)) {
      return face.loop();
    } catch (LineSource.StopKeyException e) {
      return ExitStatus.INTERRUPTED;
    } finally {
      face.paper.say(dialogue.leave());
    }
  }

  private void look() {
    synchronized (dialogue) {
      paper.meanwhile(dialogue.news());
    }
  }

  private int loop() throws IOException, LineSource.StopKeyException {
    while (true) {
      String asks = dialogue.question() instanceof Question.Asked asked ? asked.asks() + " > " : "";
      String typed = in.readLine(in.typedByHand() ? asks : "", words);
      String line = typed == null ? "quit" : typed.strip();
      boolean any = dialogue.asked() == null;
      if (line.equals("quit") || line.equals("q")) {
        return ExitStatus.DONE;
      } else if (any && line.matches("wait( .*)?")) {
        waitFor(line.substring("wait".length()).strip().toLowerCase(Locale.ROOT));
      } else if (!(line.equals("back") && dialogue.back())) {
        give(line);
      }
      if (any && line.equals("help")) {
        paper.say(HELP);
      }
    }
  }

  private void give(String line) {
    synchronized (dialogue) {
      Question before = dialogue.question();
      try {
        paper.say(dialogue.take(line).told());
      } catch (RefusedException refused) {
        paper.say(String.valueOf(refused.getMessage()));
      }
      paper.say(dialogue.news());
      Question now = dialogue.question();
      if (!now.equals(before)) {
        paper.say(now.lines());
      }
    }
  }

  private void waitFor(String typed) throws LineSource.StopKeyException {
    Predicate<Sight> until =
        sight -> sight.view().rows().stream().anyMatch(row -> !sight.toRelease(row).isEmpty());
    int seconds = 60;
    for (String word : typed.isEmpty() ? List.<String>of() : Arrays.asList(typed.split(" +"))) {
      if (word.matches("\\d{1,5}")) {
        seconds = Integer.parseInt(word);
      } else if (word.equals("taken")) {
        until = sight -> sight.unanswered().isEmpty();
      } else if (word.equals("over")) {
        until = Sight::over;
      } else {
        paper.say(
            "\""
                + Printable.of(word)
                + "\" can't be waited for; type for example wait 60, wait taken, or wait over 30.");
        return;
      }
    }
    waitFor(until, seconds);
  }

  private void waitFor(Predicate<Sight> until, int seconds) throws LineSource.StopKeyException {
    for (int waited = 0; ; waited++) {
      synchronized (dialogue) {
        paper.say(dialogue.news());
        if (until.test(dialogue.shown())) {
          return;
        }
      }
      if (waited >= seconds) {
        paper.say("Waited " + seconds + " s; it has not come to that yet.");
        return;
      }
      in.pause(LOOK);
    }
  }
}
