package quarterturn.quick;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.procedure.kind.Quantity;

/** The name of a quantity on a typed line: the whole word and an abbreviation. */
enum Name {
  RELIEF(Quantity.RELIEF, "r"),
  BOW_NUT_END(Quantity.BOW_NUT_END, "b4"),
  BOW_MIDDLE(Quantity.BOW_MIDDLE, "b8"),
  BOW_JOINT(Quantity.BOW_JOINT, "b11"),
  BOW_BODY_END(Quantity.BOW_BODY_END, "b15"),
  NUT(Quantity.NUT_CLEARANCE, "n1"),
  ACTION(Quantity.ACTION, "a12"),
  INTONATION(Quantity.INTONATION, "i12"),
  PICKUP(Quantity.PICKUP_GAP, "gap"),
  HUMIDITY(Quantity.HUMIDITY, "rh"),
  TEMPERATURE(Quantity.TEMPERATURE, "air");

  private final Quantity quantity;
  private final String brief;

  Name(Quantity quantity, String brief) {
    this.quantity = quantity;
    this.brief = brief;
  }

  Quantity quantity() {
    return quantity;
  }

  /** The quantity with this name or abbreviation, or null. */
  static @Nullable Quantity of(String word) {
    for (Name name : values()) {
      if (name.brief.equals(word) || name.quantity.word().equals(word)) {
        return name.quantity;
      }
    }
    return null;
  }

  /** Every quantity's name with its abbreviation in brackets. */
  static List<String> shown() {
    return Arrays.stream(values())
        .map(name -> name.quantity.word() + " (" + name.brief + ")")
        .toList();
  }

  /** Every name and abbreviation that can be typed. */
  static List<String> words() {
    List<String> words = new ArrayList<>();
    for (Name name : values()) {
      words.add(name.quantity.word());
      words.add(name.brief);
    }
    return words;
  }
}
