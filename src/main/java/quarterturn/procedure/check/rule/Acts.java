package quarterturn.procedure.check.rule;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Finds the acts that a text asks for: what changes the instrument, said as an order. */
final class Acts {
  /** Verbs of orders that change an instrument; looking, holding and reading change nothing. */
  private static final List<String> ORDERS =
      List.of(
          "tune", "slacken", "loosen", "tighten", "turn", "cut", "trim", "fit", "lower", "raise",
          "seat", "unscrew", "file", "glue", "shim", "oil", "stretch", "swap", "replace");

  /** An order: at the start of a sentence, or further on in it. */
  private static final Pattern ORDER =
      Pattern.compile(
          "(?:^|[.:;?!]\\s+|,\\s+|\\b(?:and|then|now|first)\\s+)("
              + String.join("|", ORDERS)
              + ")\\s+(?:the|every|each|all|it|its|them|both|that|this|in|\\{)");

  private Acts() {}

  /** The different orders in a text, in the order they come. */
  static Set<String> in(String text) {
    Set<String> acts = new LinkedHashSet<>();
    Matcher m = ORDER.matcher(text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " "));
    int from = 0;
    while (m.find(from)) {
      acts.add(m.group(1));
      from = m.end(1);
    }
    return acts;
  }
}
