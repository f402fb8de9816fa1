package quarterturn.script;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.function.BooleanSupplier;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.EverySecond;
import quarterturn.lesson.student.BenchDialogue;
import quarterturn.lesson.student.BenchWords;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.ExitStatus;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.JsonText;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;
import quarterturn.unit.TypedLines;

/**
 * Plays a session as JSON lines: one object out for each prompt, one object in for each answer, and
 * nothing else, in UTF-8. After an {@code error} line the same prompt is printed again.
 */
public final class ScriptFace {
  /** Most characters of an answer. */
  public static final int LONGEST = 64 * 1024;

  /** How long what may change goes unlooked at. */
  private static final Duration LOOK = Duration.ofMillis(250);

  private final TypedLines in;
  private final PrintStream out;

  /** A face that reads answers from {@code in} and prints to {@code out}. */
  public ScriptFace(InputStream in, PrintStream out) {
    this.in = new TypedLines(new InputStreamReader(in, StandardCharsets.UTF_8), LONGEST);
    this.out = out;
  }

  /** Plays {@code bench} until its session or the script ends; returns the exit status. */
  public int run(Bench bench) {
    try {
      Integer status = null;
      while (status == null) {
        status = step(bench, null);
      }
      return status;
    } catch (IOException e) {
      error("could not go on: " + e.getMessage());
      return ExitStatus.FAILED;
    }
  }

  /** Prints lines that need no answer. */
  public void tell(List<String> lines) {
    if (!lines.isEmpty()) {
      print(QuestionJson.list(JsonNodeFactory.instance.objectNode(), "told", lines));
    }
  }

  /** Asks a dialogue's questions until they are answered or the script leaves or ends. */
  public Dialogue.End ask(Dialogue dialogue) throws IOException {
    for (Question now = dialogue.question(); now != null; now = dialogue.question()) {
      print(QuestionJson.of(now, false));
      TypedLines.Line line = in.next();
      if (line == null || !taken(dialogue, line)) {
        print(JsonNodeFactory.instance.objectNode().put("left", "nothing is kept"));
        return Dialogue.End.LEFT;
      }
    }
    return Dialogue.End.ANSWERED;
  }

  /** Plays a bench in a lesson until its sessions or the script end; returns the exit status. */
  public int lesson(LessonSession session) throws IOException, UnreadableException {
    BenchDialogue dialogue = new BenchDialogue(session);
    Integer status = null;
    while (status == null) {
      boolean opened = dialogue.look();
      Question now = dialogue.question();
      if (now != null) {
        status = before(session, dialogue, now);
        continue;
      }
      if (opened) {
        tell(dialogue.news());
      }
      status = step(session, dialogue);
      boolean next = session.prompt().ended() && session.next();
      status = next ? null : status;
    }
    return status;
  }

  /** Asks one question of a lesson; returns the exit status where the bench is left, else null. */
  private @Nullable Integer before(LessonSession session, BenchDialogue dialogue, Question now)
      throws IOException {
    print(QuestionJson.of(now, dialogue.secret()));
    if (dialogue.over()) {
      return ExitStatus.DONE;
    }
    try {
      TypedLines.Line line;
      if (now instanceof Question.Hold) {
        line = urgent(dialogue);
        if (in.spent() && !dialogue.changed()) {
          return left(session);
        }
      } else if (awaited(dialogue::changed)) {
        line = in.next();
        if (line == null) {
          return left(session);
        }
      } else {
        return null;
      }
      return line == null || taken(dialogue, line) ? null : left(session);
    } catch (InterruptedException e) {
      return left(session);
    }
  }

  /** Waits for a line, or its end; false where something changed before it came. */
  private boolean awaited(BooleanSupplier changed) throws InterruptedException {
    while (!in.comes(LOOK)) {
      if (changed.getAsBoolean()) {
        return false;
      }
    }
    return true;
  }

  /** Waits until the bench goes on, or nobody can answer it, or for a line that can't wait. */
  private TypedLines.@Nullable Line urgent(BenchDialogue dialogue)
      throws IOException, InterruptedException {
    TypedLines.Line line = null;
    while (line == null && !in.spent() && !dialogue.changed()) {
      line = in.urgent(LOOK, l -> BenchWords.urgent(word(l), in.keeps()));
    }
    return line;
  }

  /** The word that a line answers; empty where it answers something else. */
  private static String word(TypedLines.Line line) {
    try {
      return line.cut() ? "" : ReplyFields.parse(line.text()).only("answer").word("answer");
    } catch (BadAnswerException e) {
      return "";
    }
  }

  /** Takes a teacher's orders until the script leaves the desk; returns the exit status. */
  public int desk(DeskDialogue dialogue) throws IOException {
    try (EverySecond looks = EverySecond.begin("follow the lesson", () -> news(dialogue))) {
      print(QuestionJson.of(dialogue.question(), false));
      tell(dialogue.show());
      TypedLines.Line line = in.next();
      while (line != null && ordered(dialogue, line)) {
        line = in.next();
      }
    }
    print(JsonNodeFactory.instance.objectNode().put("left", dialogue.leave()));
    return ExitStatus.DONE;
  }

