package quarterturn.screen;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import quarterturn.quick.Mistyped;
import quarterturn.quick.Part;
import quarterturn.quick.QuickLine;
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
    List<Part> parts = QuickLine.parts(line, ahead.terms());
    List<String> said = new ArrayList<>();
    if (parts.size() == 1 && parts.get(0) instanceof Part.Bare bare && !ahead.fits(bare)) {
      return model.saying(otherwise);
    }
    Answer waited = ahead.waited(bench.prompt());
    if (waited != null) {
      give(waited, said::add);
    }
    List<Mistyped> wrong = ahead.add(parts);
    wrong.forEach(one -> said.add(String.valueOf(one.getMessage())));
    follow(said::add);
    if (!ahead.left().isEmpty()) {
      said.add("Kept until it is asked for: " + String.join("; ", ahead.left()) + ".");
    }
    Model after = ScreenFace.shown(bench);
    Model view =
        wrong.isEmpty() ? after : after.with(new Draft.Naming(new Field(line, wrong.get(0).at())));
    return view.saying(String.join(" ", said));
  }

  /**
   * Drops kept answers that an answer given in another way made out of date, and gives the next one
   * that fits.
   *
   * @return what to tell the person, or empty
   */
  public String gave(Answer answer, Prompt prompt) throws IOException {
    List<String> said = new ArrayList<>();
    ahead.gave(answer, prompt, said::add);
    follow(said::add);
    return String.join(" ", said);
  }

  private void follow(Consumer<String> say) throws IOException {
    while (true) {
      Answer answer = ahead.take(bench.prompt(), say);
      if (answer == null || !give(answer, say)) {
        return;
      }
      if (ahead.takes(bench.prompt())) {
        // It is answered before it is on view, so that its notes are told here.
        bench.news().forEach(say);
      }
    }
  }

  private boolean give(Answer answer, Consumer<String> say) throws IOException {
    Prompt prompt = bench.prompt();
    try {
      bench.answer(answer);
    } catch (RefusedException e) {
      say.accept(String.valueOf(e.getMessage()));
      ahead.refused(say);
      return false;
    }
    ahead.gave(answer, prompt, say);
    return true;
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
