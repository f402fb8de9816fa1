package quarterturn.line;

import java.io.IOException;
import java.io.PrintWriter;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.Keep;
import quarterturn.lesson.StepSpread;
import quarterturn.lesson.teacher.Board;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Called;
import quarterturn.lesson.teacher.ReadBack;
import quarterturn.lesson.teacher.Sight;
import quarterturn.report.Dates;
import quarterturn.report.Paragraph;
import quarterturn.report.lesson.BoardNews;
import quarterturn.report.lesson.BoardWords;
import quarterturn.session.ExitStatus;
import quarterturn.session.RefusedException;
import quarterturn.unit.Printable;

/** The board in typed lines: what changes is printed, and commands are typed. */
public final class LineBoard {
  private static final Duration LOOK = Duration.ofSeconds(1);

  private final Board board;
  private final LineSource in;
  private final PrintWriter out;
  private final Dates dates;
  private final Paper paper;
  private Sight shown;
  private boolean left;

  private LineBoard(Board board, LineSource in, PrintWriter out, Dates dates) {
    this.board = board;
    this.in = in;
    this.out = out;
    this.dates = dates;
    this.paper = new Paper(out, in);
    this.shown = board.sight();
  }

  /**
   * Follows the lesson until the board is left.
   *
   * @return the program's exit status
   */
  public static int run(Board board, LineSource in, PrintWriter out, Dates dates)
      throws IOException {
    LineBoard face = new LineBoard(board, in, out, dates);
    Thread follower = new Thread(face::follow, "follow the lesson");
    follower.setDaemon(true);
    face.greet();
    follower.start();
    try {
      return face.loop();
    } finally {
      face.leave();
      follower.interrupt();
      face.paper.say(board.leave());
    }
  }

  /** Plays a board without a thread of its own: it looks only where a command does. */
  static int still(Board board, LineSource in, PrintWriter out, Dates dates) throws IOException {
    LineBoard face = new LineBoard(board, in, out, dates);
    face.greet();
    int status = face.loop();
    face.paper.say(board.leave());
    return status;
  }

  private void greet() {
    paper.say(
        "The board \""
            + shown.board()
            + "\" of the lesson \""
            + Printable.of(shown.plan().title())
            + "\". Type help for what can be typed.");
    show();
  }

  private synchronized void leave() {
    left = true;
  }

  private void follow() {
    try {
      while (!followed()) {
        Thread.sleep(LOOK.toMillis());
      }
    } catch (InterruptedException enough) {
      Thread.currentThread().interrupt();
    }
  }

  /** Looks once and tells what is new; whether the board was left. */
  private synchronized boolean followed() {
    if (!left) {
      board.look();
      List<String> news = news();
      if (!news.isEmpty()) {
        in.meanwhile(out, wrapped(news));
      }
    }
    return left;
  }

  private List<String> wrapped(List<String> sentences) {
    List<String> lines = new ArrayList<>();
    sentences.forEach(s -> lines.addAll(Paragraph.wrap(s, Math.max(20, in.width()), 2)));
    return lines;
  }

  private List<String> news() {
    Sight now = board.sight();
    List<String> news = BoardNews.between(shown, now);
    shown = now;
    return news;
  }

  private void tell() {
    tell(null);
  }

  /** Tells what is new; what was just said is not said twice. */
  private synchronized void tell(@Nullable String said) {
    paper.print(wrapped(news().stream().filter(s -> !s.equals(said)).toList()));
  }

  private int loop() throws IOException {
    try {
      while (true) {
        String typed = in.readLine(in.typedByHand() ? "board> " : "", BoardTyped.WORDS);
        if (typed == null) {
          return 0;
        }
        BoardTyped command = BoardTyped.of(typed);
        if (command instanceof BoardTyped.Quit) {
          return 0;
        }
        act(command);
      }
    } catch (LineSource.StopKeyException e) {
      return ExitStatus.INTERRUPTED;
    }
  }

  private void act(BoardTyped command) throws IOException, LineSource.StopKeyException {
    if (command instanceof BoardTyped.Wait wait) {
      waitFor(wait);
      return;
    }
    if (command instanceof BoardTyped.End) {
      end();
      return;
    }
    synchronized (this) {
      String done = null;
      try {
        done = done(command);
        if (done != null) {
          paper.say(done);
        }
      } catch (RefusedException refused) {
        paper.say(String.valueOf(refused.getMessage()));
      } catch (IOException notWritten) {
        paper.say("Not done: " + notWritten.getMessage() + ".");
      }
      tell(done);
    }
  }

