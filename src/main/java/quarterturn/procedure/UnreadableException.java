package quarterturn.procedure;

import java.util.List;
import java.util.stream.Collectors;

/** A file, or several, that cannot be used; carries every fault, and its message shows them all. */
public final class UnreadableException extends Exception {
  private static final long serialVersionUID = 1L;

  private final transient List<Fault> faults;

  /**
   * @param faults at least one, in the order they are to be shown
   */
  public UnreadableException(List<Fault> faults) {
    super(faults.stream().map(Fault::toString).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  public List<Fault> faults() {
    return faults;
  }
}
