package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Shim;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon shim}. */
@Command(
    name = "shim",
    description = "The shim that changes the neck's angle by so much.",
    footer = {"", "JSON: shim_mm."})
final class ShimTopic extends Topic {
  @Option(
      names = "--saddle-change",
      required = true,
      paramLabel = "LENGTH",
      description = "How far the board's plane is to move at the saddle.")
  private Length change = Length.mm(0);

  @Option(
      names = "--pocket-length",
      required = true,
      paramLabel = "LENGTH",
      description = "Of the neck pocket.")
  private Length pocket = Length.mm(0);

  @Option(
      names = "--pocket-to-saddle",
      required = true,
      paramLabel = "LENGTH",
      description = "From the pocket's front edge to the saddle.")
  private Length reach = Length.mm(0);

  @Override
  Reckoned reckon() {
    Checked.above0("--pocket-length", pocket);
    Checked.above0("--pocket-to-saddle", reach);
    Length shim = Shim.thickness(change, pocket, reach);
    return new Reckoned.Draft()
        .key("shim_mm", shim.mm())
        .say("A shim of %s mm at one end of the pocket.".formatted(Decimals.print(shim.mm(), 2)))
        .say(
            change.mm() < 0
                ? "At the pocket's front end it moves the plane down at the saddle, so that the"
                    + " action rises."
                : "At the pocket's inner end it moves the plane up at the saddle, so that the action"
                    + " falls and the saddles can rise.")
        .by(
            "similar triangles, shim = change * pocket length / way to the saddle",
            "a tilt about the other end of the pocket, small angles. Start thin. Taking a neck off is"
                + " work for somebody who has done it; a glued neck is for a repairer.");
  }
}
