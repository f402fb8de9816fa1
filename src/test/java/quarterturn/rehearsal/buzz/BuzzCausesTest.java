package quarterturn.rehearsal.buzz;

import static com.google.common.truth.Truth.assertWithMessage;

import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import quarterturn.Draws;
import quarterturn.procedure.Library;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Style;
import quarterturn.session.Prompt;
import quarterturn.session.engine.Play;

/** What the buzz procedure says of instruments whose cause of noise is known. */
class BuzzCausesTest {
  private static final Library BUZZ = Play.library("buzz");
  private static final List<String> KINDS =
      List.of("bass-34", "bass-35", "electric-25", "electric-24", "acoustic-steel");
  private static final int MANY = 1000;
  private static final long SEED = Long.getLong("seed", 20270412);

  /** Right, not found, or wrong, of each cause. */
  private record Count(int right, int open, int wrong) {
    Count and(boolean named, boolean found) {
      return new Count(
          right + (named ? 1 : 0), open + (found ? 0 : 1), wrong + (named || !found ? 0 : 1));
    }
  }

  @Test
  void theCauseIsNamedInNineteenOfTwenty() throws Exception {
    Map<NoiseCause, Count> counts = new TreeMap<>();
    StringBuilder missed = new StringBuilder();
    int many = Draws.of(MANY);
    SplittableRandom seeds = new SplittableRandom(SEED);
    for (int i = 0; i < many; i++) {
      SplittableRandom random = seeds.split();
      NoiseCause[] causes = NoiseCause.values();
      NoiseCause cause =
          i % 5 == 0 ? NoiseCause.NONE : causes[1 + random.nextInt(causes.length - 1)];
      Kind kind = BUZZ.kind(KINDS.get(random.nextInt(KINDS.size())));
      NoisyInstrument on = NoisyInstrument.draw(kind, Style.MEDIUM, cause, random);
      String outcome = outcome(on, random, missed);
      boolean named = cause.outcomes().contains(outcome);
      boolean found = !outcome.equals("not-found") && !outcome.equals("not-measured");
      counts.merge(cause, new Count(0, 0, 0).and(named, found), (a, b) -> add(a, b));
      if (!named) {
        missed
            .append(cause)
            .append(' ')
            .append(kind.id())
            .append(": ")
            .append(outcome)
            .append('\n');
      }
    }
    int right = counts.values().stream().mapToInt(Count::right).sum();
    int wrong = counts.values().stream().mapToInt(Count::wrong).sum();
    if (Boolean.getBoolean("print")) {
      System.out.println(counts.toString().replace("],", "],\n") + "\n" + missed);
      System.out.println(right + " right, " + wrong + " wrong of " + many);
    }
    assertWithMessage("%s\n%s", counts, missed).that(right).isAtLeast(many * 95 / 100);
    assertWithMessage("%s\n%s", counts, missed).that(wrong).isAtMost(many / 100);
  }

  private static Count add(Count a, Count b) {
    return new Count(a.right() + b.right(), a.open() + b.open(), a.wrong() + b.wrong());
  }

  private static String outcome(NoisyInstrument on, SplittableRandom random, StringBuilder missed)
      throws Exception {
    Play play = Play.of(BUZZ, Role.TECHNICIAN, on.kind().id(), Style.MEDIUM);
    NoisePlayer player = new NoisePlayer(on, random);
    StringBuilder way = new StringBuilder();
    for (int asked = 0; asked < 100; asked++) {
      Prompt prompt = play.bench.prompt();
      if (prompt.ended()) {
        String outcome = String.valueOf(quarterturn.rehearsal.Outcome.word(prompt));
        if (!on.cause().outcomes().contains(outcome)) {
          missed.append(way).append('\n');
        }
        return outcome;
      }
      if (prompt instanceof Prompt.Wait wait) {
        play.bench.setClock(wait.until());
      }
      var answer = player.answer(prompt);
      way.append(prompt.said().step()).append('=').append(answer).append(' ');
      play.bench.answer(answer);
    }
    throw new AssertionError("no end: " + way);
  }
}
