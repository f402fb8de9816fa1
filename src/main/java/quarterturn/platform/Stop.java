package quarterturn.platform;

import java.lang.reflect.Method;
import sun.misc.Signal;
import sun.misc.SignalHandler;

/**
 * Stops this process as Ctrl-Z would, until the shell continues it, without starting a {@code
 * kill}.
 *
 * <p>The runtime's public way to raise a signal refuses one without a Java handler, but only such a
 * signal stops the process. So the method beneath it is used; the jar's manifest opens its package
 * ({@code Add-Opens: java.base/jdk.internal.misc}).
 */
public final class Stop {
  private static final String NAME = "TSTP";

  private Stop() {}

  /**
   * Stops the process. Returns true once continued, or at once where no shell could continue it (no
   * job control); false where this runtime or system can't stop.
   */
  public static boolean here() {
    try {
      Signal stop = new Signal(NAME);
      Method raise =
          Class.forName("jdk.internal.misc.Signal").getDeclaredMethod("raise0", int.class);
      raise.setAccessible(true);
      SignalHandler before = Signal.handle(stop, SignalHandler.SIG_DFL);
      try {
        raise.invoke(null, stop.getNumber());
      } finally {
        Signal.handle(stop, before);
      }
      return true;
    } catch (ReflectiveOperationException | RuntimeException notHere) {
      return false;
    }
  }
}
