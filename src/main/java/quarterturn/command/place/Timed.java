package quarterturn.command.place;

import java.io.PrintWriter;
import java.time.Clock;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** A command with a clock, which it is given once it is made, and a notice on standard error. */
public abstract class Timed {
  protected Clock clock = Clock.systemUTC();
  @Spec protected CommandSpec spec = CommandSpec.create();

  @Option(
      names = {"-h", "--help"},
      order = Where.ORDER + 1,
      usageHelp = true,
      description = "Show this help message and exit.")
  private boolean help;

  @Option(
      names = {"-V", "--version"},
      order = Where.ORDER + 1,
      versionHelp = true,
      description = "Print version information and exit.")
  private boolean version;

  /** Gives it its clock. */
  public final void at(Clock given) {
    clock = given;
  }

  protected PrintWriter out() {
    return spec.commandLine().getOut();
  }

  protected int print(List<String> lines) {
    StringBuilder all = new StringBuilder();
    lines.forEach(line -> all.append(line).append(System.lineSeparator()));
    out().print(all);
    out().flush();
    return 0;
  }

  /** Prints a notice on standard error, apart from the command's answer. */
  protected void notice(String text) {
    spec.commandLine().getErr().println("quarterturn: " + text);
  }

  protected void complainIf(boolean wrong, String what) {
    if (wrong) {
      throw new ParameterException(spec.commandLine(), what);
    }
  }
}
