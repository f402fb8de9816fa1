package quarterturn.command.face;

import java.io.IOException;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.procedure.UnreadableException;
import quarterturn.script.AutoLines;
import quarterturn.script.ScriptFace;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.Player;

/** JSON lines on standard input and output. */
record InJson(ScriptFace face) implements Face {
  @Override
  public Dialogue.End ask(Dialogue dialogue) throws IOException {
    return face.ask(dialogue);
  }

  @Override
  public void tell(List<String> lines) {
    face.tell(lines);
  }

  @Override
  public int play(Bench bench, @Nullable String notice) {
    if (notice != null) {
      // Standard output is for prompts alone.
      System.err.println("quarterturn: " + notice);
    }
    return face.run(bench);
  }

  @Override
  public int watch(Player player) {
    return new ScriptFace(new AutoLines(player), System.out).run(player.bench());
  }

  @Override
  public int lesson(LessonSession session, String again, String welcome)
      throws IOException, UnreadableException {
    return face.lesson(session);
  }

  @Override
  public int desk(DeskDialogue dialogue) throws IOException {
    return face.desk(dialogue);
  }

  @Override
  public void close() {
    System.out.flush();
  }
}
