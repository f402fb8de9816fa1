package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.Map;
import picocli.CommandLine.ParseResult;
import quarterturn.line.InstrumentQuestions;
import quarterturn.line.Typing;
import quarterturn.procedure.Kind;
import quarterturn.session.Instrument;
import quarterturn.session.Trait;
import quarterturn.session.Traits;
import quarterturn.unit.NotUnderstood;

/** Takes an instrument's facts from options, or asks for them where none is given. */
record InstrumentEntry(Map<String, Kind> kinds) {
  private static final int INTERRUPTED = 130;

  /** What is done with the facts that were taken. */
  interface Keeping {
    void keep(Instrument instrument, Say say) throws IOException;
  }

  /** Where it is said. */
  interface Say {
    void line(String text);
  }

  /**
   * Takes the facts and keeps them.
   *
   * @param from the instrument as it is, or a new one of which nothing is known yet
   * @param known what is known of it
   * @return the exit status
   */
  int take(Named from, Map<Trait, String> known, ParseResult parsed, Keeping keeping, Say out)
      throws IOException {
    Map<Trait, String> given = TraitOptions.given(parsed);
    if (!given.isEmpty()) {
      keeping.keep(from.with(TraitOptions.merged(known, given, kinds)), out);
      return 0;
    }
    try (Typing typing = new Faces(Faces.Kind.TYPED, false).typing()) {
      InstrumentQuestions.Answers answers =
          InstrumentQuestions.ask(known, kinds, typing.source(), typing.out());
      return switch (answers.end()) {
        case ANSWERED -> {
          keeping.keep(from.with(answers.traits()), typing.out()::println);
          yield 0;
        }
        case LEFT -> {
          typing.out().println("Left without a change.");
          yield 0;
        }
        case INTERRUPTED -> INTERRUPTED;
        case CUT_SHORT ->
            throw new NotUnderstood("the input ended before the questions did; nothing was kept");
      };
    }
  }

  /** An instrument's name and when it was added. */
  record Named(String name, Instant created) {
    Instrument with(Map<Trait, String> traits) {
      return Traits.instrument(name, created, traits);
    }
  }
}
