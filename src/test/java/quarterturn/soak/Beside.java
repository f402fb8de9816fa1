package quarterturn.soak;

import java.time.Duration;
import java.util.List;
import java.util.Random;
import org.jspecify.annotations.Nullable;

/** Another process beside the one of a round: on the same folder, or at the lesson's desk. */
final class Beside implements AutoCloseable {
  static final Beside NOTHING = new Beside(null, false, new Random(0));

  private static final List<String> ORDERS =
      List.of(
          "help",
          "release left ok",
          "release right ok",
          "release left tighten 1/8",
          "release right tighten 1/8",
          "release left 0.60 passes 0.65 lifts",
          "missed",
          "stop left",
          "hold left",
          "message left well done",
          "go on left",
          "nonsense");

  private final @Nullable Child child;
  private final boolean desk;
  private final Random random;
  private final Player player;

  Beside(@Nullable Child child, boolean desk, Random random) {
    this.child = child;
    this.desk = desk;
    this.random = new Random(random.nextLong());
    this.player = new LinesPlayer(this.random, new Necks(this.random));
  }

  /** Gives it a line at times. */
  void step() throws InterruptedException {
    if (child == null || random.nextBoolean() || !child.alive()) {
      return;
    }
    child.send(
        desk
            ? "{\"answer\":\"" + ORDERS.get(random.nextInt(ORDERS.size())) + "\"}\n"
            : player.next(child.out()));
    child.quiet(child.length(), Duration.ofMillis(20), Duration.ofMillis(300));
  }

  @Override
  public void close() throws InterruptedException {
    if (child != null) {
      child.endInput();
      child.ended(Duration.ofSeconds(20));
      child.close();
    }
  }
}
