package quarterturn.procedure;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.condition.Condition;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.kind.Quantity;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Turn;

/** One step of a procedure: it does one thing and has an id. */
public sealed interface Step {
  String id();

  Words words();

  Mark mark();

  /**
   * The ways on from this step, in order; two that lead to the same step are kept apart. Empty for
   * an end.
   */
  List<Exit> exits();

  /** The conditions by which this step goes on; none where it goes on by something else. */
  Branch.Fork fork();

  /** The facts that this step establishes when it is confirmed or over, whatever is answered. */
  Set<Fact> establishes();

  /** What this step puts on record that the program asks for again, or null. */
  @Nullable Recorded records();

  /**
   * Id of the change that doing this step makes to the instrument, whatever is answered; or null.
   */
  @Nullable String changes();

  /**
   * A way on from a step.
   *
   * @param word what it is taken for: an option, a feel or "otherwise"; empty where there is only
   *     one, and where it is taken for a condition
   * @param when the condition it is taken for, or null
   * @param to id of the step it leads to
   */
  record Exit(String word, @Nullable Condition when, String to) {
    /** A way on that is taken for no condition. */
    public Exit(String word, String to) {
      this(word, null, to);
    }
  }

  /** A step that goes on by conditions. */
  sealed interface Forked extends Step permits Tell, Measure, Compute, Call, Adjust {
    Branch.Fork then();

    @Override
    default List<Exit> exits() {
      return then().exits();
    }

    @Override
    default Branch.Fork fork() {
      return then();
    }
  }

  /** A step whose answer the program does not ask for again. */
  sealed interface Passing extends Step
      permits Tell, Pause, Measure, Compute, Call, TurnRod, Adjust, Wait, Done, HandOver {
    @Override
    default @Nullable Recorded records() {
      return null;
    }
  }

  /** A step that does nothing to the bench by being confirmed. */
  sealed interface Still extends Step
      permits Choose, Note, Pause, Measure, Compute, Call, TurnRod, Adjust, Done, HandOver {
    @Override
    default Set<Fact> establishes() {
      return Set.of();
    }

    @Override
    default @Nullable String changes() {
      return null;
    }
  }

  /** A step that goes on by no condition. */
  sealed interface Unforked extends Step permits Choose, TurnRod, Straight, End {
    @Override
    default Branch.Fork fork() {
      return Branch.Fork.NONE;
    }
  }

  /** A step at which nothing is asked, so that no session is ever left there. */
  sealed interface Silent extends Step permits Compute, Call, End {}

  /** A step with one way on. */
  sealed interface Straight extends Unforked permits Note, Pause, Wait {
    String go();

    @Override
    default List<Exit> exits() {
      return List.of(new Exit("", go()));
    }
  }

  /** A step at which a procedure ends. */
  sealed interface End extends Unforked, Silent permits Done, HandOver {
    /** Whom a text names that leaves something to a repairer. */
    String REPAIRER = "qualified repairer";

    String outcome();

    /** Whether the instrument, or something on it, is left to a repairer. */
    default boolean forRepairer() {
      return this instanceof HandOver || words().text().contains(REPAIRER);
    }

    @Override
    default List<Exit> exits() {
      return List.of();
    }
  }

