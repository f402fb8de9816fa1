package quarterturn.screen.state;

import static com.google.common.truth.Truth.assertThat;
import static com.google.common.truth.Truth.assertWithMessage;

import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.rehearsal.simulated.Practising;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Player;

/** Whole rehearsals by the keys that {@code --auto} presses, without a terminal. */
class AutoplayTest {
  private static Model model(PracticeBench bench) {
    return Model.of(bench.prompt(), bench.overview(), bench.standing(), bench.now());
  }

  @ParameterizedTest
  @EnumSource(NamedNeck.class)
  void everyAnswerIsTypedAsAPersonWould(NamedNeck neck) throws Exception {
    PracticeBench bench = Practising.on(neck);
    Autoplay autoplay = new Autoplay(new Player(bench, bench::truth, 1));
    Model model = model(bench);
    for (int i = 0; i < 5000 && !bench.prompt().ended(); i++) {
      Key key = autoplay.next(model);
      assertThat(key).isNotNull();
      Next next = Update.key(model, key);
      model = next.model();
      if (next.effect() instanceof Effect.Send send) {
        assertWithMessage("%s", bench.prompt()).that(send.answer()).isEqualTo(bench.truth());
        bench.answer(send.answer());
        model = model(bench);
      }
    }
    assertThat(bench.prompt().ended()).isTrue();
    assertThat(autoplay.next(model)).isNull();
  }

  @Test
  void thePersonPausesItStepsItAndSetsItsPace() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.RIGHT);
    Player player = new Player(bench, bench::truth, 1);
    Autoplay autoplay = new Autoplay(player);
    Model model = model(bench);
    assertThat(autoplay.words(model)).isEqualTo("plays by itself, speed 1");
    assertThat(autoplay.paces(model, new Key.Typed('+'))).isTrue();
    assertThat(autoplay.words(model)).isEqualTo("plays by itself, speed 2");
    assertThat(autoplay.pause(model)).isEqualTo(player.reading().dividedBy(2));
    assertThat(autoplay.paces(model, new Key.Typed('-'))).isTrue();
    assertThat(autoplay.paces(model, new Key.Typed(' '))).isTrue();
    assertThat(autoplay.words(model)).isEqualTo("pausing, speed 1");
    assertThat(autoplay.next(model)).isNull();
    assertThat(autoplay.pause(model)).isAtLeast(Duration.ofSeconds(30));
    assertThat(autoplay.paces(model, Key.Named.RIGHT)).isTrue();
    assertThat(autoplay.pause(model)).isEqualTo(player.typing());
    assertThat(autoplay.next(model)).isEqualTo(new Key.Typed('u'));
    bench.answer(bench.truth());
    Model then = model(bench);
    assertThat(autoplay.words(then)).isEqualTo("pausing, speed 1");
    assertThat(autoplay.next(then)).isNull();
    assertThat(autoplay.words(then)).isEqualTo("pausing, speed 1");
    assertThat(autoplay.paces(then, new Key.Typed(' '))).isTrue();
    assertThat(autoplay.next(then)).isNotNull();
    assertThat(autoplay.paces(then, new Key.Typed('w'))).isFalse();
    assertThat(autoplay.meant(new Key.Typed('q'))).isEqualTo(new Key.Function(10));
    assertThat(autoplay.meant(new Key.Typed('w'))).isEqualTo(new Key.Typed('w'));
  }

  @Test
  void itWaitsUnderAnotherViewAndReadsBeforeItTypes() throws Exception {
    PracticeBench bench = Practising.on(NamedNeck.RIGHT);
    Player player = new Player(bench, bench::truth, 2);
    Autoplay autoplay = new Autoplay(player);
    Model model = model(bench);
    assertThat(autoplay.next(model.with(Layer.KEYS))).isNull();
    assertThat(autoplay.pause(model)).isEqualTo(player.reading());
    // The first page is one of hazards, which is accepted by a key of its own.
    assertThat(autoplay.next(model)).isEqualTo(new Key.Typed('u'));
    assertThat(autoplay.pause(model)).isEqualTo(player.typing());
    assertThat(player.typing().toMillis()).isEqualTo(150);
    assertThat(player.reading()).isGreaterThan(player.typing());
    assertThat(List.of(player.reading().toMillis())).containsNoneOf(0L, -1L);
  }
}
