package quarterturn.session.engine;

import java.util.EnumSet;
import java.util.Set;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Blank;
import quarterturn.procedure.Library;
import quarterturn.procedure.Step;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Which;
import quarterturn.unit.Bracket;
import quarterturn.unit.Note;
import quarterturn.unit.Printable;
import quarterturn.unit.Turn;

/** Fills the names in braces in a procedure's text. */
final class Blanks {
  /** Blanks whose value does not change during a session. */
  private static final Set<Blank> KNOWN =
      EnumSet.of(
          Blank.JOINT,
          Blank.READ_AT,
          Blank.LAST,
          Blank.LOWEST,
          Blank.HIGHEST,
          Blank.NOTES,
          Blank.TONE_DOWN,
          Blank.WINDOW,
          Blank.KIND);

  private final State state;
  private final @Nullable Kind kind;
  private final @Nullable Window window;
  private final @Nullable String source;
  private final @Nullable Turn turn;
  private final String wait;
  private final String stale;
  private final Supplier<String> nextTurn;
  private final @Nullable AtString at;
  private final @Nullable Figures figures;

  /** Whether the turn at hand goes back from where the last one ended. */
  private final boolean back;

  /**
   * The values of the blanks at one step.
   *
   * @param at the present string, where the step goes from string to string
   * @param stale the stale results, in words
   * @param nextTurn what the next turn should change, in words; only asked where a text says it
   */
  Blanks(
      State state,
      Library library,
      @Nullable Kind kind,
      @Nullable Turn turn,
      String wait,
      @Nullable AtString at,
      String stale,
      Supplier<String> nextTurn) {
    this.at = at;
    this.stale = stale;
    this.nextTurn = nextTurn;
    this.figures =
        kind == null || state.style() == null
            ? null
            : new Figures(state, library, kind, state.style());
    this.back =
        !state.position().nowhere()
            && library.procedure(state.place().procedure()).steps().get(state.place().step())
                instanceof Step.TurnRod rod
            && rod.amount() instanceof Step.Amount.Undo;
    this.state = state;
    this.kind = kind;
    this.window =
        kind == null || state.style() == null ? null : kind.target(state.style()).window();
    this.source =
        kind == null || state.style() == null ? null : kind.target(state.style()).source();
    this.turn = turn;
    this.wait = wait;
  }

  /** {@code text} with its blanks filled, without control characters other than line breaks. */
  String in(String text) {
    String filled = Blank.fill(text.strip(), this::value);
    return filled.lines().map(Printable::of).collect(Collectors.joining("\n"));
  }

  /**
   * {@code text} in one line, for a later step: blanks whose value is not known yet become three
   * dots.
   */
  String known(String text) {
    String filled = Blank.fill(text.strip(), blank -> KNOWN.contains(blank) ? value(blank) : "...");
    return Printable.of(filled.replace('\n', ' '));
  }

  private String value(Blank blank) {
    return switch (blank) {
      case JOINT -> kind == null ? "at the body joint" : String.valueOf(kind.jointFret());
      case LAST -> kind == null ? "the last one" : String.valueOf(kind.frets());
      case READ_AT -> kind == null ? "in the middle" : String.valueOf(readAt(kind));
      case LOWEST -> kind == null ? "lowest" : called(state, kind, kind.string(Which.LOWEST), true);
      case HIGHEST ->
          kind == null ? "highest" : called(state, kind, kind.string(Which.HIGHEST), true);
      case NOTES -> notes(Kind::letter, " ");
      case TONE_DOWN ->
          notes(note -> Kind.letter(note) + " to " + Kind.letter(lowered(note)), ", ");
      case WINDOW -> window == null ? "the range" : window.toString();
      case SOURCE -> source == null ? "common practice, no source" : source;
      case READING -> reading();
      case TURN -> turn == null ? "the turn" : turn.toString();
      case WAY -> turn == null ? "turn" : turn.turns() > 0 ? "tighten" : "loosen";
      case SENSE -> turn == null ? "as told" : sense(turn);
      case NET -> net(state);
      case NEXT_TURN -> nextTurn.get();
      case KIND -> kind == null ? "instrument" : kind.name();
      case MINUTES -> wait;
      case STRING ->
          kind == null
              ? "string"
              : called(state, kind, kind.strings().get(state.position().string()), false);
      case VALUE -> at == null ? "not read" : at.value();
      case TARGET -> at == null ? "the range" : at.target();
      case ORDER -> figures == null || at == null ? "" : at.order(figures);
      case EFFECT -> figures == null ? "" : figures.effect();
      case ARC -> figures == null ? "" : figures.arc();
      case SHIM -> figures == null ? "" : figures.shim();
      case POSTS -> figures == null ? "" : figures.posts();
      case SADDLE -> figures == null ? "" : figures.saddle();
      case FRET_PLACES -> figures == null ? "" : figures.fretPlaces();
      case PLAY_FOUND -> figures == null ? "" : figures.playFound();
      case PULL -> figures == null ? "" : figures.pull();
      case CONTACT -> figures == null ? "" : figures.contact();
      case MOISTURE -> figures == null ? "" : figures.moisture();
      case STALE -> stale;
    };
  }

  /**
   * A string as a player calls it. On the short path, whose typed names have it, it keeps its
   * octave.
   *
   * @param outer whether the text says which of two it is
   */
  static String called(State state, Kind known, String note, boolean outer) {
    return ShortPath.taken(state) ? note : known.called(note, outer);
  }

  /** Each note of the open strings in other words, once; the two of a pair count as one. */
  private String notes(UnaryOperator<String> words, String between) {
    return kind == null
        ? "as it is strung"
        : kind.strings().stream()
            .map(note -> words.apply(note.replace("'", "")))
            .distinct()
            .collect(Collectors.joining(between));
  }

  private static String lowered(String note) {
    return new Note(Note.parse(note).number() - 2).toString();
  }

  /** The fret of the reading at hand where it is of a part of the bow, or else of the relief. */
  private int readAt(Kind known) {
    return at != null && at.quantity().ofPart() ? at.quantity().readAt(known) : known.readAt();
  }

  /** The direction, and where the key's handle goes to as on a clock. */
  private String sense(Turn turn) {
    String clock = back ? "back to 12" : turn.clock();
    return turn.sense() + (clock.isEmpty() ? "" : ", " + clock);
  }

  private String reading() {
    Reading last = state.history().last(Which.LOWEST);
    Bracket read = last == null ? null : last.read().bracket();
    return read == null
        ? "not read"
        : read.equals(Bracket.touches()) ? "none (touches)" : read.toString();
  }

  /** The rod's position in words: "1/8 turn tighter than it was found". */
  static String net(State state) {
    Turn net = state.history().net();
    if (net.turns() == 0) {
      return "where it was found";
    }
    return net + (net.turns() > 0 ? " tighter" : " looser") + " than it was found";
  }
}
