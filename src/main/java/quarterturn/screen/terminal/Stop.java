package quarterturn.screen.terminal;

import java.lang.reflect.Method;
import org.jline.utils.Signals;

/**
 * Stops this process as Ctrl-Z would, until the shell continues it, without starting a {@code
 * kill}.
 *
 * <p>The runtime's public way to raise a signal refuses one without a Java handler, but only such a
 * signal stops the process. So the method beneath it is used; the jar's manifest opens its package
 * ({@code Add-Opens: java.base/jdk.internal.misc}).
 */
final class Stop {
  private static final String NAME = "TSTP";

  private Stop() {}

  /**
   * Stops the process. Returns true once continued, or at once where no shell could continue it (no
   * job control); false where this runtime or system can't stop.
   */
  static boolean here() {
    try {
      Class<?> known = Class.forName("sun.misc.Signal");
      Object stop = known.getConstructor(String.class).newInstance(NAME);
      Object number = known.getMethod("getNumber").invoke(stop);
      Method raise =
          Class.forName("jdk.internal.misc.Signal").getDeclaredMethod("raise0", int.class);
      raise.setAccessible(true);
      Object before = Signals.registerDefault(NAME);
      try {
        raise.invoke(null, number);
      } finally {
        Signals.unregister(NAME, before);
      }
      return true;
    } catch (ReflectiveOperationException | RuntimeException notHere) {
      return false;
    }
  }
}
