package quarterturn.procedure;

import java.util.Locale;
import java.util.regex.Pattern;

/** Tells whether words talk a protection or a warning away. */
public final class Protection {
  private static final Pattern NAMED =
      Pattern.compile(
          "\\b(goggles|(safety )?glasses|spectacles|visor|protection|gloves|cautions?|warnings?"
              + "|precautions?|hazards?)\\b");

  private static final Pattern WORN =
      Pattern.compile(
          "\\b(put|with|wear|have)\\b.{0,24}\\b(eye protection|goggles|safety glasses|gloves)\\b");

  /** Words that say of something that it is not needed. */
  private static final Pattern NEEDLESS =
      Pattern.compile(
          "\\b(nobody|no one|none|hardly|never|not|don't|doesn't)\\b.{0,24}\\bneed(s|ed)?\\b"
              + "|\\bneed(s)? (not|no)\\b|\\bneedn't\\b|\\bno need\\b"
              + "|\\b(unnecessary|needless|superfluous|overdone|exaggerated|overcautious|pointless)\\b"
              + "|\\bnot (necessary|wanted|worth)\\b|\\b(does|do)(n't| not) (apply|matter)\\b"
              + "|\\bfor (the )?lawyers\\b|\\bcan be (ignored|skipped|passed over)\\b"
              + "|\\bcan do without\\b");

  /** Words that have something left off. */
  private static final Pattern LEFT =
      Pattern.compile(
          "\\b(leave|take|put) (\\w+ ){0,3}(off|away|aside|in the (drawer|case|box|bag))\\b"
              + "|\\bstays? (in|off|behind)\\b|\\b(ignore|skip|forget)\\b"
              + "|\\bwithout (the |your |any )?(goggles|(safety )?glasses|eye protection|gloves)\\b");

  private static final Pattern CLOSE =
      Pattern.compile(
          "\\bfrom close (up|by)\\b|\\b(bend|lean) (down|forward|close|over the (strings?|post))\\b"
              + "|\\b(face|eyes?|nose) (\\w+ ){0,3}(close|near|right|next)\\b");

  private static final Pattern DENIED =
      Pattern.compile(
          "\\b(never|not|nobody|no one|nor|don't|doesn't|mustn't|shouldn't|until|before)\\b");

  /** Words that tell what somebody thinks, or ask. */
  private static final Pattern TOLD =
      Pattern.compile("\\b(think|thinks|thought|believe|believes|wrong)\\b|\\?$");

  private Protection() {}

  /** Whether a text has somebody put a protection of the eyes or the hands on. */
  public static boolean worn(String text) {
    return WORN.matcher(plain(text)).find();
  }

  /** Whether a sentence says that a protection or a warning it names is not needed. */
  public static boolean dismissed(String sentence) {
    return NAMED.matcher(plain(sentence)).find() && needless(plain(sentence));
  }

  /** Whether a sentence beside a warning says that it need not be kept, or has somebody near. */
  public static boolean undone(String sentence) {
    return needless(plain(sentence)) || near(sentence);
  }

  /** Whether a sentence has somebody bring the face close. */
  public static boolean near(String sentence) {
    String plain = plain(sentence);
    return CLOSE.matcher(plain).find() && !DENIED.matcher(plain).find();
  }

  private static boolean needless(String plain) {
    boolean left = LEFT.matcher(plain).find() && !DENIED.matcher(plain).find();
    return (left || NEEDLESS.matcher(plain).find()) && !TOLD.matcher(plain).find();
  }

  private static String plain(String sentence) {
    return sentence.toLowerCase(Locale.ROOT);
  }
}
