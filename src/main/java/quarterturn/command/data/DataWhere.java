package quarterturn.command.data;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import quarterturn.command.place.Placed;
import quarterturn.command.place.Places;
import quarterturn.session.store.archive.Bytes;
import quarterturn.session.store.archive.DataFolder;
import quarterturn.session.store.archive.Part;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Printable;

/** {@code data where}. */
@Command(
    addMethodSubcommands = false,
    name = "where",
    description = {
      "Says where your sessions and instruments, your settings and your own files lie, how much",
      "there is, and whether it is there. It reads names only: see data check."
    })
final class DataWhere extends Placed {
  @Override
  public Integer call() {
    List<String> lines = new ArrayList<>();
    Path data = data(lines);
    long bytes = 0;
    for (Part part : Part.values()) {
      bytes += part(data, part, lines);
    }
    lines.add("size: " + Bytes.words(bytes));
    lines.add("settings: " + places().settings());
    lines.add("own: " + places().own());
    lines.add("lessons: each in the folder named for it; no list is kept");
    return print(lines.stream().map(Printable::of).toList());
  }

  private @Nullable Path data(List<String> lines) {
    lines.add("data: " + places().data());
    try {
      return where.knownData();
    } catch (NotUnderstoodException e) {
      return null;
    }
  }

  private Places places() {
    return new Places(where);
  }

  private static long part(@Nullable Path data, Part part, List<String> lines) {
    String name = part.folder() + ": ";
    if (data == null) {
      lines.add(name + "unknown");
      return 0;
    }
    try {
      DataFolder folder = DataFolder.at(data, part);
      int others = folder.strays().size();
      lines.add(name + folder.kept().size() + (others == 0 ? "" : ", and " + others + " not read"));
      return folder.bytes();
    } catch (IOException e) {
      lines.add(name + "unknown, since the folder can't be listed");
      return 0;
    }
  }
}
