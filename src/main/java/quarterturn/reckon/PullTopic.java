package quarterturn.reckon;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Scale;
import quarterturn.craft.SetPull;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Kind;
import quarterturn.procedure.read.Shelf;
import quarterturn.session.Instrument;
import quarterturn.session.store.Store;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;

/** {@code reckon pull}. */
@Command(
    name = "pull",
    description = "The pull of a whole set of strings.",
    footer = {
      "",
      "Give --string for each, such as --string E1:.105in:.030in, with --scale; or",
      "--instrument FILE, whose strings are noted that way.",
      "JSON: newton, strings (an array of newtons in the order given)."
    })
final class PullTopic extends Topic {
  private static final Pattern BETWEEN = Pattern.compile("[\\s;]+");
  private static final int BAR = 40;

  @Option(
      names = "--scale",
      paramLabel = "LENGTH",
      description = "Scale length; by itself that of the instrument's kind.")
  private @Nullable Length scale;

  @Option(
      names = "--string",
      paramLabel = "NOTE:DIAMETER[:CORE]",
      description = "One string, such as G2:.045in:.018in or E4:.010in.")
  private List<SetPull.TunedString> strings = List.of();

  @Option(
      names = "--instrument",
      paramLabel = "FILE",
      description = "An instrument's file, as instrument add writes it.")
  private @Nullable Path instrument;

  @Mixin private TuningOptions tuning = new TuningOptions();

  @Override
  Reckoned reckon() throws IOException, UnreadableException {
    SetPull set = set();
    List<SetPull.TunedString> tuned = set.strings();
    double[] newtons = tuned.stream().mapToDouble(s -> set.of(s).newtons()).toArray();
    double total = set.total().newtons();
    return new Reckoned.Draft()
        .key("newton", total)
        .key("strings", newtons)
        .say(
            "The set pulls %s N, %s lbf."
                .formatted(Decimals.print(total, 0), Decimals.print(set.total().poundForce(), 1)))
        .draw(bars(tuned, newtons))
        .by(TensionTopic.FORMULA + ", summed over the strings", TensionTopic.WIRE);
  }

  private SetPull set() throws IOException, UnreadableException {
    if (instrument != null) {
      if (!strings.isEmpty()) {
        throw new NotUnderstoodException("--string: contradicts --instrument; give one of them");
      }
      return ofInstrument(instrument);
    }
    if (strings.isEmpty()) {
      throw new NotUnderstoodException(
          "--string: is missing; give one for each string, or --instrument");
    }
    Length length = scale;
    if (length == null) {
      throw new NotUnderstoodException("--scale: is missing");
    }
    return new SetPull(
        Checked.by("--scale", () -> new Scale(length)), strings, tuning.temperament());
  }

  private SetPull ofInstrument(Path file) throws IOException, UnreadableException {
    if (!Files.isRegularFile(file)) {
      throw new NotUnderstoodException("--instrument: there is no file " + file);
    }
    Instrument known = Store.instrumentIn(file);
    String note = known.strings();
    if (note == null) {
      throw new NotUnderstoodException(
          "--instrument: "
              + known.name()
              + " has no note of its strings; write one such as strings: \"E1:.105in:.030in"
              + " A1:.085in:.028in\"");
    }
    List<SetPull.TunedString> noted = new ArrayList<>();
    for (String one : BETWEEN.split(note.strip())) {
      noted.add(Checked.by("--instrument", () -> SetPull.TunedString.parse(one)));
    }
    Kind kind = new Shelf(null).rules().kinds().get(known.kind());
    Length length = scale != null ? scale : kind == null ? null : kind.scale();
    if (length == null) {
      throw new NotUnderstoodException(
          "--scale: is missing, and kind " + known.kind() + " is not known");
    }
    return new SetPull(Checked.by("--scale", () -> new Scale(length)), noted, tuning.temperament());
  }

  private static List<String> bars(List<SetPull.TunedString> tuned, double[] newtons) {
    double most = 0;
    for (double one : newtons) {
      most = Math.max(most, one);
    }
    List<String> lines = new ArrayList<>();
    for (int i = 0; i < newtons.length; i++) {
      lines.add(
          "  %-4s %6s N  %s"
              .formatted(
                  tuned.get(i).note(),
                  Decimals.print(newtons[i], 1),
                  "#".repeat((int) Math.round(newtons[i] / most * BAR))));
    }
    return lines;
  }
}
