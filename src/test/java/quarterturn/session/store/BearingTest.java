package quarterturn.session.store;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import quarterturn.Draws;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.session.Event;
import quarterturn.session.engine.Play;

/**
 * What a session's start says of earlier ones is the same whether all of their files are read or
 * only those that bear on it. The outside measure is the reading of all of them.
 */
class BearingTest {
  private static final Library LIBRARY = Play.relief();
  private static final Limits LIMITS = LIBRARY.limits();

  @TempDir Path temp;

  private static Opening opening(ManySessions many, boolean all) throws Exception {
    Clock clock = Clock.fixed(many.now(), ZoneOffset.UTC);
    Store store = many.sessions().store();
    Records records = store.records(all ? null : ManySessions.BASS, all, LIMITS, clock, null);
    return new Opening(records, null, ManySessions.BASS, "bass-34", many.now(), LIMITS, List.of());
  }

  /** As where the rest of a file arrives from another machine after a session was begun here. */
  @Test
  void anEndInTheSameSecondMakesARecordAnother() {
    Instant at = Instant.parse("2027-03-01T10:00:00Z");
    Event told = new Event.Told(at, "look", null);
    Event end = new Event.Ended(at, "stop", true, "cracked", "");
    assertThat(Bearing.mark("one", List.of(told, end)))
        .isNotEqualTo(Bearing.mark("one", List.of(told)));
  }

  @Test
  void theLastSessionsTellWhatAllOfThemTell() throws Exception {
    int few = 0;
    int steps = 0;
    for (int seed = 1; seed <= Draws.of(1); seed++) {
      Path folder = Files.createDirectory(temp.resolve("data-" + seed));
      ManySessions many = new ManySessions(folder, LIBRARY, seed);
      for (int i = 0; i < 80; i++) {
        many.next();
        if (i % 4 != 3) {
          continue;
        }
        Opening all = opening(many, true);
        Opening some = opening(many, false);
        few += some.neck().older() != null ? 1 : 0;
        steps++;
        String where = "seed " + seed + ", step " + i;
        assertWithMessage(where).that(some.earlier()).isEqualTo(all.earlier());
        assertWithMessage(where).that(some.turns()).isEqualTo(all.turns());
        assertWithMessage(where).that(some.carried()).isEqualTo(all.carried());
        assertWithMessage(where)
            .that(new HashSet<>(some.neck().results()))
            .isEqualTo(new HashSet<>(all.neck().results()));
        assertWithMessage(where).that(some.neck().worked()).isEqualTo(all.neck().worked());
        assertWithMessage(where).that(some.neck().left()).isEqualTo(all.neck().left());
      }
    }
    assertWithMessage("steps at which few files were read, of " + steps)
        .that(few)
        .isAtLeast(steps / 3);
  }
}
