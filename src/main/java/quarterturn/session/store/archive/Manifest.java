package quarterturn.session.store.archive;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.session.journal.ForcedFile;

/**
 * The first file in an archive: a line with the format's version, then for each file its SHA-256,
 * its length in bytes and its path, in the order of the paths.
 */
record Manifest(List<Item> items) {
  static final String NAME = "quarterturn-archive.txt";
  private static final int FORMAT = 1;
  private static final Pattern FIRST = Pattern.compile("quarterturn archive ([1-9][0-9]{0,8})");
  private static final Pattern LINE =
      Pattern.compile("([0-9a-f]{64}) (0|[1-9][0-9]{0,8}) ([a-z0-9./-]+)");

  Manifest {
    items = List.copyOf(items);
  }

  /** A file in an archive. */
  record Item(Kept file, long length, String sum) {
    static Item of(Kept file, byte[] bytes) {
      return new Item(file, bytes.length, Manifest.sum(bytes));
    }

    boolean holds(byte[] bytes) {
      return bytes.length == length && Manifest.sum(bytes).equals(sum);
    }
  }

  private static String sum(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java platform has SHA-256", e);
    }
  }

  byte[] bytes() {
    StringBuilder text = new StringBuilder("quarterturn archive ").append(FORMAT).append('\n');
    for (Item item : items) {
      text.append(item.sum()).append(' ').append(item.length()).append(' ');
      text.append(item.file().path()).append('\n');
    }
    return text.toString().getBytes(StandardCharsets.US_ASCII);
  }

  /**
   * Reads a manifest. Each path is the one of a file that a data folder may keep, and none is named
   * twice.
   */
  static Manifest read(byte[] bytes) throws NoArchiveException {
    String text = new String(bytes, StandardCharsets.ISO_8859_1);
    if (!text.endsWith("\n")) {
      throw new NoArchiveException("its manifest was cut short");
    }
    String[] lines = text.split("\n", -1);
    Matcher first = FIRST.matcher(lines[0]);
    if (!first.matches()) {
      throw new NoArchiveException("its manifest does not begin like one");
    }
    if (Integer.parseInt(first.group(1)) != FORMAT) {
      throw new NoArchiveException(
          "it is in format %s and this program reads format %d: use a newer quarterturn"
              .formatted(first.group(1), FORMAT));
    }
    List<Item> items = new ArrayList<>();
    String before = "";
    for (int i = 1; i < lines.length - 1; i++) {
      Item item = item(lines[i], i + 1);
      if (item.file().path().compareTo(before) <= 0) {
        throw new NoArchiveException("line " + (i + 1) + " of its manifest is out of order");
      }
      before = item.file().path();
      items.add(item);
    }
    return new Manifest(items);
  }

  private static Item item(String line, int number) throws NoArchiveException {
    Matcher said = LINE.matcher(line);
    Kept file = said.matches() ? Kept.of(said.group(3)) : null;
    if (file == null) {
      throw new NoArchiveException(
          "line " + number + " of its manifest names no session or instrument");
    }
    Item item = new Item(file, Long.parseLong(said.group(2)), said.group(1));
    if (item.length() > ForcedFile.MOST_BYTES) {
      throw new NoArchiveException("its " + file.path() + " is far too large to be one of ours");
    }
    return item;
  }

  /** How much its files hold together. */
  long length() {
    return items.stream().mapToLong(Item::length).sum();
  }
}
