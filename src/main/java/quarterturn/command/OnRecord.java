package quarterturn.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import quarterturn.procedure.Library;
import quarterturn.report.SessionList;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.unit.Dates;

/** What the home view shows of a user's folder, and what it discards there. */
record OnRecord(Sessions sessions, Library rules) implements HomeDialogue.Past {
  private Dates dates() {
    return new Dates(sessions.clock().getZone());
  }

  @Override
  public List<String> all() throws IOException {
    List<SessionList.Row> rows = new ArrayList<>();
    for (Store.Glance glance : sessions.store().sessions()) {
      rows.add(LogCommand.row(sessions.store(), glance));
    }
    return SessionList.sentences(rows, rules.results(), dates());
  }

  @Override
  public List<String> history(String instrument) throws IOException {
    return InstrumentHistory.told(sessions.store(), rules, instrument, notice -> {}).lines(dates());
  }

  @Override
  public String standing(String session) throws IOException {
    return sessions.standing(session);
  }

  @Override
  public void discard(String session) throws IOException {
    sessions.discard(session);
  }
}
