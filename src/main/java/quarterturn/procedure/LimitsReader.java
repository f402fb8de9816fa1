package quarterturn.procedure;

import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Turn;

/** Reads the limits from {@code safety/limits.yaml}. */
public final class LimitsReader {
  private static final List<String> KEYS =
      List.of(
          "per-reading",
          "first-move",
          "beginner-day",
          "rest",
          "from-as-found",
          "moves-without-answer",
          "moves-while-touching",
          "wrong-way-moves",
          "settle",
          "retune-after",
          "reading-holds",
          "stop-feels",
          "turn-needs",
          "tighten-needs",
          "turn-hazards");

  private static final int MOST_MOVES = 20;

  private LimitsReader() {}

  /**
   * Reads the limits.
   *
   * @throws Unreadable with every fault of the file
   */
  public static Limits read(String fileName, byte[] bytes) throws Unreadable {
    Faults faults = new Faults(Source.of(fileName, bytes));
    Limits limits = draft(faults, null);
    faults.check();
    return limits;
  }

  /**
   * Reads as much as can be read; what cannot is nothing.
   *
   * @param hazards ids of the known hazards, or null where they are not known
   */
  static Limits draft(Faults faults, @Nullable List<String> hazards) throws Unreadable {
    Fields file = Fields.of(TreeReader.read(faults), "this file", List.of("limits"), faults);
    Node listed = file == null ? null : file.required("limits");
    if (file != null) {
      file.end();
    }
    Fields fields = Fields.of(listed, "the list of limits", KEYS, faults);
    if (fields == null) {
      throw new Unreadable(faults.sorted());
    }
    Scalars values = new Scalars(faults);
    Node first = fields.required("first-move");
    Turn perReading = TurnReader.limit(values, fields.required("per-reading"), Turn.QUARTER);
    Limits limits =
        new Limits(
            orNone(perReading),
            orNone(TurnReader.limit(values, first, perReading == null ? Turn.QUARTER : perReading)),
            orNone(values.parsed(fields.required("beginner-day"), Amounts::turn)),
            hours(values, fields.required("rest")),
            orNone(values.parsed(fields.required("from-as-found"), Amounts::turn)),
            moves(values, fields.required("moves-without-answer")),
            moves(values, fields.required("moves-while-touching")),
            moves(values, fields.required("wrong-way-moves")),
            minutes(values, fields.required("settle")),
            minutes(values, fields.required("retune-after")),
            minutes(values, fields.required("reading-holds")),
            values.words(fields.required("stop-feels"), "a feel", Feel.values(), Feel::word),
            facts(values, fields.required("turn-needs")),
            facts(values, fields.required("tighten-needs")),
            new WordsReader(faults, new References(faults), hazards)
                .hazards(values, fields.required("turn-hazards")));
    fields.end();
    return limits;
  }

  private static Turn orNone(@Nullable Turn turn) {
    return Objects.requireNonNullElse(turn, Turn.NONE);
  }

  private static int moves(Scalars values, @Nullable Node node) {
    return Objects.requireNonNullElse(values.count(node, 1, MOST_MOVES), 0);
  }

  private static int minutes(Scalars values, @Nullable Node node) {
    return Objects.requireNonNullElse(values.parsed(node, Amounts::minutes), 0);
  }

  private static int hours(Scalars values, @Nullable Node node) {
    int minutes = minutes(values, node);
    if (node != null && minutes % 60 != 0) {
      values
          .faults()
          .add(
              Slip.BAD_VALUE,
              node.mark(),
              "the rest is counted in whole hours",
              "Write for example 24 h");
    }
    return minutes / 60;
  }

  private static Set<Fact> facts(Scalars values, @Nullable Node node) {
    return values.words(node, "a fact", Fact.values(), Fact::word);
  }
}
