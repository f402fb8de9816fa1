package quarterturn.command;

import java.io.IOException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import quarterturn.command.face.Face;
import quarterturn.command.face.Looks;
import quarterturn.platform.StandardStreams;
import quarterturn.procedure.Library;
import quarterturn.procedure.Limits;
import quarterturn.procedure.Outline;
import quarterturn.procedure.UnreadableException;
import quarterturn.procedure.condition.Role;
import quarterturn.procedure.read.Shelf;
import quarterturn.rehearsal.Practice;
import quarterturn.rehearsal.PracticeBench;
import quarterturn.rehearsal.simulated.NamedNeck;
import quarterturn.report.HomeItems;
import quarterturn.report.SessionList;
import quarterturn.session.Dialogue;
import quarterturn.session.Due;
import quarterturn.session.ExitStatus;
import quarterturn.session.Lists;
import quarterturn.session.Player;
import quarterturn.session.Program;
import quarterturn.session.listing.Glance;
import quarterturn.session.listing.Listing;
import quarterturn.session.store.Dues;
import quarterturn.session.store.HomeDialogue;
import quarterturn.session.store.OwnProcedure;
import quarterturn.session.store.Sessions;
import quarterturn.session.store.Store;
import quarterturn.session.store.Work;
import quarterturn.unit.Dates;
import quarterturn.unit.NotUnderstoodException;

/**
 * The home view: unfinished sessions, what is due, and a start.
 *
 * @param role of who begins something where no role is typed with it
 * @param said what the file of settings sets, in a line, or none
 */
record Home(Sessions sessions, Looks looks, Role role, List<String> said) {
  /** Shows it until it is left: at a terminal, what was begun from it leads back to it. */
  int open() throws IOException, UnreadableException, InterruptedException {
    try (Face face = looks.faces(sessions.clock().getZone()).open()) {
      return open(face, StandardStreams.areATerminal());
    }
  }

  /**
   * Shows it on a face until it is left.
   *
   * @param again whether what was begun from it leads back to it
   */
  int open(Face face, boolean again) throws IOException, UnreadableException, InterruptedException {
    while (true) {
      HomeDialogue dialogue = dialogue();
      face.underHome(false);
      Dialogue.End end = face.ask(dialogue);
      if (end != Dialogue.End.ANSWERED) {
        return end.status();
      }
      face.underHome(true);
      int status = begun(face, dialogue.choice());
      boolean over = dialogue.choice() instanceof HomeDialogue.Choice.Quit;
      if (over || status == ExitStatus.INTERRUPTED || !again) {
        return status;
      }
    }
  }

  private int begun(Face face, HomeDialogue.Choice choice)
      throws IOException, UnreadableException, InterruptedException {
    if (choice instanceof HomeDialogue.Choice.Resume resume) {
      return face.play(sessions, sessions.beginning(resume.session()));
    } else if (choice instanceof HomeDialogue.Choice.Begin begin) {
      return face.start(
          sessions,
          new Sessions.Wish(
              begin.procedure(),
              begin.instrument(),
              null,
              null,
              begin.role() == Role.BEGINNER ? role : begin.role()));
    } else if (choice instanceof HomeDialogue.Choice.Rehearse rehearse) {
      return rehearsed(face, rehearse.watch());
    }
    return ExitStatus.DONE;
  }

  /** Plays a rehearsal: a neck with too much relief to watch, any simulated neck to practise on. */
  private int rehearsed(Face face, boolean watch)
      throws IOException, UnreadableException, InterruptedException {
    Practice practice =
        new Practice(
            sessions, sessions.named(null), Practice.USUAL_KIND, Practice.USUAL_STYLE, role);
    if (!watch) {
      return face.play(practice.on(new Random().nextInt(Practice.NUMBERED)), null);
    }
    PracticeBench bench = practice.on(NamedNeck.TOO_MUCH);
    return face.watch(new Player(bench, bench::truth, 1));
  }

  /** The home view's dialogue, for which the user's own procedures are read once. */
  private HomeDialogue dialogue() throws IOException, UnreadableException {
    Outline rules = sessions.outline();
    OnRecord past = new OnRecord(sessions, rules);
    return new HomeDialogue(
        greeting(),
        past.begun(),
        rules.results(),
        OwnProcedure.in(sessions.own(), rules.results()),
        sessions.store().instrumentNames().stream().sorted().toList(),
        sessions.store().tickets(),
        this::prove,
        past);
  }

  /** What the settings set, and whether some of the user's own procedures' folder is not read. */
  private List<String> greeting() throws IOException {
    int strays = new Shelf(sessions.own()).notRead().size();
    String found = strays == 1 ? "1 thing is" : strays + " things are";
    return strays == 0
        ? said
        : Lists.with(
            said,
            "In the folder of your own procedures, "
                + found
                + " not read; "
                + Program.here().typed("check --own " + Program.word(sessions.own() + ""))
                + " names them.");
  }

  /** Refuses a choice whose procedure can't be found or has a fault, while there are others. */
  private void prove(HomeDialogue.Choice choice) {
    try {
      if (choice instanceof HomeDialogue.Choice.Resume resume) {
        sessions.followed(resume.session());
      } else if (choice instanceof HomeDialogue.Choice.Begin begin && sessions.own() != null) {
        // The program's own were proven when it was built.
        sessions.proven(begin.procedure());
      }
    } catch (UnreadableException e) {
      throw new NotUnderstoodException("It can't be started. " + e.faults().get(0).brief());
    } catch (IOException e) {
      throw new NotUnderstoodException(Complaint.of(e));
    }
  }

  /** What the home view shows of a user's folder, and what it discards there. */
  private record OnRecord(Sessions sessions, Outline rules) implements HomeDialogue.Past {
    private Dates dates() {
      return new Dates(sessions.clock().getZone());
    }

    @Override
    public List<String> all() throws IOException {
      Listing listing = sessions.store().listing();
      List<SessionList.Row> rows =
          LogCommand.rows(listing.sessions(), sessions.clock().instant(), dates());
      List<String> lines = new ArrayList<>(SessionList.sentences(rows, rules.results(), dates()));
      lines.addAll(listing.notRead());
      return lines;
    }

    @Override
    public List<HomeDialogue.Item> begun() throws IOException {
      Instant now = sessions.clock().instant();
      Limits.Rechecks rechecks = rules.limits().rechecks();
      Store store = sessions.store();
      List<Glance> glances = store.sessions();
      List<Due> dues = Dues.of(glances, store.instrumentNames(), rechecks, now);
      return HomeItems.of(
          Work.of(glances, store.tickets(), now),
          Dues.pressing(dues, rechecks, now),
          rules.results()::title,
          now,
          dates());
    }

    @Override
    public List<String> history(String instrument) throws IOException, UnreadableException {
      Library all = sessions.rules();
      return InstrumentHistory.told(sessions, all, instrument, notice -> {}).lines(dates());
    }

    @Override
    public String standing(String session) throws IOException {
      return sessions.standing(session);
    }

    @Override
    public void discard(String session) throws IOException {
      sessions.discard(session);
    }
  }
}
