package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import java.util.List;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.teacher.Board;
import quarterturn.lesson.teacher.BoardView;
import quarterturn.lesson.teacher.Sight;
import quarterturn.report.Dates;
import quarterturn.report.lesson.BoardNews;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.screen.terminal.SystemTerminal;
import quarterturn.session.ExitStatus;
import quarterturn.session.RefusedException;

/** The board on the full screen. */
public final class BoardFace {
  private static final Duration LOOK = Duration.ofSeconds(1);

  private final Surface surface;
  private final Board board;
  private final Dates dates;
  private BoardModel model;
  private long lookedAt;

  private BoardFace(Surface surface, Board board, Dates dates) {
    this.surface = surface;
    this.board = board;
    this.dates = dates;
    this.model = BoardModel.of(board.sight());
    this.lookedAt = System.nanoTime();
  }

  /**
   * Follows the lesson until the board is left, then says that the lesson goes on.
   *
   * @param terminal as {@link SystemTerminal#open} gives it; stays open
   * @return the program's exit status
   */
  public static int run(Terminal terminal, Board board, Settings settings, Dates dates)
      throws IOException, InterruptedException {
    int status;
    try (Surface surface = Surface.open(terminal, settings)) {
      status = new BoardFace(surface, board, dates).loop();
    }
    ScreenFace.say(terminal, new ScreenFace.Outcome(status, board.leave()));
    return status;
  }

  private int loop() throws InterruptedException {
    while (true) {
      try {
        int width = surface.width();
        int height = surface.height();
        model = model.scrolledAtMost(BoardPage.mostScroll(model, dates, width, height));
        surface.paint(BoardPage.draw(model, dates, width, height));
        Input input = surface.next(toLook());
        if (input instanceof Input.Interrupted) {
          return ExitStatus.INTERRUPTED;
        }
        if (input instanceof Input.Closed) {
          return ExitStatus.DONE;
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (take(input)) {
          return ExitStatus.DONE;
        }
      } catch (IOException gone) {
        return ExitStatus.DONE;
      }
    }
  }

  /** However many keys are pressed, it looks every second. */
  private Duration toLook() {
    Duration left = LOOK.minusNanos(System.nanoTime() - lookedAt);
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** Whether the board is left. */
  private boolean take(@Nullable Input input) throws IOException {
    if (System.nanoTime() - lookedAt >= LOOK.toNanos()) {
      board.look();
      seen();
    }
    if (input instanceof Input.Suspended) {
      if (!surface.suspend()) {
        model = model.saying("Ctrl-Z does not work here. q leaves the board.");
      }
    } else if (input instanceof Input.Continued) {
      surface.repaintWhole();
    } else if (input instanceof Input.Pressed pressed) {
      BoardKeys.Next next = BoardKeys.key(model, pressed.key());
      model = next.model();
      if (next.act() instanceof BoardAct.Repaint) {
        surface.repaintWhole();
      }
      if (next.act() instanceof BoardAct.Order order) {
        give(order);
      }
      return next.act() instanceof BoardAct.Leave;
    }
    return false;
  }

  /** Takes in what the board saw, and says what is new, the most pressing first. */
  private void seen() {
    lookedAt = System.nanoTime();
    Sight now = board.sight();
    List<String> news = BoardNews.between(model.sight(), now);
    model = model.seeing(now);
    if (!news.isEmpty()) {
      model = model.saying(String.join(" ", news));
    }
  }

  private void give(BoardAct.Order order) {
    try {
      String done = order.give(board, model.sight());
      seen();
      // Levels are often set one after the other.
      model = order instanceof BoardAct.SetLevel ? model : model.with(BoardLayer.NONE);
      model = model.saying(done);
    } catch (RefusedException refused) {
      seen();
      BoardView.Row row = model.row();
      boolean late =
          model.layer() == BoardLayer.RELEASE
              && (row == null || model.sight().toRelease(row).isEmpty());
      // Another board was first: there is nothing to type any more.
      model = late ? model.with(BoardLayer.NONE) : model;
      model = model.saying(String.valueOf(refused.getMessage()));
    } catch (IOException notWritten) {
      model = model.saying("Not done: " + notWritten.getMessage() + ".");
    }
  }
}
