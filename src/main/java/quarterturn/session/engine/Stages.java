package quarterturn.session.engine;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.craft.Window;
import quarterturn.procedure.Fact;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Results;
import quarterturn.procedure.condition.Verdict;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.session.Changed;
import quarterturn.session.Convention;
import quarterturn.session.Event;
import quarterturn.session.Stage;
import quarterturn.unit.Bracket;
import quarterturn.unit.Decimals;

/**
 * Finds which results of a set-up are fresh and which a change has spoiled: the matrix of {@link
 * Results} applied to this session and those before it.
 */
final class Stages {
  private final State state;
  private final Results results;
  private final Limits.Climate climate;
  private final Limits.Clocks clocks;
  private final @Nullable Kind kind;
  private final Instant now;

  Stages(State state, Library library, @Nullable Kind kind, Instant now) {
    this.state = state;
    this.results = library.results();
    this.climate = library.limits().climate();
    this.clocks = library.limits().clocks();
    this.kind = kind;
    this.now = now;
  }

  /** A reading with the changes made after it. */
  private record Held(
      String string,
      Instant at,
      @Nullable Bracket bracket,
      @Nullable Double value,
      List<Changed> since,
      @Nullable String words) {}

  /** Every result, each after those that it depends on. */
  List<Stage> all() {
    return results.results().values().stream().map(this::of).toList();
  }

  /** The results among {@code needs} that no stage may use. */
  List<Stage> missing(List<String> needs) {
    return all().stream()
        .filter(stage -> needs.contains(stage.id()) && !stage.status().usable())
        .toList();
  }

  Stage of(Results.Result result) {
    if (result.quantity() != null) {
      return read(result, result.quantity());
    }
    if (result.by() == null) {
      boolean pitch = state.bench().has(Fact.AT_PITCH);
      Stage.Status status =
          pitch
              ? Stage.Status.FRESH
              : state.history().tuned() == null ? Stage.Status.NOT_DONE : Stage.Status.STALE;
      return stage(result, status, "", null, state.history().tuned());
    }
    Integer given = state.history().given().get(result.id());
    if (given == null) {
      return stage(result, Stage.Status.NOT_DONE, "", null, null);
    }
    return judged(result, "", state.history().changesSince(given), false, null);
  }

  private Stage read(Results.Result result, Quantity quantity) {
    Map<String, Held> readings = readings(quantity);
    String lowest = kind == null ? "" : kind.strings().get(0);
    if (quantity == Quantity.RELIEF && readings.containsKey(lowest)) {
      // Decisions on relief rest on the lowest string; the highest is only held against it.
      readings.keySet().retainAll(Set.of(lowest));
    }
    if (readings.isEmpty()) {
      return stage(result, Stage.Status.NOT_DONE, "", null, null);
    }
    List<Changed> since = new ArrayList<>();
    Instant oldest = now;
    boolean out = false;
    List<String> words = new ArrayList<>();
    for (Held held : readings.values()) {
      since.addAll(held.since());
      oldest = held.at().isBefore(oldest) ? held.at() : oldest;
      out |= isOut(quantity, held);
      words.add(held.string() + " " + value(quantity, held));
    }
    Changed climate = climate(oldest);
    if (climate != null) {
      since.add(climate);
    }
    return judged(result, String.join(", ", words), since, out, oldest);
  }

  private Stage judged(
      Results.Result result,
      String words,
      List<Changed> since,
      boolean out,
      @Nullable Instant oldest) {
    Changed recheck = null;
    for (Changed changed : since) {
      Results.Change change = results.changes().get(changed.change());
      if (change != null && results.spoils(change.id(), result.id())) {
        return stage(result, Stage.Status.STALE, words, change.name(), changed.at());
      }
      recheck = change != null && change.recheck().contains(result.id()) ? changed : recheck;
    }
    if (out) {
      return stage(result, Stage.Status.OUT, words, null, oldest);
    }
    if (recheck != null) {
      Results.Change change = results.changes().get(recheck.change());
      String name = change == null ? recheck.change() : change.name();
      return stage(result, Stage.Status.CHECK, words, name, recheck.at());
    }
    return stage(result, Stage.Status.FRESH, words, null, oldest);
  }

