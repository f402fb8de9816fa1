package quarterturn.soak;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.LockSupport;
import quarterturn.soak.Commands.Command;
import quarterturn.soak.Tally.Count;

/** One run of the program with all that is done to it, drawn from a seed. */
final class Round {
  /** Far beyond what any start, answer or end takes, even on a busy machine. */
  private static final Duration BOUND = Duration.ofSeconds(45);

  private static final List<Face> FACES =
      List.of(
          Face.SCREEN,
          Face.SCREEN,
          Face.SCREEN,
          Face.TYPED,
          Face.TYPED,
          Face.TYPED,
          Face.LINES,
          Face.LINES,
          Face.LINES,
          Face.LINES,
          Face.PIPE);

  private static final List<Integer> FACTORS = List.of(1, 30, 120, 600);

  private final Random random;
  private final World world;
  private final Tally tally;
  private final Oracle oracle;
  private final Starting starting;
  private final List<String> inputs = new ArrayList<>();
  private final Command command;
  private final Face face;
  private final Ending ending;
  private final Noise noise;
  private final Player player;
  private final Records before;
  private final int factor;
  private String printed = "";

  /** Whether what came last is the answer to what was sent last, as far as can be seen. */
  private boolean settled;

  Round(long seed, World world, Tally tally, Starting starting) throws IOException {
    random = new Random(seed);
    this.world = world;
    this.tally = tally;
    this.starting = starting;
    oracle = new Oracle(world);
    command = new Commands(random, world).next();
    Ending drawn = Ending.values()[random.nextInt(Ending.values().length)];
    Face wished = FACES.get(random.nextInt(FACES.size()));
    face = command.asks() ? wished : Face.PIPE;
    ending = drawn == Ending.FULL_OUTPUT && face.terminal() ? Ending.QUIT : drawn;
    noise = new Noise(random);
    Necks necks = new Necks(random);
    player =
        switch (face) {
          case SCREEN -> new ScreenPlayer(random, necks);
          case TYPED -> new TypedPlayer(random, necks, "\r");
          case PIPE -> new TypedPlayer(random, necks, "\n");
          case LINES -> new LinesPlayer(random, necks);
        };
    before = Records.of(world.folder());
    factor = face == Face.LINES ? 1 : FACTORS.get(random.nextInt(FACTORS.size()));
  }

  /** What it is, in a few words. */
  @Override
  public String toString() {
    return "%s %s, %s".formatted(face, command.words(), ending);
  }

  List<String> inputs() {
    return inputs;
  }

  String printed() {
    return printed;
  }

  /** Plays it; what was found. */
  List<String> play() throws IOException, InterruptedException {
    tally.add(Count.ROUNDS);
    boolean second = random.nextInt(10) == 0 && command.asks();
    try (Child child = start()) {
      try (Beside beside = second || command.lesson() ? beside() : Beside.NOTHING) {
        Instant began = Instant.now();
        if (ending == Ending.KILL && random.nextInt(3) == 0) {
          // While it starts, or before it has said anything.
          LockSupport.parkNanos(random.nextLong(TimeUnit.SECONDS.toNanos(2)));
        } else {
          boolean said =
              child.quiet(
                  0,
                  Duration.ofMillis(100),
                  ending == Ending.FULL_OUTPUT ? Duration.ofSeconds(3) : BOUND);
          if (!said && child.alive() && ending != Ending.FULL_OUTPUT) {
            oracle.found("it printed nothing within " + BOUND);
          }
          inputs(child, beside);
        }
        end(child);
        world.passed(
            world
                .now()
                .plus(Duration.between(began, Instant.now()).plusSeconds(5).multipliedBy(factor)));
      }
      printed = child.out();
    }
    Records now = Records.of(world.folder());
    String since = now.since(before);
    tally.add(Count.TURNS, since.split("\"event\":\"offered\"", -1).length - 1);
    world.passed(Records.latest(since, world.now()));
    world.pause(random);
    oracle.printed(printed, face.terminal());
    if (ending.inOrder() && face.terminal()) {
      oracle.restored(printed);
    }
    oracle.folder(before, now);
    return oracle.findings();
  }

  private Child start() throws IOException {
    String before = "";
    if (ending == Ending.FULL_DISK) {
      tally.add(Count.FULL_DISKS);
      before = "ulimit -f " + ((this.before.largest() + random.nextInt(20_000)) / 512 + 1) + "; ";
    }
    List<String> words = new ArrayList<>(command.words());
    if (command.asks() && !face.option().isEmpty()) {
      words.add(face.option());
    }
    List<String> started = starting.program(world, factor, words);
    if (!face.terminal()) {
      String to = ending == Ending.FULL_OUTPUT ? "/dev/full" : "";
      return PipeChild.start(before, to, world.home(), started);
    }
    int[] size = size();
    return PtyChild.start(size[0], size[1], before, world.home(), started);
  }

  private int[] size() {
    return switch (random.nextInt(6)) {
      case 0 -> new int[] {1 + random.nextInt(60), 1 + random.nextInt(20)};
      case 1 -> new int[] {1 + random.nextInt(500), 1 + random.nextInt(200)};
      case 2 -> new int[] {140, 45};
      default -> new int[] {80, 24};
    };
  }

  /** A second process on the same folder, or the desk of the lesson. */
  private Beside beside() throws IOException {
    tally.add(command.lesson() ? Count.LESSONS : Count.SECONDS);
    List<String> words =
        command.lesson()
            ? List.of("lesson", "desk", world.lesson().toString(), "--lines")
            : List.of(random.nextBoolean() ? "resume" : "start", "--lines");
    return new Beside(
        PipeChild.start("", "", world.home(), starting.program(world, factor, words)),
        command.lesson(),
        random);
  }

