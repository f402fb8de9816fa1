package quarterturn.platform;

import java.util.regex.Pattern;

/** Names that no file may have somewhere, so that a record can move to any system. */
public final class ReservedNames {
  /** Length of the longest. */
  private static final int LONGEST = 4;

  /** Windows keeps these for devices, whatever ending follows. */
  private static final Pattern DEVICE = Pattern.compile("con|prn|aux|nul|(com|lpt)[0-9]");

  private ReservedNames() {}

  /** Whether a name, in small letters and without its ending, is one. */
  public static boolean has(String name) {
    return name.length() <= LONGEST && DEVICE.matcher(name).matches();
  }
}
