package quarterturn.line;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;
import quarterturn.procedure.Step;
import quarterturn.procedure.condition.Feel;
import quarterturn.procedure.read.Shelf;
import quarterturn.quick.Begun;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

/** A letter that is typed out of habit, as {@code u} at a hazard, chooses nothing. */
class SingleLetterTest {
  private static final List<String> ROUTINE = List.of("u", "d", "y", "n", "q");

  private static @Nullable String chosen(String typed, List<Prompt.Option> options) {
    PromptText said =
        new PromptText("demo", "ask", "All", "Which?", null, List.of(), null, List.of());
    Prompt prompt = new Prompt.Choose(said, options);
    Reply reply = TypedReplyReader.read(typed, prompt, Instant.EPOCH);
    return reply instanceof Reply.Give give && give.answer() instanceof Answer.Chose chose
        ? chose.option()
        : null;
  }

  @Test
  void noRoutineLetterChoosesAnOptionOfAProcedureThatComesWithTheProgram() throws Exception {
    int asked = 0;
    Shelf shelf = new Shelf(null);
    for (String id : shelf.procedures()) {
      for (Step step : shelf.load(id).main().steps().values()) {
        if (step instanceof Step.Choose choose) {
          asked++;
          List<Prompt.Option> options =
              choose.options().stream().map(o -> new Prompt.Option(o.id(), o.label())).toList();
          for (String letter : ROUTINE) {
            for (String typed : List.of(letter, " " + letter, letter.toUpperCase(Locale.ROOT))) {
              assertWithMessage("%s at %s of %s", typed, step.id(), id)
                  .that(chosen(typed, options))
                  .isNull();
            }
          }
          for (Prompt.Option option : options) {
            assertThat(chosen(option.id(), options)).isEqualTo(option.id());
          }
        }
      }
    }
    assertThat(asked).isAtLeast(40);
  }

  /** Whatever options a sheet has, those called like a routine letter too. */
  @Test
  void noRoutineLetterChoosesAnOptionOfAnySheet() {
    Random random = new Random(11);
    for (int draw = 0; draw < Draws.of(500); draw++) {
      List<Prompt.Option> options = new ArrayList<>();
      for (int i = 0; i <= random.nextInt(5); i++) {
        StringBuilder id = new StringBuilder(ROUTINE.get(random.nextInt(ROUTINE.size())));
        for (int letters = random.nextInt(4); letters > 0; letters--) {
          id.append((char) ('a' + random.nextInt(26)));
        }
        options.add(new Prompt.Option(id.toString(), "It is " + id));
      }
      for (String letter : ROUTINE) {
        assertWithMessage("%s of %s", letter, options).that(chosen(letter, options)).isNull();
      }
      assertThat(chosen("1", options)).isEqualTo(options.get(0).id());
    }
  }

  @Test
  void norDoesItNameAFeel() {
    for (String letter : ROUTINE) {
      assertWithMessage("%s", letter).that(Begun.feel(letter)).isNull();
    }
    assertThat(Begun.feel("no")).isEqualTo(Feel.NOISE);
    assertThat(Begun.feel("j")).isEqualTo(Feel.JAMMED);
  }
}
