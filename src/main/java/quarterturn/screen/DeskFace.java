package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.screen.state.Effect;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.ExitStatus;
import quarterturn.session.journal.DisplacedException;

/** A teacher's desk on the full screen. */
public final class DeskFace {
  private static final Duration LOOK = Duration.ofSeconds(1);

  private final Surface surface;
  private final DeskKeys keys;
  private long lookedAt;

  private DeskFace(Surface surface, DeskKeys keys) {
    this.surface = surface;
    this.keys = keys;
    this.lookedAt = System.nanoTime();
  }

  /**
   * Shows the desk until the teacher leaves it, then tells that the lesson goes on.
   *
   * @param surface the surface to paint on, which is not closed
   */
  public static ScreenFace.Outcome run(Surface surface, DeskDialogue dialogue)
      throws IOException, InterruptedException {
    int status = new DeskFace(surface, new DeskKeys(dialogue)).loop();
    return new ScreenFace.Outcome(status, dialogue.leave());
  }

  private int loop() throws IOException, InterruptedException {
    while (true) {
      try {
        int width = surface.width();
        int height = surface.height();
        if (surface.due()) {
          surface.paint(DeskPage.draw(keys.model(), width, height));
        }
        Input input = surface.next(toLook());
        if (input instanceof Input.Over over) {
          return over.status();
        }
        if (input instanceof Input.Broke broke) {
          throw new IllegalStateException("something broke", broke.cause());
        }
        if (take(input)) {
          return ExitStatus.DONE;
        }
      } catch (DisplacedException stops) {
        throw stops;
      } catch (IOException gone) {
        return ExitStatus.DONE;
      }
    }
  }

  /**
   * Time until the next look at the benches' files, once a second however many keys are pressed.
   */
  private Duration toLook() {
    Duration left = LOOK.minusNanos(System.nanoTime() - lookedAt);
    return left.isNegative() ? Duration.ZERO : left;
  }

  /** Handles an input and looks at the files when due; returns whether the teacher leaves. */
  private boolean take(@Nullable Input input) throws IOException {
    if (System.nanoTime() - lookedAt >= LOOK.toNanos()) {
      keys.look();
      lookedAt = System.nanoTime();
    }
    if (input instanceof Input.Suspended) {
      keys.say("Ctrl-Z does not work here. q leaves the desk.");
    } else if (input instanceof Input.Pressed pressed) {
      Effect effect = keys.key(pressed.key());
      keys.scrolledAtMost(DeskPage.mostScroll(keys.model(), surface.width(), surface.height()));
      if (effect instanceof Effect.Repaint) {
        surface.repaintWhole();
      }
      return effect instanceof Effect.Leave;
    }
    return false;
  }
}
