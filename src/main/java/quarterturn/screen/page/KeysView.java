package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import quarterturn.procedure.Guide;
import quarterturn.screen.state.Command;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

/** The keys of the step, the words it uses, and the keys of every view. */
final class KeysView {
  private static final int KEY = 10;

  private KeysView() {}

  static List<Line> lines(Model model, int width) {
    List<Line> out = new ArrayList<>();
    out.add(Line.heading("Keys of this step"));
    KeyHints.own(model).forEach(hint -> out.add(key(hint.key(), hint.meaning())));
    words(model, width, out);
    out.add(Line.BLANK);
    out.add(Line.heading("Keys of every step"));
    for (Command command : Command.values()) {
      boolean drawn = command != Command.PICTURE || Pictures.of(model, width, width) != null;
      if (drawn && KeyHints.works(command, model)) {
        out.add(key(command.both(), command.meaning()));
      }
    }
    out.add(key("PgUp PgDn", "scroll the text"));
    out.add(key("Esc", "one view back"));
    out.add(key("Ctrl-C", "leave in order"));
    out.add(key("Ctrl-Z", "pause, fg resumes"));
    out.add(Line.BLANK);
    if (model.draft().typing()) {
      String typing = "While you type, letters are text: use the F keys, or press Esc first.";
      out.addAll(Line.wrapped(typing, width));
    }
    out.addAll(Line.wrapped("In the line on top: √ done, ► now, · not yet.", width));
    return out;
  }

  private static void words(Model model, int width, List<Line> out) {
    PromptText said = model.prompt().said();
    String text =
        Stream.of(
                said.first().stream().map(PromptText.First::text),
                Stream.of(said.text()),
                said.notes().stream(),
                model.prompt() instanceof Prompt.Choose choose
                    ? choose.options().stream().map(Prompt.Option::label)
                    : Stream.<String>of())
            .flatMap(texts -> texts)
            .collect(Collectors.joining(" "));
    List<Guide.Entry> words = model.overview().guide().of(text);
    if (words.isEmpty()) {
      return;
    }
    out.add(Line.BLANK);
    out.add(Line.heading("Words of this step"));
    for (Guide.Entry word : words) {
      out.addAll(Line.wrapped(word.name() + ":", Ink.STRONG, word.means(), Ink.PLAIN, width));
    }
  }

  private static Line key(String key, String meaning) {
    return new Line(key, Ink.STRONG, Math.max(KEY, Canvas.cells(key) + 1), meaning, Ink.PLAIN);
  }
}
