package quarterturn.screen.state;

import org.jspecify.annotations.Nullable;
import quarterturn.screen.terminal.Key;
import quarterturn.session.Answer;
import quarterturn.session.Prompt;
import quarterturn.unit.Pasted;

/**
 * Handles every key, from the model and the key alone: the same keys work in every view, and those
 * of one kind of prompt are in a class of their own.
 */
public final class Update {
  private static final String TURN_BACK = "Once more to say whether this turn was made.";

  private Update() {}

  public static Next key(Model model, Key key) {
    if (key instanceof Key.Ctrl ctrl && ctrl.letter() == 'l') {
      return new Next(model, new Effect.Repaint());
    }
    if (key instanceof Key.Paste paste) {
      return pasted(model, paste);
    }
    if (model.layer() != Layer.NONE) {
      return onLayer(model, key);
    }
    if (key == Key.Named.PAGE_DOWN || key == Key.Named.PAGE_UP) {
      return Next.show(model.scrolled(Scrolling.lines(key, model.page())));
    }
    // Nothing that is typed begins with a question mark.
    boolean asks = isLetter(key, '?') && model.draft().blank();
    Command command = asks ? Command.KEYS : Command.of(key, model.draft().typing());
    if (command == null || (command == Command.LINE && !NamingKeys.may(model))) {
      return answering(model.saying(""), key);
    }
    return run(model, command);
  }

  /** A paste goes into a field and does nothing else: it presses no key, whatever is in it. */
  private static Next pasted(Model model, Key.Paste paste) {
    Field field = model.layer() == Layer.NONE ? field(model.draft()) : null;
    if (field == null) {
      return Next.show(model.saying(Pasted.NOWHERE));
    }
    Model typed = answering(model, paste).model();
    return Next.show(typed.saying(field.refusal(paste)));
  }

  /** The field that text is typed into, or null where letters are commands. */
  private static @Nullable Field field(Draft draft) {
    if (draft instanceof Draft.Reading reading) {
      return reading.typing() ? reading.field() : null;
    }
    return draft instanceof Draft.Typed typed ? typed.field() : null;
  }

  private static Next onLayer(Model model, Key key) {
    if (model.layer() == Layer.LEAVE) {
      if (isLetter(key, 'y')) {
        return new Next(model.with(Layer.NONE), new Effect.Leave());
      }
      boolean stay = key == Key.Named.ESC || isLetter(key, 'n');
      return Next.show(stay ? model.with(Layer.NONE) : model);
    }
    int lines = Scrolling.lines(key, model.page());
    return Next.show(lines != 0 ? model.scrolled(lines) : model.with(Layer.NONE));
  }

  private static Next run(Model model, Command command) {
    return switch (command) {
      case KEYS -> Next.show(model.with(Layer.KEYS));
      case WHY -> Next.show(model.with(Layer.WHY));
      case LOG -> Next.show(model.with(Layer.LOG));
      case PICTURE -> Next.show(model.with(Layer.PICTURE));
      case OVERVIEW -> Next.show(model.with(Layer.OVERVIEW));
      case LINE -> Next.show(model.with(new Draft.Naming(Field.EMPTY)));
      case BACK -> back(model);
      case LEAVE ->
          model.prompt().ended()
              ? new Next(model, new Effect.Leave())
              : Next.show(model.with(Layer.LEAVE));
    };
  }

  private static Next back(Model model) {
    if (model.prompt().ended()) {
      return Next.show(model.saying("The session has ended; nothing can be taken back here."));
    }
    // Whether the turn was made is asked then, and the gap is read anew: no work for a slip.
    boolean asks = model.prompt() instanceof Prompt.TurnRod && !model.message().equals(TURN_BACK);
    return asks ? Next.show(model.saying(TURN_BACK)) : Next.send(model, new Answer.Correct());
  }

  private static Next answering(Model model, Key key) {
    if (model.draft() instanceof Draft.Naming naming) {
      return NamingKeys.key(model, naming, key);
    }
    Prompt.Cases<Next> cases =
        new Prompt.Cases<>(
            tell -> doing(model, tell, key),
            caution -> accepting(model, key),
            choose -> Picks.key(model, choose, key),
            write -> writing(model, (Draft.Writing) model.draft(), key),
            measure -> Readings.key(model, measure, key),
            turn -> Turns.key(model, turn, key),
            wait -> Waits.key(model, wait, key),
            done -> closing(model, key),
            over -> closing(model, key));
    return model.prompt().match(cases);
  }

  private static Next doing(Model model, Prompt.Tell tell, Key key) {
    return key == Key.Named.ENTER ? confirmed(model) : onlyHint(model, key, tell.enter());
  }

  /** Confirms what was read to its end; else shows what comes below. */
  private static Next confirmed(Model model) {
    return model.more() ? onward(model) : Next.send(model, new Answer.Confirmed());
  }

  /** Shows what comes below, where a key would go on. */
  static Next onward(Model model) {
    return Next.show(
        model.scrolled(model.page()).saying("There was more to read; the same key goes on."));
  }

  private static Next accepting(Model model, Key key) {
    return isLetter(key, 'u')
        ? confirmed(model)
        : onlyHint(model, key, "Enter does not accept this. Read it, then press u.");
  }

  private static Next closing(Model model, Key key) {
    return key == Key.Named.ENTER
        ? new Next(model, new Effect.Leave())
        : onlyHint(model, key, "Press Enter to close.");
  }

  private static Next writing(Model model, Draft.Writing draft, Key key) {
    if (key == Key.Named.ESC) {
      return onlyHint(model, key, "");
    }
    if (key != Key.Named.ENTER) {
      return Next.show(model.with(new Draft.Writing(draft.field().with(key))));
    }
    return draft.field().blank()
        ? Next.show(model.saying("Type one line; a hyphen stands for nothing to write."))
        : Next.send(model, new Answer.Wrote(draft.field().text().strip()));
  }

  /** Shows a hint for a key that does nothing here; Esc, with no view to leave, has another. */
  static Next onlyHint(Model model, Key key, String hint) {
    String leave = Command.LEAVE.shown(model.draft().typing());
    return Next.show(
        model.saying(key == Key.Named.ESC ? "Esc never leaves; " + leave + " does." : hint));
  }

  public static boolean isLetter(Key key, char letter) {
    return letter(key) == letter;
  }

  /** The letter of a key in lower case; 0 for any other key. */
  public static int letter(Key key) {
    return key instanceof Key.Typed typed ? Character.toLowerCase(typed.codePoint()) : 0;
  }
}
