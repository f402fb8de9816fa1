package quarterturn.screen;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import quarterturn.quick.Given;
import quarterturn.quick.Mistyped;
import quarterturn.quick.QuickLine;
import quarterturn.quick.Tokens;
import quarterturn.quick.TypedAhead;
import quarterturn.screen.state.Draft;
import quarterturn.screen.state.Field;
import quarterturn.screen.state.Model;
import quarterturn.screen.state.NamingKeys;
import quarterturn.session.Answer;
import quarterturn.session.Bench;
import quarterturn.session.Prompt;
import quarterturn.session.RefusedException;

/** Lines of named readings that a technician types on the screen, as in the typed face. */
public final class TypedLine {
  private final Bench bench;
  private final TypedAhead ahead;

  public TypedLine(Bench bench) {
    this.bench = bench;
    this.ahead = new TypedAhead(bench);
  }

  /** Notes that a prompt is on view. */
  public void shown(Prompt prompt) {
    ahead.shown(prompt);
  }

  /**
   * Gives the answers of a typed line to the prompts that ask for them, now or later.
   *
   * @param otherwise the message for a line that names no quantity or step
   * @return the view after the answers
   */
  public Model take(Model model, String line, String otherwise) throws IOException {
    Tokens tokens = new Tokens(line);
    if (!QuickLine.names(tokens, ahead.terms())) {
      return model.saying(otherwise);
    }
    try {
      List<String> said = new ArrayList<>();
      List<Given> given = QuickLine.read(tokens, ahead.terms());
      Answer waited = ahead.waited(bench.prompt());
      if (waited != null) {
        give(waited, said);
      }
      ahead.add(given);
      follow(said);
      if (!ahead.left().isEmpty()) {
        said.add("Kept until it is asked for: " + String.join("; ", ahead.left()) + ".");
      }
      return ScreenFace.shown(bench).saying(String.join(" ", said));
    } catch (Mistyped e) {
      return model
          .with(new Draft.Naming(new Field(line, e.at())))
          .saying(String.valueOf(e.getMessage()));
    }
  }

  /**
   * Drops kept answers that an answer given in another way made out of date, and gives the next one
   * that fits.
   *
   * @return what to tell the person, or empty
   */
  public String gave(Answer answer, Prompt prompt) throws IOException {
    List<String> said = new ArrayList<>();
    forgotten(ahead.gave(answer, prompt), said);
    follow(said);
    return String.join(" ", said);
  }

  private void follow(List<String> said) throws IOException {
    while (true) {
      Prompt prompt = bench.prompt();
      forgotten(ahead.arrive(prompt), said);
      Answer answer = ahead.take(prompt);
      if (answer == null || !give(answer, said)) {
        return;
      }
      if (ahead.takes(bench.prompt())) {
        // It is answered before it is on view, so that its notes are told here.
        said.addAll(bench.news());
      }
    }
  }

  private boolean give(Answer answer, List<String> said) throws IOException {
    Prompt prompt = bench.prompt();
    try {
      bench.answer(answer);
    } catch (RefusedException e) {
      said.add(String.valueOf(e.getMessage()));
      return false;
    }
    forgotten(ahead.gave(answer, prompt), said);
    return true;
  }

  private static void forgotten(List<String> words, List<String> said) {
    if (!words.isEmpty()) {
      said.add(TypedAhead.forgotten(words));
    }
  }

  /** The words that completion offers at the present prompt. */
  List<String> words() {
    List<String> words = new ArrayList<>(ahead.terms().words());
    if (bench.prompt() instanceof Prompt.Choose choose) {
      choose.options().forEach(option -> words.add(option.id()));
    }
    return words;
  }

  /** The model with the last word of the typed line completed. */
  Model completed(Model model, Field field) {
    return model.with(new Draft.Naming(NamingKeys.completed(field, words())));
  }
}
