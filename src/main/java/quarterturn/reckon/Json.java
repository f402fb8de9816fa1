package quarterturn.reckon;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;
import org.jspecify.annotations.Nullable;

/** What was reckoned as JSON: numbers to twelve digits, null for what is no number. */
final class Json {
  private static final MathContext DIGITS = new MathContext(12);

  private Json() {}

  static String object(Map<String, @Nullable Object> keys) {
    Map<String, @Nullable Object> plain = new LinkedHashMap<>();
    keys.forEach((key, value) -> plain.put(key, plain(value)));
    try {
      return new ObjectMapper().writeValueAsString(plain);
    } catch (JsonProcessingException e) {
      throw new UncheckedIOException("a string can't fail to be written to", e);
    }
  }

  private static @Nullable Object plain(@Nullable Object value) {
    if (value instanceof Double number) {
      return number(number);
    }
    if (value instanceof double[] numbers) {
      return plain(DoubleStream.of(numbers).boxed().toList());
    }
    return value instanceof List<?> items ? items.stream().map(Json::plain).toList() : value;
  }

  private static @Nullable BigDecimal number(double number) {
    if (!Double.isFinite(number)) {
      return null;
    }
    BigDecimal rounded = new BigDecimal(number).round(DIGITS).stripTrailingZeros();
    return rounded.signum() == 0 ? BigDecimal.ZERO : rounded;
  }
}