  /**
   * Something to do or look at, confirmed when done.
   *
   * @param changes the change this makes to the instrument, or null
   */
  record Tell(
      String id,
      Words words,
      Mark mark,
      Set<Fact> establishes,
      @Nullable String changes,
      Branch.Fork then)
      implements Forked, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.tell().apply(this);
    }
  }

  /**
   * A choice of one among named answers, the ordinary one first.
   *
   * @param gives the result that is a verdict and is given here, or null
   */
  record Choose(
      String id,
      Words words,
      Mark mark,
      List<Option> options,
      @Nullable String gives,
      @Nullable Recorded records)
      implements Still, Unforked {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.choose().apply(this);
    }

    @Override
    public List<Exit> exits() {
      return options.stream().map(option -> new Exit(option.id(), option.go())).toList();
    }
  }

  /**
   * One answer of a {@link Choose}.
   *
   * @param changes the change to the instrument that it tells of, or null
   */
  record Option(
      String id, String label, Set<Fact> establishes, @Nullable String changes, String go) {}

  /** Something to be written down in words, one line. */
  record Note(String id, Words words, Mark mark, @Nullable Recorded records, String go)
      implements Still, Straight {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.note().apply(this);
    }
  }

  /**
   * A short list at which a technician says once more what stands, before something is hard to take
   * back. Whoever is led step by step passes it.
   *
   * @param lines at most {@link #MOST_LINES}
   */
  record Pause(String id, Words words, Mark mark, List<Line> lines, String go)
      implements Still, Straight, Passing {
    /** Most lines of a pause: more would only be ticked off. */
    public static final int MOST_LINES = 9;

    public Pause {
      lines = List.copyOf(lines);
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.pause().apply(this);
    }
  }

  /** One line of a {@link Pause}: a value to be said, never just "ok". */
  sealed interface Line {
    /** A line with the answer given at a step. */
    record OfChoice(String step) implements Line {}

    /** A line with the last reading on a string. */
    record OfReading(Quantity quantity, Which which) implements Line {}

    /** A line with the way the rod goes next. */
    record OfDirection() implements Line {
      public static final String WORD = "direction";
    }
  }

  /** A step to set a screw or a slide anew on every string whose reading is out of its window. */
  record Adjust(String id, Words words, Mark mark, Adjustment adjustment, Branch.Fork then)
      implements Still, Forked, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.adjust().apply(this);
    }

    @Override
    public String changes() {
      return adjustment.word();
    }
  }

  /**
   * A step that takes a reading.
   *
   * @param least smallest plausible value in the quantity's unit
   * @param most largest plausible value
   * @param step the gauge's step
   */
  record Measure(
      String id,
      Words words,
      Mark mark,
      Quantity quantity,
      @Nullable Which which,
      double least,
      double most,
      double step,
      Branch.Fork then)
      implements Still, Forked, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.measure().apply(this);
    }
  }

  /** Asks nothing, and goes on by what is known. */
  record Compute(String id, Words words, Mark mark, Branch.Fork then)
      implements Still, Forked, Silent, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.compute().apply(this);
    }
  }

  /** A step to turn the truss rod. */
  record TurnRod(
      String id, Words words, Mark mark, Amount amount, Turn limit, Map<Feel, String> felt)
      implements Still, Unforked, Passing {
    public TurnRod {
      // In the order of the feels, so that a proof finds the same way first in every run.
      felt = Collections.unmodifiableMap(new TreeMap<>(felt));
    }

    @Override
    public <R> R match(Cases<R> cases) {
      return cases.turnRod().apply(this);
    }

    @Override
    public String changes() {
      return Results.ROD;
    }

    @Override
    public List<Exit> exits() {
      return Arrays.stream(Feel.values())
          .filter(felt::containsKey)
          .map(feel -> new Exit(feel.word(), String.valueOf(felt.get(feel))))
          .toList();
    }
  }

  /** Whether it sets back what a lesson, or another session, turned. */
  default boolean setsBack() {
    return this instanceof TurnRod turn && turn.amount() instanceof Amount.SetBack;
  }

  /** How far a {@link TurnRod} goes. */
  sealed interface Amount {
    /** A turn as far as the advisor recommends. */
    record Advised() implements Amount {}

    /** The exact opposite of the last turn. */
    record Undo() implements Amount {}

    /** The opposite of the last turn of a lesson, or of a session, that is not set back yet. */
    record SetBack() implements Amount {}

    /** A fixed amount, plus tightens. */
    record Fixed(Turn turn) implements Amount {}
  }

  /**
   * A time to let pass.
   *
   * @param minutes how long, in minutes
   * @param rest whether this is the daily rest, which only a technician may lift, with a reason
   * @param meanwhile what may be done with the instrument meanwhile, or null for what may always be
   */
  record Wait(
      String id,
      Words words,
      Mark mark,
      int minutes,
      boolean rest,
      Set<Fact> establishes,
      @Nullable String meanwhile,
      String go)
      implements Straight, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.await().apply(this);
    }

    @Override
    public @Nullable String changes() {
      return null;
    }
  }

  /** A call of another procedure; goes on by how that ended. */
  record Call(String id, Words words, Mark mark, String procedure, Branch.Fork then)
      implements Still, Forked, Silent, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.call().apply(this);
    }
  }

  /** An end with the work done or left in order. */
  record Done(String id, Words words, Mark mark, String outcome) implements Still, End, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.done().apply(this);
    }
  }

  /** An end with the instrument given to a repairer. */
  record HandOver(String id, Words words, Mark mark, String outcome)
      implements Still, End, Passing {
    @Override
    public <R> R match(Cases<R> cases) {
      return cases.handOver().apply(this);
    }
  }

  /**
   * What to do with a step of each kind. A kind without its case does not compile.
   *
   * @param <R> what comes of it
   */
  record Cases<R>(
      Function<Tell, R> tell,
      Function<Choose, R> choose,
      Function<Note, R> note,
      Function<Pause, R> pause,
      Function<Adjust, R> adjust,
      Function<Measure, R> measure,
      Function<Compute, R> compute,
      Function<TurnRod, R> turnRod,
      Function<Wait, R> await,
      Function<Call, R> call,
      Function<Done, R> done,
      Function<HandOver, R> handOver) {}

  /** What the case of this step's kind makes of it. */
  <R> R match(Cases<R> cases);
}
