package quarterturn.procedure.read.form;

import java.util.List;
import java.util.Map;

/** The keys of the forms, and those of the steps that they stand for. */
public final class Keys {
  /** The keys that name the kinds of step. */
  public static final List<String> KINDS =
      List.of(
          "tell",
          "choose",
          "note",
          "pause",
          "measure",
          "compute",
          "turn",
          "adjust",
          "wait",
          "call",
          "done",
          "hand-over");

  /** The kinds of step that end a session or return from a block. */
  static final List<String> ENDS = List.of("done", "hand-over");

  public static final String PART = "part";
  public static final String BEGIN = "begin";
  static final String RETUNE = "retune";
  public static final String GO = "go";
  public static final String BRANCHES = "branches";
  public static final String STEPS = "steps";
  public static final String OPTIONS = "options";
  static final String OTHERWISE = "otherwise";
  public static final String FELT = "felt";
  public static final String TEXT = "text";

  /** What stands before a list of cases that asks nothing. */
  public static final String CASES = "cases";

  /** Cases that belong to the step above. */
  public static final String THEN = "then";

  /** The answers of a choice, each under its own id. */
  public static final String ANSWERS = "answers";

  /** The answer of whoever is not sure. */
  public static final String NOT_SURE = "not sure";

  /** The conditions under which a part or a step is gone through, or passed over. */
  public static final String ONLY_IF = "only if";

  public static final String UNLESS = "unless";
  public static final String ID = "id";

  /** The block that is put in the place of an entry. */
  public static final String USE = "use";

  /** A reading with all that belongs to it. */
  public static final String READ = "read";

  /** The forms that stand for a block, each with the block's name. */
  public static final Map<String, String> FORMS = Map.of(READ, "reading", "turn", "turn");

  /** The block that asks whether the rod may be turned at all. */
  static final String MAY_TURN = "may-turn";

  /** The way to whatever stands below. */
  public static final String GO_ON = "go on";

  private Keys() {}
}
