package quarterturn.procedure.read.form;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.Slip;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Node.Entry;
import quarterturn.procedure.read.yaml.Node.Mapping;
import quarterturn.procedure.read.yaml.Node.Scalar;
import quarterturn.procedure.read.yaml.Node.Sequence;

/**
 * A procedure written out: every form replaced by the steps that it stands for, which are all that
 * the engine and the checker know.
 */
public final class FullForm {
  private FullForm() {}

  /** The tree of a file with its steps written out; any other tree as it is. */
  public static Node of(Node file, SharedFiles files, Faults faults) {
    if (!(file instanceof Mapping mapping)) {
      return file;
    }
    Entry steps = mapping.entries().get(Keys.STEPS);
    if (steps == null || !(steps.value() instanceof Sequence list)) {
      return file;
    }
    Collection<Hazard> hazards = files.hazards();
    List<Node> written =
        InOrder.of(new Expansion(files, faults).of(list.items(), mapping.value(Keys.RETUNE)));
    written.replaceAll(step -> StepHazards.of(step, hazards));
    Scalar first = InOrder.first(written);
    Mapping head = mapping.without(Keys.STEPS);
    if (first != null && !head.entries().containsKey(Keys.BEGIN)) {
      head = head.with(Keys.BEGIN, new Entry(steps.key(), first));
    }
    return head.with(Keys.STEPS, new Entry(steps.key(), new Sequence(written, list.mark())));
  }

  /**
   * A procedure, written out, with the questions of its lesson at their steps.
   *
   * @param questions lists of questions by the id of their step
   * @param faults get one for each step that is not there; null where such questions are left out
   */
  public static Node asking(Node file, Mapping questions, @Nullable Faults faults) {
    if (!(file instanceof Mapping mapping)
        || !(mapping.value(Keys.STEPS) instanceof Sequence list)) {
      return file;
    }
    Map<String, Entry> open = new LinkedHashMap<>(questions.entries());
    List<Node> asked = new ArrayList<>(list.items());
    asked.replaceAll(
        step -> {
          Entry own = open.remove(StepIds.id(step));
          return own == null ? step : ((Mapping) step).with("ask", own);
        });
    if (faults != null) {
      List<String> ids = asked.stream().map(StepIds::id).filter(known -> !known.isEmpty()).toList();
      for (Map.Entry<String, Entry> one : open.entrySet()) {
        faults.add(
            Slip.UNKNOWN_ID,
            one.getValue().key(),
            "there is no step " + Quote.of(one.getKey()) + " to ask about",
            Quote.allowed(one.getKey(), ids));
      }
    }
    return mapping.with(Keys.STEPS, new Entry(list.mark(), new Sequence(asked, list.mark())));
  }
}
