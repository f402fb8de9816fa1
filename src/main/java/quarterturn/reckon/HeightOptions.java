package quarterturn.reckon;

import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Neck;
import quarterturn.craft.Possible;
import quarterturn.craft.StringLine;
import quarterturn.unit.Length;

/** How high a string stands at the nut and at fret 12. */
final class HeightOptions {
  @Mixin private NutOption nut = new NutOption();

  @Option(
      names = "--action12",
      required = true,
      paramLabel = "LENGTH",
      description = "Open string above fret 12.")
  private Length action = Length.mm(0);

  Length nut() {
    return nut.height();
  }

  Length action() {
    return Checked.from0("--action12", action);
  }

  /** The beginning of an answer, which doubts heights that no instrument has. */
  Reckoned.Draft draft() {
    return new Reckoned.Draft()
        .within(Possible.ACTION, action().mm())
        .within(Possible.NUT, nut().mm());
  }

  StringLine line(Neck neck) {
    return StringLine.withAction(neck, nut(), 12, action());
  }
}
