package quarterturn.lesson.student;

import java.io.Closeable;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.session.Bench;
import quarterturn.session.Event;
import quarterturn.session.Prompt;
import quarterturn.session.engine.LiveBench;

/** The sessions of one bench: the plan's procedures, one after the other, on one instrument. */
public interface BenchSessions {
  /**
   * Opens the session of the plan's procedure number {@code procedure}, from 0; one that was begun
   * goes on, and one that has ended is shown once more.
   */
  Run open(int procedure) throws IOException, UnreadableException;

  /**
   * A session that is open.
   *
   * @param replaced what happened in sessions in whose place it stands, oldest first
   * @param live the session itself, or null on a simulated neck
   * @param practice the simulated neck's, or null on a real one
   * @param kept what is let go when it is closed
   */
  record Run(
      Library library,
      List<Event> replaced,
      @Nullable LiveBench live,
      @Nullable PracticeBench practice,
      Closeable kept)
      implements Closeable {
    Bench bench() {
      Bench bench = live == null ? practice : live;
      if (bench == null) {
        throw new IllegalStateException("a session is on a real neck or on a simulated one");
      }
      return bench;
    }

    /** The events of this session so far, after those of the sessions it replaces. */
    List<Event> events() {
      List<Event> events = new ArrayList<>(replaced);
      events.addAll(
          practice != null ? practice.events() : live == null ? List.of() : live.events());
      return events;
    }

    /** The prompt of this session, without the readings that a simulated neck would show. */
    Prompt asked() {
      return practice == null ? bench().prompt() : practice.asked();
    }

    /** Whether the last reading asks for a turn of the rod, whatever comes before it. */
    boolean asksForTurn() {
      return practice != null ? practice.asksForTurn() : live != null && live.asksForTurn();
    }

    /** Leaves this session, and says in what state; a simulated neck stands still meanwhile. */
    String leave() throws IOException {
      return practice == null ? bench().leave() : practice.standing();
    }

    @Override
    public void close() throws IOException {
      kept.close();
    }
  }
}
