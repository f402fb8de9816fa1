package quarterturn.soak;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** What a round starts. */
final class Commands {
  private static final List<String> PROCEDURES =
      List.of(
          "relief",
          "relief",
          "relief",
          "relief",
          "setup",
          "setup",
          "relief-check",
          "season",
          "buzz",
          "ladder",
          "action",
          "intonation",
          "strings",
          "nut-clearance",
          "pickups",
          "set-back",
          "intake",
          "sign-off");
  private static final List<String> KINDS =
      List.of("bass-34", "electric-25", "acoustic-steel", "classical", "bass-35");

  private final Random random;
  private final World world;

  /**
   * What to start.
   *
   * @param asks whether it asks anything, so that a face can be chosen
   * @param lesson whether it is a bench of the lesson
   */
  record Command(List<String> words, boolean asks, boolean lesson) {
    Command {
      words = List.copyOf(words);
    }
  }

  Commands(Random random, World world) {
    this.random = random;
    this.world = world;
  }

  private <T> T any(List<T> of) {
    return of.get(random.nextInt(of.size()));
  }

  Command next() throws IOException {
    List<Path> sessions = world.sessions();
    List<String> words = new ArrayList<>();
    int kind = random.nextInt(18);
    if (kind < 2) {
      return new Command(words, true, false);
    } else if (kind < 7 || (kind < 14 && sessions.isEmpty())) {
      return start(words);
    } else if (kind < 14) {
      words.add("resume");
      if (random.nextInt(4) > 0) {
        words.add(name(any(sessions)));
      }
      return new Command(words, true, false);
    } else if (kind == 14) {
      String bench = any(List.of("left", "right"));
      words.addAll(List.of("lesson", "join", world.lesson().toString(), "--bench", bench));
      words.addAll(List.of("--as", bench + "-student"));
      return new Command(words, true, true);
    }
    return new Command(brief(sessions), false, false);
  }

  private Command start(List<String> words) throws IOException {
    words.addAll(List.of("start", any(PROCEDURES)));
    if (random.nextBoolean()) {
      words.addAll(List.of("--instrument", any(world.instruments())));
      if (random.nextInt(4) == 0) {
        words.add("--another");
      }
    } else {
      words.addAll(List.of("--kind", any(KINDS)));
    }
    if (random.nextInt(3) == 0) {
      words.addAll(List.of("--role", "technician"));
    }
    if (random.nextInt(3) == 0) {
      words.addAll(List.of("--style", "medium"));
    }
    return new Command(words, true, false);
  }

  /** A command that asks nothing. */
  private List<String> brief(List<Path> sessions) throws IOException {
    String instrument = any(world.instruments());
    List<String> words = new ArrayList<>();
    String session = sessions.isEmpty() ? "none" : name(any(sessions));
    switch (random.nextInt(9)) {
      case 0 -> words.addAll(List.of("log", "list"));
      case 1 -> words.add("due");
      case 2 -> words.addAll(List.of("instrument", "history", instrument));
      case 3 -> words.addAll(List.of("data", "check"));
      case 4 -> words.addAll(List.of("reckon", "intonation", "--scale", "34in", "--cents", "6"));
      case 5 -> words.addAll(List.of("log", "show", session));
      case 6 -> {
        String format = any(List.of("text", "markdown", "csv", "json", "html"));
        words.addAll(List.of("log", "export", session, "--format", format));
      }
      case 7 -> words.addAll(List.of("due", "--lines"));
      default -> words.addAll(List.of("log", "discard", session));
    }
    return words;
  }

  private static String name(Path session) {
    return String.valueOf(session.getFileName()).replace(".jsonl", "");
  }
}
