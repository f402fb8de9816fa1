package quarterturn.screen.state;

import quarterturn.session.Answer;

/** What an update comes to. */
public record Next(Model model, Effect effect) {
  static Next show(Model model) {
    return new Next(model, new Effect.None());
  }

  static Next send(Model model, Answer answer) {
    return new Next(model.saying(""), new Effect.Send(answer));
  }
}
