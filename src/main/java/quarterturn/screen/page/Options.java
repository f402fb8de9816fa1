package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Prompt;

/**
 * Numbered answers, one of which can be marked.
 *
 * @param lines the answers, wrapped
 * @param first index of the marked answer's first line, or -1
 * @param last index of its last line, or -1
 */
record Options(List<Line> lines, int first, int last) {
  private static final int INDENT = 5;

  /** The answers that the model's prompt and draft have; none where nothing is chosen. */
  static Options of(Model model, int width) {
    return model.prompt() instanceof Prompt.Choose choose
            && model.draft() instanceof Draft.Picking picking
        ? of(choose.options().stream().map(Prompt.Option::label).toList(), picking.at(), width)
        : new Options(List.of(), -1, -1);
  }

  private static Options of(List<String> labels, int at, int width) {
    List<Line> lines = new ArrayList<>();
    int first = -1;
    int last = -1;
    for (int i = 0; i < labels.size(); i++) {
      boolean on = i == at;
      first = on ? lines.size() : first;
      String lead = number(on, i);
      for (String line : Wrap.lines(labels.get(i), width - INDENT - 2)) {
        Ink ink = on ? Ink.NOW : Ink.PLAIN;
        lines.add(new Line(lead, Ink.STRONG, INDENT - 1, " " + line + " ", ink));
        lead = "";
      }
      last = on ? lines.size() - 1 : last;
    }
    return new Options(lines, first, last);
  }

  /** The mark and the number before an answer. */
  static String number(boolean on, int index) {
    return (on ? "►" : " ") + String.format("%2d", index + 1);
  }

  boolean none() {
    return lines.isEmpty();
  }
}
