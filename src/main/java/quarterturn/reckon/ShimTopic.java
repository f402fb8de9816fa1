package quarterturn.reckon;

import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.Shim;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon shim}. */
@Command(
    addMethodSubcommands = false,
    name = "shim",
    description = "The shim that changes the neck's angle by so much.",
    footer = {
      "",
      "JSON: shim_mm, end (front or inner), lever_mm (from the pocket's other end to",
      "the saddle)."
    })
final class ShimTopic extends Topic {
  @Option(
      names = "--saddle-change",
      required = true,
      paramLabel = "LENGTH",
      description = "How far the fingerboard's plane is to move at the saddle; minus for down.")
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
    Shim shim = Checked.by("--pocket-to-saddle", () -> Shim.of(change, pocket, reach));
    return new Reckoned.Draft()
        .key("shim_mm", shim.thickness().mm())
        .key("end", shim.atFront() ? "front" : "inner")
        .key("lever_mm", shim.lever().mm())
        .within(Possible.SHIM, shim.thickness().mm())
        .say(
            change.mm() == 0
                ? "No shim is needed."
                : "A shim of %s mm at the pocket's %s."
                    .formatted(
                        Decimals.print(shim.thickness().mm(), 2),
                        shim.atFront()
                            ? "front end, toward the headstock. It moves the plane down at the"
                                + " saddle, so that the action rises"
                            : "inner end, toward the bridge. It moves the plane up at the saddle, so"
                                + " that the action falls and the saddles can rise"))
        .say(
            change.mm() == 0
                ? ""
                : "The neck tilts about the other end of the pocket, %s from the saddle."
                    .formatted(shim.lever()))
        .by(
            "similar triangles, shim = change * pocket length / way from the pocket's other end to"
                + " the saddle",
            "small angles. Start thin. Taking a neck off is work for somebody who has done it; a"
                + " glued neck is for a repairer.");
  }
}
