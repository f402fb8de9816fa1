package quarterturn.soak;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Answers prompts in typed lines. */
final class TypedPlayer implements Player {
  private static final Pattern TURN = Pattern.compile("(?i)(tighten|loosen)[^.]* (\\d+)/(\\d+)");
  private static final Pattern OPTION = Pattern.compile("(?m)^ *(\\d+)\\. ");
  private static final List<String> WORDS =
      List.of(
          "",
          "u",
          "done",
          "1",
          "2",
          "3",
          "touches",
          "cannot",
          "1/8 smooth",
          "overview",
          "undo",
          "?",
          "help",
          "why",
          "next",
          "sound; snug; even",
          "relief .37 low .33 high",
          "-",
          "y",
          "drop relief",
          "n",
          "quit",
          "50",
          "0.4 it looks so",
          "a12 2.4 2.2 2.0 1.9",
          "home",
          "headstock",
          "5 mm; fits",
          "missed",
          "back",
          "in a hurry");

  private final Random random;
  private final Necks necks;
  private final String end;

  TypedPlayer(Random random, Necks necks, String end) {
    this.random = random;
    this.necks = necks;
    this.end = end;
  }

  @Override
  public String next(String out) {
    return (random.nextInt(25) == 0 ? WORDS.get(random.nextInt(WORDS.size())) : fitting(out)) + end;
  }

  /** What fits what stands at the end of what was printed. */
  private String fitting(String out) {
    String tail = out.substring(Math.max(0, out.length() - 1500));
    String now = tail.substring(Math.max(0, tail.lastIndexOf("\n\n")));
    if (now.contains("understood")) {
      return "u";
    } else if (now.contains("passes")
        || now.contains("The gap in mm")
        || now.contains("relief E")) {
      return necks.typed();
    } else if (now.contains("how it felt") || now.contains("turned>")) {
      return turned(tail);
    } else if (now.contains("Type done")) {
      return "done";
    }
    List<String> options = OPTION.matcher(now).results().map(one -> one.group(1)).toList();
    if (!options.isEmpty()) {
      return options.get(random.nextInt(8) > 0 ? 0 : random.nextInt(options.size()));
    }
    return now.contains("Enter") ? "" : WORDS.get(random.nextInt(WORDS.size()));
  }

  private String turned(String tail) {
    Matcher turn = TURN.matcher(tail);
    String amount = "1/8";
    double way = 1;
    while (turn.find()) {
      amount = turn.group(2) + "/" + turn.group(3);
      way = turn.group(1).equalsIgnoreCase("tighten") ? 1 : -1;
    }
    String[] parts = amount.split("/", 2);
    double most = Double.parseDouble(parts[1]);
    necks.turn(most == 0 ? 0 : way * Double.parseDouble(parts[0]) / most);
    return amount + " " + necks.feel();
  }
}
