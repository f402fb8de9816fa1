package quarterturn.screen.page;

import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Picture;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.kind.Quantity;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Model;
import quarterturn.screen.terminal.Canvas;
import quarterturn.session.Overview;
import quarterturn.session.Prompt;

/** Chooses the picture for a prompt. */
final class Pictures {
  private Pictures() {}

  /** The picture, no larger than the given size, or null where there is none or it does not fit. */
  static @Nullable Canvas of(Model model, int width, int rows) {
    Prompt prompt = model.prompt();
    Overview overview = model.overview();
    if (prompt instanceof Prompt.TurnRod turn) {
      // Once the turn is over, its dial would look like an order to go on.
      boolean now = model.draft() instanceof Draft.Turning;
      return now ? DialPicture.draw(turn, width, rows) : null;
    }
    Picture asked = asked(model);
    if (asked == null) {
      return null;
    }
    return switch (asked) {
      case HOLD -> hold(prompt, overview, width, rows);
      case CURVE -> CurvePicture.draw(overview, width, rows);
      case PLACES -> places(model, width, rows);
      case KEY -> KeyPicture.draw(width, rows);
      case CONTACT -> ContactPicture.draw(overview, width, rows);
      case DIAL -> null;
    };
  }

  /** Whether relief is what the step reads, turns or decides on. */
  static boolean ofRelief(Model model) {
    return model.prompt() instanceof Prompt.TurnRod
        || (model.prompt() instanceof Prompt.Measure measure
            && measure.quantity() == Quantity.RELIEF)
        || asked(model) == Picture.CURVE;
  }

  private static @Nullable Picture asked(Model model) {
    Prompt prompt = model.prompt();
    if (prompt.ended() && Latest.of(model.overview().trail()) != null) {
      return Picture.CURVE;
    }
    boolean held = prompt instanceof Prompt.Measure measure && !measure.held().isEmpty();
    Picture asked = prompt.said().picture();
    return asked == null && held ? Picture.HOLD : asked;
  }

  private static @Nullable Canvas places(Model model, int width, int rows) {
    List<Prompt.Option> options =
        model.prompt() instanceof Prompt.Choose choose ? choose.options() : List.of();
    String place = model.overview().rodPlace();
    Prompt.@Nullable Option chosen =
        options.stream().filter(option -> option.id().equals(place)).findFirst().orElse(null);
    if (model.draft() instanceof Draft.Picking picking && picking.at() >= 0) {
      chosen = options.get(picking.at());
    }
    return PlacesPicture.draw(model.overview().kind(), options, chosen, width, rows);
  }

  private static @Nullable Canvas hold(Prompt prompt, Overview overview, int width, int rows) {
    Kind kind = overview.kind();
    int frets = kind == null ? 20 : kind.frets();
    if (prompt instanceof Prompt.Measure measure && !measure.held().isEmpty()) {
      boolean gauge = measure.quantity().bracket();
      return HoldPicture.draw(measure.held(), measure.readAt(), gauge, frets, width, rows);
    }
    return kind == null
        ? null
        : HoldPicture.draw(List.of(1, kind.jointFret()), kind.readAt(), true, frets, width, rows);
  }
}
