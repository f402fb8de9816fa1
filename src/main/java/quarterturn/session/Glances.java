package quarterturn.session;

import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Quantity;

/** Makes a {@link Store.Glance} from what a journal says. */
final class Glances {
  private Glances() {}

  static Store.Glance of(String name, Journal.Contents contents) {
    Event.@Nullable Started started = null;
    Event.@Nullable Ended ended = null;
    @Nullable String standing = null;
    @Nullable Instant until = null;
    @Nullable String kind = null;
    @Nullable Instant turned = null;
    @Nullable Instant relief = null;
    List<Event> events = Corrections.standing(contents.events());
    for (Event event : events) {
      if (event instanceof Event.Started e) {
        started = e;
        kind = e.kind();
      } else if (event instanceof Event.Chose e && e.step().equals(Own.KIND)) {
        kind = e.option();
      } else if (event instanceof Event.Ended e) {
        ended = e;
        until = null;
      } else if (event instanceof Event.Left e) {
        standing = e.standing();
      } else if (event instanceof Event.WaitBegan e) {
        until = e.until();
      } else if (event instanceof Event.Waited) {
        until = null;
      } else if (event instanceof Event.Turned e) {
        turned = e.turn().turns() == 0 ? turned : e.at();
      } else if (event instanceof Event.Recalled e) {
        turned = e.turned().turns() == 0 ? turned : e.at();
      } else if (event instanceof Event.Read e) {
        relief = e.quantity() == Quantity.RELIEF && !e.missing() ? e.at() : relief;
      }
    }
    Journal.Header header = contents.header();
    return new Store.Glance(
        name,
        header == null ? null : header.procedure(),
        started == null ? null : started.instrument(),
        kind,
        started == null ? null : started.at(),
        events.isEmpty() ? null : events.get(events.size() - 1).at(),
        ended,
        standing,
        until,
        contents.notice(),
        contents.damaged(),
        turned,
        relief);
  }

  /** Of a file that can't be read at all. */
  static Store.Glance unreadable(String name, String notice) {
    return new Store.Glance(
        name, null, null, null, null, null, null, null, null, notice, true, null, null);
  }
}
