package quarterturn.command;

import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.command.place.Placed;
import quarterturn.procedure.UnreadableException;
import quarterturn.script.AdviceLines;
import quarterturn.unit.TypedLines;

/** {@code advise --lines}: the rod's advisor by itself, for other tools. */
@Command(
    addMethodSubcommands = false,
    name = "advise",
    description = "Answers queries about the next rod turn, one JSON object a line each way.",
    footer = {
      "",
      "Query:"
          + " {\"window_mm\":[0.25,0.40],\"prior\":\"bass\",\"moves\":[{\"reading_mm\":[0.60,0.65]}]}"
    })
final class AdviseCommand extends Placed {

  @Option(
      names = "--lines",
      required = true,
      description = "One JSON query a line in, one answer a line out.")
  private boolean lines;

  @Override
  public Integer call() throws IOException, UnreadableException {
    AdviceLines advice = new AdviceLines(sessions().rules().limits());
    TypedLines in =
        new TypedLines(
            new InputStreamReader(System.in, StandardCharsets.UTF_8), AdviceLines.LONGEST);
    for (TypedLines.Line line = in.next(); line != null; line = in.next()) {
      if (!line.text().isBlank()) {
        print(List.of(advice.answer(line)));
      }
    }
    return 0;
  }
}
