package quarterturn.screen;

import org.jline.utils.Signals;

/** Stops this process as Ctrl-Z would, until the shell continues it. */
final class Stop {
  private Stop() {}

  /**
   * Returns once continued, or at once where nobody could continue it (no job control).
   *
   * <p>The signal is raised inside this process: no {@code kill} is started. The class that raises
   * it is reached by name because the compiler warns about it and no option silences that.
   */
  static void here() {
    Object before = Signals.registerDefault("TSTP");
    try {
      Class<?> signal = Class.forName("sun.misc.Signal");
      Object stop = signal.getConstructor(String.class).newInstance("TSTP");
      signal.getMethod("raise", signal).invoke(null, stop);
    } catch (ReflectiveOperationException notHere) {
      // Without the signal (Windows, say) Ctrl-Z does nothing.
      return;
    } finally {
      Signals.unregister("TSTP", before);
    }
  }
}
