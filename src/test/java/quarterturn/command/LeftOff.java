package quarterturn.command;

import java.time.Duration;
import quarterturn.procedure.condition.Role;
import quarterturn.session.Prompt;
import quarterturn.session.store.Sessions;
import quarterturn.unit.Bracket;

/** Sessions in the states that a shop has on its benches. */
final class LeftOff {
  private static final Bracket GAP = new Bracket(0.6, 0.65);
  private static final int LONGEST = 60;

  private LeftOff() {}

  /** When a session is left. */
  interface Until {
    boolean at(Prompt prompt);
  }

  /** Begins relief on an instrument and leaves it at a prompt; the session's name. */
  static String left(Shop shop, String instrument, String by, Until until) throws Exception {
    Sessions.Wish wish = new Sessions.Wish("relief", instrument, null, null, Role.BEGINNER);
    try (Sessions.Opened opened = shop.sessions(by).start(wish)) {
      for (int i = 0; i < LONGEST && !until.at(opened.bench().prompt()); i++) {
        shop.pass(Duration.ofMinutes(1));
        opened.bench().answer(OrdinaryAnswers.to(opened.bench(), GAP));
      }
      opened.bench().leave();
      return opened.name();
    }
  }

  /** Left in the middle of a turn. */
  static String half(Shop shop, String instrument) throws Exception {
    return left(shop, instrument, "Ana", prompt -> prompt instanceof Prompt.TurnRod);
  }

  /** Left while the neck settles after a turn. */
  static String settling(Shop shop, String instrument) throws Exception {
    boolean[] turned = {false};
    return left(
        shop,
        instrument,
        "Ana",
        prompt -> {
          turned[0] |= prompt instanceof Prompt.TurnRod;
          return turned[0] && prompt instanceof Prompt.Wait;
        });
  }

  static String begun(Shop shop, String instrument) throws Exception {
    return left(shop, instrument, "Ben", prompt -> true);
  }
}
