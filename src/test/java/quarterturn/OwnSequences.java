package quarterturn;

import static com.google.common.truth.Truth.assertWithMessage;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What may be sent to a terminal: text, line ends, and the sequences that the program draws with.
 */
public final class OwnSequences {
  private static final Pattern OWN =
      Pattern.compile(
          "\u001b\\[[0-9;]*[ABCDHJKLMPm@]|\u001b\\[\\?(1|25|1049|2004|10\\d\\d)[hl]|\u001b[=>]|\r?\n|\r|\b");

  private static final Pattern RAW = Pattern.compile("(?s).{0,60}[\\p{Cntrl}\u0080-\u009f].{0,20}");

  private OwnSequences() {}

  /** Fails where any other control character was sent. */
  public static void only(String sent) {
    Matcher raw = RAW.matcher(OWN.matcher(sent).replaceAll("~"));
    String found = raw.find() ? raw.group() : "";
    assertWithMessage("sent raw to the terminal").that(found).isEmpty();
  }

  /** Fails where the terminal was not left as it was found. */
  public static void restored(String sent) {
    for (String mode : new String[] {"?1049", "?2004"}) {
      int on = sent.lastIndexOf("\u001b[" + mode + "h");
      int off = sent.lastIndexOf("\u001b[" + mode + "l");
      assertWithMessage("%s was left on", mode).that(on).isAtMost(off);
    }
    int hidden = sent.lastIndexOf("\u001b[?25l");
    assertWithMessage("cursor").that(hidden).isAtMost(sent.lastIndexOf("\u001b[?25h"));
  }
}
