package quarterturn.procedure.check.walk;

import java.util.HashMap;
import java.util.Map;
import quarterturn.procedure.Branch;
import quarterturn.procedure.Step;

/** The fans of a procedure's forks, each made once. */
final class Fans {
  private final Frame frame;
  private final Map<String, Fan> fans = new HashMap<>();

  Fans(Frame frame) {
    this.frame = frame;
  }

  Fan of(Step step, Branch.Fork fork) {
    return fans.computeIfAbsent(step.id(), id -> new Fan(frame, fork));
  }
}
