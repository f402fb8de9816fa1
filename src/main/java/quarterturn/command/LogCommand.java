package quarterturn.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.place.Export;
import quarterturn.command.place.Timed;
import quarterturn.command.place.Where;
import quarterturn.procedure.Library;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.read.Shelf;
import quarterturn.report.Labels;
import quarterturn.report.SessionList;
import quarterturn.report.SessionLog;
import quarterturn.report.sheet.RepairNote;
import quarterturn.report.sheet.Sheet;
import quarterturn.report.sheet.SheetFormat;
import quarterturn.session.Dialogue;
import quarterturn.session.Event;
import quarterturn.session.YesOrNo;
import quarterturn.session.journal.Journal;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Listing;
import quarterturn.session.store.HomePages;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;
import quarterturn.unit.NotUnderstoodException;

/** {@code log list}, {@code log show SESSION} and {@code log export SESSION}. */
@Command(
    name = "log",
    description = "Shows what was recorded, and writes it as a set-up sheet.",
    synopsisSubcommandLabel = "COMMAND")
final class LogCommand extends Timed implements Runnable {

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(), "Say what to show: log list, log show SESSION, or log export SESSION.");
  }

  @Command(
      name = "list",
      mixinStandardHelpOptions = true,
      description = "Lists every session, the newest first.")
  int list(@Mixin Where where) throws IOException {
    Listing listing = where.store().listing();
    Dates dates = new Dates(clock.getZone());
    print(SessionList.lines(rows(listing.sessions(), clock.instant(), dates), dates));
    return print(listing.notRead());
  }

  /** Sessions as the lists show them. */
  static List<SessionList.Row> rows(List<Glance> sessions, Instant now, Dates dates) {
    Map<Glance.Rod, String> rods = new HashMap<>(); // a few ways, many sessions
    List<SessionList.Row> rows = new ArrayList<>(sessions.size());
    for (Glance one : sessions) {
      String rod = rods.computeIfAbsent(one.rod(), SessionList::rod);
      String open = one.unfinished() ? Work.of(one, Map.of(), now).words(dates) : "";
      rows.add(SessionList.Row.of(one, rod, open));
    }
    return rows;
  }

  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description = "Shows one session, every event on its own line.")
  int show(@Mixin Where where, @Parameters(paramLabel = "SESSION") String session)
      throws IOException, UnreadableException {
    Journal.Contents contents = where.store().read(session);
    if (contents.notice() != null) {
      notice(contents.notice());
    }
    Labels labels = labels(where, contents);
    print(SessionLog.lines(session, contents.events(), labels, new Dates(clock.getZone())));
    return contents.header() == null ? Launch.USAGE : 0;
  }

  @Command(
      name = "export",
      mixinStandardHelpOptions = true,
      description = {
        "Writes one session's set-up sheet, as it can be handed to a customer; or what it leaves",
        "to a repairer, on a page.",
        "Nothing leaves the machine."
      })
  int export(
      @Mixin Where where,
      @Parameters(paramLabel = "SESSION") String session,
      @Option(
              names = "--format",
              paramLabel = "FORMAT",
              defaultValue = "TEXT",
              description = "text, markdown, csv (readings alone), json or html.")
          SheetFormat format,
      @Option(
              names = "--out",
              paramLabel = "FILE",
              description = "The file to write; without it, standard output.")
          @Nullable Path file,
      @Option(
              names = "--note",
              description = "The note that goes to a repairer with it, in place of the sheet.")
          boolean note,
      @Option(names = "--force", description = "Writes over a file that is there.") boolean force)
      throws IOException, UnreadableException {
    if (force && file == null) {
      throw new NotUnderstoodException("--force is for --out FILE; say which file");
    }
    Export export = file == null ? null : new Export("--out", file, force, where.kept());
    if (export != null) {
      export.check();
    }
    Journal.Contents contents = where.store().read(session);
    if (contents.events().isEmpty()) {
      throw new IOException("session " + session + " holds nothing yet, so it has no sheet");
    }
    if (contents.notice() != null) {
      notice(contents.notice());
    }
    Library library = library(where, contents);
    Dates dates = new Dates(clock.getZone());
    Work work = work(where.store(), session);
    Sheet sheet =
        Sheet.of(session, contents.events(), library, shipped(library, contents))
            .with(
                work == null ? null : work.ticket(),
                work != null && work.glance().unfinished() ? work.words(dates) : null);
    String text =
        note
            ? format.write(
                RepairNote.TITLE, RepairNote.of(sheet, contents.events(), library, dates))
            : format.write(sheet, dates);
    if (export != null) {
      export.write(text);
    } else if (format == SheetFormat.TEXT) {
      out().print(text);
      out().flush();
    } else {
      // A file by way of the shell: UTF-8, whatever the terminal speaks.
      System.out.writeBytes(text.getBytes(StandardCharsets.UTF_8));
      System.out.flush();
    }
    return 0;
  }

  @Command(
      name = "discard",
      mixinStandardHelpOptions = true,
      description = {
        "Discards an unfinished session: it is kept and marked, and not offered any more. Its turns",
        "still count, and a stop in it still holds."
      })
  int discard(@Mixin Where where, @Parameters(paramLabel = "SESSION") String session)
      throws IOException, UnreadableException, InterruptedException {
    Sessions sessions = where.sessions(clock);
    YesOrNo dialogue = HomePages.discarding(session, sessions.standing(session));
    try (Face face = Faces.asking(false, clock.getZone())) {
      Dialogue.End end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED && dialogue.yes()) {
        face.tell(List.of("Discarded: " + session + ". Left: " + sessions.discard(session) + "."));
      }
      return end.status();
    }
  }

  /** A session as lists tell of it, with its instrument's ticket; null where it has no list. */
  private @Nullable Work work(Store store, String session) throws IOException {
    for (Glance glance : store.sessions()) {
      if (glance.name().equals(session)) {
        return Work.of(glance, store.tickets(), clock.instant());
      }
    }
    return null;
  }

  private Labels labels(Where where, Journal.Contents contents)
      throws IOException, UnreadableException {
    return contents.header() == null
        ? Labels.none()
        : Labels.of(library(where, contents), contents.header().procedure());
  }

  private static Library shipped(Library library, Journal.Contents contents)
      throws IOException, UnreadableException {
    Shelf shipped = new Shelf(null);
    String procedure = contents.header() == null ? "" : contents.header().procedure();
    return shipped.has(procedure) ? shipped.load(procedure) : library;
  }

  /** The library of a record's procedure; where it can't be read, ids stand in for its words. */
  private Library library(Where where, Journal.Contents contents)
      throws IOException, UnreadableException {
    try {
      Sessions sessions = where.sessions(clock);
      boolean begun = !contents.events().isEmpty();
      Event first = begun ? contents.events().get(0) : null;
      String lost = first instanceof Event.Started started ? sessions.lost(started) : null;
      if (lost != null) {
        notice(lost);
      } else if (contents.header() != null) {
        return sessions.library(contents.header().procedure());
      }
    } catch (IOException | UnreadableException e) {
      // What is wrong with the file is told by check, and where it is to be run.
    }
    return new Shelf(null).rules().limitsAlone();
  }
}
