package quarterturn.procedure.read;

import java.time.Duration;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Limits;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Amounts;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.condition.Quote;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.read.yaml.Faults;
import quarterturn.procedure.read.yaml.MappingKeys;
import quarterturn.procedure.read.yaml.Node;
import quarterturn.procedure.read.yaml.Scalars;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Turn;

/**
 * Reads the limits from {@code safety/limits.yaml}. Which way each is stricter is said where it is
 * read: a user's own may only be so.
 */
record LimitsReader(
    Faults faults, Scalars values, MappingKeys fields, @Nullable MappingKeys shipped) {
  private static final int MOST_MOVES = 20;

  /**
   * Reads the limits as far as they can be read; a value that cannot be read is null.
   *
   * @param hazards ids of the known hazards, or null where they are not known
   * @param shipped the file that comes with the program, where this is a user's own: what it leaves
   *     out is as there, and what it says may only be stricter; else null
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
    // Named, since each place where one is written anew would take time at every start.
    Function<@Nullable Node, @Nullable Turn> turn = this::turn;
    Function<@Nullable Node, @Nullable Duration> time = this::time;
    Function<@Nullable Node, @Nullable Integer> moves = this::moves;
    Function<@Nullable Node, @Nullable Integer> minutes = this::minutes;
    Function<@Nullable Node, @Nullable Double> mm = this::mm;
    Function<@Nullable Node, @Nullable Double> points = this::points;
    Function<@Nullable Node, Collection<Fact>> facts = this::facts;
    Function<@Nullable Node, Collection<String>> outcomes = this::outcomes;
    Turn perReading = smaller("per-reading", one -> limit(one, Turn.QUARTER), Turn.QUARTER);
    Turn first = smaller("first-move", turn, Turn.NONE);
    if (first.compareTo(perReading) > 0 && stands("first-move")) {
      limit(fields.optional("first-move"), perReading);
    }
    Turn beginnerDay = smaller("beginner-day", turn, Turn.NONE);
    Duration day = larger("day", time, Duration.ZERO);
    Duration rest = larger("rest", this::hours, Duration.ZERO);
    Limits limits =
        new Limits(
            perReading,
            first.compareTo(perReading) > 0 ? perReading : first,
            smaller("free-first", turn, Turn.NONE),
            beginnerDay,
            (int) rest.toHours(),
            smaller("from-as-found", turn, Turn.NONE),
            smaller("moves-without-answer", moves, 1),
            smaller("moves-in-slack", moves, 1),
            smaller("moves-while-touching", moves, 1),
            smaller("wrong-way-moves", moves, 1),
            smaller("stiff-turns", moves, 1),
            larger("settle", minutes, 0),
            smaller("retune-after", minutes, 0),
            smaller("reading-holds", minutes, 0),
            more("stop-feels", node -> values.words(node, "a feel", Feel.values())),
            more("finding-needed", outcomes),
            more("kept-slack", outcomes),
            more("turn-needs", facts),
            more("tighten-needs", facts),
            more("apart-needs", facts),
            List.copyOf(more("turn-hazards", node -> hazards(node, hazards))),
            // A rest that outlasts the day would end with it.
            day.compareTo(rest) < 0 ? rest : day,
            smaller("most-reported", turn, Turn.NONE),
            smaller("put-off", moves, 1),
            smaller("pause", time, Duration.ZERO),
            larger("known-for", time, Duration.ZERO),
            new Limits.Clocks(
                smaller("clock-behind", time, Duration.ZERO),
                smaller("clock-gap", time, Duration.ZERO)),
            smaller("jump", mm, 0.0),
            larger("creep-share", points, 0.0) / 100,
            new Limits.Answers(
                larger("seen", mm, 0.0),
                smaller("wrong-way", mm, 0.0),
                smaller("far-off", mm, 0.0),
                smaller("answer-expected", turn, Turn.NONE)),
            new Limits.Climate(
                smaller("climate-after", time, Duration.ZERO),
                smaller("climate-points", points, 0.0)),
            new Limits.Rechecks(
                recheck("day-on"),
                recheck("week-on"),
                recheck("season-on"),
                smaller("answered-at", moves, 1),
                larger("ahead", time, Duration.ZERO)));
    fields.endFile();
    workable(limits);
    return limits;
  }

  /** Notes figures that are so strict that no session could be played to its end. */
  private void workable(Limits limits) {
    for (String key : List.of("per-reading", "first-move", "beginner-day", "from-as-found")) {
      Node node = fields.optional(key);
      if (node instanceof Node.Scalar one && below(one.text(), Turn.SIXTEENTH)) {
        faults.value(
            node.mark(),
            Quote.of(one.text()) + " is less than the least turn that is asked for",
            "Write " + Turn.SIXTEENTH + " or more");
      }
    }
    if (limits.readingHoldsMinutes() < limits.settleMinutes() && stands("reading-holds")) {
      faults.value(
          fields.key("reading-holds"),
          "tuning holds for less than settle, so that no reading would count",
          "Write " + limits.settleMinutes() + " min or more");
    }
  }

  private static boolean below(String written, Turn least) {
    try {
      return Amounts.turn(written).compareTo(least) < 0;
    } catch (NotUnderstoodException e) {
      // It is no turn, which was said when it was read.
      return false;
    }
  }

  /** Whether this file says it itself, or there is no other. */
  private boolean stands(String key) {
    Node node = fields.optional(key);
    return node != null && (shipped == null || node != shipped.optional(key));
  }

  /** Reads a figure that is stricter the smaller it is. */
  private <T extends Comparable<T>> T smaller(
      String key, Function<@Nullable Node, @Nullable T> read, T none) {
    return held(key, read, Comparator.naturalOrder(), none);
  }

  /** Reads a figure that is stricter the larger it is. */
  private <T extends Comparable<T>> T larger(
      String key, Function<@Nullable Node, @Nullable T> read, T none) {
    return held(key, read, Comparator.reverseOrder(), none);
  }

  /** Reads a list that is stricter the more it holds: what the program names is always in it. */
  private <T> Set<T> more(String key, Function<@Nullable Node, Collection<T>> read) {
    Set<T> all =
        new LinkedHashSet<>(shipped == null ? List.of() : read.apply(shipped.optional(key)));
    all.addAll(read.apply(fields.required(key)));
    return all;
  }

  /**
   * Reads a figure that a user's own file may only make stricter.
   *
   * @param laxer puts the laxer one last
   * @param none what is taken where it cannot be read
   */
  private <T> T held(
      String key, Function<@Nullable Node, @Nullable T> read, Comparator<T> laxer, T none) {
    T figure = read.apply(fields.required(key));
    Node program = shipped == null ? null : shipped.optional(key);
    T bound = program == null ? null : read.apply(program);
    if (figure != null && bound != null && laxer.compare(figure, bound) > 0) {
      new Stricter(faults).laxer(fields.key(key), key, text(program));
    }
    return figure == null ? none : figure;
  }

  /** A figure as it is written; of a re-check, its time. */
  private static String text(@Nullable Node node) {
    return node instanceof Node.Mapping one
        ? "after: " + one.text("after")
        : node instanceof Node.Scalar scalar ? scalar.text() : "";
  }

  private Limits.Recheck recheck(String key) {
    Limits.Recheck none = new Limits.Recheck(Duration.ZERO, "", "", "");
    Limits.Recheck own =
        held(key, this::recheck, Comparator.comparing(Limits.Recheck::after), none);
    Node program = shipped == null ? null : shipped.optional(key);
    if (program instanceof Node.Mapping one
        && !List.of(one.text("start"), one.text("or")).contains(own.procedure())) {
      new Stricter(faults)
          .laxer(fields.key(key), key + " with another start", "start: " + one.text("start"));
    }
    return own;
  }

  private Limits.@Nullable Recheck recheck(@Nullable Node node) {
    MappingKeys one = MappingKeys.of(node, "a re-check", faults);
    Duration after = time(one.required("after"));
    Node.Scalar start = values.id(one.required("start"), "a procedure");
    values.id(one.optional("or"), "a procedure");
    String due = values.fixed(one.required("due"));
    String sheet = values.fixed(one.required("sheet"));
    one.end();
    return after == null || start == null || due == null || sheet == null
        ? null
        : new Limits.Recheck(after, start.text(), due, sheet);
  }

  private @Nullable Turn limit(@Nullable Node node, Turn most) {
    return TurnReader.limit(values, node, most);
  }

  private @Nullable Turn turn(@Nullable Node node) {
    return values.parsed(node, Amounts::turn);
  }

  private @Nullable Double mm(@Nullable Node node) {
    return values.parsed(node, text -> Amounts.of(Quantity.RELIEF, text));
  }

  private @Nullable Double points(@Nullable Node node) {
    return values.parsed(node, text -> Amounts.of(Quantity.HUMIDITY, text));
  }

  private @Nullable Integer moves(@Nullable Node node) {
    return values.count(node, 1, MOST_MOVES);
  }

  private @Nullable Integer minutes(@Nullable Node node) {
    return values.parsed(node, Amounts::minutes);
  }

  private @Nullable Duration time(@Nullable Node node) {
    Integer minutes = minutes(node);
    return minutes == null ? null : Duration.ofMinutes(minutes);
  }

  private @Nullable Duration hours(@Nullable Node node) {
    Duration time = time(node);
    if (node != null && time != null && time.toMinutesPart() != 0) {
      faults.value(node.mark(), "the rest is counted in whole hours", "Write for example 24 h");
    }
    return time;
  }

  private Set<String> outcomes(@Nullable Node node) {
    return new LinkedHashSet<>(
        values.each(
            node,
            item -> {
              Node.Scalar id = values.id(item, "an outcome");
              return id == null ? null : id.text();
            }));
  }

  private Set<Fact> facts(@Nullable Node node) {
    return values.words(node, "a fact", Fact.values());
  }

  private List<String> hazards(@Nullable Node node, @Nullable List<String> known) {
    return new WordsReader(faults, new References(faults), known).hazards(values, node);
  }
}
