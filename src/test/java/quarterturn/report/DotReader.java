package quarterturn.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads as much of the DOT language as a drawing of ours may use, after the grammar of its
 * documentation (graphviz.org, "DOT Language"): statements end in a semicolon, and an id is a
 * quoted text, a word or a number. Fails on anything else.
 */
public final class DotReader {
  private static final Pattern TOKEN =
      Pattern.compile(
          "\"((?:[^\"\\\\]|\\\\.)*)\"|([A-Za-z_][A-Za-z_0-9]*|[0-9.]+)|(->|[{}\\[\\]=,;])");

  public record Edge(String from, String to, Map<String, String> attributes) {}

  /** A node and the cluster it stands in. */
  public record Node(String cluster, Map<String, String> attributes) {}

  public final Map<String, Node> nodes = new LinkedHashMap<>();
  public final List<Edge> edges = new ArrayList<>();
  public final Map<String, String> clusterLabels = new LinkedHashMap<>();

  private final List<String> tokens = new ArrayList<>();
  private int next;

  public DotReader(String text) {
    Matcher m = TOKEN.matcher(text);
    int end = 0;
    while (m.find()) {
      if (!text.substring(end, m.start()).isBlank()) {
        throw new AssertionError("no token: " + text.substring(end, m.start()));
      }
      end = m.end();
      // A text in quotes is told from a sign by the quote kept before it.
      tokens.add(m.group(1) != null ? "\"" + m.group(1) : m.group());
    }
    if (!text.substring(end).isBlank()) {
      throw new AssertionError("no token: " + text.substring(end));
    }
    expect("digraph");
    id();
    expect("{");
    statements("");
    if (next != tokens.size()) {
      throw new AssertionError("something follows the graph");
    }
  }

  private void statements(String cluster) {
    while (!peek().equals("}")) {
      if (peek().equals("subgraph")) {
        next++;
        String name = id();
        expect("{");
        statements(name);
        continue;
      }
      statement(cluster);
      expect(";");
    }
    next++;
  }

  private void statement(String cluster) {
    String first = id();
    if (peek().equals("=")) {
      next++;
      String value = id();
      if (first.equals("label")) {
        clusterLabels.put(cluster, value);
      }
    } else if (peek().equals("->")) {
      next++;
      String to = id();
      edges.add(new Edge(first, to, attributes()));
    } else if (first.equals("node") || first.equals("edge")) {
      attributes();
    } else if (nodes.put(first, new Node(cluster, attributes())) != null) {
      throw new AssertionError("a second node " + first);
    }
  }

  private Map<String, String> attributes() {
    Map<String, String> found = new LinkedHashMap<>();
    if (!peek().equals("[")) {
      return found;
    }
    next++;
    do {
      String key = id();
      expect("=");
      found.put(key, id());
    } while (takeComma());
    expect("]");
    return found;
  }

  private boolean takeComma() {
    boolean comma = peek().equals(",");
    next += comma ? 1 : 0;
    return comma;
  }

  /** An id, its escapes still in it. */
  private String id() {
    String token = peek();
    next++;
    if (token.startsWith("\"")) {
      return token.substring(1);
    }
    if (!token.matches("[A-Za-z_0-9.]+")) {
      throw new AssertionError("no id: " + token);
    }
    return token;
  }

  private String peek() {
    if (next >= tokens.size()) {
      throw new AssertionError("the graph does not end");
    }
    return tokens.get(next);
  }

  private void expect(String token) {
    if (!peek().equals(token)) {
      throw new AssertionError("expected " + token + ", not " + peek());
    }
    next++;
  }

  /** A label as Graphviz shows it: breaks, escapes and numbered characters resolved. */
  public static String shown(String label) {
    StringBuilder out = new StringBuilder();
    Matcher m = Pattern.compile("\\\\n|\\\\([\"\\\\])|&#(\\d+);|([^\\\\&])").matcher(label);
    int end = 0;
    while (m.find()) {
      if (m.start() != end) {
        throw new AssertionError("an escape of another meaning in " + label);
      }
      end = m.end();
      if (m.group(1) != null) {
        out.append(m.group(1));
      } else if (m.group(2) != null) {
        out.appendCodePoint(Integer.parseInt(m.group(2)));
      } else {
        out.append(m.group(3) != null ? m.group(3) : " ");
      }
    }
    if (end != label.length()) {
      throw new AssertionError("an escape of another meaning in " + label);
    }
    return out.toString();
  }
}
