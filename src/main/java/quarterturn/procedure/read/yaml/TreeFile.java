package quarterturn.procedure.read.yaml;

import java.io.ByteArrayOutputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.CRC32;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.Mark;

/**
 * The tree of a YAML file as bytes that are read without a parser, for the files that come with the
 * program: the sum of the YAML, every text once, then the pieces, each before those within it. A
 * mark is of the file itself unless it names another.
 */
public final class TreeFile {
  public static final String YAML = ".yaml";

  private static final byte SCALAR = 0;
  private static final byte SEQUENCE = 1;
  private static final byte MAPPING = 2;

  private final ByteBuffer in;
  private final String[] files;
  private final String[] texts;

  private TreeFile(String file, ByteBuffer in) {
    this.in = in;
    files = texts();
    files[0] = file;
    texts = texts();
  }

  private String[] texts() {
    String[] texts = new String[in.getInt()];
    for (int i = 0; i < texts.length; i++) {
      int length = in.getInt();
      texts[i] = new String(in.array(), in.position(), length, StandardCharsets.UTF_8);
      in.position(in.position() + length);
    }
    return texts;
  }

  /** The name of the tree beside a file of YAML. */
  public static String name(String yaml) {
    return yaml.substring(0, yaml.length() - YAML.length()) + ".tree";
  }

  /** Whether {@code tree} was made of this state of the file. */
  static boolean fits(byte[] yaml, byte[] tree) {
    return ByteBuffer.wrap(tree).getInt() == sum(yaml);
  }

  /**
   * The tree of a file; null where these bytes are of another state of it.
   *
   * @param file its name, which stands in every mark
   * @param yaml the file's bytes
   * @param tree what {@link #of} made of it
   */
  public static @Nullable Node read(String file, byte[] yaml, byte[] tree) {
    ByteBuffer in = ByteBuffer.wrap(tree);
    return in.getInt() == sum(yaml) ? new TreeFile(file, in).node() : null;
  }

  private Node node() {
    byte kind = in.get();
    Mark mark = mark();
    if (kind == SCALAR) {
      return new Node.Scalar(text(), text(), mark);
    }
    int count = in.getInt();
    if (kind == SEQUENCE) {
      List<Node> items = new ArrayList<>(count);
      for (int i = 0; i < count; i++) {
        items.add(node());
      }
      return new Node.Sequence(items, mark);
    }
    Map<String, Node.Entry> entries = new LinkedHashMap<>();
    for (int i = 0; i < count; i++) {
      entries.put(text(), new Node.Entry(mark(), node()));
    }
    return new Node.Mapping(entries, mark);
  }

  private Mark mark() {
    return new Mark(files[in.get() & 0xFF], in.getShort() & 0xFFFF, in.getShort() & 0xFFFF);
  }

  private String text() {
    return texts[in.getInt()];
  }

  /**
   * The bytes for a tree that was read without a fault.
   *
   * @param yaml the bytes that it was read from
   */
  public static byte[] of(Node tree, byte[] yaml) throws IOException {
    return new Writing(tree.mark().file()).bytes(tree, yaml);
  }

  private static int sum(byte[] bytes) {
    CRC32 sum = new CRC32();
    sum.update(bytes);
    return (int) sum.getValue();
  }

  /** A tree on its way into bytes. */
  private static final class Writing {
    private final String own;
    private final Map<String, Integer> files = new LinkedHashMap<>();
    private final Map<String, Integer> texts = new LinkedHashMap<>();
    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    private final DataOutputStream out = new DataOutputStream(bytes);

    /**
     * @param own the file that the tree is of, whose name is where it was read and is not kept
     */
    Writing(String own) {
      this.own = own;
      files.put(own, 0);
    }

    byte[] bytes(Node tree, byte[] yaml) throws IOException {
      write(tree);
      byte[] pieces = bytes.toByteArray();
      bytes.reset();
      out.writeInt(sum(yaml));
      list(files.keySet().stream().map(file -> file.equals(own) ? "" : file).toList());
      list(texts.keySet());
      out.write(pieces);
      return bytes.toByteArray();
    }

    private void list(Collection<String> all) throws IOException {
      out.writeInt(all.size());
      for (String text : all) {
        byte[] coded = text.getBytes(StandardCharsets.UTF_8);
        out.writeInt(coded.length);
        out.write(coded);
      }
    }

    private void write(Node node) throws IOException {
      if (node instanceof Node.Scalar scalar) {
        begin(SCALAR, scalar.mark());
        text(scalar.text());
        text(scalar.raw());
      } else if (node instanceof Node.Sequence sequence) {
        begin(SEQUENCE, sequence.mark());
        out.writeInt(sequence.items().size());
        for (Node item : sequence.items()) {
          write(item);
        }
      } else if (node instanceof Node.Mapping mapping) {
        begin(MAPPING, mapping.mark());
        out.writeInt(mapping.entries().size());
        for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
          text(entry.getKey());
          mark(entry.getValue().key());
          write(entry.getValue().value());
        }
      } else {
        throw new IllegalArgumentException("a tree with a fault is not kept: " + node.mark());
      }
    }

    private void begin(byte kind, Mark mark) throws IOException {
      out.writeByte(kind);
      mark(mark);
    }

    private void mark(Mark mark) throws IOException {
      out.writeByte(files.computeIfAbsent(mark.file(), file -> files.size()));
      out.writeShort(mark.line());
      out.writeShort(mark.column());
    }

    private void text(String text) throws IOException {
      out.writeInt(texts.computeIfAbsent(text, t -> texts.size()));
    }
  }
}
