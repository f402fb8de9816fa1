package quarterturn.lesson;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import quarterturn.session.Fields;
import quarterturn.session.NotAnEvent;
import quarterturn.unit.Printable;

/** An order as a JSON object: {@code order} names it, then its own fields. */
final class OrderJson {
  private OrderJson() {}

  static ObjectNode write(Order order) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (order instanceof Order.Release release) {
      out.put("order", "release").put("keeps", release.keeps().toString());
      out.set("value", ValueJson.write(release.value()));
    } else if (order instanceof Order.Hold hold) {
      out.put("order", "hold").put("reason", hold.reason());
    } else if (order instanceof Order.SetLevel set) {
      out.put("order", "level").put("student", set.student());
      if (set.level() != null) {
        out.put("level", set.level().word());
      }
      out.put("frozen", set.frozen());
    } else {
      out.put("order", "end");
    }
    return out;
  }

  static Order read(JsonNode node) throws NotAnEvent {
    Fields f = new Fields(node);
    String name = f.text("order");
    Order order =
        switch (name) {
          case "release" ->
              new Order.Release(Ref.parse(f.text("keeps")), ValueJson.read(f.object("value")));
          case "hold" -> new Order.Hold(f.text("reason"));
          case "level" ->
              new Order.SetLevel(
                  f.text("student"),
                  f.wordOrNull("level", Level.values(), Level::word),
                  f.yesOrNo("frozen"));
          case "end" -> new Order.End();
          default -> throw new NotAnEvent("its order \"" + Printable.of(name) + "\" is unknown");
        };
    f.nothingElse();
    return order;
  }
}
