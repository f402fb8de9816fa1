package quarterturn.rehearsal;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterturn.craft.rod.Advisor;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;

/** Sessions on one simulated neck, one after another, each with the turns of those before it. */
public final class Visits {
  private final Rehearsal rehearsal;
  private final SimulatedNeck neck;
  private final Advisor advisor;
  private final List<Event.Past> past = new ArrayList<>();
  private Instant now = Rehearsal.START;

  public Visits(Rehearsal rehearsal, SimulatedNeck neck, Advisor advisor) {
    this.rehearsal = rehearsal;
    this.neck = neck;
    this.advisor = advisor;
  }

  /** Plays the next session. */
  public Outcome next() {
    List<Event> events = new ArrayList<>();
    Outcome outcome = rehearsal.play(neck, advisor, now, past, events);
    past.addAll(PastTurns.of(events));
    now = events.get(events.size() - 1).at();
    return outcome;
  }

  /** Lets time pass, in which others bring the neck back to where it was found first. */
  public void setBack(Duration after) {
    neck.pass(after);
    neck.setBack();
    now = now.plus(after);
  }
}
