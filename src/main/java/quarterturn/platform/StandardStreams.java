package quarterturn.platform;

import java.io.Console;
import java.lang.reflect.InvocationTargetException;

/** Where the program reads and writes. */
public final class StandardStreams {
  /** From this Java on there is a console without a terminal too, and a way to ask. */
  private static final int WITHOUT_TERMINAL = 22;

  private StandardStreams() {}

  /** Whether both ends are a terminal. */
  public static boolean areATerminal() {
    Console console = System.console();
    if (console == null) {
      return false;
    }
    if (Runtime.version().feature() < WITHOUT_TERMINAL) {
      return true;
    }
    try {
      return (boolean) Console.class.getMethod("isTerminal").invoke(console);
    } catch (NoSuchMethodException e) {
      return true;
    } catch (IllegalAccessException | InvocationTargetException e) {
      return false;
    }
  }
}
