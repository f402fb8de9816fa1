package quarterturn.screen;

import java.io.IOException;
import java.time.Duration;
import java.time.ZoneId;
import java.util.List;
import org.jline.terminal.Terminal;
import org.jspecify.annotations.Nullable;
import quarterturn.screen.page.Page;
import quarterturn.screen.page.TooSmall;
import quarterturn.screen.state.Autoplay;
import quarterturn.screen.state.Effect;
import quarterturn.screen.state.Layer;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.Next;
import quarterturn.screen.state.Update;
import quarterturn.screen.terminal.Canvas;
import quarterturn.screen.terminal.Input;
import quarterturn.screen.terminal.Key;
import quarterturn.screen.terminal.Surface;
import quarterturn.screen.terminal.Wrap;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.ExitStatus;
import quarterturn.session.Overview;
import quarterturn.session.Player;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;
import quarterturn.session.journal.DisplacedException;
import quarterturn.unit.Printable;

/** The full screen for one session. */
public final class ScreenFace {
  private static final Duration TICK = Duration.ofSeconds(1);

  /** How long a teacher's orders go unlooked at. */
  private static final Duration LOOK = Duration.ofMillis(250);

  private static final Duration CALM = Duration.ofMinutes(1);

  private final Surface surface;
  private final Bench bench;
  private final ZoneId zone;
  private final @Nullable Autoplay autoplay;
  private final @Nullable LessonCards cards;
  private final TypedLine typed;
  private Model model;

  /** Whether leaving leads to the home view, which shows how the instrument was left. */
  private boolean underHome;

  private ScreenFace(
      Surface surface,
      Bench bench,
      ZoneId zone,
      @Nullable Autoplay autoplay,
      @Nullable LessonCards cards) {
    this.cards = cards;
    this.surface = surface;
    this.bench = bench;
    this.typed = new TypedLine(bench);
    this.zone = zone;
    this.autoplay = autoplay;
    model = shown(bench);
  }

  public static Model shown(Bench bench) {
    return Model.of(bench.prompt(), bench.overview(), bench.standing(), bench.now());
  }

  /** Prints words of farewell, after the terminal was given back. */
  public static void say(Terminal terminal, String words) {
    int width = terminal.getWidth() > 0 ? terminal.getWidth() : Integer.MAX_VALUE;
    words
        .lines()
        .flatMap(line -> Wrap.lines(Printable.of(line), width).stream())
        .forEach(terminal.writer()::println);
    terminal.flush();
  }

  /**
   * How a session on the screen ended.
   *
   * @param farewell text to print after the terminal was given back
   */
  public record Outcome(int status, String farewell) {}

  /**
   * Runs the session until it ends or the person leaves.
   *
   * @param surface the surface to paint on, which is not closed
   * @param zone time zone of the times shown
   * @param told what is said on the first page, or empty
   * @param underHome whether leaving leads to the home view
   */
  public static Outcome run(
      Surface surface, Bench bench, ZoneId zone, String told, boolean underHome)
      throws IOException, InterruptedException {
    ScreenFace face = new ScreenFace(surface, bench, zone, null, null).telling(told);
    face.underHome = underHome;
    return face.loop();
  }

  /** Plays a session of a lesson, with the lesson's cards over it. The surface is not closed. */
  static Outcome run(Surface surface, Bench bench, ZoneId zone, LessonCards cards)
      throws IOException, InterruptedException {
    return new ScreenFace(surface, bench, zone, null, cards).loop();
  }

  /**
   * Plays a session whose keys a {@link Player} presses; the person's own keys work too.
   *
   * @param told what is said on the first page, or empty
   */
  public static Outcome watch(Surface surface, Player player, ZoneId zone, String told)
      throws IOException, InterruptedException {
    return new ScreenFace(surface, player.bench(), zone, new Autoplay(player), null)
        .telling(told)
        .loop();
  }

  private ScreenFace telling(String told) {
    model = model.saying(told);
    return this;
  }

  private Outcome loop() throws IOException, InterruptedException {
    while (true) {
      if (cards != null) {
        follow(cards);
      }
      if (surface.due() && !painted()) {
        return left(ExitStatus.DONE);
      }
      Input input = next();
      if (input instanceof Input.Over over) {
        return left(over.status());
      }
      if (input instanceof Input.Broke broke) {
        bench.leave();
        throw new IllegalStateException(
            "something broke; what was answered is saved", broke.cause());
      }
      if (take(input) instanceof Effect.Leave) {
        return left(ExitStatus.DONE);
      }
    }
  }

  /** Takes the teacher's orders; what was typed at the prompt stays, also where they change it. */
  private void follow(LessonCards lesson) throws IOException {
    boolean opened = lesson.look();
    boolean changed = lesson.card() == null && !bench.prompt().equals(model.prompt());
    if (opened || changed) {
      model = model.goingOn(shown(bench));
    }
    if (opened) {
      model = model.saying(lesson.news());
    }
  }

