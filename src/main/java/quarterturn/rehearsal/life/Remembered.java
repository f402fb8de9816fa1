package quarterturn.rehearsal.life;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import quarterturn.session.Carried;
import quarterturn.session.Event;
import quarterturn.session.PastTurns;
import quarterturn.session.journal.Journal;

/** Finds whether the turns and the end of a session stand in a later session's record too. */
final class Remembered {
  private Remembered() {}

  static boolean in(Path folder, Path file) throws IOException {
    Journal.Contents lost = Journal.read(file);
    if (lost.notice() != null || lost.events().isEmpty()) {
      return false;
    }
    List<Event.Past> turns = PastTurns.of(lost.events());
    for (Path other : Mishap.files(folder)) {
      Journal.Contents contents = other.equals(file) ? null : Journal.read(other);
      if (contents != null
          && contents.notice() == null
          && !contents.events().isEmpty()
          && contents.events().get(0) instanceof Event.Started started
          && started.carried() != null
          && started.carried().said().stream()
              .noneMatch(said -> said.answer() == Carried.Answer.UNSURE)
          && knows(started, turns)
          && !started.at().isBefore(lost.events().get(lost.events().size() - 1).at())) {
        return true;
      }
    }
    return false;
  }

  private static boolean knows(Event.Started started, List<Event.Past> turns) {
    Event.Summed summed = started.earlier() == null ? null : started.earlier().summed();
    return turns.stream()
        .filter(turn -> summed == null || turn.at().isAfter(summed.until()))
        .allMatch(
            turn ->
                started.past().stream()
                    .anyMatch(
                        past -> past.at().equals(turn.at()) && past.turn().equals(turn.turn())));
  }
}
