package quarterturn.screen.terminal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import org.jline.utils.NonBlockingInputStream;
import org.jspecify.annotations.Nullable;

/** A terminal's bytes as text, whatever bytes they are. */
final class Units {
  private static final int READING = 1 << 13;

  private final NonBlockingInputStream in;
  private final CharsetDecoder decoder;
  private final ByteBuffer bytes = ByteBuffer.allocate(READING);
  private final CharBuffer chars = CharBuffer.allocate(READING);

  Units(NonBlockingInputStream in, Charset charset) {
    this.in = in;
    decoder =
        charset
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPLACE)
            .onUnmappableCharacter(CodingErrorAction.REPLACE);
  }

  /** What has come, or empty where nothing came in time; null at the end of input. */
  @Nullable String read(long millis) throws IOException {
    int length = in.readBuffered(bytes.array(), bytes.position(), bytes.remaining(), millis);
    if (length < 0) {
      return length == NonBlockingInputStream.EOF ? null : "";
    }
    bytes.position(bytes.position() + length);
    bytes.flip();
    decoder.decode(bytes, chars, false);
    bytes.compact();
    String text = chars.flip().toString();
    chars.clear();
    return text;
  }
}
