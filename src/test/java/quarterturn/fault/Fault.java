package quarterturn.fault;

import java.util.SplittableRandom;
import quarterturn.fault.Weather.Call;
import quarterturn.fault.Weather.Fate;

/** What goes wrong at a call, or from it on. */
enum Fault {
  /** It fails and has no effect. */
  FAILS,
  /** It fails though it had its effect. */
  FAILS_THOUGH_DONE,
  /** It and the next ones fail. */
  FAILS_A_WHILE,
  /** It and all after it fail. */
  GONE,
  /** A part of what it writes is written, and it fails. */
  TORN,
  /** It and all later ones write a part only, and say so. */
  SHORT,
  /** There is room for a part of what it writes, and then for nothing. */
  FULL,
  /** The program is killed before it. */
  KILLED,
  /** The power is cut before it. */
  CUT;

  private static final int A_WHILE = 4;

  /** Whether the program sees nothing of it, since it is over. */
  boolean ends() {
    return this == KILLED || this == CUT;
  }

  /** What befalls a call at which this fault is, {@code since} calls ago. */
  Fate fate(Call call, int since, int bytes, SplittableRandom random) {
    boolean writes = call == Call.WRITE && bytes > 0;
    return switch (this) {
      case FAILS -> since == 0 ? Fate.FAILS : Fate.FINE;
      case FAILS_THOUGH_DONE -> since == 0 ? Fate.FAILS_THOUGH_DONE : Fate.FINE;
      case FAILS_A_WHILE -> since < A_WHILE ? Fate.FAILS : Fate.FINE;
      case GONE -> Fate.FAILS;
      case TORN ->
          since > 0
              ? Fate.FINE
              : writes ? Fate.torn(random.nextInt(bytes), "Input/output error") : Fate.FAILS;
      case SHORT -> writes ? Fate.torn(1 + random.nextInt(bytes), null) : Fate.FINE;
      case FULL -> full(call, since, bytes, random);
      case KILLED, CUT -> throw new PowerCut();
    };
  }

  private static Fate full(Call call, int since, int bytes, SplittableRandom random) {
    String says = "No space left on device";
    if (call == Call.WRITE) {
      return Fate.torn(since == 0 && bytes > 0 ? random.nextInt(bytes) : 0, says);
    }
    // A folder may have room for a name or not.
    return bytes > 0 && random.nextBoolean() ? Fate.torn(0, says) : Fate.FINE;
  }
}