  private void inputs(Child child, Beside beside) throws IOException, InterruptedException {
    int many = command.asks() ? 5 + random.nextInt(face == Face.LINES ? 180 : 70) : 0;
    for (int i = 0; i < many && child.alive(); i++) {
      tally.add(Count.INPUTS);
      beside.step();
      int chance = random.nextInt(100);
      boolean sane = random.nextInt(100) >= (face == Face.PIPE ? 3 : 12);
      if (sane) {
        answer(child);
      } else if (chance < 25) {
        tally.add(Count.PASTES);
        other(child, "paste", noise.paste(face.terminal()));
      } else if (chance < 50 && face.terminal()) {
        tally.add(Count.RESIZES);
        int[] size = size();
        inputs.add("resize " + size[0] + "x" + size[1]);
        child.resize(size[0], size[1]);
        LockSupport.parkNanos(random.nextLong(TimeUnit.MILLISECONDS.toNanos(60)));
      } else if (chance < 60) {
        tally.add(Count.STOPPED);
        inputs.add("stopped and continued");
        child.signal("STOP");
        child.signal("CONT");
      } else {
        other(child, "rubbish", noise.rubbish());
      }
    }
  }

  private void other(Child child, String what, byte[] bytes) throws InterruptedException {
    inputs.add(what + " " + Oracle.escaped(new String(bytes, StandardCharsets.ISO_8859_1)));
    int length = child.length();
    child.send(bytes);
    child.quiet(length, Duration.ofMillis(60), Duration.ofMillis(random.nextInt(600)));
    settled = false;
  }

  private void answer(Child child) throws IOException, InterruptedException {
    if (!settled) {
      settled = child.quiet(-1, Duration.ofMillis(800), Duration.ofSeconds(2));
    }
    String out = child.out();
    boolean waits = settled && (face == Face.LINES || out.endsWith("> "));
    Acknowledged asked = Acknowledged.of(face, waits ? out : "", Records.of(world.folder()));
    String typed = player.next(out);
    inputs.add("answer " + Oracle.escaped(typed));
    child.send(typed);
    boolean came =
        child.quiet(
            out.length(),
            Duration.ofMillis(face == Face.SCREEN ? 60 : 30),
            face == Face.LINES && !command.lesson() ? BOUND : Duration.ofSeconds(1));
    if (!came && face == Face.LINES && child.alive() && !command.lesson()) {
      oracle.found("no answer within " + BOUND + " to " + typed);
    }
    settled = came;
    Records now = Records.of(world.folder());
    if (asked.looksUp(child.out())) {
      tally.add(Count.ACKNOWLEDGED);
    }
    asked.missing(child.out(), now).forEach(oracle::found);
  }

  private void end(Child child) throws IOException, InterruptedException {
    if (child.alive()) {
      inputs.add("end " + ending);
      switch (ending) {
        case QUIT, FULL_DISK, FULL_OUTPUT -> quit(child);
        case END_OF_INPUT -> child.endInput();
        case CTRL_C -> interrupt(child);
        case TERM, HUP -> {
          tally.add(Count.SIGNALS);
          child.signal(ending.name());
        }
        case KILL -> {
          tally.add(Count.KILLS);
          if (child.length() > 0) {
            // Before that the terminal would still echo it.
            child.send(player.next(child.out()));
          }
          LockSupport.parkNanos(random.nextLong(TimeUnit.MILLISECONDS.toNanos(40)));
          child.signal("KILL");
        }
        case HANG_UP -> {
          child.hangUp();
          child.send(player.next(""));
          child.endInput();
        }
      }
    }
    ended(child);
  }

  /** Whether a bench waits for the teacher, with lines behind that are for later. */
  private static boolean held(String out) {
    String last = out.substring(Math.max(0, out.length() - 600));
    return last.contains("Wait for the teacher") || last.contains("HOLD POINT");
  }

  private void quit(Child child) throws InterruptedException {
    switch (face) {
      case LINES -> child.send("{\"answer\":\"quit\"}\n");
      case SCREEN -> child.send("\u001b");
      default -> child.send(face == Face.TYPED ? "\u0015quit\r" : "quit\n");
    }
    child.ended(Duration.ofMillis(300));
    if (face == Face.SCREEN) {
      child.send("q");
      child.ended(Duration.ofMillis(300));
      child.send("y");
    }
  }

  private void interrupt(Child child) throws IOException, InterruptedException {
    if (face.terminal()) {
      child.send("\u0003");
    } else {
      child.signal("INT");
    }
  }

  /** Waits for its end; a terminal is asked again, since a key may have been taken for another. */
  private void ended(Child child) throws IOException, InterruptedException {
    boolean over = child.ended(Duration.ofSeconds(face.terminal() ? 3 : 5));
    if (!over && !face.terminal()) {
      child.endInput();
    }
    for (int i = 0; i < 3 && !over && face.terminal(); i++) {
      child.send("\u0003");
      over = child.ended(Duration.ofSeconds(10));
    }
    if (!over && command.lesson() && !face.terminal() && held(child.out())) {
      return;
    }
    if (!over && !child.ended(BOUND)) {
      oracle.found("it did not end");
      return;
    }
    if (List.of(134, 139).contains(child.status())) {
      oracle.found("status " + child.status());
    }
  }
}
