package quarterturn.lesson.teacher;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import quarterturn.lesson.Keep;
import quarterturn.lesson.Value;
import quarterturn.unit.Printable;

/** What a desk lists where it is asked for, a paragraph each. */
public final class DeskLists {
  private DeskLists() {}

  /** A summary, then a sentence on each bench, the orders that are not taken yet, and notices. */
  static List<String> show(Sight sight) {
    List<String> out = new ArrayList<>();
    out.add("There: " + DeskWords.summary(sight) + ".");
    sight.view().rows().forEach(row -> out.add(DeskWords.sentence(sight, row)));
    if (!sight.unanswered().isEmpty()) {
      out.add("Orders that a bench has not taken yet: " + sight.unanswered().size() + ".");
    }
    sight.notices().forEach(notice -> out.add("Notice: " + notice));
    return out;
  }

  /** The lines on one bench: when it was heard, what keeps it, and levels. */
  public static List<String> bench(Sight sight, DeskView.Row row) {
    List<String> out = new ArrayList<>();
    out.add(DeskWords.sentence(sight, row));
    String heard = sight.silent(row) ? "" : DeskWords.heard(sight, row);
    if (!heard.isEmpty()) {
      out.add(heard.substring(0, 1).toUpperCase(Locale.ROOT) + heard.substring(1) + ".");
    }
    for (Keep keep : row.releases()) {
      boolean given = sight.pending(row, keep) != null;
      out.add("Kept by " + what(keep) + (given ? " (released, not seen yet)" : toRead(keep)) + ".");
    }
    out.addAll(DeskWords.levels(row.bench()));
    return out;
  }

  private static String toRead(Keep keep) {
    return keep.value() instanceof Value.None
        ? ""
        : "; to be read back: " + ReadBack.kind(keep.value());
  }

  /** What keeps a bench, in words: "a hold point: the turn". */
  static String what(Keep keep) {
    String what = Printable.of(keep.what()).replaceFirst("\\.$", "");
    return switch (keep.kind()) {
      case STOP -> "a stop" + (what.isEmpty() ? ", no reason given" : ": " + what);
      case TEACHER -> "the teacher: " + what;
      case HOLD_POINT -> "a hold point: " + what;
    };
  }

  /** What was predicted and read, by string and in the order of time. */
  public static List<String> spread(Sight sight) {
    List<String> out = ByString.lines(sight);
    return out.isEmpty() ? List.of("Nothing was predicted or read yet.") : out;
  }

  /** The lines on every desk's orders and the benches' answers, the oldest first. */
  public static List<String> orders(Sight sight) {
    List<String> out = new ArrayList<>();
    for (DeskView.Given given : sight.view().given()) {
      out.add(DeskWords.order(sight, given) + " (" + DeskWords.answers(sight, given) + ")");
    }
    return out.isEmpty() ? List.of("No order was given yet.") : out;
  }
}
