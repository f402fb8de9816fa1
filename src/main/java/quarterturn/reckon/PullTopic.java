package quarterturn.reckon;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import quarterturn.craft.Possible;
import quarterturn.craft.Scale;
import quarterturn.craft.SetPull;
import quarterturn.procedure.kind.Kind;
import quarterturn.session.Instrument;
import quarterturn.session.Program;
import quarterturn.session.engine.figures.StringSet;
import quarterturn.unit.Decimals;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Note;

/** {@code reckon pull}. */
@Command(
    addMethodSubcommands = false,
    name = "pull",
    description = "The pull of a whole set of strings.",
    footer = {
      "",
      "Give --string for each, such as --string E1:.105in:.030in, with --scale; or",
      "--instrument NAME, whose strings are noted that way, or whose gauges are known.",
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
      paramLabel = "NAME",
      description = "An instrument of yours, or its file, as instrument add writes it.")
  private @Nullable Strung instrument;

  /** An instrument, with its kind where that is known. */
  record Strung(Instrument instrument, @Nullable Kind kind) {}

  @Mixin private TuningOptions tuning = new TuningOptions();

  @Override
  Reckoned reckon() {
    SetPull set = set();
    List<SetPull.TunedString> tuned = set.strings();
    double[] newtons = tuned.stream().mapToDouble(s -> set.of(s).newtons()).toArray();
    double total = set.total().newtons();
    Reckoned.Draft draft = new Reckoned.Draft();
    for (int i = 0; i < newtons.length; i++) {
      draft.within(Possible.PULL, newtons[i]);
    }
    return draft
        .key("newton", total)
        .key("strings", newtons)
        .within(Possible.SCALE, set.scale().mm())
        .say(
            "The set pulls %s N, %s lbf."
                .formatted(Decimals.print(total, 0), Decimals.print(set.total().poundForce(), 1)))
        .draw(bars(tuned, newtons))
        .by(
            TensionTopic.FORMULA + ", summed over the strings",
            TensionTopic.WIRE
                + " An instrument's gauges from 0.5 mm are taken as wound, over a core of 0.43 of"
                + " them (an estimate).");
  }

  private SetPull set() {
    if (instrument != null) {
      if (!strings.isEmpty()) {
        throw new NotUnderstoodException("--string: contradicts --instrument; give one of them");
      }
      return of(instrument);
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

  /** The strings by their note, or by the gauges and the tuning as {@code instrument add} asks. */
  private SetPull of(Strung strung) {
    Instrument known = strung.instrument();
    Kind kind = strung.kind();
    Length own = known.build().scale();
    Length length = scale != null ? scale : own != null ? own : kind == null ? null : kind.scale();
    if (length == null) {
      throw new NotUnderstoodException(
          "--scale: is missing, and kind " + known.kind() + " is not known");
    }
    String note = known.strings();
    List<SetPull.TunedString> set =
        note != null && note.contains(":")
            ? noted(note)
            : gauged(known, kind == null ? List.of() : kind.notes());
    return new SetPull(Checked.by("--scale", () -> new Scale(length)), set, tuning.temperament());
  }

  private static List<SetPull.TunedString> noted(String note) {
    return BETWEEN
        .splitAsStream(note.strip())
        .map(one -> Checked.by("--instrument", () -> SetPull.TunedString.parse(one)))
        .toList();
  }

  private static List<SetPull.TunedString> gauged(Instrument known, List<String> usual) {
    List<Note> tuned = known.build().tuning();
    List<Note> notes = tuned != null ? tuned : usual.stream().map(Note::parse).toList();
    List<Length> gauges = known.build().gauges();
    if (gauges == null || gauges.size() != notes.size()) {
      throw new NotUnderstoodException(
          "--instrument: "
              + known.name()
              + " has no gauges; give one for each string: "
              + Program.here()
                  .typed(
                      "instrument edit " + known.name() + " --gauges \".105 .085 .065 .045 in\""));
    }
    return IntStream.range(0, notes.size())
        .mapToObj(i -> new SetPull.TunedString(notes.get(i), StringSet.usual(gauges.get(i))))
        .toList();
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
