package quarterturn.platform;

import org.jspecify.annotations.Nullable;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/** The signals that a system sends, by the runtime's own class for them, which every JDK has. */
final class SystemSignals {
  private SystemSignals() {}

  /**
   * What is done on a signal.
   *
   * @param name such as "INT"; nothing happens where the system has none of this name, or the
   *     virtual machine keeps it for itself
   * @param then null for what the system does by itself
   */
  static void handle(String name, @Nullable Runnable then) {
    try {
      Signal.handle(new Signal(name), then == null ? SignalHandler.SIG_DFL : signal -> then.run());
    } catch (IllegalArgumentException notHere) {
      // Then nobody sends it to us either.
      return;
    }
  }
}