  private @Nullable String done(BoardTyped command) throws RefusedException, IOException {
    List<BoardView.Row> rows = board.look().view().rows();
    if (command instanceof BoardTyped.Show show) {
      tell();
      if (show.bench().isEmpty()) {
        show();
      } else {
        bench(Called.bench(rows, show.bench()).row());
      }
    } else if (command instanceof BoardTyped.Release release) {
      Called.Bench called = Called.bench(rows, release.rest());
      return board.release(called.row().bench().bench(), called.rest(), shown);
    } else if (command instanceof BoardTyped.ReleaseAll) {
      return board.releaseAll();
    } else if (command instanceof BoardTyped.Hold hold) {
      Called.Bench called = Called.bench(rows, hold.rest());
      return board.hold(called.row().bench().bench(), called.rest());
    } else if (command instanceof BoardTyped.HoldAll hold) {
      return board.hold(null, hold.reason());
    } else if (command instanceof BoardTyped.SetLevel set) {
      Called.Student called = Called.student(rows, set.rest());
      return board.level(
          called.row().bench().bench(), called.name(), set.level(called.rest()), set.frozen());
    } else if (command instanceof BoardTyped.Spread) {
      spread();
    } else if (command instanceof BoardTyped.Orders) {
      orders();
    } else if (command instanceof BoardTyped.Sheets) {
      return board.sheets();
    } else if (command instanceof BoardTyped.Help) {
      paper.print(BoardTyped.HELP);
    } else if (command instanceof BoardTyped.Bad bad) {
      return bad.why();
    }
    return null;
  }

  private void show() {
    Sight sight = shown;
    paper.say("There: " + BoardWords.summary(sight) + ".");
    for (BoardView.Row row : sight.view().rows()) {
      paper.say(BoardWords.sentence(sight, row));
    }
    if (!sight.unanswered().isEmpty()) {
      paper.say("Orders that a bench has not taken yet: " + sight.unanswered().size() + ".");
    }
    sight.notices().forEach(notice -> paper.say("Notice: " + notice));
  }

  private void bench(BoardView.Row row) {
    paper.say(BoardWords.sentence(shown, row));
    paper.say("Last news: " + BoardWords.heard(shown, row, dates) + ".");
    for (Keep keep : shown.toRelease(row)) {
      paper.say(
          "To release: "
              + (keep.kind() == Keep.Kind.STOP ? "the stop" : Printable.of(keep.what()))
              + "; to be read back: "
              + ReadBack.kind(keep.value())
              + ".");
    }
    BoardWords.levels(row.bench()).forEach(paper::say);
  }

  private void spread() {
    if (shown.view().spreads().isEmpty()) {
      paper.say("Nothing was predicted or read yet.");
    }
    for (StepSpread spread : shown.view().spreads()) {
      List<String> words = BoardWords.spread(spread);
      paper.say(
          Printable.of(spread.step())
              + ": "
              + (words.isEmpty() ? "nothing yet." : String.join(" ", words)));
    }
  }

  private void orders() {
    if (shown.view().given().isEmpty()) {
      paper.say("No order was given yet.");
    }
    for (BoardView.Given given : shown.view().given()) {
      paper.say(BoardWords.order(shown, given) + " (" + BoardWords.answers(shown, given) + ")");
    }
  }

  private void end() throws IOException, LineSource.StopKeyException {
    if (board.sight().ended()) {
      paper.say("The lesson has been ended already. Type sheets to write them anew.");
      return;
    }
    paper.say(
        "This ends the lesson at every bench, and no board can take it back. The sheets are"
            + " written then.");
    String typed = in.readLine("Type yes to end it: ", List.of("yes", "no"));
    synchronized (this) {
      if (typed == null || !typed.strip().equalsIgnoreCase("yes")) {
        paper.say("The lesson goes on.");
        return;
      }
      try {
        paper.say(board.end());
      } catch (RefusedException refused) {
        paper.say(String.valueOf(refused.getMessage()));
      } catch (IOException notWritten) {
        paper.say("Not done: " + notWritten.getMessage() + ".");
      }
      tell();
    }
  }

  private void waitFor(BoardTyped.Wait wait) throws LineSource.StopKeyException {
    for (int waited = 0; ; waited++) {
      synchronized (this) {
        Sight sight = board.look();
        tell();
        if (wait.until().is(sight)) {
          return;
        }
        if (waited >= wait.seconds()) {
          paper.say("Waited " + wait.seconds() + " s; it has not come to that yet.");
          return;
        }
      }
      in.pause(LOOK);
    }
  }
}
