package quarterturn.script;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import quarterturn.session.Answer;
import quarterturn.session.Player;

/** The answers of a {@link Player} as lines of a script, each written when it is read. */
public final class AutoLines extends InputStream {
  private final Player player;
  private byte[] line = new byte[0];
  private int at;

  public AutoLines(Player player) {
    this.player = player;
  }

  @Override
  public int read() {
    if (at == line.length) {
      line = (json(player.mind().answer()) + "\n").getBytes(StandardCharsets.UTF_8);
      at = 0;
    }
    return line[at++];
  }

  /** Reads at most one line, since the next prompt has to be shown before it is answered. */
  @Override
  public int read(byte[] bytes, int from, int length) {
    int count = 0;
    while (count < length) {
      bytes[from + count++] = (byte) read();
      if (at == line.length) {
        return count;
      }
    }
    return count;
  }

  private static ObjectNode json(Answer answer) {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    return answer.match(
        new Answer.Cases<>(
            confirmed -> json.put("answer", true),
            wrote -> json.put("answer", wrote.text()),
            chose -> json.put("answer", chose.option()),
            measured -> json.put("answer", measured.bracket().typed()),
            value -> json.put("answer", value.value()),
            cannot -> json.put("answer", "cannot"),
            turned -> json.put("turned", turned.turn().turns()).put("feel", turned.feel().word()),
            felt -> json.put("feel", felt.feel().word()),
            undo -> json.put("answer", "undo"),
            waited -> json.put("answer", "waited"),
            correct -> json.put("answer", "correct"),
            differs -> json.put("differs", differs.what().word()).put("answer", differs.answer())));
  }
}
