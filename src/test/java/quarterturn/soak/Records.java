package quarterturn.soak;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** What the files of sessions and lessons hold at one moment. */
record Records(Map<Path, byte[]> files) {
  private static final Pattern AT = Pattern.compile("\"at\":\"([^\"]+)\"");

  static Records of(Path folder) throws IOException {
    List<Path> paths;
    try (Stream<Path> all = Files.walk(folder)) {
      paths = all.filter(file -> file.toString().endsWith(".jsonl")).toList();
    }
    Map<Path, byte[]> files = new TreeMap<>();
    for (Path path : paths) {
      files.put(path, Files.readAllBytes(path));
    }
    return new Records(files);
  }

  /** The whole lines of a file; what is behind them was cut short and may be removed. */
  private static byte[] whole(byte[] bytes) {
    int end = bytes.length;
    while (end > 0 && bytes[end - 1] != '\n') {
      end--;
    }
    return Arrays.copyOf(bytes, end);
  }

  /** What was lost or rewritten since, a line each. */
  List<String> lost(Records now) {
    List<String> lost = new ArrayList<>();
    files.forEach(
        (path, bytes) -> {
          byte[] had = whole(bytes);
          byte[] has = now.files.getOrDefault(path, new byte[0]);
          int same = Arrays.mismatch(had, has);
          if (same >= 0 && same < had.length) {
            lost.add("%s: of %d bytes the first %d stand".formatted(path, had.length, same));
          }
        });
    return lost;
  }

  /** What was written since, as text. */
  String since(Records before) {
    StringBuilder more = new StringBuilder();
    files.forEach(
        (path, bytes) -> {
          int from = whole(before.files.getOrDefault(path, new byte[0])).length;
          if (from < bytes.length) {
            more.append(new String(bytes, from, bytes.length - from, StandardCharsets.UTF_8));
          }
        });
    return more.toString();
  }

  /** The latest time in it, or the one given. */
  static Instant latest(String text, Instant or) {
    Instant latest = or;
    Matcher at = AT.matcher(text);
    while (at.find()) {
      Instant one = Instant.parse(at.group(1));
      latest = one.isAfter(latest) ? one : latest;
    }
    return latest;
  }

  /** The largest of the files, in bytes. */
  long largest() {
    return files.values().stream().mapToLong(bytes -> bytes.length).max().orElse(0);
  }
}
