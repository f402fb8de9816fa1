package quarterturn.fault;

/** Ends a program that is played, since its machine is off; nothing may catch it. */
final class PowerCut extends Error {
  private static final long serialVersionUID = 1L;

  PowerCut() {
    super("the machine is off", null, false, false);
  }
}
