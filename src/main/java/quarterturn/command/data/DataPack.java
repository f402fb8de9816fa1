package quarterturn.command.data;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import quarterturn.command.place.Placed;
import quarterturn.session.store.archive.Bytes;
import quarterturn.session.store.archive.Packing;
import quarterturn.unit.Counted;
import quarterturn.unit.Printable;

/** {@code data pack FILE}. */
@Command(
    addMethodSubcommands = false,
    name = "pack",
    description = {
      "Packs every session and instrument into one new file, to keep or to take to another machine.",
      "It is a ZIP with a sum for each file in it; data unpack checks them all.",
      "A session that is open is packed as far as it was answered.",
      "Instruments go along with their tickets and their customers' names.",
      "Settings, your own procedures and lessons are not in it: copy those folders yourself."
    },
    footer = {
      "",
      "Exit status: 0 all was packed, 1 something was left out, which is named, 2 nothing was packed."
    })
final class DataPack extends Placed {
  @Parameters(paramLabel = "FILE", description = "The new file; nothing is ever written over.")
  private Path file = Path.of("");

  @Override
  public Integer call() throws IOException {
    Packing.Packed packed = Packing.of(where.data(), file);
    List<String> lines = new ArrayList<>();
    lines.add(
        "Packed "
            + Counted.of(packed.sessions(), "session")
            + " and "
            + Counted.of(packed.instruments(), "instrument")
            + " into "
            + Printable.of(file.toString())
            + ", "
            + Bytes.words(packed.bytes())
            + ".");
    packed.left().forEach(left -> lines.add("Left out: " + left));
    print(lines);
    return packed.left().isEmpty() ? 0 : DataCommand.FOUND;
  }
}
