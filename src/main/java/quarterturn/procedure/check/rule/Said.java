package quarterturn.procedure.check.rule;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Procedure;
import quarterturn.procedure.Step;
import quarterturn.procedure.check.words.Order;
import quarterturn.procedure.check.words.Orders;

/**
 * Something that the words of a step order.
 *
 * @param where which of its words: text, brief, why, or an option's label
 */
public record Said(Where where, Order order) {
  /** Which of a step's words they are. */
  public enum Where {
    TEXT,
    BRIEF,
    WHY,
    LABEL
  }

  private static final Pattern ANOTHER =
      Pattern.compile("\\b([Ww]ould|[Ww]hat comes|[Ww]hich is right)\\b[^.]*\\?");

  /** What each step of a procedure orders, by its id. */
  static Map<String, List<Said>> in(Procedure procedure) {
    return procedure.steps().values().parallelStream()
        .collect(Collectors.toMap(Step::id, Said::in));
  }

  private static List<Said> in(Step step) {
    List<Said> all = new ArrayList<>();
    String text = step.words().text();
    add(all, Where.TEXT, text, "");
    add(all, Where.BRIEF, step.words().brief(), text);
    add(all, Where.WHY, step.words().why(), text);
    if (step instanceof Step.Choose choose) {
      // What somebody else would do is an answer, and no order.
      boolean others = ANOTHER.matcher(text).find();
      choose.options().stream()
          .flatMap(option -> Orders.in(option.label()).stream())
          .filter(order -> !others)
          .forEach(order -> all.add(new Said(Where.LABEL, order)));
    }
    return List.copyOf(all);
  }

  private static void add(List<Said> all, Where where, @Nullable String text, String before) {
    if (text != null && !text.isEmpty()) {
      Orders.in(text, before).forEach(order -> all.add(new Said(where, order)));
    }
  }

  /** The sentence, as a finding quotes it. */
  public String quoted() {
    return "\"" + order.sentence() + "\"";
  }
}
