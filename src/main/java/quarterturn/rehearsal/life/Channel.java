package quarterturn.rehearsal.life;

import java.io.IOException;
import quarterturn.session.Answer;
import quarterturn.session.Player;
import quarterturn.session.RefusedException;

/** A way for a person's answers to reach a session: a face, or none. */
public interface Channel {
  /** Without a face: the answers are given to the bench. */
  Channel BENCH =
      player -> {
        while (!player.bench().prompt().ended()) {
          Answer answer = player.mind().answer();
          try {
            player.bench().answer(answer);
          } catch (RefusedException e) {
            if (!(answer instanceof Answer.Correct)) {
              throw e;
            }
          }
        }
      };

  /** Plays until the session ends; whatever the person throws comes out as it is. */
  void play(Player player) throws IOException, RefusedException;
}
