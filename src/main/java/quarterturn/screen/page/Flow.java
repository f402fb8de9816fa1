package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Hazard;
import quarterturn.procedure.kind.Which;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

/** The running text of a prompt: what changed, the hazards, then what to do. */
final class Flow {
  private static final String NOTE = "•";
  private static final String DO = "►";

  private Flow() {}

  /**
   * The text as lines.
   *
   * @param brief whether to save rows: a hazard that was accepted before is only named (the key for
   *     the reason shows it in full), without blank lines between paragraphs
   */
  static List<Line> of(Model model, int width, boolean brief) {
    Prompt prompt = model.prompt();
    List<Line> out = new ArrayList<>();
    PromptText said = prompt.said();
    boolean questionFirst = brief && prompt instanceof Prompt.Measure && said.hazards().isEmpty();
    if (questionFirst) {
      asked(said, width, true, out);
    }
    // What is to be done before a turn has a page of its own, and the notes stand there.
    boolean before = model.draft() instanceof Draft.Before;
    boolean turning = model.draft() instanceof Draft.Turning && !said.first().isEmpty();
    if (!(model.draft() instanceof Draft.Turning)) {
      said.notes().forEach(note -> out.addAll(Line.wrapped(NOTE, note, width)));
    }
    if (model.draft() instanceof Draft.Made && prompt instanceof Prompt.TurnRod turn) {
      String asked = "Asked: " + turn.turn().size() + ". " + MADE;
      out.addAll(Line.wrapped(DO, Ink.STRONG, asked, Ink.STRONG, width));
      return out;
    }
    if (prompt instanceof Prompt.Caution caution) {
      out.addAll(caution(caution, width, brief));
      return out;
    }
    hazards(said, width, brief, out);
    if (!out.isEmpty()) {
      out.add(Line.BLANK);
    }
    if (prompt instanceof Prompt.Ending end) {
      out.addAll(0, ending(end, width));
      out.addAll(account(model.overview(), width));
    } else if (before) {
      said.first()
          .forEach(one -> out.addAll(Line.wrapped(DO, Ink.STRONG, one.text(), Ink.PLAIN, width)));
    } else if (!questionFirst) {
      asked(turning ? said.alone() : said, width, brief, out);
    }
    if (model.draft() instanceof Draft.Turning && !turning) {
      // The order comes first where there is little room.
      said.notes().forEach(note -> out.addAll(Line.wrapped(NOTE, note, width)));
    }
    return out;
  }

  /** A line for each hazard that was accepted before; to save rows, for each signal word. */
  private static void hazards(PromptText said, int width, boolean brief, List<Line> out) {
    List<Hazard> hazards = Warning.worstFirst(said.hazards());
    if (!brief) {
      hazards.forEach(one -> out.addAll(signal(one.word(), one.brief(), width)));
      return;
    }
    Map<Hazard.Word, List<String>> words = new EnumMap<>(Hazard.Word.class);
    for (Hazard one : hazards) {
      words.computeIfAbsent(one.word(), word -> new ArrayList<>()).add(one.id().replace('-', ' '));
    }
    words.forEach((word, all) -> out.addAll(signal(word, String.join(", ", all) + " (w)", width)));
  }

  private static List<Line> signal(Hazard.Word word, String text, int width) {
    return Line.wrapped(" " + word + " ", Ink.SIGNAL, text, Ink.PLAIN, width);
  }

  private static final String MADE = "How far was it, and how did it feel?";

  private static void asked(PromptText said, int width, boolean brief, List<Line> out) {
    for (PromptText.First first : said.first()) {
      out.addAll(Line.wrapped("First ", Ink.STRONG, first.text(), Ink.PLAIN, width));
    }
    String text = brief ? said.text() : said.text().replace("\n", "\n\n");
    out.addAll(Line.wrapped(DO, Ink.STRONG, text, Ink.PLAIN, width));
  }

  private static List<Line> ending(Prompt.Ending end, int width) {
    boolean handOver = end instanceof Prompt.HandOver;
    List<Line> out = new ArrayList<>();
    String lead = handOver ? " HAND OVER " : " DONE ";
    out.addAll(Line.wrapped(lead, handOver ? Ink.SIGNAL : Ink.NOW, end.words(), Ink.STRONG, width));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped(end.said().text(), width));
    out.add(Line.BLANK);
    return out;
  }

  /** Lines on how the instrument was found and is left. */
  private static List<Line> account(Overview overview, int width) {
    List<Line> out = new ArrayList<>();
    if (Latest.of(overview.trail()) == null) {
      out.addAll(Line.wrapped("No reading was taken.", width));
    } else {
      out.addAll(Line.wrapped("As found  ", both(overview, true), width));
      out.addAll(Line.wrapped("As left   ", both(overview, false), width));
    }
    out.addAll(Line.wrapped("Rod       ", Trail.rod(overview).substring(4), width));
    return out;
  }

  private static String both(Overview overview, boolean found) {
    List<String> out = new ArrayList<>();
    for (Which which : Which.values()) {
      Entry.@Nullable Reading reading =
          found ? Latest.first(overview.trail(), which) : Latest.of(overview.trail(), which);
      if (reading != null) {
        out.add(
            Trail.string(which, overview)
                + " "
                + reading.bracket()
                + (!found && reading.stale() ? " (stale: not read again since)" : ""));
      }
    }
    return String.join(", ", out);
  }

  private static List<Line> caution(Prompt.Caution caution, int width, boolean brief) {
    List<Line> out = new ArrayList<>(Warning.page(caution.hazards(), width, brief));
    out.add(Line.BLANK);
    out.addAll(Line.wrapped(caution.said().text(), width));
    return out;
  }
}
