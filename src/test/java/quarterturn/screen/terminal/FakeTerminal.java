package quarterturn.screen.terminal;

import java.io.ByteArrayOutputStream;
import java.io.FilterOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.concurrent.LinkedBlockingQueue;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.impl.LineDisciplineTerminal;
import org.jline.utils.InfoCmp;
import org.jline.utils.NonBlocking;
import org.jline.utils.NonBlockingInputStream;
import org.jline.utils.NonBlockingReader;
import quarterturn.platform.SteadyTerminal;
import quarterturn.platform.TerminalInput;

/** A terminal in this process, whose input is read as that of a real one. */
public final class FakeTerminal extends LineDisciplineTerminal {
  private static final String TYPE = "xterm";

  private final LinkedBlockingQueue<byte[]> typed = new LinkedBlockingQueue<>();
  private final ByteArrayOutputStream out;
  private final NonBlockingInputStream in = new TerminalInput(new Blocks());
  private volatile boolean closedWindow;
  private final NonBlockingReader reader =
      NonBlocking.nonBlocking("fake", in, StandardCharsets.UTF_8);

  public FakeTerminal(int width, int height) throws IOException {
    this(new ByteArrayOutputStream(), width, height);
  }

  private FakeTerminal(ByteArrayOutputStream out, int width, int height) throws IOException {
    super("fake", loaded(), out, StandardCharsets.UTF_8);
    this.out = out;
    setSize(new Size(width, height));
  }

  private static String loaded() {
    InfoCmp.setLoadedInfoCmp(TYPE, InfoCmp.getDefaultInfoCmp(TYPE));
    return TYPE;
  }

  /** One block for each reading, as it was typed. */
  private final class Blocks extends InputStream {
    @Override
    public int read() {
      throw new UnsupportedOperationException();
    }

    @Override
    public int read(byte[] b, int off, int len) throws IOException {
      try {
        byte[] block = typed.take();
        int count = Math.min(len, block.length);
        System.arraycopy(block, 0, b, off, count);
        return count;
      } catch (InterruptedException e) {
        return -1;
      }
    }
  }

  /** Types bytes; no more of them than one reading takes. */
  public void type(byte[] bytes) {
    typed.add(bytes);
  }

  public void type(String text) {
    type(text.getBytes(StandardCharsets.UTF_8));
  }

  public void resize(int[] size) {
    setSize(new Size(size[0], size[1]));
    raise(Signal.WINCH);
  }

  /** From now on nothing can be written to it. */
  public void closeWindow() {
    closedWindow = true;
  }

  @Override
  public OutputStream output() {
    return new FilterOutputStream(super.output()) {
      @Override
      public void write(int b) throws IOException {
        if (closedWindow) {
          throw new IOException("Input/output error");
        }
        super.out.write(b);
      }
    };
  }

  /** Everything that was sent to it so far. */
  public String sent() {
    return out.toString(StandardCharsets.UTF_8);
  }

  @Override
  public Attributes enterRawMode() {
    Attributes before = getAttributes();
    setAttributes(SteadyTerminal.raw(before));
    return before;
  }

  @Override
  public boolean puts(InfoCmp.Capability capability, Object... params) {
    return SteadyTerminal.whole(this, capability, params);
  }

  @Override
  public InputStream input() {
    return in;
  }

  @Override
  public NonBlockingReader reader() {
    return reader;
  }
}
