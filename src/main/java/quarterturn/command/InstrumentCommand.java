package quarterturn.command;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import quarterturn.command.face.Face;
import quarterturn.command.face.Faces;
import quarterturn.command.place.Timed;
import quarterturn.command.place.Where;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.kind.Kind;
import quarterturn.report.InstrumentFacts;
import quarterturn.report.InstrumentPages;
import quarterturn.report.SessionList;
import quarterturn.session.Dialogue;
import quarterturn.session.Instrument;
import quarterturn.session.YesOrNo;
import quarterturn.session.listing.Glance;
import quarterturn.session.store.Store;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;

/** {@code instrument list} and {@code instrument show NAME}, and the way to the others. */
@Command(
    name = "instrument",
    description = "Keeps your instruments, so that each neck's answer is remembered.",
    synopsisSubcommandLabel = "COMMAND",
    subcommands = {InstrumentAdd.class, InstrumentEdit.class, InstrumentHistory.class})
final class InstrumentCommand extends Timed implements Runnable {

  @Override
  public void run() {
    throw new ParameterException(
        spec.commandLine(),
        "Say what to do: instrument list, or instrument show, add, edit, history or forget"
            + " and a NAME.");
  }

  @Command(name = "list", mixinStandardHelpOptions = true, description = "Lists your instruments.")
  int list(@Mixin Where where) throws IOException {
    Store store = where.store();
    Store.InstrumentList shelf = store.instruments();
    List<InstrumentPages.Row> rows = new ArrayList<>();
    List<Glance> sessions = store.sessions();
    List<Work> open = Work.of(sessions, Map.of(), clock.instant());
    for (Instrument instrument : shelf.instruments()) {
      InstrumentPages.Row row =
          InstrumentPages.Row.of(
              instrument.name(), instrument.kind(), of(sessions, instrument.name()));
      // What is not over comes first, a turned rod above all, as at home.
      rows.add(
          open.stream()
              .filter(work -> instrument.name().equals(work.glance().instrument()))
              .findFirst()
              .map(work -> row.standing("open: " + work.words(new Dates(clock.getZone()))))
              .orElse(row));
    }
    print(InstrumentPages.list(rows));
    shelf.notices().forEach(this::notice);
    return 0;
  }

  @Command(
      name = "show",
      mixinStandardHelpOptions = true,
      description = "Shows one instrument and its sessions.")
  int show(@Mixin Where where, @Parameters(paramLabel = "NAME") String name)
      throws IOException, UnreadableException {
    Store store = where.store();
    Instrument instrument = store.instrument(name);
    Kind kind = where.sessions(clock).rules().kinds().get(instrument.kind());
    Map<String, String> facts = InstrumentFacts.of(instrument, kind);
    return print(
        InstrumentPages.show(
            facts, of(store.sessions(), instrument.name()), new Dates(clock.getZone())));
  }

  @Command(
      name = "forget",
      mixinStandardHelpOptions = true,
      description = {
        "Removes an instrument's ticket and customer, which stand in its file alone. The instrument",
        "and its sessions stay."
      })
  int forget(@Mixin Where where, @Parameters(paramLabel = "NAME") String name)
      throws IOException, InterruptedException {
    Store store = where.store();
    Instrument instrument = store.instrument(name);
    String known = instrument.job().known();
    if (known.isEmpty()) {
      return print(List.of(instrument.name() + " has no ticket and no customer on record."));
    }
    YesOrNo dialogue =
        new YesOrNo(
            "Forget whose " + instrument.name() + " is?",
            List.of(
                "This is removed from its file: " + known + ".",
                "The instrument, its sessions and its turns stay."),
            "Forget it?",
            "Keep it",
            "Forget it");
    try (Face face = Faces.asking(false, clock.getZone())) {
      Dialogue.End end = face.ask(dialogue);
      if (end == Dialogue.End.ANSWERED && dialogue.yes()) {
        store.replace(instrument.forgotten());
        face.tell(
            List.of(
                "Removed from " + instrument.name() + ": " + known + ".",
                "The instrument, its sessions and its turns stay, and so does what was typed in them.",
                "A sheet that was exported before still has the ticket."));
      }
      return end.status();
    }
  }

  /** The sessions of an instrument, oldest first. */
  private List<SessionList.Row> of(List<Glance> sessions, String instrument) {
    List<Glance> of = new ArrayList<>();
    for (Glance glance : sessions) {
      if (instrument.equals(glance.instrument())) {
        of.add(0, glance);
      }
    }
    return LogCommand.rows(of, clock.instant(), new Dates(clock.getZone()));
  }
}
