package quarterturn.line;

import java.io.PrintWriter;
import java.time.Duration;
import java.util.List;
import quarterturn.session.Answer;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.unit.Decimals;

/** A source that types the lines of a {@link Player}, at the player's pace. */
public final class AutoSource implements LineSource {
  private final LineSource place;
  private final PrintWriter out;
  private final Player player;

  /**
   * A source of a player's lines.
   *
   * @param place where a person would have typed
   */
  public AutoSource(LineSource place, PrintWriter out, Player player) {
    this.place = place;
    this.out = out;
    this.player = player;
  }

  @Override
  public String readLine(String prompt, List<String> words) throws StopKeyException {
    pause(player.reading());
    String line = typed(player.bench().prompt(), player.mind().answer());
    out.println(prompt + line);
    out.flush();
    return line;
  }

  /** An answer as a person would type it. */
  static String typed(Prompt prompt, Answer answer) {
    return answer.match(
        new Answer.Cases<>(
            confirmed -> prompt instanceof Prompt.Caution ? "understood" : "",
            Answer.Wrote::text,
            Answer.Chose::option,
            measured -> measured.bracket().typed(),
            value -> Decimals.plain(value.value()),
            cannot -> "cannot",
            turned -> turned((Prompt.TurnRod) prompt, turned),
            felt -> felt.feel().word(),
            undo -> "undo",
            waited -> "",
            correct -> "back",
            differs -> differs.what().word() + " " + differs.answer()));
  }

  private static String turned(Prompt.TurnRod asked, Answer.Turned turned) {
    String way = asked.turn().turns() * turned.turn().turns() < 0 ? "other way " : "";
    return way + Decimals.plain(turned.turn().size().turns()) + " " + turned.feel().word();
  }

  @Override
  public void pause(Duration time) throws StopKeyException {
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
