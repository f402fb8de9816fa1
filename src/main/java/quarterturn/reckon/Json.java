package quarterturn.reckon;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/** One JSON object on one line. */
final class Json {
  /** Enough for every tolerance, and no noise of binary fractions behind it. */
  private static final MathContext DIGITS = new MathContext(12);

  private Json() {}

  static String object(Map<String, @Nullable Object> keys) {
    StringWriter text = new StringWriter();
    try (JsonGenerator json = new JsonFactory().createGenerator(text)) {
      json.writeStartObject();
      for (Map.Entry<String, @Nullable Object> key : keys.entrySet()) {
        json.writeFieldName(key.getKey());
        value(json, key.getValue());
      }
      json.writeEndObject();
    } catch (IOException e) {
      throw new UncheckedIOException("a string can't fail to be written to", e);
    }
    return text.toString();
  }

  private static void value(JsonGenerator json, @Nullable Object value) throws IOException {
    if (value instanceof Double number) {
      number(json, number);
    } else if (value instanceof Integer number) {
      json.writeNumber(number);
    } else if (value instanceof Boolean truth) {
      json.writeBoolean(truth);
    } else if (value instanceof String text) {
      json.writeString(text);
    } else if (value instanceof double[] numbers) {
      json.writeStartArray();
      for (double number : numbers) {
        number(json, number);
      }
      json.writeEndArray();
    } else if (value instanceof Iterable<?> items) {
      json.writeStartArray();
      for (Object item : items) {
        value(json, item);
      }
      json.writeEndArray();
    } else if (value == null) {
      json.writeNull();
    } else {
      throw new IllegalArgumentException("no JSON for " + value.getClass());
    }
  }

  /** What is no number, or without an end, is null. */
  private static void number(JsonGenerator json, double number) throws IOException {
    if (Double.isFinite(number)) {
      BigDecimal rounded = new BigDecimal(number).round(DIGITS).stripTrailingZeros();
      json.writeNumber(rounded.signum() == 0 ? BigDecimal.ZERO : rounded);
    } else {
      json.writeNull();
    }
  }
}
