package quarterturn.line;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import quarterturn.procedure.Feel;
import quarterturn.session.Answer;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;
import quarterturn.unit.Turn;

/** Types the lines of a {@link Player}, in its time. */
public final class AutoSource implements LineSource {
  private final LineSource place;
  private final PrintWriter out;
  private final Player player;

  /**
   * Lines that type themselves.
   *
   * @param place where a person would have typed
   */
  public AutoSource(LineSource place, PrintWriter out, Player player) {
    this.place = place;
    this.out = out;
    this.player = player;
  }

  @Override
  public String readLine(String prompt, List<String> words) throws Interrupted {
    pause(player.reading());
    String line = typed(player.bench().prompt(), player.mind().answer());
    out.println(prompt + line);
    out.flush();
    return line;
  }

  /** As a person would type it. */
  static String typed(Prompt prompt, Answer answer) {
    if (answer instanceof Answer.Chose chose) {
      return chose.option();
    } else if (answer instanceof Answer.Measured measured) {
      return measured.bracket().typed();
    } else if (answer instanceof Answer.Wrote wrote) {
      return wrote.text();
    } else if (answer instanceof Answer.Value value) {
      return Decimals.plain(value.value());
    } else if (answer instanceof Answer.CannotMeasure) {
      return "cannot";
    } else if (answer instanceof Answer.Turned turned && prompt instanceof Prompt.TurnRod asked) {
      return turned(asked.turn(), turned.turn(), turned.feel());
    } else if (answer instanceof Answer.Undo) {
      return "undo";
    }
    return prompt instanceof Prompt.Caution ? "understood" : "";
  }

  private static String turned(Turn asked, Turn turned, Feel feel) {
    String way = asked.turns() * turned.turns() < 0 ? "other way " : "";
    return way + Decimals.plain(turned.size().turns()) + " " + feel.word();
  }

  @Override
  public void pause(Duration time) throws Interrupted {
    place.pause(time);
  }

  @Override
  public boolean typedByHand() {
    return false;
  }

  @Override
  public int width() {
    return place.width();
  }
}
