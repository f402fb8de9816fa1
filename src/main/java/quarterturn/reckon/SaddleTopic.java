package quarterturn.reckon;

import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.SaddleHeight;
import quarterturn.craft.Scale;
import quarterturn.craft.ScrewThread;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;

/** {@code reckon saddle}. */
@Command(
    addMethodSubcommands = false,
    name = "saddle",
    description = "What the saddle must do for a wanted change of action.",
    footer = {"", "JSON: saddle_change_mm, turns (null without --thread); plus is up."})
final class SaddleTopic extends Topic {
  @Option(
      names = "--action-change",
      required = true,
      paramLabel = "LENGTH",
      description = "Wanted less present action; minus for lower.")
  private Length action = Length.mm(0);

  @Option(
      names = "--at-fret",
      required = true,
      paramLabel = "FRET",
      description = "The fret where action is read.")
  private int fret;

  @Option(
      names = "--thread",
      paramLabel = "PITCH",
      description = "The height screw's pitch, such as 0.5mm, or its thread, such as M3x0.5.")
  private @Nullable ScrewThread thread;

  @Override
  Reckoned reckon() {
    Checked.within("--at-fret", fret, 1, Scale.MOST_FRETS);
    Length change = SaddleHeight.change(action, fret);
    Double turns = thread == null ? null : SaddleHeight.turns(change, thread).turns();
    return new Reckoned.Draft()
        .key("saddle_change_mm", change.mm())
        .key("turns", turns)
        .within(Possible.SADDLE_CHANGE, change.mm())
        .say(
            change.mm() == 0
                ? "Leave the saddle where it is."
                : "%s the saddle by %s mm%s."
                    .formatted(
                        change.mm() > 0 ? "Raise" : "Lower",
                        Decimals.print(Math.abs(change.mm()), 2),
                        turns == null
                            ? ""
                            : ", " + Decimals.print(Math.abs(turns), 2) + " turns of its screw"))
        .by(
            "similar triangles, saddle change = action change / (1 - 2^(-n/12))",
            "a straight open string and a neck that is left alone; both screws of a saddle turn"
                + " alike. Retune before reading again.");
  }
}
