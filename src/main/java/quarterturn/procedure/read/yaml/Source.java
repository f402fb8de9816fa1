package quarterturn.procedure.read.yaml;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Fault;
import quarterturn.procedure.Mark;
import quarterturn.procedure.Slip;
import quarterturn.procedure.UnreadableException;
import quarterturn.unit.Printable;

/**
 * The text of a file by line and column. Line breaks of every kind become one, and characters that
 * cannot be shown are replaced by U+FFFD and remembered, so that places stay true.
 */
public final class Source {
  /** Largest file that is read. */
  public static final int MOST_BYTES = 256 * 1024;

  static final int LOST = 0xFFFD;
  private static final int WIDEST = 76;
  private static final String CUT = "...";

  private final String file;
  private final byte[] bytes;
  private @Nullable Letters letters;
  private @Nullable Node tree;

  /** The {@link TreeFile} of it, which is read when the tree is asked for. */
  private final byte @Nullable [] kept;

  /** A character that cannot be shown, which {@link #LOST} stands for now. */
  record Unshown(int offset, int codePoint) {}

  private Source(String file, byte[] bytes, @Nullable Letters letters, byte @Nullable [] kept) {
    this.file = file;
    this.bytes = bytes;
    this.letters = letters;
    this.kept = kept;
  }

  /** What stands in the file, in code points, and where its lines begin. */
  private record Letters(int[] text, int[] lineStarts, List<Unshown> unshown) {
    static Letters of(String decoded) {
      String joined = decoded.replace("\r\n", "\n").replace('\r', '\n');
      int[] text =
          (joined.startsWith("\uFEFF") ? joined.substring(1) : joined).codePoints().toArray();
      int breaks = (int) Arrays.stream(text).filter(c -> c == '\n').count();
      int[] lineStarts = new int[breaks + 1];
      List<Unshown> unshown = new ArrayList<>();
      for (int i = 0, line = 0; i < text.length; i++) {
        int c = text[i];
        if (c == '\n') {
          lineStarts[++line] = i + 1;
        } else if (c == LOST || (c != '\t' && !Printable.shown(c))) {
          text[i] = LOST;
          unshown.add(new Unshown(i, c));
        }
      }
      return new Letters(text, lineStarts, unshown);
    }
  }

  /** Those of a file whose tree is known are looked at when a fault is to be shown. */
  private Letters letters() {
    Letters known = letters;
    if (known == null) {
      known = Letters.of(new String(bytes, StandardCharsets.UTF_8));
      letters = known;
    }
    return known;
  }

  /**
   * A file that comes with the program.
   *
   * @param kept its {@link TreeFile}; where that is of another state of it the file is read
   * @throws UnreadableException as {@link #of(String, byte[])}
   */
  public static Source of(String file, byte[] bytes, byte[] kept) throws UnreadableException {
    return TreeFile.fits(bytes, kept) ? new Source(file, bytes, null, kept) : of(file, bytes);
  }

  /**
   * Decodes {@code bytes}.
   *
   * @throws UnreadableException when there are too many bytes or they are not UTF-8
   */
  public static Source of(String file, byte[] bytes) throws UnreadableException {
    if (bytes.length > MOST_BYTES) {
      String wrong = "this file has more than " + MOST_BYTES + " bytes, the most that is read";
      throw new UnreadableException(
          List.of(Fault.of(Slip.NOT_YAML, new Mark(file, 1, 1), wrong, "Make it smaller")));
    }
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    CharBuffer out = CharBuffer.allocate(bytes.length + 1);
    CoderResult result = decoder.decode(in, out, true);
    Letters letters = Letters.of(out.flip().toString());
    Source source = new Source(file, bytes, letters, null);
    if (result.isError()) {
      String wrong =
          String.format(
              "the byte 0x%02X does not belong to UTF-8 text", bytes[in.position()] & 0xFF);
      Mark end = source.mark(letters.text().length);
      String rule = Slip.NOT_YAML.word();
      throw new UnreadableException(
          List.of(source.fault(rule, end, wrong, "Save the file as UTF-8", List.of())));
    }
    return source;
  }

  /** A source without any text. */
  static Source empty() {
    return new Source("", new byte[0], null, null);
  }

  public String file() {
    return file;
  }

  /** The characters that were replaced. */
  List<Unshown> unshown() {
    // A tree was read without a fault.
    return kept != null ? List.of() : List.copyOf(letters().unshown());
  }

  /** The tree that was read from this source without a fault, or null. */
  @Nullable Node tree() {
    if (tree == null && kept != null) {
      tree = TreeFile.read(file, bytes, kept);
    }
    return tree;
  }

  void tree(Node read) {
    tree = read;
  }

  /** The whole text. */
  public String text() {
    int[] text = letters().text();
    return new String(text, 0, text.length);
  }

  /** The text between two offsets, in code points; offsets beyond the ends are moved to them. */
  String between(int from, int to) {
    int[] text = letters().text();
    int start = Math.max(0, Math.min(from, text.length));
    int end = Math.max(start, Math.min(to, text.length));
    return new String(text, start, end - start);
  }

  /** The code point at an offset. */
  int at(int offset) {
    return letters().text()[offset];
  }

  /** The place of an offset, in code points. */
  public Mark mark(int offset) {
    int[] lineStarts = letters().lineStarts();
    int found = Arrays.binarySearch(lineStarts, offset);
    int line = found >= 0 ? found : -found - 2;
    return new Mark(file, line + 1, offset - lineStarts[line] + 1);
  }

  /** The offset of a place, in code points. */
  int offset(Mark mark) {
    int[] lineStarts = letters().lineStarts();
    int line = Math.max(1, Math.min(mark.line(), lineStarts.length)) - 1;
    return Math.min(letters().text().length, lineStarts[line] + Math.max(0, mark.column() - 1));
  }

  /** A fault with the line it stands on, cut to fit a screen. */
  public Fault fault(String rule, Mark mark, String wrong, String mend, List<String> path) {
    int at = offset(mark);
    int[] lineStarts = letters().lineStarts();
    int line = Math.max(1, Math.min(mark.line(), lineStarts.length)) - 1;
    int start = lineStarts[line];
    int end = line + 1 < lineStarts.length ? lineStarts[line + 1] - 1 : letters().text().length;
    boolean whole = end - start <= WIDEST;
    int from = whole || at - start < WIDEST * 3 / 4 ? start : at - WIDEST / 2;
    int to = Math.min(end, from + WIDEST - (from > start ? CUT.length() : 0));
    String before = from > start ? CUT : "";
    String after = to < end ? CUT : "";
    String shown = before + between(from, to - after.length()) + after;
    return new Fault(rule, mark, wrong, mend, shown, before.length() + at - from, path);
  }
}
