package quarterturn.jar;

import static com.google.common.truth.Truth.assertWithMessage;

/** Looks for what must never reach a terminal. */
final class Control {
  private Control() {}

  /** Fails where a control character other than a line feed was printed. */
  static void none(JarProcess.Ran ran) {
    assertWithMessage("control characters in standard output").that(count(ran.out())).isEqualTo(0);
    assertWithMessage("control characters in standard error").that(count(ran.err())).isEqualTo(0);
  }

  private static long count(String text) {
    return text.codePoints().filter(c -> c != '\n' && Character.isISOControl(c)).count();
  }
}
