package quarterturn.line;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;
import quarterturn.unit.Dates;

/**
 * A prompt in few lines for a technician: hazards, and what is wanted. The help tells how to
 * answer.
 */
final class BriefLines {
  private BriefLines() {}

  /**
   * The lines of a prompt.
   *
   * @param part the part that was last named; another one is named anew
   * @param before what was printed before
   */
  static List<String> of(
      Prompt prompt, Overview overview, Instant now, Dates dates, String part, Printed before) {
    List<String> lines = new ArrayList<>();
    lines.add("");
    if (!prompt.ended() && !part.equals(prompt.said().part())) {
      lines.add(overview.place() + ".");
    }
    lines.addAll(PromptLines.warned(prompt, before));
    lines.addAll(PromptLines.told(prompt, before));
    lines.addAll(
        prompt.match(
            new Prompt.Cases<>(
                tell -> List.of(),
                caution -> List.of(),
                choose -> List.of("Answers: " + answers(choose)),
                write -> List.of(),
                measure -> List.of(),
                turn -> asking(PromptLines.bounds(turn), turn, now),
                wait -> asking(PromptLines.time(wait, now, dates), wait, now),
                done -> List.of(),
                over -> List.of())));
    return lines;
  }

  private static List<String> asking(List<String> details, Prompt prompt, Instant now) {
    List<String> lines = new ArrayList<>(details);
    lines.add(AnswerHelp.of(prompt, now));
    return lines;
  }

  private static String answers(Prompt.Choose choose) {
    List<String> answers = new ArrayList<>();
    for (int i = 0; i < choose.options().size(); i++) {
      answers.add((i + 1) + " " + choose.options().get(i).id());
    }
    return String.join(", ", answers) + ".";
  }
}
