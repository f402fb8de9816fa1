package quarterturn.procedure;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;

/**
 * The results of a set-up, and which change spoils which of them.
 *
 * @param results by id, in the order in which they depend on each other
 * @param changes by id
 * @param offers what is offered to whoever has not named a procedure, the usual one first
 * @param care how an instrument is kept once it is set up, a sentence or two each
 * @param guide what helps a person beside the steps
 */
public record Results(
    Map<String, Result> results,
    Map<String, Change> changes,
    List<Offer> offers,
    List<String> care,
    Guide guide) {
  /** Id of the result that states the strings' pitch. */
  public static final String PITCH = "pitch";

  /** Id of the change that a rod turn makes. */
  public static final String ROD = "rod";

  /** Id of the change that time and weather make. */
  public static final String CLIMATE = "climate";

  /** No results, changes or offers. */
  public static final Results NONE =
      new Results(Map.of(), Map.of(), List.of(), List.of(), Guide.NONE);

  public Results {
    results = Collections.unmodifiableMap(new LinkedHashMap<>(results));
    changes = Collections.unmodifiableMap(new LinkedHashMap<>(changes));
    offers = List.copyOf(offers);
    care = List.copyOf(care);
  }

  /**
   * A result that a stage of a set-up leaves behind.
   *
   * @param by the procedure that takes it anew, or null where tuning is enough
   * @param quantity what is read, or null where it is a verdict
   */
  public record Result(String id, String name, @Nullable String by, @Nullable Quantity quantity) {}

  /**
   * A change that is made to an instrument or happens to it.
   *
   * @param name as a clause: "the rod was turned"
   * @param spoils results that are stale afterwards
   * @param recheck results that probably hold, and are worth a second look
   */
  public record Change(String id, String name, Set<String> spoils, Set<String> recheck) {
    public Change {
      spoils = Set.copyOf(spoils);
      recheck = Set.copyOf(recheck);
    }
  }

  /** Whether a change, or none where it is null, spoils a result. */
  public boolean spoils(@Nullable String change, String result) {
    Change known = change == null ? null : changes.get(change);
    return known != null && known.spoils().contains(result);
  }

  /** Whether a change, or none where it is null, spoils what is read of a quantity. */
  public boolean spoils(@Nullable String change, Quantity quantity) {
    return change != null && of(quantity).stream().anyMatch(r -> spoils(change, r.id()));
  }

  /**
   * A procedure that is offered.
   *
   * @param name its title: "Neck relief"; empty where the procedure is only called by its id
   * @param start what it is called on the home view; empty for a stage, which is offered apart
   * @param about what it is for, or empty
   */
  public record Offer(String procedure, String name, String start, String about) {}

  /** The offers that the home view shows. */
  public List<Offer> shown() {
    return offers.stream().filter(offer -> !offer.start().isEmpty()).toList();
  }

  /** The stages that can be begun alone. */
  public List<Offer> stages() {
    return offers.stream()
        .filter(offer -> offer.start().isEmpty() && !offer.name().isEmpty())
        .toList();
  }

  /** The title of a procedure that is offered, or its id as words. */
  public String title(String procedure) {
    return offers.stream()
        .filter(offer -> offer.procedure().equals(procedure) && !offer.name().isEmpty())
        .map(Offer::name)
        .findFirst()
        .orElse(procedure.replace('-', ' '));
  }

  /** The procedure that is meant where none is named. */
  public String usual() {
    return offers.get(0).procedure();
  }

  /**
   * The results that a quantity is read for; the bow of a part of the neck belongs to the relief.
   */
  public List<Result> of(Quantity quantity) {
    Quantity read = quantity.ofPart() ? Quantity.RELIEF : quantity;
    return results.values().stream().filter(r -> r.quantity() == read).toList();
  }
}
