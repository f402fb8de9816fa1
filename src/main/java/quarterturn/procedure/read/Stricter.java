package quarterturn.procedure.read;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.Set;
import java.util.function.Function;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.read.yaml.Faults;

/** Holds a rule file of a user's own to the one that comes with the program. */
record Stricter(Faults faults) {
  /**
   * Notes that something is laxer.
   *
   * @param what what is, in words
   * @param shipped how it stands in the file that comes with the program
   */
  void laxer(Mark at, String what, String shipped) {
    faults.add(
        Slip.OVER_LIMIT,
        at,
        what + " is laxer than " + shipped + ", which comes with the program",
        "Write " + shipped + " or what is stricter, or take it out: that holds then");
  }

  /** Notes what a list of the user's own lacks. */
  <T> void all(
      Mark at, String what, Collection<T> own, Collection<T> shipped, Function<T, String> word) {
    Set<T> missing = new LinkedHashSet<>(shipped);
    missing.removeAll(own);
    if (!missing.isEmpty()) {
      String named = String.join(", ", missing.stream().map(word).sorted().toList());
      faults.add(
          Slip.OVER_LIMIT,
          at,
          what + " lacks " + named + ", which comes with the program",
          "Add it, or take " + what + " out: what the program says holds then");
    }
  }
}
