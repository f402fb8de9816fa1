package quarterturn.session;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import org.jspecify.annotations.Nullable;
import quarterturn.unit.Bracket;

/** A bracket in JSON: two bounds in millimetres, with null for an open one. */
public final class BracketJson {
  private static final JsonNodeFactory JSON = JsonNodeFactory.instance;

  private BracketJson() {}

  /** Puts a bracket under a name; nothing where there is none. */
  public static void write(ObjectNode out, String name, @Nullable Bracket bracket) {
    if (bracket != null) {
      ArrayNode pair = out.putArray(name);
      pair.add(bracket.noGap() ? JSON.nullNode() : JSON.numberNode(bracket.lowMm()));
      pair.add(bracket.beyondGauge() ? JSON.nullNode() : JSON.numberNode(bracket.highMm()));
    }
  }
}
