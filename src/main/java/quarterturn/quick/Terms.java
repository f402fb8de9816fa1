package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt.Measure;

/**
 * The names that a typed line may use.
 *
 * @param strings the notes of the strings, lowest first; empty where the kind is not known yet
 * @param choices the options that can be chosen, by the id of the step; an empty list where the
 *     step takes words
 * @param gaugeMm the gauge's step in millimetres, put around a single number
 * @param asked the reading that is asked for at present, or null
 * @param plausible what a reading can plausibly be, over all steps
 */
public record Terms(
    List<String> strings,
    Map<String, List<String>> choices,
    double gaugeMm,
    @Nullable Measure asked,
    Map<Quantity, Bench.Plausible> plausible) {
  public Terms {
    strings = List.copyOf(strings);
    choices = Map.copyOf(choices);
    plausible = Map.copyOf(plausible);
  }

  /**
   * The index of the string that a word means, 0 for the lowest, or -1: low, high, a note, or s1 to
   * s6.
   */
  int string(String word) {
    if (word.equals("low")) {
      return 0;
    } else if (word.equals("high")) {
      return last();
    }
    for (int i = 0; i < strings.size(); i++) {
      if (strings.get(i).equalsIgnoreCase(word) || word.equals("s" + (i + 1))) {
        return i;
      }
    }
    return -1;
  }

  private boolean asks(Quantity quantity) {
    return asked != null && asked.quantity() == quantity;
  }

  /** Why a reading can hardly be true at any step; or null. */
  public @Nullable String doubt(Quantity quantity, Answer answer) {
    Bench.Plausible range = plausible.get(quantity);
    double value =
        answer instanceof Answer.Value one
            ? one.value()
            : answer instanceof Answer.Measured measured && !measured.bracket().noGap()
                ? measured.bracket().lowMm()
                : Double.NaN;
    return range == null || Double.isNaN(value) || range.holds(value)
        ? null
        : range.doubt(quantity, value);
  }

  /** The string of the first of so many readings without a string's word. */
  int from(Quantity quantity, int readings) {
    boolean each = readings == strings.size();
    return each || asked == null || asked.string() == null || !asks(quantity)
        ? 0
        : Math.max(0, strings.indexOf(asked.string()));
  }

  /** Whether so many readings are those of the lowest and the highest string. */
  boolean ends(Quantity quantity, int readings) {
    boolean oneByOne = asked != null && asks(quantity) && asked.which() == Which.EACH;
    return readings == 2 && from(quantity, readings) == 0 && !oneByOne;
  }

  int last() {
    return Math.max(1, strings.size()) - 1;
  }

  List<String> stringWords() {
    List<String> words = new ArrayList<>(List.of("low", "high"));
    words.addAll(strings);
    return words;
  }

  /** Every word that completion can offer. */
  public List<String> words() {
    List<String> words = new ArrayList<>(Name.words());
    words.addAll(stringWords());
    choices.keySet().stream().sorted().forEach(words::add);
    return words;
  }
}
