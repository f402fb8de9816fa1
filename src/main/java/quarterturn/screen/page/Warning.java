package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import quarterturn.procedure.Hazard;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.screen.terminal.Wrap;

/** Lines for a hazard: the signal word first, then the harm, then how to avoid it. */
final class Warning {
  private Warning() {}

  /** Hazards sorted by signal word: danger, warning, caution, notice. */
  static List<Hazard> worstFirst(List<Hazard> hazards) {
    return hazards.stream().sorted(Comparator.comparing(Hazard::word)).toList();
  }

  /** The hazard in a frame with the signal word in its upper edge, to be read first. */
  private static List<Line> lines(Hazard hazard, int width) {
    int inner = Math.min(width, 90) - 4;
    String word = "  " + hazard.word().name() + "  ";
    String edge = "═".repeat(inner + 2);
    List<Line> out = new ArrayList<>();
    out.add(new Line(word, Ink.SIGNAL, 2, 0, "╔" + edge + "╗", Ink.PLAIN));
    Wrap.lines(hazard.harm(), inner).forEach(line -> out.add(side(line, inner)));
    out.add(side("", inner));
    Wrap.lines("To avoid it: " + hazard.avoid(), inner).forEach(line -> out.add(side(line, inner)));
    out.add(new Line("", Ink.PLAIN, 0, "╚" + edge + "╝", Ink.PLAIN));
    return out;
  }

  private static Line side(String text, int inner) {
    String fill = " ".repeat(Math.max(0, inner - Canvas.cells(text)));
    return new Line("", Ink.PLAIN, 0, "║ " + text + fill + " ║", Ink.PLAIN);
  }

  /**
   * The hazards of one page: a single one in its frame, several below each other.
   *
   * @param brief whether to save rows
   */
  static List<Line> page(List<Hazard> hazards, int width, boolean brief) {
    if (hazards.size() == 1 && !brief) {
      return lines(hazards.get(0), width);
    }
    List<Line> out = new ArrayList<>();
    for (Hazard hazard : hazards) {
      if (!out.isEmpty() && !brief) {
        out.add(Line.BLANK);
      }
      out.addAll(plain(hazard, width));
    }
    return out;
  }

  /** The hazard without a frame, for a list of hazards. */
  static List<Line> plain(Hazard hazard, int width) {
    List<Line> out = new ArrayList<>();
    String word = " " + hazard.word().name() + " ";
    out.addAll(Line.wrapped(word, Ink.SIGNAL, hazard.harm(), Ink.PLAIN, width));
    out.addAll(Line.wrapped(" ".repeat(word.length()), hazard.avoid(), width));
    return out;
  }
}
