package quarterturn.procedure.condition;

import java.util.function.Function;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import quarterturn.procedure.kind.Quantity;
import quarterturn.unit.Cents;
import quarterturn.unit.Humidity;
import quarterturn.unit.Length;
import quarterturn.unit.NotUnderstoodException;
import quarterturn.unit.Temperature;
import quarterturn.unit.Turn;

/** Reads amounts as a file writes them: always with their unit. */
public final class Amounts {
  private static final Pattern LENGTH = Pattern.compile("(.*?)\\s*(mm|in|thou)");
  private static final Pattern PERCENT = Pattern.compile("(.*?)\\s*%");
  private static final Pattern CENTS = Pattern.compile("(.*?)\\s*cents?");
  private static final Pattern CELSIUS = Pattern.compile("(.*?)\\s*C");
  private static final Pattern TURN = Pattern.compile(".*?\\s*(?:turns?|deg)");
  private static final Pattern TIME = Pattern.compile("(\\d{1,4}) ?(min|h|days?)");
  private static final Pattern RANGE =
      Pattern.compile("(.+?)\\.\\.(.+?)(?:\\s*(mm|in|thou|%|cents|C))");

  /** Most letters of an amount; the patterns need not cope with more. */
  private static final int LONGEST = 40;

  private Amounts() {}

  /** The least and the most of a range. */
  public record Range(double least, double most) {}

  /**
   * An amount of {@code quantity}, in its unit.
   *
   * @throws NotUnderstoodException when it is none, lacks its unit or has another's
   */
  public static double of(Quantity quantity, String text) {
    limit(text);
    return switch (quantity) {
      case RELIEF,
          BOW_NUT_END,
          BOW_MIDDLE,
          BOW_JOINT,
          BOW_BODY_END,
          NUT_CLEARANCE,
          ACTION,
          PICKUP_GAP ->
          length(text, quantity.word(), "0.30 mm").mm();
      case INTONATION -> cents(text);
      case HUMIDITY -> percent(text);
      case TEMPERATURE -> celsius(text);
    };
  }

  /**
   * Reads a range such as {@code 0..3 mm}, in the unit of {@code quantity}.
   *
   * @throws NotUnderstoodException when it is none or its ends are not in order
   */
  public static Range range(Quantity quantity, String text) {
    limit(text);
    Matcher m = RANGE.matcher(text);
    if (!m.matches()) {
      throw new NotUnderstoodException(
          Quote.of(text) + " is no range", "write for example " + exampleRange(quantity));
    }
    double least = of(quantity, m.group(1) + " " + m.group(3));
    double most = of(quantity, m.group(2) + " " + m.group(3));
    if (!(least < most)) {
      throw new NotUnderstoodException(
          Quote.of(text) + " begins with the larger number", "write the smaller one first");
    }
    return new Range(least, most);
  }

  /**
   * Reads a length of zero or more.
   *
   * @param what what it measures, for the message
   * @param example an amount of it, for the message
   */
  public static Length length(String text, String what, String example) {
    limit(text);
    String mend = "write it in mm, in or thou, for example " + example;
    Length length = read(LENGTH, Length::parse, text, "amount of " + what, mend);
    if (length.mm() < 0) {
      throw new NotUnderstoodException(Quote.of(text) + " is below nothing", "write 0 mm or more");
    }
    return length;
  }

  private static double cents(String text) {
    String mend = "write it in cents, for example 2 cents";
    return read(CENTS, Cents::parse, text, "amount of intonation", mend).cents();
  }

  private static double celsius(String text) {
    String mend = "write it in C, for example 21 C";
    return read(CELSIUS, Temperature::parse, text, "temperature", mend).celsius();
  }

  private static double percent(String text) {
    String mend = "write it in %, from 0 to 100, for example 40 %";
    return read(PERCENT, Humidity::parse, text, "amount of humidity", mend).percent();
  }

  /** Reads a turn such as {@code 1/8 turn} or {@code 45 deg}, above zero. */
  public static Turn turn(String text) {
    limit(text);
    String mend = "write for example 1/8 turn or 45 deg";
    Turn turn = read(TURN, Turn::parse, text, "part of a turn", mend);
    if (!(turn.turns() > 0)) {
      throw new NotUnderstoodException(
          Quote.of(text) + " is no turn at all", "write more, for example 1/16 turn");
    }
    return turn;
  }

  /**
   * Reads a time such as {@code 10 min}, {@code 24 h} or {@code 2 days}, in minutes, above zero.
   */
  public static int minutes(String text) {
    limit(text);
    Matcher m = TIME.matcher(text);
    int number = m.matches() ? Integer.parseInt(m.group(1)) : 0;
    if (number == 0) {
      throw new NotUnderstoodException(
          Quote.of(text) + " is no length of time", "write for example 10 min, 24 h or 2 days");
    }
    return switch (m.group(2)) {
      case "min" -> number;
      case "h" -> number * 60;
      default -> number * 60 * 24;
    };
  }

  /** Reads an amount with its unit; what a person may type without one is not enough here. */
  private static <T> T read(
      Pattern written, Function<String, T> reader, String text, String what, String mend) {
    if (written.matcher(text).matches()) {
      try {
        return reader.apply(text);
      } catch (NotUnderstoodException e) {
        // Falls through to what a file may hold, which is less than a person may type.
      }
    }
    throw new NotUnderstoodException(Quote.of(text) + " is no " + what, mend);
  }

  private static void limit(String text) {
    if (text.length() > LONGEST) {
      throw new NotUnderstoodException(
          Quote.of(text) + " is too long for an amount", "write a number and its unit");
    }
  }

  /** An example of how an amount is written. */
  public static String example(Quantity quantity) {
    return switch (quantity) {
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE -> "0.10 mm";
      case ACTION, PICKUP_GAP -> "2.00 mm";
      case INTONATION -> "3 cents";
      case HUMIDITY -> "40 %";
      case TEMPERATURE -> "21 C";
    };
  }

  private static String exampleRange(Quantity quantity) {
    return switch (quantity) {
      case RELIEF, BOW_NUT_END, BOW_MIDDLE, BOW_JOINT, BOW_BODY_END, NUT_CLEARANCE -> "0..3 mm";
      case ACTION, PICKUP_GAP -> "0.5..10 mm";
      case INTONATION -> "-60..60 cents";
      case HUMIDITY -> "5..95 %";
      case TEMPERATURE -> "0..40 C";
    };
  }
}
