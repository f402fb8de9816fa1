package quarterturn.session.store;

import java.util.List;
import java.util.Map;
import quarterturn.session.Calibration;
import quarterturn.session.Neck;

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
    List<Store.Glance> glances,
    Calibration came,
    Calibration all) {
  static InstrumentPast of(
      String instrument,
      Neck neck,
      Map<String, SessionReadings> sessions,
      List<IndexEntry> entries) {
    Calibration came = Calibration.NONE;
    Calibration all = Calibration.NONE;
    for (IndexEntry entry : entries) {
      Store.Glance glance = entry.glance();
      all = all.plus(entry.came());
      boolean own = glance != null && instrument.equals(glance.instrument());
      came = own ? came.plus(entry.came()) : came;
    }
    List<Store.Glance> glances =
        Listings.of(entries).sessions().stream()
            .filter(glance -> instrument.equals(glance.instrument()))
            .toList();
    return new InstrumentPast(neck, sessions, glances, came, all);
  }
}
