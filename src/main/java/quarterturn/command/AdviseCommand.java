package quarterturn.command;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import quarterturn.procedure.Unreadable;
import quarterturn.script.AdviceLines;
import quarterturn.unit.TypedLines;

/** {@code advise --lines}: the rod's advisor by itself, for other tools. */
@Command(
    name = "advise",
    mixinStandardHelpOptions = true,
    description = "Answers queries about the next rod turn, one JSON object a line each way.",
    footer = {
      "",
      "Query: {\"window_mm\":[0.25,0.40],\"prior\":\"bass\",\"moves\":[{\"reading_mm\":[0.60,0.65]}]}"
    })
final class AdviseCommand implements Callable<Integer>, Cli.Timed {
  @Mixin private final Where where = new Where();
  @Spec private CommandSpec spec = CommandSpec.create();

  @Option(
      names = "--lines",
      required = true,
      description = "One JSON query a line in, one answer a line out.")
  private boolean lines;

  private final Clock clock;

  AdviseCommand(Clock clock) {
    this.clock = clock;
  }

  @Override
  public Integer call() throws IOException, Unreadable {
    PrintWriter out = spec.commandLine().getOut();
    AdviceLines advice = new AdviceLines(where.desk(clock).rules().limits());
    TypedLines in =
        new TypedLines(
            new InputStreamReader(System.in, StandardCharsets.UTF_8), AdviceLines.LONGEST);
    for (TypedLines.Line line = in.next(); line != null; line = in.next()) {
      if (!line.text().isBlank()) {
        out.println(advice.answer(line));
        out.flush();
      }
    }
    return 0;
  }
}
