package quarterturn.lesson;

import org.jspecify.annotations.Nullable;

/** What a desk asks, of a bench as a rule. An order holds from the moment the bench accepts it. */
public sealed interface Order {
  /**
   * Lets a bench go on.
   *
   * @param keeps what is released: a hold point or a stop of the bench, or a hold of a desk
   * @param value what was read back
   */
  record Release(Ref keeps, Value value) implements Order {}

  /** Keeps a bench from going on until it is released. */
  record Hold(String reason) implements Order {}

  /**
   * Sets a student's level.
   *
   * @param level null where it stays as it is
   * @param frozen whether it is kept from rising and falling
   */
  record SetLevel(String student, @Nullable Level level, boolean frozen) implements Order {}

  /**
   * Decides whether a question comes back next time, whatever the student answered. It is for no
   * bench: what comes back is reckoned from the files.
   *
   * @param again whether it comes back
   */
  record ComeBack(String student, String question, boolean again) implements Order {}

  /** The lesson is over. */
  record End() implements Order {}
}
