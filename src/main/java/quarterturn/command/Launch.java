package quarterturn.command;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintStream;
import java.io.PrintWriter;
import java.nio.file.InvalidPathException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import quarterturn.command.face.Looks;
import quarterturn.command.place.Letters;
import quarterturn.command.place.Output;
import quarterturn.command.place.Where;
import quarterturn.platform.Encodings;
import quarterturn.platform.UserFolders;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.session.RecordMismatchException;
import quarterturn.session.store.Settings;
import quarterturn.unit.NotUnderstoodException;

/**
 * Starts what was typed. Where nothing was, that is the home view, which does not have to wait for
 * what reads a command line.
 */
public final class Launch {
  /** Exit status for wrong usage and for files that can't be read. */
  static final int USAGE = 2;

  private Launch() {}

  /** Runs one command line and returns the exit status. */
  public static int run(Clock clock, String... args) {
    OutputStream out = new FileOutputStream(FileDescriptor.out);
    return run(clock, UserFolders.ofThisUser(), out, args);
  }

  /**
   * As {@link #run(Clock, String...)}, for a user. What it prints is looked after here, for every
   * command: where it can't be written, the command ends.
   *
   * @param folders where the user's data and settings are
   * @param to standard output
   */
  static int run(Clock clock, UserFolders folders, OutputStream to, String... args) {
    Output out = new Output(to);
    PrintStream before = System.out;
    System.setOut(out.stream());
    try {
      return out.status(started(clock, folders, args), Launch::complain);
    } finally {
      System.setOut(before);
    }
  }

  private static int started(Clock clock, UserFolders folders, String... args) {
    List<String> words = new ArrayList<>(List.of(args));
    // Where this can't be read, a path that begins here leads elsewhere.
    words.add(System.getProperty("user.dir", ""));
    @Nullable String unread = Letters.unread(words, Encodings.ofFileNames());
    if (unread != null) {
      complain(unread);
      return USAGE;
    }
    return args.length > 0 ? Cli.executed(clock, folders, args) : home(clock, folders);
  }

  private static void complain(String what) {
    System.err.println("quarterturn: " + what);
  }

  private static int home(Clock clock, UserFolders folders) {
    Where where = new Where();
    where.of(folders);
    try {
      return home(where, clock, new Looks(), null);
    } catch (Exception e) {
      return failed(e, where, new PrintWriter(System.err, true));
    }
  }

  /** Opens the home view; the role is the user's own where none is given. */
  static int home(Where where, Clock clock, Looks looks, @Nullable Role role)
      throws IOException, UnreadableException, InterruptedException {
    Role own = role == null ? where.role() : role;
    return new Home(where.sessions(clock), looks, own, where.said(Settings.Key.values())).open();
  }

  /** Prints one line on what went wrong, where that is for the user; returns the exit status. */
  static int failed(Exception e, @Nullable Where where, PrintWriter err) {
    boolean forTheUser =
        e instanceof IOException
            || e instanceof UnreadableException
            || e instanceof NotUnderstoodException
            || e instanceof InvalidPathException
            || e instanceof RecordMismatchException;
    if (forTheUser) {
      err.println("quarterturn: " + Complaint.of(e, where));
    } else if (!(e instanceof Output.LostException)) {
      // Left to itself it would end with 1, which tells of an instrument handed over.
      err.println("quarterturn: stopped by a fault of its own; what was answered is kept");
      e.printStackTrace(err);
    }
    return USAGE;
  }
}
