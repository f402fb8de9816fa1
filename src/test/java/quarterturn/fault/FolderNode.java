package quarterturn.fault;

import java.nio.file.attribute.FileTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/** A folder's entries, those that are on disk, and the changes in between. */
final class FolderNode extends Node {
  private final Map<String, Node> live = new TreeMap<>();
  private final Map<String, Node> onDisk = new TreeMap<>();
  private final List<Change> unforced = new ArrayList<>();

  FolderNode(long id, FileTime created) {
    super(id, created);
  }

  /** Entries set or removed at once. */
  private record Change(Map<String, Optional<Node>> entries, long when) {}

  @Override
  long size() {
    return live.size();
  }

  @Nullable Node entry(String name) {
    return live.get(name);
  }

  List<String> names() {
    return List.copyOf(live.keySet());
  }

  void put(String name, Node node, long when) {
    change(Map.of(name, Optional.of(node)), when);
  }

  void remove(String name, long when) {
    change(Map.of(name, Optional.empty()), when);
  }

  /** Gives an entry another name; a power cut leaves it under one of them. */
  void rename(String from, String to, Node node, long when) {
    change(Map.of(from, Optional.empty(), to, Optional.of(node)), when);
  }

  private void change(Map<String, Optional<Node>> entries, long when) {
    apply(entries, live);
    unforced.add(new Change(entries, when));
  }

  void force() {
    unforced.forEach(change -> apply(change.entries, onDisk));
    unforced.clear();
  }

  private static void apply(Map<String, Optional<Node>> change, Map<String, Node> to) {
    change.forEach(
        (name, node) -> {
          if (node.isPresent()) {
            to.put(name, node.get());
          } else {
            to.remove(name);
          }
        });
  }

  @Override
  FolderNode left(@Nullable Survival survival) {
    Map<String, Node> entries = new TreeMap<>(survival == null ? live : onDisk);
    if (survival != null) {
      unforced.stream()
          .filter(change -> survival.keeps(change.when))
          .forEach(change -> apply(change.entries, entries));
    }
    FolderNode left = new FolderNode(id(), created());
    entries.forEach(
        (name, node) -> {
          Node copy = node.left(survival);
          left.live.put(name, copy);
          left.onDisk.put(name, copy);
        });
    return dated(left);
  }
}
