package quarterturn.screen.page;

import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Which;
import quarterturn.screen.state.Turns;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Overview;
import quarterturn.session.Overview.Entry;
import quarterturn.unit.Bracket;
import quarterturn.unit.Turn;

/** The readings and turns of a session in words. */
final class Trail {
  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM HH:mm", Locale.ENGLISH);

  private Trail() {}

  /**
   * All readings and turns in a row, "Relief E1 0.60-0.65 > 1/8 loosen > E1 0.65-0.70"; the newest
   * where too long.
   */
  static String row(Overview overview, int width) {
    List<Entry> trail = overview.trail();
    String out = "";
    for (int i = trail.size() - 1; i >= 0; i--) {
      String entry = brief(trail.get(i), overview);
      boolean last = i == trail.size() - 1;
      if (last && trail.get(i) instanceof Entry.Reading reading && reading.stale()) {
        entry += " (stale)";
      }
      boolean sameRound = !last && reading(trail, i) && reading(trail, i + 1);
      String longer = entry + (last ? "" : sameRound ? ", " : " ► ") + out;
      if (Canvas.cells(longer) > width - 7 - (i == 0 ? 0 : 4)) {
        return "Relief … ► " + out;
      }
      out = longer;
    }
    return out.isEmpty() ? "No relief reading yet" : "Relief " + out;
  }

  private static boolean reading(List<Entry> trail, int index) {
    return trail.get(index) instanceof Entry.Reading;
  }

  private static String brief(Entry entry, Overview overview) {
    if (entry instanceof Entry.Reading reading) {
      return string(reading.which(), overview) + " " + compact(reading.bracket());
    }
    return entry instanceof Entry.Turned turned ? turned(turned) : "";
  }

  /** "1/8 loosen", "about 1/8 loosen (not sure)". */
  private static String turned(Entry.Turned turned) {
    return turned.sure() ? brief(turned) : brief(turned) + " (not sure)";
  }

  static String brief(Entry.Turned turned) {
    Turn turn = turned.turn();
    if (turn.turns() == 0) {
      return "not moved";
    }
    return (turned.sure() ? "" : "about ")
        + Turns.typedForm(turn)
        + (turn.turns() > 0 ? " tighten" : " loosen");
  }

  /** A bracket without its unit: "0.60-0.65", "touches", "<0.05", ">1.00". */
  static String compact(Bracket bracket) {
    return bracket
        .toString()
        .replace(" (no gap)", "")
        .replace(" to ", "-")
        .replace(" mm", "")
        .replace("under ", "<")
        .replace("over ", ">");
  }

  /** A string as the texts call it, or "low" and "high" where both have the same note. */
  static String string(Which which, Overview overview) {
    Kind kind = overview.kind();
    if (kind == null || kind.string(Which.LOWEST).equals(kind.string(Which.HIGHEST))) {
      return which == Which.LOWEST ? "low" : "high";
    }
    String note = kind.string(which);
    return overview.role() == Role.TECHNICIAN ? note : kind.called(note, false);
  }

  /** The rod's position and recent turning: "Rod 1/8 looser than found, 1/8 in 24 h". */
  static String rod(Overview overview) {
    double net = overview.net().turns();
    boolean sure = Entry.sure(overview.trail());
    String stands =
        Math.abs(net) < 1e-9
            ? "Rod as found"
            : "Rod "
                + (sure ? "" : "about ")
                + Turns.typedForm(overview.net())
                + (net > 0 ? " tighter" : " looser")
                + " than found"
                + (sure ? "" : " (not sure)");
    boolean moved = overview.today().turns() > 1e-9;
    String in = " in " + overview.day().toHours() + " h";
    return stands + (moved ? ", moved " + Turns.typedForm(overview.today()) + in : "");
  }

  /** Window and rod in one line, in fewer words where there is less room. */
  static String standing(Overview overview, int width) {
    String window = window(overview);
    String gap = window.isEmpty() ? "" : "  ";
    String rod = rod(overview);
    String brief = window.replace("Relief range", "Range").replace(" to ", "-").replace(" mm", "");
    String tight = brief + gap + rod.replace(" than found", "");
    return Stream.of(window + gap + rod, brief + gap + rod, tight)
        .filter(one -> Canvas.cells(one) <= width)
        .findFirst()
        .orElse(Wrap.cut(tight, width));
  }

  static String window(Overview overview) {
    return overview.window() == null ? "" : "Relief range " + overview.window();
  }

  /** A line for each reading and turn, with its time. */
  static List<Line> lines(Overview overview, ZoneId zone, int width) {
    List<Line> out = new ArrayList<>();
    for (Entry entry : overview.all()) {
      String when = WHEN.withZone(zone).format(entry.at());
      out.addAll(Line.wrapped(when, " " + full(entry, overview), width));
    }
    if (out.isEmpty()) {
      out.addAll(Line.wrapped("No relief reading yet.", width));
    }
    return out;
  }

  private static String full(Entry entry, Overview overview) {
    if (entry instanceof Entry.Reading reading) {
      return string(reading.which(), overview)
          + " "
          + reading.bracket()
          + (reading.stale() ? ", stale" : "");
    }
    if (entry instanceof Entry.Other other) {
      return other.words() + (other.stale() ? ", stale" : "");
    }
    return entry instanceof Entry.Turned turned
        ? "► " + turned(turned) + (turned.feel() == null ? "" : ", " + turned.feel().word())
        : "";
  }
}
