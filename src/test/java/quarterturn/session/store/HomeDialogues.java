package quarterturn.session.store;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import quarterturn.procedure.ShippedRules;

/** Home views for tests, in which every choice can be had. */
public final class HomeDialogues {
  private HomeDialogues() {}

  /** One without settings and procedures of one's own. */
  public static HomeDialogue of(List<HomeDialogue.Item> begun, List<String> instruments) {
    return of(List.of(), begun, List.of(), instruments);
  }

  public static HomeDialogue of(
      List<String> said,
      List<HomeDialogue.Item> begun,
      List<OwnProcedure> own,
      List<String> instruments) {
    return new HomeDialogue(
        said,
        begun,
        ShippedRules.ALL.results(),
        own,
        instruments,
        Map.of(),
        choice -> {},
        new Told());
  }

  /** Records that hold two lines; what is discarded is noted. */
  public static final class Told implements HomeDialogue.Past {
    public final List<String> discarded = new ArrayList<>();

    @Override
    public List<String> all() {
      return List.of("2027-03-01 10:00, Neck relief on practice-bass: open.");
    }

    @Override
    public List<String> history(String instrument) {
      return List.of("History of " + instrument);
    }

    @Override
    public String standing(String session) {
      return "strings detuned, rod turned";
    }

    @Override
    public void discard(String session) throws IOException {
      if (!discarded.isEmpty()) {
        throw new IOException("session " + session + " is open in another window");
      }
      discarded.add(session);
    }
  }
}