  private static Stage stage(
      Results.Result result,
      Stage.Status status,
      String words,
      @Nullable String because,
      @Nullable Instant since) {
    return new Stage(result.id(), result.name(), result.by(), status, words, because, since);
  }

  /** The last reading on each string, of this session or else of an earlier one. */
  private Map<String, Held> readings(Quantity quantity) {
    Map<String, Held> found = new LinkedHashMap<>();
    for (Event.Before before : state.started().before()) {
      if (before.quantity() == quantity) {
        List<Changed> since = new ArrayList<>();
        before.since().forEach(id -> since.add(new Changed(before.at(), id)));
        since.addAll(state.history().changes());
        String string = before.string() == null ? "" : before.string();
        Held held = earlier(string, before, since);
        if (held != null) {
          found.put(string, held);
        }
      }
    }
    state
        .history()
        .readings()
        .counting(quantity)
        .forEach(
            (string, reading) -> {
              Event.Read read = reading.read();
              List<Changed> since =
                  state.history().changesSince(reading.changesBefore(), read.string());
              found.remove(string);
              found.put(
                  string, new Held(string, read.at(), read.bracket(), read.value(), since, null));
            });
    return found;
  }

  /**
   * A reading of an earlier session, converted to the kind's convention if need be; null where it
   * can't.
   */
  private @Nullable Held earlier(String string, Event.Before before, List<Changed> since) {
    if (kind == null || Convention.same(before, kind)) {
      return new Held(string, before.at(), before.bracket(), before.value(), since, null);
    }
    Bracket reckoned = Convention.reckoned(before, kind);
    return reckoned == null
        ? null
        : new Held(string, before.at(), reckoned, null, since, Convention.words(reckoned, before));
  }

  /** The change of weather since a reading that may have spoiled it: time or humidity; or null. */
  private @Nullable Changed climate(Instant read) {
    Instant until = read.plus(climate.after());
    // What is dated in the future was read by a wrong clock, and nobody knows when.
    if (until.isBefore(now) || clocks.back(read, now)) {
      return new Changed(until, Results.CLIMATE);
    }
    Double then = null;
    for (Event.Before air : state.started().before()) {
      then = air.quantity() == Quantity.HUMIDITY ? air.value() : then;
    }
    for (Reading reading : state.history().readings().of(Quantity.HUMIDITY)) {
      Event.Read air = reading.read();
      if (air.value() != null) {
        if (!air.at().isAfter(read)) {
          then = air.value();
        } else if (then != null && Math.abs(air.value() - then) > climate.points()) {
          return new Changed(air.at(), Results.CLIMATE);
        }
      }
    }
    return null;
  }

  private boolean isOut(Quantity quantity, Held held) {
    if (kind == null || state.style() == null || kind.windows().get(quantity) == null) {
      return false;
    }
    int index = Math.max(0, kind.strings().indexOf(held.string()));
    Window window = kind.target(quantity, state.style(), index).window();
    Bracket bracket = held.bracket();
    if (bracket != null) {
      Verdict verdict = Verdict.of(quantity, bracket, window);
      return verdict == Verdict.ABOVE || verdict == Verdict.BELOW || verdict == Verdict.TOUCHES;
    }
    return held.value() != null && !Values.inside(held.value(), window);
  }

  private static String value(Quantity quantity, Held held) {
    if (held.words() != null) {
      return held.words();
    }
    if (held.bracket() != null) {
      return held.bracket().toString();
    }
    return held.value() == null
        ? "?"
        : Decimals.plain(held.value()) + (quantity.unit().equals("mm") ? " mm" : "");
  }
}