  /** The next input, or null where only time passed. */
  private @Nullable Input next() throws IOException, InterruptedException {
    if (autoplay == null) {
      boolean ticks = model.prompt() instanceof Prompt.Wait;
      return surface.next(cards != null ? LOOK : ticks ? TICK : CALM);
    }
    Input input = surface.next(autoplay.pause(model));
    if (input instanceof Input.Pressed pressed && model.layer() == Layer.NONE) {
      return autoplay.paces(model, pressed.key())
          ? null
          : new Input.Pressed(autoplay.meant(pressed.key()));
    }
    Key key = input == null ? autoplay.next(model) : null;
    return key == null ? input : new Input.Pressed(key);
  }

  /** Paints the view; false where the terminal is gone. */
  private boolean painted() {
    try {
      int width = surface.width();
      int height = surface.height();
      if (cards != null && cards.card() != null) {
        surface.paint(cards.draw(model.overview(), width, height));
        return true;
      }
      Canvas page = Page.draw(model, zone, width, height);
      surface.paint(
          cards != null
              ? LessonCards.marked(page, lettered())
              : autoplay != null && !TooSmall.is(width, height)
                  ? Watched.page(page, model, autoplay)
                  : page);
      typed.shown(model.prompt());
      return true;
    } catch (IOException gone) {
      return false;
    }
  }

  private Effect take(@Nullable Input input) throws IOException {
    model = model.at(bench.now());
    if (input instanceof Input.Pressed pressed) {
      return pressed(pressed.key());
    }
    if (input instanceof Input.Suspended) {
      model = model.saying("Ctrl-Z does not work here. Leave with q and resume later.");
    }
    return new Effect.None();
  }

  private Effect pressed(Key key) throws IOException {
    if (cards != null && stops(key)) {
      cards.stop();
      return new Effect.None();
    }
    Effect effect = cards != null && cards.card() != null ? cards.key(key) : updated(key);
    if (effect instanceof Effect.Send send) {
      send(send.answer());
    } else if (effect instanceof Effect.Named named) {
      model = typed.take(model, named.line(), named.otherwise());
      surface.forgetKeys();
    } else if (effect instanceof Effect.Complete complete) {
      model = typed.completed(model, complete.field());
    } else if (effect instanceof Effect.Repaint) {
      surface.repaintWhole();
    }
    return effect;
  }

  private Effect updated(Key key) {
    // Only a key moves the text, so that a change of the window's size can be undone by another;
    // and what is typed into a field does not.
    boolean types = key instanceof Key.Typed && !lettered() && model.layer() == Layer.NONE;
    Next next = Update.key(types ? model : settled(model), key);
    model = surface.due() ? settled(next.model()) : next.model();
    // Where nothing is lost or left half done, home says how the instrument stands.
    Overview left = model.overview();
    boolean home = underHome && left.kept() && left.parting().isEmpty();
    if (home && model.layer() == Layer.LEAVE) {
      model = model.with(Layer.NONE);
      return new Effect.Leave();
    }
    return next.effect();
  }

  private Model settled(Model shown) {
    try {
      return Page.settled(shown, zone, surface.width(), surface.height());
    } catch (IOException gone) {
      return shown; // the next painting finds that out too
    }
  }

  /**
   * Whether a key stops the bench: its function key in any view, its letter where no text is typed.
   */
  private boolean stops(Key key) {
    boolean lettered = cards != null && cards.card() == null && lettered();
    return key.equals(LessonCards.STOP)
        || (lettered && model.layer() == Layer.NONE && Update.isLetter(key, 's'));
  }

  private boolean lettered() {
    return !model.draft().typing();
  }

  private void send(Answer answer) throws DisplacedException {
    try {
      Prompt asked = model.prompt();
      bench.answer(answer);
      String news = typed.gave(answer, asked);
      model = shown(bench).saying(news);
      surface.forgetKeys();
    } catch (RefusedException refused) {
      model = model.saying(String.valueOf(refused.getMessage()));
    } catch (DisplacedException stops) {
      throw stops;
    } catch (IOException notWritten) {
      model =
          model.saying(
              "It could not be saved ("
                  + notWritten.getMessage()
                  + "). Make room, then try again.");
    }
  }

  private Outcome left(int status) throws IOException {
    if (model.prompt() instanceof Prompt.Ending end) {
      return end instanceof Prompt.HandOver
          ? new Outcome(
              ExitStatus.HAND_OVER, "For a repairer: " + end.words() + ". " + end.said().text())
          : new Outcome(ExitStatus.DONE, "Done: " + end.words());
    }
    List<String> parting = model.overview().parting();
    String standing = bench.leave();
    String first = parting.isEmpty() ? "" : "Now: " + String.join(" ", parting) + "\n";
    String later = cards == null ? model.overview().later() : cards.kept();
    return new Outcome(status, "Left: " + standing + "\n" + first + later);
  }
}
