package quarterturn.session.store;

import java.io.IOException;
import java.util.List;
import java.util.Map;
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
  static InstrumentPast of(
      String instrument, Neck neck, SessionIndex index, List<IndexEntry> entries)
      throws IOException {
    Calibration came = Calibration.NONE;
    Calibration all = Calibration.NONE;
    for (IndexEntry entry : entries) {
      all = all.plus(entry.came());
    }
    List<IndexEntry> own = Listings.on(instrument, entries);
    for (IndexEntry entry : own) {
      came = came.plus(entry.came());
    }
    List<Glance> glances = Listings.of(own).sessions();
    return new InstrumentPast(neck, index.readings(instrument, own, glances), glances, came, all);
  }
}
