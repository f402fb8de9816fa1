package quarterturn.platform;

import java.nio.charset.Charset;

/** How letters are written outside the program, as the Java runtime found it. */
public final class Encodings {
  private static final String[] TERMINAL = {
    "stdout.encoding", "sun.stdout.encoding", "native.encoding"
  };

  private Encodings() {}

  /** The name of the encoding of names of files. */
  public static String ofFileNames() {
    return System.getProperty("sun.jnu.encoding", "UTF-8");
  }

  /** The terminal's character set. */
  static Charset ofTerminal() {
    for (String name : TERMINAL) {
      String value = System.getProperty(name);
      if (value != null && Charset.isSupported(value)) {
        return Charset.forName(value);
      }
    }
    return Charset.defaultCharset();
  }
}
