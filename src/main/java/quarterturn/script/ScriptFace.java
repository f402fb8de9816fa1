package quarterturn.script;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.EverySecond;
import quarterturn.lesson.student.BenchDialogue;
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

  private static final long LOOK_MILLIS = 500;

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
        status = step(bench);
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
      print(QuestionJson.of(now));
      if (!taken(dialogue)) {
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
      status = step(session);
      boolean next = session.prompt().ended() && session.next();
      status = next ? null : status;
    }
    return status;
  }

  /** Asks one question of a lesson; returns the exit status where the bench is left, else null. */
  private @Nullable Integer before(LessonSession session, BenchDialogue dialogue, Question now)
      throws IOException {
    print(QuestionJson.of(now));
    if (dialogue.over()) {
      return ExitStatus.DONE;
    }
    if (now instanceof Question.Hold) {
      while (now.equals(dialogue.question())) {
        try {
          Thread.sleep(LOOK_MILLIS);
        } catch (InterruptedException e) {
          return left(session);
        }
        dialogue.look();
      }
      return null;
    }
    return taken(dialogue) ? null : left(session);
  }

  /** Takes a teacher's orders until the script leaves the desk; returns the exit status. */
  public int desk(DeskDialogue dialogue) throws IOException {
    try (EverySecond looks = EverySecond.begin("follow the lesson", () -> news(dialogue))) {
      print(QuestionJson.of(dialogue.question()));
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
        print(QuestionJson.of(dialogue.question()));
      }
      return stays;
    }
  }

  private void news(DeskDialogue dialogue) {
    synchronized (dialogue) {
      tell(dialogue.news());
    }
  }

  /** Gives the next line to a dialogue; false where the script leaves or ends. */
  private boolean taken(Dialogue dialogue) throws IOException {
    TypedLines.Line line = in.next();
    return line != null && taken(dialogue, line);
  }

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
   */
  private @Nullable Integer step(Bench bench) throws IOException {
    Prompt prompt = bench.prompt();
    print(beside(PromptJson.of(prompt), bench.overview()));
    if (prompt.ended()) {
      return prompt instanceof Prompt.HandOver ? ExitStatus.HAND_OVER : ExitStatus.DONE;
    }
    if (out.checkError()) {
      // Nobody reads the prompts any more, so what still comes in answers nothing.
      bench.leave();
      return ExitStatus.FAILED;
    }
    TypedLines.Line line = in.next();
    return line == null || !answered(bench, prompt, line) ? left(bench) : null;
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
    byte[] line = (json + "\n").getBytes(StandardCharsets.UTF_8);
    out.write(line, 0, line.length);
    out.flush();
  }
}
