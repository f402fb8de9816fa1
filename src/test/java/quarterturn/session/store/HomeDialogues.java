package quarterturn.session.store;

import java.util.List;
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
        said, begun, ShippedRules.ALL.results(), own, instruments, choice -> {});
  }
}
