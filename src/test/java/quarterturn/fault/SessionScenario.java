package quarterturn.fault;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import quarterturn.procedure.Library;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.journal.DisplacedException;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * An instrument is added; a session on it begins, is left when it has to wait, goes on and ends.
 * What a person would do again after an error is done again.
 */
final class SessionScenario implements Scenario {
  static final PlayedSession PLAYED = PlayedSession.once();

  private static final int TRIES = 3;

  /** After how many events sessions were resumed by the engine: it is the same each time. */
  private static final Set<Integer> RESUMED = ConcurrentHashMap.newKeySet();

  private final boolean engine;
  private boolean added;
  private boolean displaced;

  /** How many events are acknowledged, and which. */
  private int events;

  private List<Event> told = List.of();

  /**
   * @param engine whether it is played by the engine; else its events are recorded as they would
   *     be, which is quicker
   */
  SessionScenario(boolean engine) {
    this.engine = engine;
  }

  /** Something that a person does again when it fails. */
  private interface Act {
    void run() throws IOException, RefusedException;
  }

  private void tried(Act act) throws IOException, RefusedException {
    for (int n = 1; ; n++) {
      try {
        act.run();
        return;
      } catch (DisplacedException e) {
        displaced = true;
        throw e;
      } catch (IOException e) {
        if (n == TRIES) {
          throw e;
        }
      }
    }
  }

  @Override
  public void play(Path folder) throws Exception {
    Store store = Store.at(folder.resolve("data"));
    store.add(PlayedSession.INSTRUMENT);
    added = true;
    if (engine) {
      answered(new Sessions(store, null, new SetClock(PlayedSession.NOON)));
    } else {
      recorded(store);
    }
  }

  private void answered(Sessions sessions) throws Exception {
    SetClock clock = (SetClock) sessions.clock();
    Library library = PlayedSession.LIBRARY;
    Sessions.Opened opened = sessions.open(sessions.beginning(PlayedSession.WISH, library));
    try {
      acknowledge(opened.bench());
      for (PlayedSession.Said said : PLAYED.answers()) {
        LiveBench bench = opened.bench();
        clock.set(said.at());
        if (said.answer() == null) {
          clock.set(bench.events().get(bench.events().size() - 1).at());
          tried(bench::leave);
          acknowledge(bench);
          opened.close();
          clock.set(said.at());
          opened = sessions.open(sessions.beginning(opened.name(), library));
          acknowledge(opened.bench());
        } else {
          answer(bench, said.answer());
          acknowledge(bench);
        }
      }
    } finally {
      opened.close();
    }
  }

  private void acknowledge(LiveBench bench) {
    told = bench.events();
    events = told.size();
  }

  /** After a record that could not be read, a wait may be longer: then the person goes home. */
  private void answer(LiveBench bench, Answer answer) throws IOException {
    try {
      tried(() -> bench.answer(answer));
    } catch (RefusedException e) {
      throw new IOException(e);
    }
  }

  private void recorded(Store store) throws Exception {
    LocalDate day = LocalDate.ofInstant(PlayedSession.NOON, ZoneOffset.UTC);
    String name;
    try (Closeable neck = store.hold(PlayedSession.NAME)) {
      Event.Started started = (Event.Started) PLAYED.events().get(0);
      Store.Created created =
          store.create(
              started.procedure(), started.revision(), started.digest(), day, new Random(1));
      name = created.name();
      try (Journal journal = created.journal()) {
        append(journal);
      }
    }
    while (events < PLAYED.events().size()) {
      try (Journal journal = store.open(name);
          Closeable neck = store.hold(PlayedSession.NAME)) {
        append(journal);
      }
    }
  }

  /** Appends batch by batch, until the session is left or ends. */
  private void append(Journal journal) throws Exception {
    for (int end : PLAYED.ends()) {
      if (end > events) {
        List<Event> batch = PLAYED.events().subList(events, end);
        tried(() -> journal.append(batch));
        events = end;
        told = PLAYED.events().subList(0, end);
        if (batch.get(batch.size() - 1) instanceof Event.Left) {
          return;
        }
      }
    }
  }

