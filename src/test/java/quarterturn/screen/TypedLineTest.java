package quarterturn.screen;

import static com.google.common.truth.Truth.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.procedure.condition.Role;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.NamingKeys;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;

/** A technician's lines on the screen, on simulated instruments. */
class TypedLineTest {
  private final PracticeBench bench;
  private final TypedLine line;

  TypedLineTest() throws Exception {
    bench = Practising.on(NamedNeck.NEGLECTED, "action", "bass-34", Role.TECHNICIAN);
    line = new TypedLine(bench);
  }

  private Model at(String step) throws Exception {
    for (int i = 0; i < 60 && !bench.prompt().said().step().equals(step); i++) {
      bench.answer(bench.truth());
    }
    while (bench.prompt() instanceof Prompt.Caution) {
      bench.answer(bench.truth());
    }
    line.shown(bench.prompt());
    return ScreenFace.shown(bench);
  }

  @Test
  void answersPromptAfterPromptAndTellsWhatIsOutOfItsWindow() throws Exception {
    Model after = line.take(at("read"), "a12 2.5 2.3 2.6 1.5", "");
    assertThat(after.prompt().said().step()).isEqualTo("saddles");
    assertThat(String.join(" ", after.prompt().said().notes()))
        .contains("out of range: D2 2.6 mm, range 1.8 to 2.3 mm; G2 1.5 mm, range 1.7 to 2.2");
    assertThat(bench.events().toString()).contains("value=1.5");
  }

  @Test
  void aWordThatCannotBeTakenHasTheCursor() throws Exception {
    Model after = line.take(at("read"), "a12 2.5 2.3 banana", "");
    Field field = ((Draft.Naming) after.draft()).field();
    assertThat(field.text().substring(field.at())).isEqualTo("banana");
    assertThat(after.message()).contains("\"banana\" is no reading of action");
    assertThat(after.prompt().said().step()).isEqualTo("read");
  }

  @Test
  void whatNamesNothingIsToldSo() throws Exception {
    Model before = at("read");
    Model after = line.take(before, "hello", "Begin with a name.");
    assertThat(after.message()).isEqualTo("Begin with a name.");
    assertThat(after.prompt()).isEqualTo(before.prompt());
  }

  @Test
  void whatIsNotAskedForYetIsKeptAndForgottenOnceSomethingWasDone() throws Exception {
    Model after = line.take(at("read"), "a12 2.5 low; i12 3 low", "");
    assertThat(after.message()).contains("Kept until it is asked for: intonation 3 on E1.");
    while (bench.prompt() instanceof Prompt.Measure || bench.prompt() instanceof Prompt.Choose) {
      Prompt prompt = bench.prompt();
      Answer truth = bench.truth();
      bench.answer(truth);
      assertThat(line.gave(truth, prompt)).isEmpty();
    }
    Prompt prompt = bench.prompt();
    Answer truth = bench.truth();
    while (prompt instanceof Prompt.Caution) {
      bench.answer(truth);
      prompt = bench.prompt();
      truth = bench.truth();
    }
    bench.answer(truth);
    assertThat(line.gave(truth, prompt)).contains("Not used");
  }

  @Test
  void tabCompletesAsFarAsTheWordsAgree() {
    List<String> words = List.of("relief", "rod-place", "rod-kind");
    assertThat(NamingKeys.completed(Field.of("rel"), words)).isEqualTo(Field.of("relief "));
    assertThat(NamingKeys.completed(Field.of("rh 48; rod"), words))
        .isEqualTo(Field.of("rh 48; rod-"));
    assertThat(NamingKeys.completed(Field.of("x"), words)).isEqualTo(Field.of("x"));
    assertThat(NamingKeys.completed(Field.of("relief "), words)).isEqualTo(Field.of("relief "));
  }
}
