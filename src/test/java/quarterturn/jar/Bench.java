package quarterturn.jar;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import quarterturn.session.Event;
import quarterturn.session.journal.Journal;

/** A data folder, a clock that moves on with every answer, and the jar started on them. */
final class Bench {
  /** Between two answers, so that each has a time of its own. */
  static final Duration PACE = Duration.ofSeconds(20);

  /** Longer than the program takes to start. */
  private static final Duration START = Duration.ofMinutes(1);

  private static final int MOST_PROMPTS = 600;

  private final Path data;
  private Instant at;

  /**
   * @param data the folder for {@code --data}
   * @param at the time of the first answer
   */
  Bench(Path data, Instant at) {
    this.data = data;
    this.at = at.truncatedTo(ChronoUnit.SECONDS);
  }

  Path data() {
    return data;
  }

  Instant at() {
    return at;
  }

  /** The jar's arguments with this bench's folder behind them. */
  private List<String> args(String... args) {
    List<String> all = new ArrayList<>(List.of(args));
    all.addAll(List.of("--data", data.toString()));
    return all;
  }

  /** {@code start relief --lines} on a 34 in bass played with a medium touch. */
  JarProcess start(String... more) throws IOException {
    List<String> all = args("start", "relief", "--lines", "--kind", "bass-34", "--style", "medium");
    all.addAll(List.of(more));
    return JarProcess.start(all);
  }

  JarProcess resume(String session) throws IOException {
    // The program stamps the break with its clock, and nothing may come before that.
    Instant now = Instant.now().truncatedTo(ChronoUnit.SECONDS);
    at = (at.isBefore(now) ? now : at).plus(START);
    return JarProcess.later(args("resume", session, "--lines"));
  }

  /** Runs a command to its end with nothing on standard input. */
  JarProcess.Ran run(String... args) throws IOException, InterruptedException {
    return given("", args);
  }

  /** Runs a command to its end with this on standard input. */
  JarProcess.Ran given(String input, String... args) throws IOException, InterruptedException {
    return JarProcess.inside(input, args(args).toArray(String[]::new));
  }

  /** The answer with the time it is given at, which is late enough to end a wait. */
  String timed(ObjectNode answer, JsonNode prompt) {
    at = at.plus(PACE);
    if (prompt.hasNonNull("until")) {
      Instant until = Instant.parse(prompt.path("until").textValue());
      at = at.isBefore(until) ? until.truncatedTo(ChronoUnit.SECONDS).plusSeconds(1) : at;
    }
    return answer.put("at", at.toString()).toString();
  }

  /** Lets {@code neck} answer to the end; every prompt on the way, the last included. */
  List<JsonNode> playOut(JarProcess jar, Neck neck) throws IOException, InterruptedException {
    return playTo(jar, neck, "");
  }

  /** Lets {@code neck} answer up to the prompt of {@code step}, which stays unanswered. */
  List<JsonNode> playTo(JarProcess jar, Neck neck, String step)
      throws IOException, InterruptedException {
    List<JsonNode> prompts = new ArrayList<>();
    for (JsonNode prompt = jar.prompt(); ; prompt = jar.prompt()) {
      prompts.add(prompt);
      if (ended(prompt) || (is(prompt, step) && !kind(prompt).equals("hazard"))) {
        return prompts;
      }
      if (prompts.size() > MOST_PROMPTS) {
        throw new AssertionError("no end after " + MOST_PROMPTS + " prompts: " + prompt);
      }
      jar.send(timed(neck.answer(prompt), prompt));
    }
  }

  static String kind(JsonNode prompt) {
    return prompt.path("prompt").asText("none");
  }

  static boolean is(JsonNode prompt, String step) {
    return prompt.path("step").asText("none").equals(step);
  }

  static boolean ended(JsonNode prompt) {
    return kind(prompt).equals("done") || kind(prompt).equals("hand-over");
  }

  /** Every session's file, the oldest name first. */
  List<Path> files() throws IOException {
    try (Stream<Path> all = Files.list(data.resolve("sessions"))) {
      return all.filter(f -> f.toString().endsWith(".jsonl")).sorted().toList();
    }
  }

  /** The one session's name. */
  String session() throws IOException {
    List<Path> files = files();
    if (files.size() != 1) {
      throw new AssertionError("not one session: " + files);
    }
    return String.valueOf(files.get(0).getFileName()).replace(".jsonl", "");
  }

  /** The one session's events; fails where anything but a last line cut short is wrong with it. */
  List<Event> events() {
    try {
      Journal.Contents contents = Journal.read(data.resolve("sessions/" + session() + ".jsonl"));
      if (contents.damaged()) {
        throw new AssertionError(contents.notice());
      }
      return contents.events();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