  /** Gives a line to a desk and asks what its order still needs; false where the script leaves. */
  private boolean ordered(DeskDialogue dialogue, TypedLines.Line line) throws IOException {
    synchronized (dialogue) {
      boolean stays = taken(dialogue, line);
      news(dialogue);
      if (dialogue.asked() != null) {
        print(QuestionJson.of(dialogue.question(), false));
      }
      return stays;
    }
  }

  private void news(DeskDialogue dialogue) {
    synchronized (dialogue) {
      tell(dialogue.news());
    }
  }

  /** Gives a line to a dialogue; false where the script leaves. */
  private boolean taken(Dialogue dialogue, TypedLines.Line line) throws IOException {
    try {
      String word = line.cut() ? "" : ReplyFields.parse(line.text()).only("answer").word("answer");
      if (word.equals("quit")) {
        return false;
      }
      if (!word.equals("correct") || !dialogue.back()) {
        Dialogue.Taken taken = dialogue.take(word);
        tell(taken.brief().isEmpty() ? taken.told() : List.of(taken.brief()));
      }
    } catch (BadAnswerException | NotUnderstoodException | RefusedException e) {
      error(e.getMessage());
    }
    return true;
  }

  private int left(Bench bench) throws IOException {
    List<String> parting = bench.overview().parting();
    ObjectNode left = JsonNodeFactory.instance.objectNode();
    left.put("left", Printable.of(bench.leave()));
    print(parting.isEmpty() ? left : QuestionJson.list(left, "do", parting));
    return ExitStatus.DONE;
  }

  /**
   * Shows one prompt and takes its answer; returns the exit status where the session ends or is
   * left, else null.
   *
   * @param lesson what may break it off, or null
   */
  private @Nullable Integer step(Bench bench, @Nullable BenchDialogue lesson) throws IOException {
    Prompt prompt = bench.prompt();
    try {
      print(beside(PromptJson.of(prompt), bench.overview()));
    } catch (UncheckedIOException e) {
      bench.leave();
      throw e;
    }
    if (prompt.ended()) {
      return prompt instanceof Prompt.HandOver ? ExitStatus.HAND_OVER : ExitStatus.DONE;
    }
    if (out.checkError()) {
      // Nobody reads the prompts any more, so what still comes in answers nothing.
      bench.leave();
      return ExitStatus.FAILED;
    }
    try {
      if (lesson != null && !awaited(lesson::changed)) {
        return null;
      }
    } catch (InterruptedException e) {
      return left(bench);
    }
    TypedLines.Line line = in.next();
    if (line != null && lesson != null && worded(lesson, line)) {
      return null;
    }
    return line == null || !answered(bench, prompt, line) ? left(bench) : null;
  }

  /** Does what a word of the lesson asks for; false where the line is none. */
  private boolean worded(BenchDialogue lesson, TypedLines.Line line) throws IOException {
    try {
      Dialogue.Taken taken = lesson.word(word(line));
      if (taken != null) {
        tell(taken.told());
      }
      return taken != null;
    } catch (RefusedException e) {
      error(e.getMessage());
      return true;
    }
  }

  /** Adds where the session is, who works, and the ticket; the last two where they are known. */
  private static ObjectNode beside(ObjectNode json, Overview overview) {
    json.put("place", Printable.of(overview.place()));
    if (overview.by() != null) {
      json.put("by", Printable.of(overview.by()));
    }
    if (overview.ticket() != null) {
      json.put("ticket", Printable.of(overview.ticket()));
    }
    return json;
  }

  /** Gives a line's answer to the bench; false where the script leaves. */
  private boolean answered(Bench bench, Prompt prompt, TypedLines.Line line) throws IOException {
    String wrong = null;
    Instant before = bench.now();
    try {
      if (line.cut()) {
        throw new BadAnswerException("a line is at most " + LONGEST + " characters long");
      }
      ScriptReply reply = ScriptReplyReader.read(line.text(), prompt);
      if (reply.at() != null) {
        bench.setClock(reply.at());
      }
      if (reply.answer() == null) {
        return false;
      }
      bench.answer(reply.answer());
    } catch (BadAnswerException | NotUnderstoodException e) {
      wrong = e.getMessage();
    } catch (RefusedException e) {
      wrong = e.getMessage();
      setBack(bench, before);
    }
    if (wrong != null) {
      error(wrong + "; " + Takes.of(prompt));
    }
    return true;
  }

  /** Sets the clock back after an answer that was refused, since its time does not count either. */
  private static void setBack(Bench bench, Instant before) {
    try {
      bench.setClock(before);
    } catch (RefusedException e) {
      throw new IllegalStateException("the time it was is no time to go back to", e);
    }
  }

  private void error(@Nullable String message) {
    print(
        JsonNodeFactory.instance.objectNode().put("error", Printable.of(String.valueOf(message))));
  }

  private void print(ObjectNode json) {
    byte[] line = (JsonText.of(json) + "\n").getBytes(StandardCharsets.UTF_8);
    out.write(line, 0, line.length);
    out.flush();
  }
}
