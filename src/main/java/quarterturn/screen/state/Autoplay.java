package quarterturn.screen.state;

import java.time.Duration;
import java.util.ArrayDeque;
import java.util.Deque;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Player;
import quarterturn.session.Prompt;

/** Presses the keys by which a {@link Player} answers, at the player's speed. */
public final class Autoplay {
  private final Player player;
  private final Deque<Key> keys = new ArrayDeque<>();
  private @Nullable Prompt at;

  public Autoplay(Player player) {
    this.player = player;
  }

  /** Time until the next key. */
  public Duration pause(Model model) {
    return model.prompt() == at ? player.typing() : player.reading();
  }

  /** The next key, or null where the person has to press one: at the end, or in another view. */
  public @Nullable Key next(Model model) {
    if (model.prompt().ended() || model.layer() != Layer.NONE) {
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
