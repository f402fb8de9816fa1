package quarterturn.line;

import java.io.IOException;
import java.time.ZoneOffset;
import quarterturn.platform.SystemTerminal;
import quarterturn.unit.Dates;

/** A program of its own for {@link TerminalTest}: an invented bench, typed at a real terminal. */
public final class TypedAtTerminal {
  private TypedAtTerminal() {}

  public static void main(String[] args) throws IOException {
    ScriptedBench bench =
        new ScriptedBench(
            Invented.tell(),
            Invented.caution(),
            Invented.place(),
            Invented.settle(),
            Invented.done());
    int status;
    try (TerminalSource source = new TerminalSource(SystemTerminal.forLines())) {
      status = LineFace.run(bench, source, source.out(), new Dates(ZoneOffset.UTC));
      long children = ProcessHandle.current().children().count();
      source.out().println("answers: " + bench.answers().size() + ", left: " + bench.left());
      source.out().println("children: " + children);
      source.out().flush();
    }
    System.exit(status);
  }
}