  @Override
  public void check(Path folder) throws Exception {
    Store store = Store.at(folder.resolve("data"));
    Store.InstrumentList instruments = store.instruments();
    assertThat(instruments.notices()).isEmpty();
    if (added) {
      assertThat(instruments.instruments()).containsExactly(PlayedSession.INSTRUMENT);
    } else if (instruments.instruments().isEmpty()) {
      store.add(PlayedSession.INSTRUMENT);
    }
    List<String> names = new ArrayList<>();
    int most = 0;
    for (Glance glance : store.sessions()) {
      names.add(glance.name());
      Journal.Contents found = store.read(glance.name());
      int there = found.events().size();
      most = Math.max(most, there);
      assertWithMessage("what is there")
          .that(found.events().subList(0, Math.min(there, events)))
          .isEqualTo(told.subList(0, Math.min(there, events)));
      if (told.equals(PLAYED.events().subList(0, events))) {
        assertWithMessage("what is there besides")
            .that(known(found.events()))
            .isEqualTo(known(PLAYED.events().subList(0, Math.min(there, tried()))));
      }
      opens(store, glance.name(), found);
    }
    assertWithMessage("acknowledged events").that(most).isAtLeast(events);
    assertWithMessage("sessions %s", names).that(names.size()).isAtMost(displaced ? 2 : 1);
    if (RESUMED.add(-names.size())) {
      Sessions sessions = new Sessions(store, null, new SetClock(last(PLAYED.events()).at()));
      sessions.open(sessions.beginning(PlayedSession.WISH, PlayedSession.LIBRARY)).close();
    }
  }

  /** Events; of a return and the wait after it only when, since what could be read counts there. */
  private static List<Object> known(List<Event> events) {
    return events.stream()
        .map(e -> e instanceof Event.Resumed || e instanceof Event.WaitBegan ? e.at() : e)
        .toList();
  }

  /** How many events are acknowledged or were being written. */
  private int tried() {
    return PLAYED.ends().stream().filter(end -> end > events).findFirst().orElse(events);
  }

  private static Event last(List<Event> events) {
    return events.get(events.size() - 1);
  }

  /** Holds a session to being gone on with, or to its ordinary words. */
  private void opens(Store store, String name, Journal.Contents found) throws Exception {
    if (found.header() == null) {
      assertThat(found.notice()).contains("has no whole first line");
      assertWithMessage("acknowledged in a session without a first line").that(events).isEqualTo(0);
      return;
    }
    assertWithMessage("damage").that(found.damagedAtLine()).isEqualTo(0);
    List<Event> all = found.events();
    Event end = all.isEmpty() ? null : last(all);
    if (end instanceof Event.Ended) {
      return;
    }
    if (end != null && RESUMED.add(all.size())) {
      resumed(store, name, all);
      return;
    }
    Event more = end == null ? PLAYED.events().get(0) : new Event.Left(end.at(), "as it is");
    try (Journal journal = store.open(name)) {
      assertThat(journal.found().events()).isEqualTo(all);
      journal.append(List.of(more));
    }
    List<Event> longer = new ArrayList<>(all);
    longer.add(more);
    Journal.Contents now = store.read(name);
    assertThat(now.events()).isEqualTo(longer);
    assertThat(now.notice()).isNull();
  }

  private static void resumed(Store store, String name, List<Event> all) throws Exception {
    SetClock clock = new SetClock(last(all).at());
    Sessions sessions = new Sessions(store, null, clock);
    try (Sessions.Opened opened = sessions.open(sessions.beginning(name, PlayedSession.LIBRARY))) {
      assertThat(opened.name()).isEqualTo(name);
      assertThat(opened.bench().events().subList(0, all.size())).isEqualTo(all);
    }
  }
}
