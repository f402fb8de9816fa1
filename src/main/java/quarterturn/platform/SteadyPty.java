package quarterturn.platform;

import java.io.FileDescriptor;
import java.io.FileInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import org.jline.nativ.CLibrary;
import org.jline.terminal.Attributes;
import org.jline.terminal.Size;
import org.jline.terminal.impl.AbstractPty;
import org.jline.terminal.impl.jni.JniNativePty;

/**
 * JLine's native terminal, with two changes: speed and control flags stay as found (JLine's own
 * attributes have no speed, and setting them would set it to zero), and a read blocks until there
 * is input or the terminal has gone.
 */
public final class SteadyPty extends AbstractPty {
  private final JniNativePty pty;
  private final CLibrary.Termios found = new CLibrary.Termios();

  SteadyPty(JniNativePty pty) {
    super(pty.getProvider(), pty.getSystemStream());
    this.pty = pty;
    CLibrary.tcgetattr(pty.getSlave(), found);
  }

  @Override
  protected void doSetAttr(Attributes attributes) throws IOException {
    pty.setAttr(attributes);
    CLibrary.Termios now = new CLibrary.Termios();
    CLibrary.tcgetattr(pty.getSlave(), now);
    now.c_cflag = found.c_cflag;
    now.c_ispeed = found.c_ispeed;
    now.c_ospeed = found.c_ospeed;
    CLibrary.tcsetattr(pty.getSlave(), CLibrary.TCSANOW, now);
  }

  @Override
  public InputStream getSlaveInput() throws IOException {
    return doGetSlaveInput();
  }

  @Override
  protected InputStream doGetSlaveInput() throws IOException {
    return new TerminalInput(new FileInputStream(FileDescriptor.in));
  }

  @Override
  public OutputStream getSlaveOutput() throws IOException {
    return pty.getSlaveOutput();
  }

  @Override
  public InputStream getMasterInput() throws IOException {
    return pty.getMasterInput();
  }

  @Override
  public OutputStream getMasterOutput() throws IOException {
    return pty.getMasterOutput();
  }

  @Override
  public Attributes getAttr() throws IOException {
    return pty.getAttr();
  }

  @Override
  public Size getSize() throws IOException {
    return pty.getSize();
  }

  @Override
  public void setSize(Size size) throws IOException {
    pty.setSize(size);
  }

  @Override
  public void close() throws IOException {
    pty.close();
  }
}
