package quarterturn.lesson;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import quarterturn.lesson.student.Fade;
import quarterturn.procedure.Hazard;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

class LevelsTest {
  /** R right, H right with help, W wrong, N could not be read. */
  private static Levels.Standing after(Levels.Standing begin, String tries) {
    Levels.Standing now = begin;
    for (char c : tries.toCharArray()) {
      Levels.Try how =
          c == 'R'
              ? Levels.Try.RIGHT
              : c == 'H'
                  ? Levels.Try.RIGHT_WITH_HELP
                  : c == 'W' ? Levels.Try.WRONG : Levels.Try.UNTOLD;
      now = Levels.after(now, how);
    }
    return now;
  }

  @ParameterizedTest
  @CsvSource({
    "WORKED,'',WORKED", "WORKED,R,WORKED", "WORKED,RR,LAST_MISSING", "WORKED,RWR,WORKED",
    "WORKED,RHR,LAST_MISSING", "WORKED,HHHH,WORKED", "WORKED,RNR,LAST_MISSING", "WORKED,W,WORKED",
    "WORKED,RRRRRR,OWN", "WORKED,RRRRRRRRR,OWN", "OWN,W,TWO_MISSING", "OWN,WWWWW,WORKED",
    "TWO_MISSING,RWRR,TWO_MISSING", "LAST_MISSING,RRW,LAST_MISSING",
  })
  void aLevelRisesWithTwoRightAndFallsWithOneWrong(Level begin, String tries, Level end) {
    assertThat(after(Levels.Standing.at(begin), tries).level()).isEqualTo(end);
  }

  @Test
  void aFrozenLevelStaysAndTheTeachersWordHolds() {
    Levels.Standing frozen = Levels.set(Levels.Standing.at(Level.WORKED), Level.TWO_MISSING, true);
    assertThat(after(frozen, "RRRRWWWW")).isEqualTo(frozen);
    Levels.Standing thawed = Levels.set(frozen, null, false);
    assertThat(after(thawed, "RR").level()).isEqualTo(Level.OWN);
  }

  @Test
  void settingALevelBeginsTheCountAnewAndKeepingItDoesNot() {
    Levels.Standing once = after(Levels.Standing.at(Level.WORKED), "R");
    assertThat(after(Levels.set(once, Level.LAST_MISSING, false), "R").level())
        .isEqualTo(Level.LAST_MISSING);
    assertThat(after(Levels.set(once, null, false), "R").level()).isEqualTo(Level.LAST_MISSING);
  }

  @Test
  void lessOfTheExampleIsShownAtEachLevelAndHazardsAtAll() {
    Hazard hazard = new Hazard("h", Hazard.Word.WARNING, "Harm", "Avoid", List.of(), List.of());
    PromptText said =
        new PromptText(
            "relief", "turn", "Turn", "Turn.", "Why.", List.of(hazard), null, List.of("Note."));
    Prompt.TurnRod like = (Prompt.TurnRod) Demo.turn();
    Prompt turn =
        new Prompt.TurnRod(said, like.turn(), like.limit(), like.expected(), false, like.stops());
    Prompt caution = new Prompt.Caution(said, List.of(hazard));
    int shown = Integer.MAX_VALUE;
    for (Level level : Level.values()) {
      assertThat(Fade.worked(turn, level).size()).isLessThan(shown);
      shown = Fade.worked(turn, level).size();
      Prompt faded = Fade.of(turn, level);
      assertThat(faded.said().hazards()).containsExactly(hazard);
      assertThat(faded.said().text()).isEqualTo("Turn.");
      assertThat(faded.said().notes()).containsExactly("Note.");
      assertThat(faded.said().why() == null).isEqualTo(level.compareTo(Level.TWO_MISSING) >= 0);
      assertThat(Fade.of(caution, level)).isEqualTo(caution);
    }
    assertThat(shown).isEqualTo(0);
    assertThat(Fade.of(turn, Level.WORKED)).isEqualTo(turn);
  }
}
