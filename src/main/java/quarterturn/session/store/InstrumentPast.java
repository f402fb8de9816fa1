package quarterturn.session.store;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import quarterturn.session.Neck;
import quarterturn.session.listing.Calibration;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.IndexEntry;
import quarterturn.session.listing.Listings;
import quarterturn.session.listing.SessionIndex;
import quarterturn.session.listing.SessionReadings;

/**
 * All that is on record of an instrument, at one look.
 *
 * @param neck of its rod; of older sessions perhaps only what they come to
 * @param sessions what was read and turned in each of its sessions, by their names, the newest
 *     first
 * @param glances its sessions as lists have them, the newest first
 * @param came how often its turns did what was expected of them
 * @param all the same of all instruments
 */
public record InstrumentPast(
    Neck neck,
    Map<String, SessionReadings> sessions,
    List<Glance> glances,
    Calibration came,
    Calibration all) {
  /** All but the neck, of which the readings are read meanwhile. */
  record Readings(
      FutureTask<Map<String, SessionReadings>> sessions,
      List<Glance> glances,
      Calibration came,
      Calibration all) {
    InstrumentPast with(Neck neck) throws IOException {
      try {
        return new InstrumentPast(neck, sessions.get(), glances, came, all);
      } catch (ExecutionException e) {
        throw new IOException("the sessions can't be read: " + e.getCause(), e);
      } catch (InterruptedException e) {
        Thread.currentThread().interrupt();
        throw new InterruptedIOException("it was stopped");
      }
    }
  }

  static Readings readings(String instrument, SessionIndex index, List<IndexEntry> entries) {
    List<Glance> glances =
        Listings.of(entries).sessions().stream()
            .filter(glance -> instrument.equals(glance.instrument()))
            .toList();
    FutureTask<Map<String, SessionReadings>> sessions =
        new FutureTask<>(() -> index.readings(instrument, entries, glances));
    new Thread(sessions).start();
    Calibration came = Calibration.NONE;
    Calibration all = Calibration.NONE;
    for (IndexEntry entry : entries) {
      Glance glance = entry.glance();
      all = all.plus(entry.came());
      boolean own = glance != null && instrument.equals(glance.instrument());
      came = own ? came.plus(entry.came()) : came;
    }
    return new Readings(sessions, glances, came, all);
  }
}
