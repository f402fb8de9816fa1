package quarterturn.command.face;

import java.io.IOException;
import java.time.ZoneId;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.line.AutoSource;
import quarterturn.line.DialogueLines;
import quarterturn.line.LessonLine;
import quarterturn.line.LineDesk;
import quarterturn.line.LineFace;
import quarterturn.line.LineSource;
import quarterturn.line.Typing;
import quarterturn.procedure.UnreadableException;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.Player;
import quarterturn.unit.Dates;

/**
 * The typed face at one terminal or pipe.
 *
 * @param zone by which times are shown
 */
record InLines(Typing typing, ZoneId zone) implements Face {
  @Override
  public Dialogue.End ask(Dialogue dialogue) throws IOException {
    return DialogueLines.run(dialogue, typing.source(), typing.out());
  }

  @Override
  public void tell(List<String> lines) {
    lines.forEach(typing.out()::println);
  }

  @Override
  public int play(Bench bench, @Nullable String notice) {
    if (notice != null) {
      typing.out().println("Notice: " + notice);
    }
    return run(bench, typing.source());
  }

  @Override
  public int watch(Player player) {
    typing.out().println("This plays by itself. Ctrl-C leaves it; --speed sets its pace.");
    return run(player.bench(), new AutoSource(typing.source(), typing.out(), player));
  }

  private int run(Bench bench, LineSource source) {
    return LineFace.run(bench, source, typing.out(), new Dates(zone));
  }

  @Override
  public int lesson(LessonSession session, String again, String welcome)
      throws IOException, UnreadableException {
    LessonLine.greet(welcome, typing);
    return LessonLine.run(session, again, typing.source(), typing.out(), new Dates(zone));
  }

  @Override
  public int desk(DeskDialogue dialogue) throws IOException {
    return LineDesk.run(dialogue, typing.source(), typing.out());
  }

  @Override
  public void close() throws IOException {
    typing.close();
  }
}
