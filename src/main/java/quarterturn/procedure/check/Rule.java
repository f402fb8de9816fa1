package quarterturn.procedure.check;

/** One thing that must hold of a procedure, with a piece that breaks it and one that keeps it. */
public interface Rule {
  /** As a finding names it, such as {@code unknown-key}. */
  String id();

  /** What has to hold, in one line. */
  String means();

  /** A piece of a procedure that breaks this rule and no other. */
  Example bad();

  /** The same piece, mended. */
  Example good();
}
