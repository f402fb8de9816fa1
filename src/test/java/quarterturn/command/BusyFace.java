package quarterturn.command;

import static com.google.common.truth.Truth.assertThat;

import java.io.IOException;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import quarterturn.command.face.Face;
import quarterturn.lesson.student.LessonSession;
import quarterturn.lesson.teacher.DeskDialogue;
import quarterturn.session.Bench;
import quarterturn.session.Dialogue;
import quarterturn.session.Event;
import quarterturn.session.ExitStatus;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.session.Question;
import quarterturn.session.RefusedException;
import quarterturn.session.engine.LiveBench;
import quarterturn.session.store.HomeDialogue;
import quarterturn.unit.Bracket;

/**
 * Somebody who goes from one instrument to the next: at home takes what is typed, then Enter; in a
 * session gives a few answers, and leaves. Every turn brings the neck a little nearer.
 */
final class BusyFace implements Face {
  private static final int LONGEST = 60;
  private static final double STEP_MM = 0.05;
  private static final double A_TURN_MM = 0.125;

  private final Shop shop;
  private final int answers;
  private final Map<String, Double> found;
  private final Deque<String> typed = new ArrayDeque<>();

  /** What stood in each session when it was left. */
  final Map<String, List<Event>> left = new HashMap<>();

  /** The sessions that were left in the middle of a turn. */
  private final Set<String> half = new HashSet<>();

  /** Every question of the home view. */
  final List<Question.Choose> homes = new ArrayList<>();

  /** Who is asked in turn, each time a session is played. */
  final List<String> played = new ArrayList<>();

  /**
   * @param answers how many are given before a session is left
   * @param found the gap of each instrument as found, in millimetres
   */
  BusyFace(Shop shop, int answers, Map<String, Double> found) {
    this.shop = shop;
    this.answers = answers;
    this.found = found;
  }

  void types(String... lines) {
    typed.addAll(List.of(lines));
  }

  @Override
  public Dialogue.End ask(Dialogue dialogue) throws IOException {
    try {
      for (Question now = dialogue.question(); now != null; now = dialogue.question()) {
        if (dialogue instanceof HomeDialogue && now instanceof Question.Choose home) {
          homes.add(home);
          if (typed.isEmpty() && !home.asks().contains("[")) {
            return Dialogue.End.LEFT;
          }
          dialogue.take(typed.isEmpty() ? "" : typed.pop());
        } else {
          dialogue.take("1");
        }
      }
      return Dialogue.End.ANSWERED;
    } catch (RefusedException e) {
      throw new IllegalStateException(e);
    }
  }

  @Override
  public int play(Bench bench, @Nullable String notice) throws IOException {
    LiveBench live = (LiveBench) bench;
    String session = bench.overview().session();
    String instrument = bench.overview().instrument();
    played.add(instrument);
    assertThat(played.size()).isLessThan(LONGEST);
    List<Event> before = left.getOrDefault(session, List.of());
    assertThat(live.events().subList(0, before.size())).isEqualTo(before);
    for (int i = 0; i < answers && !bench.prompt().ended(); i++) {
      if (bench.prompt() instanceof Prompt.Wait wait && wait.until().isAfter(shop.instant())) {
        if (i > 1) {
          break; // the next instrument meanwhile
        }
        // Every session waits.
        shop.pass(Duration.between(shop.instant(), wait.until()));
      }
      if (bench.prompt() instanceof Prompt.TurnRod && half.add(session)) {
        break; // left in the middle of its first turn
      }
      shop.pass(Duration.ofMinutes(1));
      answer(bench, live, instrument);
    }
    if (!bench.prompt().ended()) {
      bench.leave();
    }
    left.put(session, live.events());
    return ExitStatus.DONE;
  }

  private void answer(Bench bench, LiveBench live, String instrument) throws IOException {
    long turns = live.events().stream().filter(Event.OnRod.class::isInstance).count();
    double gap = found.getOrDefault(instrument, 0.0) - turns * A_TURN_MM;
    try {
      bench.answer(OrdinaryAnswers.to(bench, new Bracket(gap, gap + STEP_MM)));
    } catch (RefusedException e) {
      throw new IllegalStateException(instrument + ": " + bench.prompt().said().text(), e);
    }
  }

  @Override
  public void tell(List<String> lines) {}

  @Override
  public int watch(Player player) {
    throw new UnsupportedOperationException("nothing is watched here");
  }

  @Override
  public int lesson(LessonSession session, String again, String welcome) {
    throw new UnsupportedOperationException("no lesson here");
  }

  @Override
  public int desk(DeskDialogue dialogue) {
    throw new UnsupportedOperationException("no desk here");
  }

  @Override
  public void close() {}
}
