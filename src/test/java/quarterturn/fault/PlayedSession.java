package quarterturn.fault;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SortedSet;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.Hands;
import quarterturn.rehearsal.simulated.InstrumentTraits;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.SimulatedInstrument;
import quarterturn.rehearsal.simulated.SimulatedNeck;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Instrument;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.LogFormat;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;

/**
 * A session on a simulated instrument, played once, whose answers can be given again: it is left
 * when it has to wait, and goes on later. The instrument is invented.
 *
 * @param answers what was answered, in order
 * @param events all that was recorded
 * @param ends after how many events each batch that was recorded at once ends
 */
record PlayedSession(List<Said> answers, List<Event> events, List<Integer> ends) {
  static final Instant NOON = Instant.parse("2027-03-01T12:00:00Z");
  static final String NAME = "practice-bass";
  static final Instrument INSTRUMENT =
      new Instrument(
          NAME, "bass-34", Style.MEDIUM, null, null, NOON, Instrument.Build.UNKNOWN, Map.of());
  static final Sessions.Wish WISH =
      new Sessions.Wish("relief", NAME, null, Style.MEDIUM, Role.TECHNICIAN);
  static final Library LIBRARY = library();

  /**
   * An answer; or none, where the session is left and goes on.
   *
   * @param at when it is given, or the session goes on
   */
  record Said(@Nullable Answer answer, Instant at) {}

  private static Library library() {
    try {
      return new Shelf(null).load(WISH.procedure());
    } catch (IOException | UnreadableException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Plays it on a disk on which nothing fails. */
  static PlayedSession once() {
    try {
      MemoryDisk disk = MemoryDisk.empty();
      SortedSet<Integer> ends = new TreeSet<>();
      String[] forced = {""};
      disk.weather(
          (call, path, bytes) -> {
            if (forced[0].endsWith(LogFormat.ENDING)) {
              ends.add(lines(disk, forced[0]) - 1);
            }
            forced[0] = call == Weather.Call.FORCE ? path : "";
            return Weather.Fate.FINE;
          });
      PlayedSession played = once(disk.top().resolve("data"));
      ends.remove(0);
      return new PlayedSession(played.answers(), played.events(), List.copyOf(ends));
    } catch (IOException | RefusedException e) {
      throw new IllegalStateException(e);
    }
  }

  private static int lines(MemoryDisk disk, String path) {
    try {
      FileNode file = (FileNode) disk.node(disk.getPath(path));
      return (int)
          new String(file.read(0, (int) file.size()), StandardCharsets.UTF_8).lines().count();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static PlayedSession once(Path data) throws IOException, RefusedException {
    Store store = Store.at(data);
    store.add(INSTRUMENT);
    SetClock clock = new SetClock(NOON);
    Sessions sessions = new Sessions(store, null, clock);
    Kind kind = LIBRARY.kind(INSTRUMENT.kind());
    InstrumentTraits traits = NamedNeck.TOO_MUCH.on(kind, Style.MEDIUM);
    SimulatedNeck neck = new SimulatedNeck(traits.neck(), new SplittableRandom(1));
    Hands hands = new Hands(new SimulatedInstrument(traits, neck, kind), LIBRARY, NOON);
    List<Said> answers = new ArrayList<>();
    Sessions.Opened opened = sessions.open(sessions.beginning(WISH, LIBRARY));
    boolean left = false;
    while (!opened.bench().prompt().ended()) {
      Prompt prompt = opened.bench().prompt();
      if (prompt instanceof Prompt.Wait wait && !left) {
        left = true;
        opened.bench().leave();
        opened.close();
        hands.waitUntil(wait.until());
        clock.set(hands.now());
        answers.add(new Said(null, clock.instant()));
        opened = sessions.open(sessions.beginning(opened.name(), LIBRARY));
        continue;
      }
      hands.begin(prompt);
      Answer record = opened.bench().onRecord();
      Answer answer = record == null ? hands.truth(prompt) : record;
      if (prompt instanceof Prompt.Wait wait) {
        hands.waitUntil(wait.until());
      }
      hands.act(prompt, answer);
      clock.set(hands.now());
      opened.bench().answer(answer);
      answers.add(new Said(answer, clock.instant()));
    }
    opened.close();
    return new PlayedSession(answers, opened.bench().events(), List.of());
  }
}
