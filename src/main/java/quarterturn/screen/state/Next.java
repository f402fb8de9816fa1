package quarterturn.screen.state;

import quarterturn.session.Answer;

/** The model after a key, and what the loop has to do. */
public record Next(Model model, Effect effect) {
  static Next show(Model model) {
    return new Next(model, new Effect.None());
  }

  static Next send(Model model, Answer answer) {
    return new Next(model.saying(""), new Effect.Send(answer));
  }
}
