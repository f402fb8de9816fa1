package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.TimeUnit;
import org.jline.terminal.Attributes;
import org.jline.terminal.Terminal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.parallel.Isolated;
import quarterturn.Draws;
import quarterturn.Hostile;
import quarterturn.OwnSequences;
import quarterturn.screen.terminal.FakeTerminal;
import quarterturn.screen.terminal.Settings;
import quarterturn.screen.terminal.Surface;
import quarterturn.session.Prompt;

/** The full screen at a terminal that sends what nobody typed. */
@Isolated("what takes over a terminal handles what nobody caught")
@Timeout(60)
class HostileTerminalTest {
  private static final int SESSIONS = 8;
  private static final int SENT = 40;
  private static final long SEED = 20270617;

  private static final List<Prompt> STEPS =
      List.of(
          Invented.CAUTION,
          Invented.MEASURE,
          Invented.CHOOSE,
          Invented.MEASURE,
          Invented.LOOSEN,
          Invented.settle(true),
          Invented.HUMIDITY,
          Invented.DONE);

  /** What another thread does meanwhile. */
  private interface Disturbance {
    void run() throws Exception;
  }

  /** The exit status of a session that another thread disturbs. */
  private static int disturbed(FakeTerminal terminal, ScriptedBench bench, Disturbance by)
      throws Exception {
    ExecutorService other = Executors.newSingleThreadExecutor();
    try (Surface surface = Surface.open(terminal, new Settings(true, true))) {
      Future<?> done =
          other.submit(
              () -> {
                by.run();
                return true;
              });
      int status = ScreenFace.run(surface, bench, ZoneOffset.UTC, "", false).status();
      done.get(20, TimeUnit.SECONDS);
      return status;
    } finally {
      other.shutdownNow();
    }
  }

  private static ScriptedBench bench(List<Prompt> steps) {
    return new ScriptedBench(Clock.fixed(Invented.NOON, ZoneOffset.UTC), steps);
  }

  private static void send(FakeTerminal terminal, Hostile hostile) throws InterruptedException {
    for (int i = 0; i < SENT; i++) {
      terminal.type(hostile.next(8192));
      if (hostile.once(4)) {
        terminal.resize(hostile.size());
      }
      if (hostile.once(3)) {
        Thread.sleep(1);
      }
    }
    terminal.raise(Terminal.Signal.INT);
  }

  @Test
  void neitherHangsNorBreaksNorSendsAnythingRaw() throws Exception {
    for (int i = 0; i < Draws.of(SESSIONS); i++) {
      Hostile hostile = new Hostile(SEED + i);
      try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
        Attributes found = terminal.getAttributes();
        int status = disturbed(terminal, bench(STEPS), () -> send(terminal, hostile));
        assertWithMessage("seed %s", i).that(status).isAnyOf(0, 130);
        OwnSequences.only(terminal.sent());
        OwnSequences.restored(terminal.sent());
        assertThat(terminal.getAttributes().toString()).isEqualTo(found.toString());
      }
    }
  }

  /** Keys that wait already are one picture, not one each. */
  @Test
  void whatWaitsIsPaintedOnce() throws Exception {
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      int[] painted = new int[2];
      int status =
          disturbed(
              terminal,
              bench(List.of(Invented.MEASURE)),
              () -> {
                painted[0] = settled(terminal);
                for (int i = 0; i < 100; i++) {
                  terminal.type("0.30 passes ".repeat(5));
                }
                while (terminal.sent().length() == painted[0]) {
                  Thread.sleep(10);
                }
                painted[1] = settled(terminal);
                terminal.raise(Terminal.Signal.INT);
              });
      assertThat(status).isEqualTo(130);
      // Each picture of a change is 60 to 80 bytes.
      assertThat(painted[1] - painted[0]).isLessThan(6000);
    }
  }

  /** How much was sent, once no more is. */
  private static int settled(FakeTerminal terminal) throws InterruptedException {
    int before = -1;
    int now = terminal.sent().length();
    while (now != before || now == 0) {
      Thread.sleep(120);
      before = now;
      now = terminal.sent().length();
    }
    return now;
  }

  @Test
  void anInterruptComesBeforeWhatWasTyped() throws Exception {
    ScriptedBench bench = bench(List.of(Invented.TELL, Invented.TELL, Invented.DONE));
    try (FakeTerminal terminal = new FakeTerminal(80, 24)) {
      int status =
          disturbed(
              terminal,
              bench,
              () -> {
                settled(terminal);
                for (int i = 0; i < 50; i++) {
                  terminal.type("?".repeat(200));
                }
                terminal.type("\r");
                // By then all of it waits, and little of it was taken.
                Thread.sleep(50);
                terminal.raise(Terminal.Signal.INT);
              });
      assertThat(status).isEqualTo(130);
      assertThat(bench.answers()).isEmpty();
    }
  }
}
