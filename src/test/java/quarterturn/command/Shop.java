package quarterturn.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import quarterturn.command.face.Looks;
import quarterturn.procedure.condition.Role;
import quarterturn.session.store.FormField;
import quarterturn.session.store.FormFields;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/** A folder with instruments, and a clock that a test sets. */
final class Shop extends Clock {
  static final Instant MORNING = Instant.parse("2027-03-02T08:00:00Z");

  private final Store store;
  private Instant now = MORNING;

  Shop(Path folder) {
    store = Store.at(folder);
  }

  /** One with these instruments, each with a ticket. */
  static Shop of(Path folder, String... instruments) throws IOException {
    Shop shop = new Shop(folder);
    for (String name : instruments) {
      shop.store.add(
          FormFields.instrument(
              name,
              MORNING,
              Map.of(
                  FormField.KIND,
                  "bass-34",
                  FormField.STYLE,
                  "medium",
                  FormField.TICKET,
                  "T-" + name,
                  FormField.CUSTOMER,
                  "whose " + name + " is")));
    }
    return shop;
  }

  Store store() {
    return store;
  }

  Sessions sessions(String by) {
    return new Sessions(store, null, by, this);
  }

  /** The home view of somebody who works here. */
  Home home(String by) {
    return new Home(sessions(by), new Looks(), Role.TECHNICIAN, List.of());
  }

  void pass(Duration time) {
    now = now.plus(time);
  }

  @Override
  public ZoneId getZone() {
    return ZoneOffset.UTC;
  }

  @Override
  public Clock withZone(ZoneId zone) {
    return this;
  }

  @Override
  public Instant instant() {
    return now;
  }
}
