package quarterturn.procedure;

import java.util.Locale;
import java.util.regex.Pattern;

/** Tells whether words talk a protection or a warning away. */
public final class Protection {
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(goggles|(safety )?glasses|spectacles|visor|protection|gloves|cautions?|warnings?"
              + "|precautions?|hazards?)\\b");

  private static final Pattern NEEDLESS =
      Pattern.compile(
          "\\b(nobody|no one|none|hardly|never|not|don't|doesn't)\\b.{0,24}\\bneed(s|ed)?\\b"
              + "|\\bneed(s)? (not|no)\\b|needn't|\\bno need\\b|\\b(unnecessary|needless|superfluous)\\b"
              + "|\\bnot (necessary|wanted)\\b|\\b(does|do)(n't| not) (apply|matter)\\b"
              + "|\\bdo without\\b|\\bfor (the )?lawyers\\b|\\bcan be (ignored|skipped|passed over)\\b"
              + "|\\b(leave|take|put) (\\w+ ){0,3}(off|away|aside|in the (drawer|case|box|bag))\\b|\\b(ignore|skip|forget)\\b");

  private static final Pattern CLOSE =
      Pattern.compile(
          "\\bfrom close (up|by)\\b|\\b(bend|lean)\\b.{0,20}\\b(close|over|down)\\b"
              + "|\\b(face|eyes?|nose) (\\w+ ){0,3}(close|near|right)\\b");

  private static final Pattern DENIED =
      Pattern.compile("^(never|don't|do not|nobody)\\b|\\b(never|don't|do not|nor) (\\w+ ){0,2}"
          + "(leave|take|put|ignore|skip|forget|do without|bend|lean|look)\\b");

  private Protection() {}

  /** Whether a sentence says that a protection or a warning it names is not needed. */
  public static boolean dismissed(String sentence) {
    String plain = sentence.toLowerCase(Locale.ROOT);
    return NAMED.matcher(plain).find() && needless(plain);
  }

  /** Whether a sentence beside a warning says that it need not be kept, or has somebody near. */
  public static boolean undone(String sentence) {
    String plain = sentence.toLowerCase(Locale.ROOT);
    return needless(plain) || near(sentence);
  }

  /** Whether a sentence has somebody bring the face close. */
  public static boolean near(String sentence) {
    String plain = sentence.toLowerCase(Locale.ROOT);
    return CLOSE.matcher(plain).find() && !DENIED.matcher(plain).find();
  }

  private static boolean needless(String plain) {
    boolean denied = DENIED.matcher(plain).find() && !plain.startsWith("nobody");
    return NEEDLESS.matcher(plain).find() && !denied;
  }
}
