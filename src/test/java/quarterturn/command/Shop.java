package quarterturn.command;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Random;
import quarterturn.command.face.Looks;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;
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

  /** A session on an instrument that was begun and nothing more; its name. */
  String begun(String instrument) throws IOException {
    Store.Created made =
        store.create("relief", 1, "digest", LocalDate.of(2027, 3, 2), new Random(1));
    try (Journal journal = made.journal()) {
      journal.append(
          List.of(
              new Event.Started(
                  MORNING,
                  "relief",
                  1,
                  "digest",
                  Role.BEGINNER,
                  instrument,
                  "bass-34",
                  Style.MEDIUM,
                  null,
                  List.of(),
                  List.of(),
                  null,
                  null)));
    }
    return made.name();
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
