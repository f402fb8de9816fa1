package quarterturn.quick;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Prompt;

/** What was typed ahead and not asked for yet, in the order it was typed. */
public final class Supply {
  private final List<Given> given = new ArrayList<>();

  /** Adds what a line gives. */
  public void add(List<Given> more) {
    given.addAll(more);
  }

  /** What answers a prompt, taken out; null where nothing does. */
  public @Nullable Given take(Prompt prompt, Terms terms) {
    for (int i = 0; i < given.size(); i++) {
      if (answers(given.get(i), prompt, terms)) {
        return given.remove(i);
      }
    }
    return null;
  }

  /** Whether something here answers a prompt. */
  public boolean answers(Prompt prompt, Terms terms) {
    return given.stream().anyMatch(one -> answers(one, prompt, terms));
  }

  private static boolean answers(Given one, Prompt prompt, Terms terms) {
    if (one instanceof Given.Choice choice) {
      return prompt instanceof Prompt.Choose choose
          && choose.said().step().equals(choice.step())
          && choose.options().stream().anyMatch(o -> o.id().equals(choice.option()));
    }
    if (one instanceof Given.Words words) {
      return prompt instanceof Prompt.Write && prompt.said().step().equals(words.step());
    }
    if (one instanceof Given.Reading reading && prompt instanceof Prompt.Measure measure) {
      String string = measure.string();
      int asked = string == null ? -1 : terms.strings().indexOf(string);
      return reading.quantity() == measure.quantity() && reading.string() == asked;
    }
    return false;
  }

  /** What was typed and is not used yet. */
  public List<String> left() {
    return given.stream().map(Supply::words).toList();
  }

  private static String words(Given one) {
    return one instanceof Given.Reading reading
        ? reading.quantity().word() + " " + reading.typed()
        : one.typed();
  }

  /** Forgets all but the air of the room; returns what tells of the instrument as it was. */
  public List<String> forgetTheInstrument() {
    List<Given> seen =
        given.stream()
            .filter(one -> !(one instanceof Given.Reading r) || r.quantity().onString())
            .toList();
    given.removeAll(seen);
    return seen.stream().map(Supply::words).toList();
  }

  /** Forgets everything, and returns it in words. */
  public List<String> forgetAll() {
    List<String> all = left();
    given.clear();
    return all;
  }

  public boolean isEmpty() {
    return given.isEmpty();
  }
}
