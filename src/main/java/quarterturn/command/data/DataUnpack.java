package quarterturn.command.data;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import quarterturn.command.place.Placed;
import quarterturn.session.store.archive.Part;
import quarterturn.session.store.archive.Unpacking;
import quarterturn.unit.Counted;
import quarterturn.unit.Printable;

/** {@code data unpack FILE}. */
@Command(
    addMethodSubcommands = false,
    name = "unpack",
    description = {
      "Unpacks what data pack made into the data folder, beside what is there.",
      "The whole archive is checked before anything is written.",
      "Nothing is overwritten: a file that is there and differs stays, and is named.",
      "If it is stopped in between, unpack again."
    },
    footer = {
      "",
      "Exit status: 0 all of it is there now, 1 something differs here and stays, 2 it failed."
    })
final class DataUnpack extends Placed {
  @Parameters(paramLabel = "FILE", description = "The archive, as data pack made it.")
  private Path file = Path.of("");

  @Override
  public Integer call() throws IOException {
    Path data = where.data();
    Unpacking.Unpacked done = Unpacking.of(file, data);
    List<String> lines = new ArrayList<>();
    lines.add("Unpacked " + counts(done.made()) + " into " + Printable.of(data.toString()) + ".");
    if (!done.there().isEmpty()) {
      lines.add("Already there: " + counts(done.there()) + ".");
    }
    done.further().forEach(one -> lines.add("Kept as it is here: " + one + "."));
    done.differ().forEach(one -> lines.add("Kept as it is here: " + one + "."));
    print(lines);
    return done.differ().isEmpty() ? 0 : DataCommand.FOUND;
  }

  private static String counts(Map<Part, Long> counts) {
    List<String> words = new ArrayList<>();
    for (Part part : Part.values()) {
      words.add(Counted.of(counts.getOrDefault(part, 0L), part.one()));
    }
    return String.join(" and ", words);
  }
}
