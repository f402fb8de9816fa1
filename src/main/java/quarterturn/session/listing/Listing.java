package quarterturn.session.listing;

import java.util.List;

/**
 * What stands in the folder of the sessions.
 *
 * @param sessions the newest first
 * @param notRead a line for everything that is no session: "not read: NAME, why"
 */
public record Listing(List<Glance> sessions, List<String> notRead) {
  public Listing {
    sessions = List.copyOf(sessions);
    notRead = List.copyOf(notRead);
  }
}
