package quarterturn.rehearsal.fleet;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import quarterturn.rehearsal.simulated.Draw;
import quarterturn.rehearsal.simulated.FirstGap;
import quarterturn.rehearsal.simulated.NeckFault;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.script.FleetJson;

/**
 * The figures of whole sessions, on fewer necks than {@code rehearse --fleet 10000} plays. The
 * necks are drawn from an estimate; see {@link Draw}.
 */
@Tag("slow")
class FleetTest {
  private static final int NECKS = 1500;
  private static final long SEED = 20_270_412;

  private static Fleet.Result run(int necks, long seed) throws InterruptedException {
    return new Fleet(Practising.relief(), necks, seed, false).run(done -> {});
  }

  @SuppressWarnings("NullAway.Init")
  private static Fleet.Result played;

  @BeforeAll
  static void play() throws InterruptedException {
    played = run(NECKS, SEED);
  }

  @Test
  void theAdviceIsNearlyAsGoodAsKnowingTheNeck() throws Exception {
    SoundNecks sound = played.sound();
    String where = "seed " + SEED;
    assertThat(sound.advised().necks() + sound.outOfReach().necks()).isEqualTo(NECKS);
    assertWithMessage(where).that(sound.outOfReach().necks()).isAtMost(75);
    assertWithMessage(where).that(sound.overFloor()).isAtMost(1.10);
    // The first move is an eighth for everybody, and takes many a lively neck across by itself.
    assertWithMessage(where)
        .that(sound.advised().overshoots())
        .isAtMost(sound.knowing().overshoots() + 0.01);
    assertWithMessage(where).that(sound.advised().unsettled()).isAtMost(0.002);
    assertWithMessage(where).that(sound.advised().handedOver()).isAtMost(0.005);
    assertWithMessage(where).that(sound.mostTurned()).isAtMost(1);
    assertWithMessage(where).that(sound.advised().moves()).isLessThan(sound.thumb().moves());
    assertWithMessage(where)
        .that(sound.thumb().overshoots())
        .isGreaterThan(10 * sound.advised().overshoots());
  }

  @Test
  void brokenNecksAreFoundWithoutForce() throws Exception {
    FaultyNecks faulty = played.faulty();
    String where = "seed " + SEED;
    assertWithMessage(where).that(faulty.missed()).isEqualTo(0);
    assertWithMessage(where).that(faulty.all().mostNet().turns()).isAtMost(1);
    for (NeckFault fault : new NeckFault[] {NeckFault.DEAD, NeckFault.REVERSED}) {
      Tally readable = faulty.of(fault, FirstGap.READABLE);
      assertWithMessage(where).that(readable.necks()).isAtLeast(50);
      assertWithMessage(where + ", " + fault).that(readable.within(3)).isAtLeast(0.97);
    }
    for (NeckFault fault : new NeckFault[] {NeckFault.DEAD, NeckFault.FULLY_LOOSE}) {
      Tally touching = faulty.of(fault, FirstGap.TOUCHING);
      assertWithMessage(where).that(touching.necks()).isAtLeast(15);
      assertWithMessage(where + ", " + fault).that(touching.within(5)).isEqualTo(1);
    }
    // A crack is looked for before anything is tuned, a rounded nut once a turn is needed.
    assertWithMessage(where)
        .that(faulty.of(NeckFault.CRACKED, FirstGap.NOT_READ).within(0))
        .isEqualTo(1);
    for (FirstGap gap : FirstGap.read()) {
      Tally stripped = faulty.of(NeckFault.STRIPPED, gap);
      assertWithMessage(where + ", " + gap).that(stripped.within(0)).isEqualTo(1);
    }
  }

  @Test
  void theAdviceBearsWhatItDoesNotKnow() throws Exception {
    Fleet.Result wide = new Fleet(Practising.relief(), 60, SEED, true).run(done -> {});
    String where = "seed " + SEED;
    assertThat(wide.conditions()).hasSize(Condition.values().length - 1);
    wide.conditions()
        .forEach(
            (condition, necks) -> {
              String what = where + ", " + condition;
              assertWithMessage(what).that(necks.overFloor()).isAtMost(1.15);
              assertWithMessage(what).that(necks.unresolved()).isEqualTo(0);
            });
    assertThat(wide.setBacks().necks()).isAtLeast(50);
    assertWithMessage(where).that(wide.setBacks().faulted()).isEqualTo(0);
    for (NeckFault fault : new NeckFault[] {NeckFault.DEAD, NeckFault.REVERSED}) {
      for (FirstGap gap : FirstGap.read()) {
        Tally found = wide.faulty().of(fault, gap);
        assertWithMessage(where + ", " + fault + ", " + gap).that(found.necks()).isAtLeast(30);
        assertWithMessage(where + ", " + fault + ", " + gap).that(found.within(5)).isAtLeast(0.95);
      }
    }
  }

  @Test
  void theSameSeedGivesTheSameFiguresInWhateverOrder() throws Exception {
    String once = FleetJson.of(run(60, 3));
    assertThat(FleetJson.of(run(60, 3))).isEqualTo(once);
    assertThat(FleetJson.of(run(60, 4))).isNotEqualTo(once);
  }

  @Test
  void progressIsToldForEveryNeck() throws Exception {
    AtomicInteger calls = new AtomicInteger();
    AtomicInteger most = new AtomicInteger();
    new Fleet(Practising.relief(), 30, 1, false)
        .run(
            done -> {
              calls.incrementAndGet();
              most.accumulateAndGet(done, Math::max);
            });
    assertThat(calls.get()).isEqualTo(30);
    assertThat(most.get()).isEqualTo(30);
  }
}
