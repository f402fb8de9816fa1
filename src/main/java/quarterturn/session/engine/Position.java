package quarterturn.session.engine;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Lists;
import quarterturn.session.Passage;
import quarterturn.session.Place;

/**
 * The position of a session in its procedures, and how it got there.
 *
 * @param places callers first, the present step last; empty before the first procedure is entered
 * @param reached how often each step was entered, by key
 * @param path every step entered, in order, with those that ask nothing
 * @param passages every way taken, in order, without moves by a break or a limit
 * @param chosen the last choice or words at each step, and the outcome of each call, by key
 * @param string index of the present string in a step that goes from string to string; 0 is the
 *     lowest
 * @param line index of the present line in a pause
 * @param entering whether the present procedure is yet to be entered, and may lack results
 * @param stepwise id of the procedure that goes step by step since a reading in it was doubtful, or
 *     null
 */
record Position(
    List<Place> places,
    Map<String, Integer> reached,
    List<Place> path,
    List<Passage> passages,
    Map<String, String> chosen,
    int string,
    int line,
    boolean entering,
    @Nullable String stepwise) {
  static final Position NOWHERE =
      new Position(List.of(), Map.of(), List.of(), List.of(), Map.of(), 0, 0, false, null);

  boolean nowhere() {
    return places.isEmpty();
  }

  Place place() {
    return places.get(places.size() - 1);
  }

  /** The key of a step of the present procedure. */
  private String key(String step) {
    return place().procedure() + "/" + step;
  }

  /** The last choice at a step of the present procedure, or null. */
  @Nullable String chosen(String step) {
    return chosen.get(key(step));
  }

  /** How often a step of the present procedure was entered. */
  int reached(String step) {
    return reached.getOrDefault(key(step), 0);
  }

  /** The position moved to another step of the present procedure. */
  Position at(String step) {
    Place to = new Place(place().procedure(), step);
    return with(Lists.with(places.subList(0, places.size() - 1), to));
  }

  /** The position moved into a procedure that the present one waits for. */
  Position into(Place place) {
    return with(Lists.with(places, place));
  }

  /** The position moved back to the procedure that waited. */
  Position out() {
    return with(List.copyOf(places.subList(0, places.size() - 1)));
  }

  private Position with(List<Place> now) {
    return new Position(now, reached, path, passages, chosen, string, line, entering, stepwise);
  }

  /** The position after the present step was entered. */
  Position entered() {
    Place place = place();
    return new Position(
        places,
        Lists.with(reached, key(place.step()), reached(place.step()) + 1),
        Lists.with(path, place),
        passages,
        chosen,
        0,
        0,
        entering,
        stepwise);
  }

  /** The position after one of the ways out of the present step, by its index, was taken. */
  Position passed(int way) {
    List<Passage> more = Lists.with(passages, new Passage(place(), way));
    return new Position(places, reached, path, more, chosen, string, line, entering, stepwise);
  }

  Position chose(String step, String what) {
    return said(key(step), what);
  }

  /** The position with an answer under a key, which for the engine's own questions is their id. */
  Position said(String key, String what) {
    Map<String, String> now = Lists.with(chosen, key, what);
    return new Position(places, reached, path, passages, now, string, line, entering, stepwise);
  }

  Position string(int now) {
    return new Position(places, reached, path, passages, chosen, now, line, entering, stepwise);
  }

  Position nextLine() {
    return new Position(
        places, reached, path, passages, chosen, string, line + 1, entering, stepwise);
  }

  Position entering(boolean now) {
    return new Position(places, reached, path, passages, chosen, string, line, now, stepwise);
  }

  /** The position with the present procedure going step by step from now on. */
  Position inSteps() {
    String now = place().procedure();
    return new Position(places, reached, path, passages, chosen, string, line, entering, now);
  }
}
