package quarterturn.screen.page;

import java.util.ArrayList;
import java.util.List;
import quarterturn.screen.state.Command;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.NamingKeys;
import quarterturn.screen.state.Waits;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Ink;
import quarterturn.session.Prompt;
import quarterturn.session.PromptText;

/** The keys that work at present, the most useful first and the key for the list of keys last. */
public final class KeyHints {
  private static final Hint ACCEPT = new Hint("Enter", "accept");

  /** Rows and columns in which every picture has room. */
  private static final int WIDE = 200;

  private static final List<Hint> CLOSING = List.of(new Hint("Enter", "close"));

  private KeyHints() {}

  public record Hint(String key, String meaning) {
    int cells() {
      return Canvas.cells(key) + 1 + Canvas.cells(meaning);
    }

    int draw(Canvas canvas, int column, int row) {
      int at = canvas.put(column, row, key, Ink.STRONG);
      return canvas.put(at + 1, row, meaning);
    }
  }

  /**
   * The hints for the view on top.
   *
   * @param pictureHidden whether to name the key that shows the picture
   */
  static List<Hint> of(Model model, boolean pictureHidden) {
    return switch (model.layer()) {
      case LEAVE -> List.of(new Hint("y", "leave"), new Hint("Esc", "stay"));
      case KEYS, WHY, LOG, OVERVIEW, PICTURE ->
          List.of(new Hint("↑ ↓", "scroll"), new Hint("Esc", "back to the step"));
      case NONE -> onTop(model, pictureHidden);
    };
  }

  private static List<Hint> onTop(Model model, boolean pictureHidden) {
    List<Hint> own = own(model);
    // The way out of a field is of less use than the keys that work in it.
    int first = model.draft() instanceof Draft.Reading ? 1 : own.size();
    List<Hint> out = new ArrayList<>(own.subList(0, first));
    boolean typing = model.draft().typing();
    if (works(Command.LINE, model) && !(model.draft() instanceof Draft.Naming)) {
      out.add(new Hint(Command.LINE.shown(typing), "by name"));
    }
    if (works(Command.BACK, model)) {
      out.add(new Hint(Command.BACK.shown(typing), "take back"));
      out.add(new Hint(Command.LEAVE.shown(typing), "leave"));
    }
    int picture = out.size();
    out.addAll(own.subList(first, own.size()));
    if (works(Command.WHY, model)) {
      out.add(new Hint(Command.WHY.shown(typing), "why"));
    }
    if (pictureHidden) {
      // How to hold a string for its reading is seen sooner than read.
      int at = model.draft() instanceof Draft.Reading ? picture : out.size();
      out.add(at, new Hint(Command.PICTURE.shown(typing), "picture"));
    }
    out.add(new Hint(Command.LOG.shown(typing), "log"));
    out.add(new Hint(Command.KEYS.shown(typing), "keys"));
    return out;
  }

  /** Whether a command does something at the model's prompt. */
  static boolean works(Command command, Model model) {
    PromptText said = model.prompt().said();
    return switch (command) {
      case WHY -> said.why() != null || !said.hazards().isEmpty();
      case PICTURE -> Pictures.of(model, WIDE, WIDE) != null;
      case LINE -> NamingKeys.may(model);
      case BACK -> !model.prompt().ended();
      case KEYS, LOG, OVERVIEW, LEAVE -> true;
    };
  }

  /** The hints for the present prompt and draft. */
  static List<Hint> own(Model model) {
    Draft draft = model.draft();
    if (draft instanceof Draft.Naming) {
      return List.of(
          new Hint("Enter", "give"), new Hint("Tab", "complete"), new Hint("Esc", "back"));
    }
    return model
        .prompt()
        .match(
            new Prompt.Cases<>(
                tell -> List.of(new Hint("Enter", tell.informs() ? "go on" : "done")),
                caution -> List.of(new Hint("u", "understood")),
                choose -> marking(choose.options().size()),
                write -> List.of(ACCEPT),
                measure -> reading((Draft.Reading) draft),
                turn -> turning(draft, turn),
                wait -> waiting(model, wait),
                done -> CLOSING,
                over -> CLOSING));
  }

  private static List<Hint> marking(int size) {
    return List.of(new Hint("1-" + size + " ↑ ↓", "mark"), ACCEPT);
  }

  private static List<Hint> reading(Draft.Reading draft) {
    return draft.typing()
        ? List.of(new Hint("Enter", "give"), new Hint("Esc", "out"))
        : List.of(new Hint("Enter", "into the field"));
  }

  private static List<Hint> turning(Draft draft, Prompt.TurnRod turn) {
    if (draft instanceof Draft.Made) {
      return List.of(
          ACCEPT, new Hint("↑ ↓", "feel"), new Hint("Tab", "other way"), new Hint("Esc", "back"));
    }
    if (draft instanceof Draft.Before) {
      return List.of(new Hint("Enter", "done"), new Hint("n", "creaked, or would not"));
    }
    Hint turned = new Hint("Enter", "turned");
    return turn.canUndo()
        ? List.of(turned, new Hint("z", "undo last turn instead"))
        : List.of(turned);
  }

  private static List<Hint> waiting(Model model, Prompt.Wait wait) {
    if (model.draft() instanceof Draft.Lifting) {
      return List.of(new Hint("Enter", "end the wait"), new Hint("Esc", "go on waiting"));
    }
    if (Waits.over(model, wait)) {
      return List.of(new Hint("Enter", "go on"));
    }
    return wait.mayLift() ? List.of(new Hint("e", "end early")) : List.of();
  }
}
