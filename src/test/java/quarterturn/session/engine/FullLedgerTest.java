package quarterturn.session.engine;

import static com.google.common.truth.Truth.assertThat;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import quarterturn.craft.rod.BeliefAdvisor;
import quarterturn.session.Answer;
import quarterturn.session.Event;
import quarterturn.session.Ledger;
import quarterturn.session.Prompt;
import quarterturn.unit.Bracket;

/**
 * Where an answer can't be kept, the prompt still holds, and the same answer can be given again.
 */
class FullLedgerTest {
  @Test
  void anAnswerIsKeptWithWhatFollowsFromItOrNotAtAll() throws Exception {
    Play play = Play.beginner("bass-34").to("found-low");
    play.read("1.20..1.25").read("1.20..1.25").read("1.20..1.25").to("seat").ok();
    assertThat(play.prompt()).isInstanceOf(Prompt.Caution.class);
    List<Event> kept = new ArrayList<>(play.events);
    boolean[] full = {true};
    Ledger ledger =
        events -> {
          if (full[0] && events.stream().anyMatch(e -> e instanceof Event.Offered)) {
            throw new IOException("no room");
          }
          kept.addAll(events);
        };
    LiveBench bench =
        LiveBench.resume(
            new Engine(Play.relief(), new BeliefAdvisor()),
            ledger,
            "test",
            List.copyOf(kept),
            new Event.Resumed(Play.NOON.plusSeconds(3600), List.of(), null),
            Clock.fixed(Play.NOON.plusSeconds(3600), ZoneOffset.UTC));
    while (!(bench.prompt() instanceof Prompt.Caution caution
        && caution.hazards().stream().anyMatch(one -> one.id().equals("wrong-key")))) {
      bench.answer(ordinary(bench));
    }
    int before = kept.size();
    assertThrows(IOException.class, () -> bench.answer(new Answer.Confirmed()));
    assertThat(kept).hasSize(before);
    assertThat(bench.prompt()).isInstanceOf(Prompt.Caution.class);
    full[0] = false;
    bench.answer(new Answer.Confirmed());
    assertThat(bench.prompt()).isInstanceOf(Prompt.TurnRod.class);
    assertThat(kept).hasSize(before + 2);
  }

  private static Answer ordinary(LiveBench bench) throws Exception {
    if (bench.prompt() instanceof Prompt.Wait wait) {
      bench.setClock(wait.until());
      return new Answer.Waited(null);
    }
    return bench.prompt() instanceof Prompt.Measure
        ? new Answer.Measured(new Bracket(1.20, 1.25))
        : new Answer.Confirmed();
  }
}
