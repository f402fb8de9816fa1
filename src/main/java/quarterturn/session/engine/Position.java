package quarterturn.session.engine;

import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import quarterturn.session.Lists;
import quarterturn.session.Passage;
import quarterturn.session.Place;

/**
 * Where a session stands in its procedures, and the way that led there.
 *
 * @param places callers first, the present step last; empty before the first procedure is entered
 * @param reached how often each step was entered, by its key
 * @param path every step entered, in order, those that ask nothing included
 * @param passages every way taken, in order; where a break or a limit moved the session on, none
 * @param chosen what was chosen or written last at each step, and how each call ended, by key
 * @param string which string a step that goes from string to string has come to; 0 is the lowest
 * @param line which line of a pause is asked for; 0 is the first
 * @param entering whether the present procedure is still to be entered, and may lack something
 * @param stepwise the procedure that goes step by step since a reading in it was doubtful, or null
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

  /** A step of the present procedure as a key. */
  private String key(String step) {
    return place().procedure() + "/" + step;
  }

  /** What was chosen last at a step of the present procedure, or null. */
  @Nullable String chosen(String step) {
    return chosen.get(key(step));
  }

  /** How often a step of the present procedure was entered. */
  int reached(String step) {
    return reached.getOrDefault(key(step), 0);
  }

  /** At another step of the present procedure. */
  Position at(String step) {
    Place to = new Place(place().procedure(), step);
    return with(Lists.with(places.subList(0, places.size() - 1), to));
  }

  /** At a step of a procedure that the present one waits for. */
  Position into(Place place) {
    return with(Lists.with(places, place));
  }

  /** Back in the procedure that waited. */
  Position out() {
    return with(List.copyOf(places.subList(0, places.size() - 1)));
  }

  private Position with(List<Place> now) {
    return new Position(now, reached, path, passages, chosen, string, line, entering, stepwise);
  }

  /** The present step is entered. */
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

  /** One of the ways out of the present step is taken, by its place among them. */
  Position passed(int way) {
    List<Passage> more = Lists.with(passages, new Passage(place(), way));
    return new Position(places, reached, path, more, chosen, string, line, entering, stepwise);
  }

  Position chose(String step, String what) {
    Map<String, String> now = Lists.with(chosen, key(step), what);
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

  /** From now on the present procedure goes step by step. */
  Position inSteps() {
    String now = place().procedure();
    return new Position(places, reached, path, passages, chosen, string, line, entering, now);
  }
}
