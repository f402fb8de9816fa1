package quarterturn.platform;

import static java.nio.charset.StandardCharsets.US_ASCII;

import java.io.ByteArrayOutputStream;
import java.time.Duration;
import quarterturn.unit.Pasted;

/**
 * Bounds pastes where the terminal's bytes come in, so that nothing behind it has to read a
 * megabyte. What stands between the brackets of a paste goes on up to a limit; the rest is dropped
 * and a mark says so. A terminal without brackets is known by its haste: many bytes in one reading
 * were not typed, so they get the brackets here, and no line end among them is an Enter.
 */
public final class Pastes {
  public static final String BEGIN = "\u001b[200~";
  public static final String END = "\u001b[201~";

  /** More bytes than this in one reading are a paste. */
  static final int HASTE = 256;

  /** A paste without brackets goes on with what follows this soon. */
  static final Duration SOON = Duration.ofMillis(50);

  /** A paste whose end has not come for this long is over. */
  public static final Duration LOST = Duration.ofSeconds(2);

  private static final byte[] BEGINS = BEGIN.getBytes(US_ASCII);
  private static final byte[] ENDS = END.getBytes(US_ASCII);

  private final ByteArrayOutputStream out = new ByteArrayOutputStream();

  /** Whether a paste has begun and not ended. */
  private boolean inside;

  /** Whether the bytes come in haste, without brackets. */
  private boolean hasty;

  /** How many bytes of the bracket awaited next have come. */
  private int matched;

  /** Whether they have not gone on, since in haste an Esc is no key. */
  private boolean held;

  /** How many bytes of the paste have passed. */
  private int passed;

  private long last;

  /**
   * What goes on of the bytes of one reading.
   *
   * @param nanos when they were read
   */
  byte[] pass(byte[] bytes, int length, long nanos) {
    long silent = nanos - last;
    last = nanos;
    if (inside && silent > LOST.toNanos()) {
      inside = false;
      matched = 0;
    }
    hasty &= silent < SOON.toNanos();
    out.reset();
    int at = 0;
    while (at < length) {
      at = inside ? inside(bytes, at, length) : outside(bytes, at, length);
    }
    return out.toByteArray();
  }

  private int outside(byte[] bytes, int from, int length) {
    int at = from;
    while (at < length && matched < BEGINS.length) {
      matched = matched(BEGINS, bytes[at]);
      at++;
    }
    int here = Math.min(matched, at - from);
    boolean split = matched > here;
    plain(bytes, from, at - here);
    if (matched == BEGINS.length) {
      int gone = split && !held ? matched - here : 0;
      out.write(BEGINS, gone, BEGINS.length - gone);
      inside = true;
      hasty = false;
      held = false;
      matched = 0;
      passed = 0;
      return at;
    }
    held = hasty || (held && split);
    if (!held) {
      out.write(bytes, at - here, here);
    }
    return at;
  }

  private void plain(byte[] bytes, int from, int to) {
    int count = to - from;
    if (!hasty && count <= HASTE) {
      out.write(bytes, from, count);
      return;
    }
    passed = hasty ? passed : 0;
    hasty = true;
    if (count > 0 && passed <= Pasted.MOST) {
      out.writeBytes(BEGINS);
      for (int i = from; i < to; i++) {
        put(bytes[i]);
      }
      out.writeBytes(ENDS);
    }
  }

  private int inside(byte[] bytes, int from, int length) {
    int at = from;
    while (at < length && matched < ENDS.length) {
      int held = matched;
      matched = matched(ENDS, bytes[at]);
      for (int i = 0; i < held + 1 - matched; i++) {
        put(i < held ? ENDS[i] : bytes[at]);
      }
      at++;
    }
    if (matched == ENDS.length) {
      inside = false;
      matched = 0;
      out.writeBytes(ENDS);
    }
    return at;
  }

  private int matched(byte[] bracket, byte next) {
    return next == bracket[matched] ? matched + 1 : next == bracket[0] ? 1 : 0;
  }

  private void put(byte next) {
    if (passed < Pasted.MOST) {
      out.write(next);
    } else if (passed == Pasted.MOST) {
      out.write(Pasted.LEFT_OUT);
    }
    passed = Math.min(passed + 1, Pasted.MOST + 1);
  }
}
