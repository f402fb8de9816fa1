package quarterturn.command;

import java.util.Map;
import java.util.regex.Pattern;
import quarterturn.procedure.InWindow;

/** What the first version printed, in the words that the program has for it now. */
public final class Reworded {
  private static final Map<String, String> NOW =
      Map.ofEntries(
          Map.entry("(As left \\|? ?Stands \\|? ?)Window", "$1Range"),
          Map.entry("(<th scope=\"col\">)Window", "$1Range"),
          Map.entry("\\bWindow: ", "Range: "),
          Map.entry("\\bA window holds", "A range holds"),
          Map.entry("is out of its window, 0", "is out of its range, 0"),
          Map.entry("\\b(Relief|Nut|Action|Intonation|Pickup) window", "$1 range"),
          Map.entry("Board radius:", "Fingerboard radius:"),
          Map.entry("Ended: in window", "Ended: in range"),
          Map.entry("That is in the window\\.", "That is in range."),
          Map.entry("In the window after", "In range after"),
          Map.entry("the window as a band", "the range as a band"),
          Map.entry("The window is ", "The range is "),
          Map.entry("mm; window ", "mm; range "),
          Map.entry("On the left #: in the window", "On the left #: in range"),
          Map.entry("Between two leaves", "Between two gauges"));

  private Reworded() {}

  /** What was said then, as it is now. */
  public static String now(String then) {
    String said = then;
    for (Map.Entry<String, String> word : NOW.entrySet()) {
      said = said.replaceAll(word.getKey(), word.getValue());
    }
    return said;
  }

  /** What a log said then: its ids are words now. */
  static String log(String then) {
    return Pattern.compile(
            "(?m)(\\d  Done: |\\d  Chose at \"|ended: |over: |Ended: |before \"|Passed over \"|Noted at \")[a-z-]+|(?<=Chose at \"[^\"]{1,60}\": )[a-z-]+")
        .matcher(then.replace("welcome-back", "Went on after a break"))
        .replaceAll(found -> InWindow.shown(found.group()));
  }

  /** A print without its line breaks and columns, which move with the length of a word. */
  public static String flat(String print) {
    return print.replaceAll("\\s+", " ").replaceAll("-{2,}", "--").strip();
  }
}
