package quarterturn.procedure.read;

import java.time.Duration;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.Turn;

/** Reads the limits from {@code safety/limits.yaml}. */
record LimitsReader(
    Faults faults, Scalars values, MappingKeys fields, @Nullable MappingKeys shipped) {
  private static final int MOST_MOVES = 20;

  /**
   * Reads the limits as far as they can be read; a value that cannot be read is null.
   *
   * @param hazards ids of the known hazards, or null where they are not known
   * @param shipped the file that comes with the program, where this is a user's own: what it leaves
   *     out is as there, and some of what it says may only be stricter; else null
   */
  static Limits draft(Faults faults, @Nullable List<String> hazards, @Nullable Faults shipped)
      throws UnreadableException {
    MappingKeys own = listed(faults);
    Scalars values = new Scalars(faults);
    if (shipped == null || !own.found()) {
      return new LimitsReader(faults, values, own, null).limits(hazards);
    }
    MappingKeys theirs = listed(shipped);
    return new LimitsReader(faults, values, own.over(theirs), theirs).limits(hazards);
  }

  private static MappingKeys listed(Faults faults) throws UnreadableException {
    MappingKeys file = MappingKeys.ofFile(faults);
    Node list = file.required("limits");
    file.endFile();
    return MappingKeys.of(list, "the list of limits", faults);
  }

  private Limits limits(@Nullable List<String> hazards) throws UnreadableException {
    Turn perReading = TurnReader.limit(values, fields.required("per-reading"), Turn.QUARTER);
    Node first = fields.required("first-move");
    Turn beginnerDay = turn(fields.required("beginner-day"));
    // It belongs here in a list of the keys, and is held to the shipped file with the figures
    // below.
    fields.optional("day");
    Limits limits =
        new Limits(
            orNone(perReading),
            orNone(TurnReader.limit(values, first, perReading == null ? Turn.QUARTER : perReading)),
            beginnerDay,
            hours(fields.required("rest")),
            turn(fields.required("from-as-found")),
            moves(fields.required("moves-without-answer")),
            moves(fields.required("moves-while-touching")),
            moves(fields.required("wrong-way-moves")),
            minutes(fields.required("settle")),
            minutes(fields.required("retune-after")),
            minutes(fields.required("reading-holds")),
            values.words(fields.required("stop-feels"), "a feel", Feel.values()),
            facts(fields.required("turn-needs")),
            facts(fields.required("tighten-needs")),
            new WordsReader(faults, new References(faults), hazards)
                .hazards(values, fields.required("turn-hazards")),
            least("day", this::time),
            most("most-reported", this::turn),
            most("put-off", this::moves),
            most("pause", this::time),
            least("known-for", this::time),
            most("jump", this::mm),
            new Limits.Answers(
                least("seen", this::mm),
                most("wrong-way", this::mm),
                most("answer-expected", this::turn)),
            new Limits.Climate(
                most("climate-after", this::time), most("climate-points", this::points)),
            new Limits.Rechecks(
                recheck("day-on"),
                recheck("week-on"),
                recheck("season-on"),
                most("answered-at", this::moves),
                time(fields.required("ahead"))));
    fields.endFile();
    return limits;
  }

  /** Reads a figure that a user's own file may only make smaller. */
  private <T extends Comparable<T>> T most(String key, Function<@Nullable Node, T> read) {
    return held(key, read, Comparator.naturalOrder());
  }

  /** Reads a figure that a user's own file may only make larger. */
  private <T extends Comparable<T>> T least(String key, Function<@Nullable Node, T> read) {
    return held(key, read, Comparator.reverseOrder());
  }

  /**
   * Reads a figure that a user's own file may only make stricter.
   *
   * @param laxer puts the laxer one last
   */
  private <T> T held(String key, Function<@Nullable Node, T> read, Comparator<T> laxer) {
    T figure = read.apply(fields.required(key));
    if (shipped != null && laxer.compare(figure, read.apply(shipped.optional(key))) > 0) {
      faults.add(
          Slip.OVER_LIMIT,
          fields.key(key),
          key + " is laxer than in the limits that come with the program",
          "Write a stricter figure, or take it out: theirs holds then");
    }
    return figure;
  }

  private Limits.Recheck recheck(String key) {
    return held(key, this::recheck, Comparator.comparing(Limits.Recheck::after));
  }

  private Limits.Recheck recheck(@Nullable Node node) {
    MappingKeys one = MappingKeys.of(node, "a re-check", faults);
    Duration after = time(one.required("after"));
    Node.Scalar start = values.id(one.required("start"), "a procedure");
    String due = values.fixed(one.required("due"));
    String sheet = values.fixed(one.required("sheet"));
    one.end();
    return new Limits.Recheck(
        after,
        start == null ? "" : start.text(),
        Objects.requireNonNullElse(due, ""),
        Objects.requireNonNullElse(sheet, ""));
  }

  private static Turn orNone(@Nullable Turn turn) {
    return Objects.requireNonNullElse(turn, Turn.NONE);
  }

  private Turn turn(@Nullable Node node) {
    return orNone(values.parsed(node, Amounts::turn));
  }

  private double mm(@Nullable Node node) {
    return amount(node, Quantity.RELIEF);
  }

  private double points(@Nullable Node node) {
    return amount(node, Quantity.HUMIDITY);
  }

  private double amount(@Nullable Node node, Quantity quantity) {
    Double read = values.parsed(node, text -> Amounts.of(quantity, text));
    return Objects.requireNonNullElse(read, 0.0);
  }

  private int moves(@Nullable Node node) {
    return Objects.requireNonNullElse(values.count(node, 1, MOST_MOVES), 1);
  }

  private int minutes(@Nullable Node node) {
    return Objects.requireNonNullElse(values.parsed(node, Amounts::minutes), 0);
  }

  private Duration time(@Nullable Node node) {
    return Duration.ofMinutes(minutes(node));
  }

  private int hours(@Nullable Node node) {
    int minutes = minutes(node);
    if (node != null && minutes % 60 != 0) {
      faults.value(node.mark(), "the rest is counted in whole hours", "Write for example 24 h");
    }
    return minutes / 60;
  }

  private Set<Fact> facts(@Nullable Node node) {
    return values.words(node, "a fact", Fact.values());
  }
}
