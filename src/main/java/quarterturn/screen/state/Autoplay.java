package quarterturn.screen.state;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/**
 * Presses the keys by which a {@link Player} answers, at a pace that the person watching sets. The
 * person can pause it, and have it played step by step.
 */
public final class Autoplay {
  private static final Key LEAVE = new Key.Function(10);
  private static final Duration CALM = Duration.ofMinutes(1);
  private static final double FASTEST = 16;

  private final Player player;
  private final Deque<Key> keys = new ArrayDeque<>();
  private @Nullable Prompt at;
  private double faster = 1;
  private boolean paused;

  /** The prompt after which it pauses again, or null. */
  private @Nullable Prompt step;

  public Autoplay(Player player) {
    this.player = player;
  }

  /** Whether a key paces the demonstration; if so, it has done so. */
  public boolean paces(Model model, Key key) {
    if (key.equals(new Key.Typed(' '))) {
      paused = !paused;
      step = null;
    } else if (key == Key.Named.RIGHT) {
      step = model.prompt();
      paused = false;
    } else if (key.equals(new Key.Typed('+'))) {
      faster = Math.min(FASTEST, faster * 2);
    } else if (key.equals(new Key.Typed('-'))) {
      faster = Math.max(1 / FASTEST, faster / 2);
    } else {
      return false;
    }
    return true;
  }

  /** The key that one of the person's stands for: q leaves, also where the player types text. */
  public Key meant(Key key) {
    return Update.isLetter(key, 'q') ? LEAVE : key;
  }

  /** What it does now, in a few words. */
  public String words(Model model) {
    boolean stepped = step != null && step != model.prompt();
    return (paused || stepped ? "pausing" : "plays by itself")
        + ", speed "
        + Decimals.plain(faster);
  }

  /** Time until the next key. */
  public Duration pause(Model model) {
    if (paused || step == model.prompt()) {
      return paused ? CALM : player.typing();
    }
    Duration whole = model.prompt() == at ? player.typing() : player.reading();
    return Duration.ofMillis(Math.round(whole.toMillis() / faster));
  }

  /** The next key, or null where the person has to press one: at the end, or in another view. */
  public @Nullable Key next(Model model) {
    if (step != null && step != model.prompt()) {
      step = null;
      paused = true;
    }
    if (paused || model.prompt().ended() || model.layer() != Layer.NONE) {
      return null;
    }
    if (model.prompt() != at || keys.isEmpty()) {
      at = model.prompt();
      keys.clear();
      keys.addAll(Keystrokes.of(at, player.mind().answer()));
    }
    return keys.poll();
  }
}
